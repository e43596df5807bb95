// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>

namespace sp::designs {

/// What is decided at the Designs place: which design is open and what becomes of it. Every edit is saved when it is
/// made; what the book refuses comes back as the sentence to show.
class DesignsPresenter : public QObject {
    Q_OBJECT

  public:
    explicit DesignsPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }
    /// The designs whose names hold the text, letter case ignored, and `kept` whatever its name; sorted by name.
    std::vector<catalogue::Design> matching(const QString& text, const base::Id& kept);
    const base::Id& currentId() const { return m_current; }
    /// The open design; none when nothing is open or it is gone.
    const catalogue::Design* current();
    void open(const base::Id& design);

    /// Changes the open design through `work` and saves it. Empty when it is saved (or nothing changed).
    QString edit(const std::function<void(catalogue::Design&)>& work);
    void create();
    void duplicate();
    void remove();

  Q_SIGNALS:
    void opened();  ///< another design is open
    void changed(); ///< designs, materials or prices are no longer as they were

  private:
    QString freeName(const QString& wanted);
    bool save(catalogue::Design design);

    session::BookSession& m_session;
    base::Id m_current;
};

} // namespace sp::designs
