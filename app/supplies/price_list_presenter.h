// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "app/session/book_session.h"
#include "app/supplies/price_list_work.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <map>
#include <memory>
#include <optional>

namespace sp::supplies {

/// What is decided when a supplier's price list is read: which column says what (guessed, and remembered for that
/// supplier), which rows are what, what would change, and the one action that changes it. Lists are read beside the
/// screen's thread.
class PriceListPresenter : public QObject {
    Q_OBJECT

  public:
    /// `seenOn` becomes the day of every price.
    PriceListPresenter(session::BookSession& session, const base::Id& supplier, units::Date seenOn,
                       QObject* parent = nullptr);
    ~PriceListPresenter() override;

    /// Reads a file in place of the one before; `changed` tells when that is done.
    void load(const QString& path);
    bool isBusy() const { return m_isBusy; }
    /// Rows that are read by now, and how many there are; 0 while the file itself is read. While it is saved: stones
    /// and packs.
    std::size_t reached() const { return m_taking ? m_taking->saved() : m_rowsRead; }
    std::size_t inAll() const;
    /// Leaves the reading or the saving; the list is then as if it had not been chosen.
    void stop();

    const QString& fileName() const { return m_fileName; }
    /// The list from its headings on; null without one.
    const base::CsvTable* table() const { return m_file ? &m_file->table : nullptr; }
    bool isGuessedEncoding() const { return m_file && m_file->encoding == units::Encoding::Windows1252; }
    QStringList headings() const;

    /// What the column with that number says.
    std::optional<catalogue::ListColumn> meaning(std::size_t column) const;
    /// Takes it from the column that said so before. Nothing: the column is not used.
    void setMeaning(std::size_t column, std::optional<catalogue::ListColumn> meaning);
    bool hasDecimalComma() const { return m_columns.decimalComma; }
    void setDecimalComma(bool on);
    /// Says what these lines of the file are; none: what the list says.
    void match(const std::vector<std::size_t>& lines, const base::Id& material);
    bool makesMissing() const { return m_makesMissing; }
    void setMakesMissing(bool on);

    /// What the list would do to the book as it was when it was read; null while that is not known, see `problem`.
    const supply::PriceListReading* reading() const { return m_reading && !m_isBusy ? &*m_reading : nullptr; }
    /// Why there is no reading: one sentence.
    const QString& problem() const { return m_problem; }
    const std::vector<catalogue::Material>& materials() { return m_session.materials(); }

    /// Remembers the columns and saves every change as one action. Empty when that was done, else the sentence. A list
    /// that changes more than kMostTakenOver is saved part by part, as many actions: it `isSaving` then, tells how far
    /// by `progressed`, and by `saved` when it is through. What stops it, or goes wrong, leaves the parts that were
    /// saved, and `problem` says how many.
    QString import();
    bool isSaving() const { return m_taking != nullptr; }

  Q_SIGNALS:
    void changed();
    void progressed();
    void saved();

  private:
    std::shared_ptr<const ListedBook> listedBook();
    void read();
    void taken(base::Result<supply::PriceListReading> reading);
    void begin();
    void savePart();
    void endSaving(const QString& problem);

    session::BookSession& m_session;
    units::Date m_seenOn;
    QString m_fileName;
    std::shared_ptr<const ListedFile> m_file;
    catalogue::PriceListColumns m_columns;
    std::map<std::size_t, base::Id> m_matched;
    bool m_makesMissing = false;
    std::optional<supply::PriceListReading> m_reading;
    QString m_problem;
    bool m_isBusy = false;
    std::size_t m_rowsRead = 0;
    async::LatestTask m_task;
    std::unique_ptr<TakingOver> m_taking; ///< what is being saved
    bool m_isStopped = false;             ///< after the part that is being saved
};

} // namespace sp::supplies
