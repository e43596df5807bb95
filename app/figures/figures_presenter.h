// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/figures/answers.h"
#include "core/figures/break_even.h"
#include "core/figures/split.h"
#include "db/book/earned_jobs.h"

#include <QObject>

#include <optional>
#include <vector>

namespace sp::figures {

/// How long what is looked at is.
enum class Span { Month, Quarter, Year };

/// Its first and last day, both counted.
struct SpanDays {
    units::Date from;
    units::Date to;

    friend bool operator==(const SpanDays&, const SpanDays&) = default;
};

/// The month, quarter or year of the calendar that a day is in.
SpanDays spanAround(units::Date day, Span span);

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
    /// Why there is nothing, where it could not be read.
    const std::optional<base::Error>& unread() const { return m_unread; }
    bool isEmpty() const { return m_earned.lines.empty() && m_earned.leftOut.empty(); }
    /// Nothing was handed over ever; known only while the span is empty.
    bool isBookEmpty() const { return m_isBookEmpty; }

    const std::vector<Group>& groups() const { return m_groups; }
    const Group& together() const { return m_together; }
    const std::vector<std::string>& leftOut() const { return m_earned.leftOut; }
    const std::vector<Answers>& answers() const { return m_answers; }
    /// Of a month alone: only that can be held against what a month costs.
    const std::optional<BreakEven>& breakEven() const { return m_breakEven; }

    /// What the bills of the span charged; they need not be of the jobs that were handed over in it.
    const pricing::TaxReport& tax() const { return m_tax; }

    void choose(int row);
    int chosenRow() const { return m_chosen; }
    const Group* chosen() const;
    /// Of the chosen group; they add up to it.
    std::vector<JobPart> jobs() const;

  Q_SIGNALS:
    void outdated(); ///< the book, the day or the span is another than what was read
    void read();     ///< the figures are there
    void selected(); ///< another group is chosen, or the same as it is now

  private:
    void outdate();
    void splitAnew();
    bool hasAnyEver();

    session::BookSession& m_session;
    db::EarnedReader m_reader;
    Span m_span = Span::Month;
    SpanDays m_days;
    By m_by = By::Design;
    db::EarnedJobs m_earned;
    std::vector<Group> m_groups;
    Group m_together;
    std::vector<Answers> m_answers;
    std::optional<BreakEven> m_breakEven;
    pricing::TaxReport m_tax;
    std::optional<base::Error> m_unread;
    int m_chosen = -1;
    bool m_isOutdated = true;
    bool m_isBookEmpty = false;
};

} // namespace sp::figures
