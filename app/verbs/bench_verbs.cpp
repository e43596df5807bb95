// SPDX-License-Identifier: MIT
#include "app/verbs/order_reader.h"
#include "app/verbs/verb_kit.h"
#include "app/words/names.h"
#include "app/words/promise_words.h"
#include "app/words/sources.h"
#include "core/pricing/price_order.h"
#include "core/scheduling/minutes.h"
#include "db/book/bench_queue.h"

#include <fmt/format.h>

namespace sp::verbs {

namespace {

using base::fail;
using scheduling::minutesBegun;
using units::Date;

Json dayOrNull(const std::optional<Date>& day) { return day ? Json(day->iso()) : Json(nullptr); }

std::string titleOfJob(const db::BenchEntry& entry) { return words::titleOf(entry.job).toStdString(); }

/// A queue with its plan.
class Bench {
  public:
    Bench(const db::BenchQueue& queue, const scheduling::BenchPlan& plan, const units::Currency& currency)
        : m_queue(queue)
        , m_plan(plan)
        , m_currency(currency) {
        for (std::size_t i = 0; i < queue.entries.size(); ++i) addJob(i);
        for (const auto& day : plan.days) addDay(day);
    }

    Json json() const { return {{"day", m_queue.today.iso()}, {"jobs", m_jobs}, {"days", m_days}}; }
    std::string text() const {
        if (m_jobs.empty()) return line(QT_TRANSLATE_NOOP("App", "Nothing is to be made."));
        return m_lines + "\n" + m_dayLines;
    }

  private:
    std::string standing(std::size_t at) const {
        const auto& ready = m_plan.ready[at];
        const auto& entry = m_queue.entries[at];
        if (entry.work.whyNone) return words::text(*entry.work.whyNone);
        if (m_queue.firstUnknown() < at)
            return told(QT_TRANSLATE_NOOP("App", "not known: see %1"),
                        m_queue.entries[m_queue.firstUnknown()].job.number);
        if (!ready) return told(QT_TRANSLATE_NOOP("App", "not within %1 years"), scheduling::kHorizonYears);
        if (!entry.job.wantedBy) return told(QT_TRANSLATE_NOOP("App", "ready %1"), ready->iso());
        return scheduling::isLate(m_queue.jobs[at], ready)
                   ? told(QT_TRANSLATE_NOOP("App", "ready %1, late: wanted by %2"), ready->iso(),
                          entry.job.wantedBy->iso())
                   : told(QT_TRANSLATE_NOOP("App", "ready %1, wanted by %2"), ready->iso(), entry.job.wantedBy->iso());
    }

    void addJob(std::size_t at) {
        const auto& entry = m_queue.entries[at];
        const auto& ready = m_plan.ready[at];
        const bool isLate = at < m_queue.firstUnknown() && scheduling::isLate(m_queue.jobs[at], ready);
        const bool waits = m_queue.jobs[at].earliest > m_queue.today;
        Json job = {{"number", entry.job.number},
                    {"customer", entry.job.customer},
                    {"title", titleOfJob(entry)},
                    {"stage", words::sourceOf(entry.job.stage).text},
                    {"pieces", entry.work.pieces},
                    {"minutes", minutesBegun(entry.work.time)},
                    {"wanted_by", dayOrNull(entry.job.wantedBy)},
                    {"ready", dayOrNull(ready)},
                    {"late", isLate},
                    {"supplies_by", dayOrNull(waits ? m_queue.jobs[at].earliest : std::nullopt)},
                    {"supplies_unknown", entry.isShort},
                    {"deposit_missing", units::formatExact(entry.depositLeft, m_currency)}};
        if (entry.work.whyNone) job["why_no_minutes"] = words::text(*entry.work.whyNone);
        m_jobs.push_back(std::move(job));
        const auto title = titleOfJob(entry);
        const auto who = entry.job.customer.empty() ? title : entry.job.customer + ", " + title;
        m_lines += fmt::format("{:>3}  {:<11}  {}: {} min, {}", at + 1, entry.job.number, who,
                               minutesBegun(entry.work.time), standing(at));
        if (waits)
            m_lines += told(QT_TRANSLATE_NOOP("App", "; supplies are here by %1"), m_queue.jobs[at].earliest->iso());
        if (entry.isShort)
            m_lines +=
                told(QT_TRANSLATE_NOOP("App", "; something is not on the shelf, and when it comes is not known"));
        if (!entry.depositLeft.isZero())
            m_lines += told(QT_TRANSLATE_NOOP("App", "; %1 of the deposit are missing"),
                            units::formatExact(entry.depositLeft, m_currency));
        m_lines += "\n";
    }

