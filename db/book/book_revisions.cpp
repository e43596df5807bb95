// SPDX-License-Identifier: MIT
// A given quote is revised by a draft that becomes the next revision of its job.
#include "db/book/action.h"
#include "db/book/given_prices.h"
#include "db/records/record.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::db {

using base::Id;
using base::Result;
using catalogue::PriceBook;
using records::StageMark;
using stores::JobRow;

JobRow Book::Inside::jobToRevise(const Id& id) {
    auto row = rowOf(id);
    if (row.number.empty()) throwError(Fault::NotGivenYet, "quote");
    if (row.stage == Stage::Declined) throwError(Fault::RevisesLetGo, row.number, row.number);
    if (row.stage == Stage::Collected) throwError(Fault::RevisesCollected, row.number, row.number);
    return row;
}

Quote Book::Inside::newRevision(const Id& id) {
    const auto given = jobToRevise(id);
    auto order = revisionOf(whole(given), environment.today());
    const auto customer = customerNow(order.customer); // who was removed since is nobody's
    order.customer = customer ? customer->id : Id();
    const auto draft = rowOf(newQuote().id);
    saveOrder(draft, order);
    auto mark = draft.mark();
    mark.revises = {given.id, given.revision};
    setMark(draft, mark, base::say(Note::Revising, given.number));
    return wholeOf(draft.id);
}

Result<Quote> Book::startRevision(const Id& id) {
    return m_in->write([&] {
        if (m_in->depth == 1) m_in->action->isUndone = false;
        const auto given = m_in->jobToRevise(id);
        const auto begun = m_in->stores.jobs.draftRevising({given.id, given.revision});
        if (!begun) return m_in->newRevision(id);
        // Begun on another day, it goes by today: for rush, exemption and how long it is valid.
        const auto draft = m_in->rowOf(*begun);
        const auto today = m_in->environment.today();
        if (draft.order.quotedOn != today) m_in->saveOrder(draft, pricing::revisionOf(draft.order, today));
        return m_in->wholeOf(*begun);
    });
}

base::Done Book::mayRevise(const Id& id) {
    return m_in->read([&] { m_in->jobToRevise(id); });
}

Result<Quote> Book::issueRevision(const Id& id, const catalogue::Order& order, const PriceBook& inputs,
                                  const QuoteResult& result, units::Date validUntil) {
    return m_in->write([&] {
        auto quote = m_in->newRevision(id);
        quote.order = order;
        return m_in->sealNow(quote, inputs, result, validUntil);
    });
}

Quote Book::Inside::sealRevision(const Quote& quote, const PriceBook& inputs, const QuoteResult& result,
                                 units::Date validUntil) {
    const auto& base = quote.revises.value();
    // The same once more, after it was said to have failed.
    if (isUnsettled && !stores.jobs.find(quote.id))
        if (const auto row = rowOf(base.id); row.revision == base.revision + 1 && row.order == quote.order)
            return whole(row);
    const auto draft = draftForChange(quote);
    const auto given = jobToRevise(base.id);
    if (given.revision != base.revision) throwError(Fault::RevisedMeanwhile, base.number, base.number, given.number);
    throwIfNotIssuable(quote, inputs, result.priced.total, validUntil);
    saveOrder(draft, quote.order);
    const auto number = fmt::format("{}-{}", stores.papers.quotesOf(given.id).front().number, given.revision + 1);
    const auto order = records::write(quote.order);
    const auto gone = record("give", base::say(Note::GivingQuote, number), {"quote", quote.id, order, {}});
    stores.jobs.remove(quote.id, gone);
    const auto stamp = record("give", {}, {"quote", given.id, records::write(given.order), order});
    stores.jobs.revise(given, quote.order, number, stamp);
    const StageMark mark{Stage::Quoted, {}, {}}; // nobody has agreed to it yet
    if (mark != given.mark())
        stores.jobs.setMark(
            given.id, mark,
            record("give", {}, {"stage", given.id, records::write(given.mark()), records::write(mark)}));
    action->issued.push_back(quote.id);
    return sealPaper(given.id, number, stamp.at, inputs, result, validUntil);
}

Result<std::vector<GivenQuote>> Book::givenOf(const Id& quote) {
    return m_in->read([&] {
        std::vector<GivenQuote> list;
        for (auto& given : m_in->stores.papers.quotesOf(quote))
            list.push_back({given.revision, std::move(given.number), given.issuedOn, given.total});
        return list;
    });
}

Quote Book::Inside::asGiven(const JobRow& row, const stores::GivenRow& given) {
    if (given.revision == row.revision) return whole(row);
    auto revision = stores.jobs.revision(row.id, given.revision);
    auto paper = stores.papers.find(given.paper);
    if (!revision || !paper || paper->order != revision->order)
        throwError(Fault::QuoteNotAsSealed, given.number, given.number, file().filename().string());
    Quote quote;
    quote.id = row.id;
    quote.number = given.number;
    quote.stage = row.stage;
    quote.version = row.version;
    quote.order = std::move(revision->order);
    putSealed(quote, std::move(*paper), revision->choiceTaken);
    const auto all = stores.papers.quotesOf(row.id);
    const auto next = std::ranges::find(all, given.revision + 1, &stores::GivenRow::revision);
    if (next != all.end()) quote.replacedBy = {next->number, next->issuedOn};
    return quote;
}

/// As it was given with that revision.
Quote Book::Inside::ofRevision(const Id& job, std::int64_t revision) {
    const auto row = rowOf(job);
    for (const auto& given : stores.papers.quotesOf(job))
        if (given.revision == revision) return asGiven(row, given);
    throwError(Fault::QuoteUnknown, row.number);
}

Result<Quote> Book::quoteAsGiven(std::string_view number) {
    return m_in->read([&] {
        const auto given = m_in->stores.papers.quoteNumbered(number);
        if (!given) throwError(Fault::NoQuoteNumbered, std::string(number), number);
        return m_in->asGiven(m_in->rowOf(given->job), *given);
    });
}

} // namespace sp::db
