// SPDX-License-Identifier: MIT
#include "app/figures/figures_presenter.h"

#include "core/base/overflow.h"
#include "db/messages.h"

#include <algorithm>
#include <chrono>
#include <iterator>
#include <type_traits>
#include <utility>

namespace sp::figures {

using namespace std::chrono_literals;

namespace {

/// Runs it; a sum that does not fit is an error like any other.
template<class Work>
std::invoke_result_t<Work> fitting(Work work) {
    try {
        return work();
    } catch (const base::Overflow&) { return base::fail(db::Fault::FigureTooLarge, {}); }
}

/// What the page tells of it beside its sums. Throws base::Overflow.
void expectFits(const Earned& earned) {
    static_cast<void>(earned.left());
    static_cast<void>(earned.margin());
    static_cast<void>(earned.perBenchHour());
}

} // namespace

FiguresPresenter::FiguresPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_days(spanAround(session.today(), Span::Month)) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(50ms); // several changes in a row are one
    connect(&m_soon, &QTimer::timeout, this, &FiguresPresenter::outdated);
    connect(&session, &session::BookSession::changed, this, [this] {
        m_isOutdated = true;
        m_soon.start();
    });
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
    m_days = spanAfter(m_days.from, m_span, by);
    outdate();
}

bool FiguresPresenter::canStepOn() const { return m_days.to < m_session.today(); }

void FiguresPresenter::setBy(By by) {
    if (by == m_by) return;
    m_by = by;
    m_opened.reset();
    splitAnew();
}

void FiguresPresenter::look() {
    if (!m_isOutdated) return;
    m_soon.stop();
    auto seen = fitting([this] { return readSpan(); });
    m_unread.reset();
    m_isOutdated = false;
    if (seen)
        m_seen = std::move(*seen);
    else
        refuse(seen.error());
    m_isBookEmpty = isEmpty() && !m_unread && !hasAnyEver();
    splitAnew();
}

base::Result<FiguresPresenter::Seen> FiguresPresenter::readSpan() {
    const auto wanted = m_days;
    auto earned = m_session.readInPlace([&](db::Book& book) { return m_reader.earned(book, wanted.from, wanted.to); });
    if (!earned) return base::fail(earned.error());
    const auto offered =
        m_session.readInPlace([&](db::Book& book) { return m_reader.offered(book, wanted.from, wanted.to); });
    if (!offered) return base::fail(offered.error());
    auto tax = m_session.readInPlace([&](db::Book& book) { return book.taxReport(wanted.from, wanted.to); });
    if (!tax) return base::fail(tax.error());
    Seen seen;
    seen.earned = std::move(*earned);
    seen.together = figures::together(seen.earned.lines);
    expectFits(seen.together.earned);
    const auto& shop = m_session.shop();
    seen.answers = answersTo(*offered, shop.ladderQuantities);
    if (m_span == Span::Month && !shop.rates.overheadPerMonth.isZero())
        seen.breakEven = figures::breakEven(shop.rates.overheadPerMonth, seen.together.earned);
    seen.tax = std::move(*tax);
    static_cast<void>(seen.tax.net());
    return seen;
}

/// Nothing is shown but why.
void FiguresPresenter::refuse(const base::Error& why) {
    m_unread = why;
    m_isOutdated = true; // what failed is tried again
    m_seen = {};
    m_groups.clear();
    m_jobs.clear();
    m_chosen = -1;
}

bool FiguresPresenter::hasAnyEver() {
    const auto any = m_session.readInPlace([](db::Book& book) { return book.hasHandedOver(); });
    return !any || *any;
}

void FiguresPresenter::splitAnew() {
    const auto done = fitting([this]() -> base::Done {
        m_groups = split(m_seen.earned.lines, m_by, m_session.shop().ladderQuantities);
        for (const auto& group : m_groups) expectFits(group.earned);
        const auto same =
            std::ranges::find_if(m_groups, [this](const Group& group) { return m_opened && isSame(group, *m_opened); });
        // Else the last: of designs and the like the one that earns least.
        open(static_cast<int>(same != m_groups.end() ? same - m_groups.begin() : std::ssize(m_groups) - 1));
        return {};
    });
    if (!done) refuse(done.error());
    Q_EMIT read();
    Q_EMIT selected();
}

/// Of no groups −1. Throws base::Overflow.
void FiguresPresenter::open(int row) {
    m_chosen = row;
    const auto* group = chosen();
    m_jobs = group ? jobsIn(*group, m_seen.earned.lines) : std::vector<JobPart>();
    for (const auto& job : m_jobs) expectFits(job.earned);
    if (group) m_opened = *group;
}

void FiguresPresenter::choose(int row) {
    if (row < 0 || row >= static_cast<int>(m_groups.size()) || row == m_chosen) return;
    const auto done = fitting([this, row]() -> base::Done {
        open(row);
        return {};
    });
    if (!done) {
        refuse(done.error());
        Q_EMIT read();
    }
    Q_EMIT selected();
}

const Group* FiguresPresenter::chosen() const {
    return m_chosen < 0 ? nullptr : &m_groups[static_cast<std::size_t>(m_chosen)];
}

} // namespace sp::figures

#include "moc_figures_presenter.cpp"
