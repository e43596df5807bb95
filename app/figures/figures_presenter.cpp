// SPDX-License-Identifier: MIT
#include "app/figures/figures_presenter.h"

#include <chrono>
#include <utility>

namespace sp::figures {

namespace {

int monthsOf(Span span) {
    switch (span) {
    case Span::Month: return 1;
    case Span::Quarter: return 3;
    case Span::Year: return 12;
    }
    return 1;
}

/// The first day of the month so many after that of `day`.
units::Date monthAfter(units::Date day, int months) {
    const std::chrono::year_month_day parts(day.days());
    const auto month = std::chrono::year_month(parts.year(), parts.month()) + std::chrono::months(months);
    return units::Date::fromDays(std::chrono::sys_days(month / 1));
}

} // namespace

SpanDays spanAround(units::Date day, Span span) {
    const int months = monthsOf(span);
    const std::chrono::year_month_day parts(day.days());
    const int into = (static_cast<int>(static_cast<unsigned>(parts.month())) - 1) % months;
    const auto from = monthAfter(day, -into);
    return {from, monthAfter(from, months).plusDays(-1)};
}

FiguresPresenter::FiguresPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_days(spanAround(session.today(), Span::Month)) {
    connect(&session, &session::BookSession::changed, this, &FiguresPresenter::outdate);
    connect(&session, &session::BookSession::dayTurned, this, &FiguresPresenter::outdate);
}

void FiguresPresenter::outdate() {
    m_isOutdated = true;
    Q_EMIT outdated();
}

void FiguresPresenter::setSpan(Span span) {
    if (span == m_span) return;
    m_span = span;
    m_days = spanAround(m_days.from, span);
    outdate();
}

void FiguresPresenter::step(int by) {
    m_days = spanAround(monthAfter(m_days.from, by * monthsOf(m_span)), m_span);
    outdate();
}

bool FiguresPresenter::canStepOn() const { return m_days.to < m_session.today(); }

void FiguresPresenter::setBy(By by) {
    if (by == m_by) return;
    m_by = by;
    m_chosen = -1;
    splitAnew();
}

void FiguresPresenter::look() {
    if (!m_isOutdated) return;
    const auto wanted = m_days;
    auto earned = m_session.readInPlace([&](db::Book& book) { return m_reader.earned(book, wanted.from, wanted.to); });
    auto offered =
        m_session.readInPlace([&](db::Book& book) { return m_reader.offered(book, wanted.from, wanted.to); });
    auto tax = m_session.readInPlace([&](db::Book& book) { return book.taxReport(wanted.from, wanted.to); });
    m_unread.reset();
    if (!earned)
        m_unread = earned.error();
    else if (!offered)
        m_unread = offered.error();
    else if (!tax)
        m_unread = tax.error();
    m_isOutdated = m_unread.has_value(); // what failed is tried again
    m_earned = m_unread ? db::EarnedJobs{} : std::move(*earned);
    const auto& shop = m_session.shop();
    m_answers = m_unread ? std::vector<Answers>() : answersTo(*offered, shop.ladderQuantities);
    m_tax = m_unread ? pricing::TaxReport{} : std::move(*tax);
    m_together = figures::together(m_earned.lines);
    m_breakEven.reset();
    if (m_span == Span::Month && !shop.rates.overheadPerMonth.isZero())
        m_breakEven = figures::breakEven(shop.rates.overheadPerMonth, m_together.earned);
    m_isBookEmpty = isEmpty() && !m_unread && !hasAnyEver();
    splitAnew();
}

bool FiguresPresenter::hasAnyEver() {
    const auto first = units::Date::fromDays(std::chrono::year(1970) / 1 / 2);
    const auto last = units::Date::fromDays(std::chrono::year(9999) / 12 / 30);
    const auto handed = m_session.readInPlace([&](db::Book& book) { return book.handedOver(first, last); });
    return !handed || !handed->empty();
}

void FiguresPresenter::splitAnew() {
    m_groups = split(m_earned.lines, m_by, m_session.shop().ladderQuantities);
    const int count = static_cast<int>(m_groups.size());
    if (m_chosen < 0 || m_chosen >= count) m_chosen = count - 1; // of designs and the like the one that earns least
    Q_EMIT read();
    Q_EMIT selected();
}

void FiguresPresenter::choose(int row) {
    if (row < 0 || row >= static_cast<int>(m_groups.size()) || row == m_chosen) return;
    m_chosen = row;
    Q_EMIT selected();
}

const Group* FiguresPresenter::chosen() const {
    return m_chosen < 0 ? nullptr : &m_groups[static_cast<std::size_t>(m_chosen)];
}

std::vector<JobPart> FiguresPresenter::jobs() const {
    const auto* group = chosen();
    return group ? jobsIn(*group, m_earned.lines) : std::vector<JobPart>();
}

} // namespace sp::figures

#include "moc_figures_presenter.cpp"
