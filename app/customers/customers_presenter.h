// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/all_of_customer.h"
#include "app/session/book_session.h"
#include "db/book/backups.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace sp::customers {

/// What is decided at the Customers place: which customer is open and what becomes of it. Every edit is saved when it
/// is made; what the book refuses comes back as the sentence to show.
class CustomersPresenter : public QObject {
    Q_OBJECT

  public:
    explicit CustomersPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    /// Those whose name, telephone or mail holds the text, letter case ignored, and `kept`; sorted by name.
    std::vector<catalogue::Customer> matching(const QString& text, const base::Id& kept);
    const base::Id& currentId() const { return m_current; }
    /// The open customer; none when nothing is open or it is gone.
    const catalogue::Customer* current();
    void open(const base::Id& customer);
    /// All that the book has of the open one; nothing when none is open.
    std::optional<db::CustomerFile> file();
    /// Writes all of the open one into a folder of its own in this one; which that is. Errors: those of writeAllOf.
    base::Result<QString> writeAll(const QString& folder, const PaperWriters& writers);
    /// The pictures of the designs in the jobs of the open one, those of the newest jobs first.
    std::vector<db::DesignPicture> pictures(std::int64_t limit);
    /// The certificates of the open one that end soon (catalogue::kCertificateEndsSoon) or have ended, unless another
    /// of the same place goes on.
    std::vector<catalogue::Certificate> endingCertificates();

    /// Changes the open customer through `work` and saves it. Empty when it is saved (or nothing changed).
    QString edit(const std::function<void(catalogue::Customer&)>& work);
    void create();
    /// The open one is the same person as that one, which is open afterwards.
    void mergeInto(const base::Id& other);
    /// Copies of the book that the program made and that hold every person of it.
    std::vector<db::Leaving> copies(const db::BackupPlaces& places);
    /// Takes that one out for good; empty when that is done. Gone it may be when there is something to say, too.
    QString erase(const base::Id& customer);

  Q_SIGNALS:
    void opened();  ///< another customer is open
    void changed(); ///< something of the book is no longer as it was

  private:
    void openFirst();

    session::BookSession& m_session;
    base::Id m_current;
};

} // namespace sp::customers