    void addDay(const scheduling::PlannedDay& day) {
        Json jobs = Json::array();
        std::string numbers;
        for (const auto& work : day.work) {
            jobs.push_back({{"number", m_queue.entries[work.job].job.number}, {"minutes", minutesBegun(work.time)}});
            numbers += fmt::format("  {}: {}", work.job + 1, minutesBegun(work.time));
        }
        m_days.push_back({{"day", day.day.iso()},
                          {"minutes", minutesBegun(day.time)},
                          {"taken", minutesBegun(day.taken())},
                          {"closed", day.isClosed},
                          {"jobs", std::move(jobs)}});
        if (day.isClosed)
            m_dayLines += line(QT_TRANSLATE_NOOP("App", "%1  closed"), day.day.iso());
        else if (!day.time.isZero())
            m_dayLines += fmt::format("{}  {:>4} / {:<4}{}\n", day.day.iso(), minutesBegun(day.taken()),
                                      minutesBegun(day.time), numbers);
    }

    const db::BenchQueue& m_queue;
    const scheduling::BenchPlan& m_plan;
    const units::Currency& m_currency;
    Json m_jobs = Json::array();
    Json m_days = Json::array();
    std::string m_lines;
    std::string m_dayLines;
};

Json promiseJson(const db::BenchQueue& queue, const db::BenchWork& work, const db::BenchAnswer& told,
                 const catalogue::Order& order) {
    const auto& promise = told.promise;
    Json late = Json::array();
    for (const auto& one : promise.delayed)
        late.push_back({{"number", queue.entries[one.job].job.number},
                        {"title", titleOfJob(queue.entries[one.job])},
                        {"ready", dayOrNull(one.ready)}});
    return {{"minutes", minutesBegun(work.time)},
            {"wanted_by", dayOrNull(order.wantedBy)},
            {"holds", order.wantedBy ? Json(promise.isHeld) : Json(nullptr)},
            {"first_day", promise.first.iso()},
            {"supplies_by", dayOrNull(told.suppliesBy)},
            {"supplies_unknown", told.isShort},
            {"would_be_late", std::move(late)}};
}

} // namespace

Outcome benchVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto shop = (*book)->shop();
    if (!shop) return refused(shop.error());
    const auto queue = db::BenchReader().read(**book);
    if (!queue) return refused(queue.error());
    const auto plan = queue->plan();
    if (!plan) return refused(plan.error());
    const Bench bench(*queue, *plan, shop->currency);
    return answer(arguments, bench.json(), bench.text());
}

Outcome promiseVerb(const Arguments& arguments, const Helpers& helpers) {
    auto book = openBook(arguments, helpers);
    if (!book) return refused(book.error());
    const auto of = orderOf(arguments, **book, helpers.environment.today());
    if (!of) return refused(of.error());
    const auto inputs = inputsFor(*of, **book);
    if (!inputs) return refused(inputs.error());
    const auto queue = db::BenchReader().read(**book);
    if (!queue) return refused(queue.error());
    layout::FitMemo fits;
    if (const auto priced = pricing::priceOrder(of->order, *inputs, fits); !priced) return refused(priced.error());
    const auto work = db::benchWorkOf(of->order, *inputs, fits, queue->sets);
    const auto promise = queue->promise(work, of->order.wantedBy);
    if (!promise) return refused(promise.error());
    auto text = words::promiseSentence(*queue, *promise, of->order.wantedBy,
                                       [](Date day) { return QString::fromStdString(day.iso()); })
                    .toStdString() +
                "\n" + line(QT_TRANSLATE_NOOP("App", "It takes %1 minutes at the bench."), minutesBegun(work.time));
    if (const auto& day = promise->suppliesBy)
        text += line(QT_TRANSLATE_NOOP("App", "What is missing for it can be here by %1, bought today."), day->iso());
    text += line(QT_TRANSLATE_NOOP("App", "Reckoned from tomorrow on, and as if a deposit that is asked came today."));
    return answer(arguments, promiseJson(*queue, work, *promise, of->order), text);
}

} // namespace sp::verbs
