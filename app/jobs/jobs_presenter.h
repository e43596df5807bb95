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

    /// The lines of the jobs in these rows, each named with its job's number (a draft: with its customer), to be cut
    /// together; why not, when the book does not say.
    base::Result<std::vector<catalogue::OrderLine>> linesOf(const std::vector<int>& rows);
    /// What the lines are cut from.
    catalogue::PriceBook prices() { return m_session.prices({}); }

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
