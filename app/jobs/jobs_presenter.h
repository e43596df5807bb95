// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/pricing/compare.h"

#include <QObject>
#include <QString>

#include <optional>
#include <vector>

namespace sp::jobs {

/// So many quotes are read at first; when the end of the list is looked at, twice as many.
inline constexpr std::int64_t kFirstJobs = 200;

/// Jobs to be cut together.
struct Cutting {
    /// Each named with its job's number (a draft: with its customer) where there are several jobs.
    std::vector<catalogue::OrderLine> lines;
    /// What they are cut from: the materials as they are today, since today's sheets are on the shelf. A material that
    /// was removed since a quote was given is as that quote has it.
    catalogue::PriceBook prices;
    std::vector<std::string> removed; ///< the names of those, of what lines are made on
};

/// What is decided at the Jobs place: which quotes are listed, which one is looked at, and where it stands. It reads
/// the book when told to (`refresh`), not at each of its changes, so that a place nobody sees costs nothing.
class JobsPresenter : public QObject {
    Q_OBJECT

  public:
    explicit JobsPresenter(session::BookSession& session, QObject* parent = nullptr);

    /// Newest first, those that hold the filter, as far back as was looked (`readOn`).
    const std::vector<db::QuoteSummary>& jobs() const { return m_jobs; }
    const QString& filter() const { return m_filter; }
    /// There may be older ones.
    bool hasMore() const { return static_cast<std::int64_t>(m_jobs.size()) == m_limit; }
    /// Reads further back.
    void readOn();

    /// The one looked at; null when none is or the filter hides it.
    const db::QuoteSummary* current() const;
    /// Its place in `jobs`, or -1.
    int currentRow() const;
    void select(int row);

    /// Where the current one can be moved to, its own stage among them. A draft is an enquiry or let go; what has been
    /// given is no enquiry any more.
    std::vector<db::Stage> stages() const;
    /// Moves the current one; why not, when the book refuses.
    std::optional<base::Error> setStage(db::Stage stage);

    /// What the current one, a given quote, would come to today and why; the reason in one sentence when it cannot be
    /// said.
    base::Result<pricing::PriceComparison> changesSince(const units::NumberStyle& style);

    /// What the jobs in these rows need cut, together; why not, when the book does not say.
    base::Result<Cutting> cuttingOf(const std::vector<int>& rows);

    void setFilter(const QString& text);
    /// Reads the list anew.
    void refresh();

  Q_SIGNALS:
    void listed();   ///< the list was read
    void selected(); ///< another one is looked at

  private:
    session::BookSession& m_session;
    QString m_filter;
    std::vector<db::QuoteSummary> m_jobs;
    base::Id m_current;
    std::int64_t m_limit = kFirstJobs;
};

} // namespace sp::jobs
