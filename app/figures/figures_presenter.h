// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/figures/answers.h"
#include "core/figures/break_even.h"
#include "core/figures/span_days.h"
#include "core/figures/split.h"
#include "db/book/earned_jobs.h"

#include <QObject>
#include <QTimer>

#include <optional>
#include <vector>

namespace sp::figures {

/// What the shop earned in a span of days, as the Figures show it. Starts with the month of today.
class FiguresPresenter : public QObject {
    Q_OBJECT

  public:
    explicit FiguresPresenter(session::BookSession& session, QObject* parent = nullptr);

    session::BookSession& session() { return m_session; }

    Span span() const { return m_span; }
    const SpanDays& days() const { return m_days; }
    /// Keeps the day that the span began with in it.
    void setSpan(Span span);
    /// To the span before (−1) or after (1).
    void step(int by);
    bool canStepOn() const; ///< what comes after is not all in the future

    By by() const { return m_by; }
    void setBy(By by);

    /// Reads what was earned, unless that was done and neither the book nor the day is another since.
    void look();
    /// Why there is nothing, where it could not be read, or comes to more than the program works with.
    const std::optional<base::Error>& unread() const { return m_unread; }
    bool isEmpty() const { return m_seen.earned.lines.empty() && m_seen.earned.leftOut.empty(); }
    /// Nothing was handed over ever; known only while the span is empty.
    bool isBookEmpty() const { return m_isBookEmpty; }

    const std::vector<Group>& groups() const { return m_groups; }
    const Group& together() const { return m_seen.together; }
    const std::vector<std::string>& leftOut() const { return m_seen.earned.leftOut; }
    const std::vector<Answers>& answers() const { return m_seen.answers; }
    /// Of a month alone: only that can be held against what a month costs.
    const std::optional<BreakEven>& breakEven() const { return m_seen.breakEven; }

    /// What the bills of the span charged; they need not be of the jobs that were handed over in it.
    const pricing::TaxReport& tax() const { return m_seen.tax; }

    /// Opens that group. It stays open when all is read again, as long as it is there; else the last one is.
    void choose(int row);
    int chosenRow() const { return m_chosen; }
    const Group* chosen() const;
    /// Of the chosen group; they add up to it.
    const std::vector<JobPart>& jobs() const { return m_jobs; }

  Q_SIGNALS:
    /// The day or the span is another than what was read; or, told soon after the last of several changes, the book.
    void outdated();
    void read();     ///< the figures are there
    void selected(); ///< another group is chosen, or the same as it is now

  private:
    /// What was read of the span.
    struct Seen {
        db::EarnedJobs earned;
        Group together;
        std::vector<Answers> answers;
        std::optional<BreakEven> breakEven;
        pricing::TaxReport tax;
    };

    void outdate();
    base::Result<Seen> readSpan();
    void splitAnew();
    void open(int row);
    void refuse(const base::Error& why);
    bool hasAnyEver();

    session::BookSession& m_session;
    db::EarnedReader m_reader;
    Span m_span = Span::Month;
    SpanDays m_days;
    By m_by = By::Design;
    Seen m_seen;
    std::vector<Group> m_groups;
    std::vector<JobPart> m_jobs; ///< of the chosen group
    std::optional<base::Error> m_unread;
    int m_chosen = -1;
    std::optional<Group> m_opened; ///< the one that was open last, to know it again by
    QTimer m_soon;
    bool m_isOutdated = true;
    bool m_isBookEmpty = false;
};

} // namespace sp::figures
