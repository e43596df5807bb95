// SPDX-License-Identifier: MIT
#include "core/pricing/paid_off_sets.h"
#include "core/units/text.h"
#include "db/book/action.h"
#include "db/book/labels.h"
#include "db/book/shelf_state.h"
#include "db/records/record.h"

#include <algorithm>

namespace sp::db {

using base::Code;
using base::Done;
using base::Id;
using base::Result;
using catalogue::PriceBook;
using records::StageMark;
using stores::JobRow;

namespace {

records::LineFigures figuresOf(const pricing::PricedLine& line) {
    records::LineFigures figures{.cost = line.cost.total,
                                 .outOfPocket = line.cost.outOfPocket,
                                 .calculatedEach = line.calculatedEach,
                                 .each = line.each,
                                 .goods = line.goods,
                                 .sizes = {},
                                 .places = {},
                                 .setUp = line.setUp,
                                 .charged = line.charged,
                                 .cardFee = line.earnings.cardFee};
    for (const auto& size : line.sizes) figures.sizes += size.amount;
    for (const auto& place : line.places) figures.places += place.amount;
    return figures;
}

records::OrderFigures figuresOf(const pricing::PricedOrder& priced) {
    records::OrderFigures figures{.lines = {},
                                  .goods = priced.goods,
                                  .rush = priced.rush,
                                  .discount = priced.discount,
                                  .minimumOrderCharge = priced.minimumOrderCharge,
                                  .subtotal = priced.subtotal,
                                  .tax = priced.tax,
                                  .taxes = priced.taxes,
                                  .taxIncluded = priced.taxIncluded,
                                  .total = priced.total,
                                  .deposit = priced.deposit,
                                  .balance = priced.balance,
                                  .cost = priced.earnings.cost,
                                  .cardFee = priced.earnings.cardFee};
    for (const auto& line : priced.lines) figures.lines.push_back(figuresOf(line));
    return figures;
}

records::PaperResult recordOf(const QuoteResult& result, const std::string& number) {
    records::PaperResult record{result.priced.rules, figuresOf(result.priced), {}, result.sheetFor(number)};
    for (const auto& other : result.others) record.others.push_back(figuresOf(other));
    return record;
}

base::Value nameOf(const JobRow& row) {
    return row.number.empty() ? base::asValue(Note::TheQuote) : base::asValue(row.number);
}

} // namespace

void lookAtChoice(Quote& quote, std::int64_t number) {
    catalogue::lookAtChoice(quote.order, number);
    if (!quote.result) return;
    records::lookAtChoice(*quote.result, number);
    quote.sealedTotal = quote.result->figures.total;
}

Quote Book::Inside::whole(const JobRow& row) {
    Quote quote;
    quote.id = row.id;
    quote.number = row.number;
    quote.stage = row.stage;
    quote.order = row.order;
    quote.version = row.version;
    if (row.revises) {
        const auto given = stores.papers.quotesOf(row.revises->job);
        const auto place = static_cast<std::size_t>(row.revises->revision - 1);
        quote.revises = {row.revises->job, row.revises->revision, place < given.size() ? given[place].number : ""};
    }
    auto paper = stores.papers.quoteOf(row.id);
    if (!paper && row.number.empty()) return quote;
    if (!paper || paper->number != row.number || paper->order != row.order)
        throwError(Fault::QuoteNotAsSealed, row.number, row.number.empty() ? paper->number : row.number,
                   file().filename().string());
    putSealed(quote, std::move(*paper), row.choiceTaken);
    return quote;
}

void Book::Inside::putSealed(Quote& quote, stores::IssuedPaper paper, const std::optional<std::int64_t>& choiceTaken) {
    quote.revision = paper.revision;
    quote.frozen = stores.papers.prices(paper.prices);
    quote.frozen->customer = std::move(paper.customer);
    quote.validUntil = paper.until;
    quote.sealedTotal = paper.total;
    quote.result = std::move(paper.result);
    quote.choiceTaken = choiceTaken;
    if (choiceTaken) lookAtChoice(quote, *choiceTaken);
}

JobRow Book::Inside::rowOf(const Id& id) {
    auto row = stores.jobs.find(id);
    if (!row) throwError(Fault::QuoteUnknown, id.text());
    return std::move(*row);
}

Quote Book::Inside::wholeOf(const Id& id) { return whole(rowOf(id)); }

Quote Book::Inside::newQuote() {
    catalogue::Order order;
    order.quotedOn = environment.today();
    const Id id = newId();
    const auto stamp = record("make", base::say(Note::NewQuote), {"quote", id, {}, records::write(order)});
    stores.jobs.write(id, order, stamp);
    return wholeOf(id);
}

Result<Quote> Book::startQuote() {
    return m_in->write([&] {
        // Nobody asked for an empty order; what is typed on it is the first step there is to undo.
        if (m_in->depth == 1) m_in->action->isUndone = false;
        return m_in->newQuote();
    });
}

JobRow Book::Inside::draftForChange(const Quote& quote) {
    auto row = rowOf(quote.id);
    if (!row.number.empty()) throwError(Fault::QuoteGiven, row.number, row.number);
    // What was said to have failed may be kept; to keep the same again is to find it.
    const bool isKept = isUnsettled && row.version == quote.version + 1 && row.order == quote.order;
    if (row.version != quote.version && !isKept) throwError(Fault::QuoteChanged, quote.id.text());
    return row;
}

std::int64_t Book::Inside::saveOrder(const JobRow& before, const catalogue::Order& order) {
    valueOrThrow(catalogue::fields::check(order));
    if (before.order == order) return before.version;
    const auto stamp = record("change", changeOf(before.order, order),
                              {"quote", before.id, records::write(before.order), records::write(order)});
    try {
        stores.jobs.write(before.id, order, stamp);
    } catch (const DbError& refusal) {
        if (refusal.error().code != Code::Invalid) throw;
        throwError(Fault::QuoteRefersToNothing, "quote");
    }
    return before.version + 1;
}

Result<std::int64_t> Book::saveDraft(const Quote& quote) {
    return m_in->write([&] { return m_in->saveOrder(m_in->draftForChange(quote), quote.order); });
}

void Book::Inside::throwIfNotIssuable(const Quote& quote, const PriceBook& inputs, units::Money total,
                                      units::Date validUntil) const {
    for (const auto& choice : catalogue::choicesOf(quote.order))
        if (choice.lines.empty()) throwError(Fault::NothingOnQuote, "lines");
    if (total.micros() < catalogue::fields::kEitherAmount.lowest ||
        total.micros() > catalogue::fields::kEitherAmount.highest)
        throwError(Fault::TotalTooLarge, "total");
    if (validUntil < quote.order.quotedOn) throwError(Fault::EndsBeforeItBegins, "validUntil");
    const Id customer = inputs.customer ? inputs.customer->id : Id();
    if (customer != quote.order.customer) throwError(Fault::PricesOfAnother, "customer");
    valueOrThrow(catalogue::fields::check(inputs.shop));
    valueOrThrow(catalogue::fields::check(inputs.bench));
    if (inputs.customer) valueOrThrow(catalogue::fields::check(*inputs.customer));
    for (const auto& [id, material] : inputs.materials) {
        valueOrThrow(catalogue::fields::check(material));
        if (material.material.id != id) throwError(Fault::PricesMixedUp, "materials");
    }
    for (const auto& [id, set] : inputs.sets) {
        valueOrThrow(catalogue::fields::check(set));
        if (set.design != id) throwError(Fault::PricesMixedUp, "sets");
    }
}

namespace {

/// With the sets of the order's own designs alone: of all others a quote keeps nothing.
PriceBook withOwnSets(PriceBook inputs, const catalogue::Order& order) {
    const auto choices = catalogue::choicesOf(order);
    const auto has = [](const auto& choice, const Id& design) {
        return std::ranges::any_of(choice.lines, [&](const auto& line) {
            return std::ranges::any_of(line.places, [&](const auto& place) { return place.design == design; });
        });
    };
    std::erase_if(inputs.sets, [&](const auto& set) {
        return std::ranges::none_of(choices, [&](const auto& choice) { return has(choice, set.first); });
    });
    return inputs;
}

} // namespace

Quote Book::Inside::sealNow(const Quote& quote, const PriceBook& inputs, const QuoteResult& result,
                            units::Date validUntil) {
    // The same once more, after it was said to have failed: what was given the first time.
    if (isUnsettled)
        if (const auto row = stores.jobs.find(quote.id); row && !row->number.empty() && row->order == quote.order)
            return whole(*row);
    if (quote.revises) return sealRevision(quote, inputs, result, validUntil);
    const auto draft = draftForChange(quote);
    throwIfNotIssuable(quote, inputs, result.priced.total, validUntil);
    saveOrder(draft, quote.order);
    const std::chrono::year_month_day today(environment.today().days());
    const std::string number = stores.jobs.takeNumber("quote", static_cast<int>(today.year()));
    const auto order = records::write(quote.order);
    record("give", base::say(Note::GivingQuote, number), {"quote", quote.id, order, order});
    const auto stamp = record(
        "give", {}, {"stage", quote.id, records::write(draft.mark()), records::write(StageMark{Stage::Quoted, {}})});
    stores.jobs.setMark(quote.id, {Stage::Quoted, {}}, stamp);
    stores.jobs.setNumber(quote.id, number);
    return sealPaper(quote.id, number, stamp.at, inputs, result, validUntil);
}

Quote Book::Inside::sealPaper(const Id& job, const std::string& number, const std::string& at, const PriceBook& inputs,
                              const QuoteResult& result, units::Date validUntil) {
    const auto kept = rowOf(job);
    stores.papers.issue({.id = newId(),
                         .job = job,
                         .revision = kept.revision,
                         .number = number,
                         .issuedAt = at,
                         .issuedOn = kept.order.quotedOn,
                         .until = validUntil,
                         .total = result.priced.total,
                         .order = kept.orderDigest},
                        withOwnSets(inputs, kept.order), recordOf(result, number));
    action->issued.push_back(job);
    for (const auto& move : stores.stock.keysFor(job)) action->issued.push_back(move);
    return wholeOf(job);
}

Result<Quote> Book::issue(const Quote& quote, const PriceBook& inputs, const QuoteResult& result,
                          units::Date validUntil) {
    return m_in->write([&] { return m_in->sealNow(quote, inputs, result, validUntil); });
}

Result<Quote> Book::issueNew(const catalogue::Order& order, const PriceBook& inputs, const QuoteResult& result,
                             units::Date validUntil) {
    return m_in->write([&] {
        auto quote = m_in->newQuote();
        quote.order = order;
        return m_in->sealNow(quote, inputs, result, validUntil);
    });
}

Result<std::vector<Id>> Book::quotesWithoutResult(std::int64_t limit) {
    return m_in->read([&] { return m_in->stores.papers.withoutResult(limit); });
}

Done Book::sealResult(const Id& id, const std::optional<QuoteResult>& result) {
    return m_in->write([&] {
        m_in->action->isUndone = false;
        const auto quote = m_in->wholeOf(id);
        if (quote.number.empty() || quote.result || (result && quote.sealedTotal != result->priced.total))
            throwError(Fault::ResultSealed, quote.number, quote.number);
        if (result)
            m_in->stores.papers.sealResult(id, m_in->momentNow(), recordOf(*result, quote.number));
        else
            m_in->stores.papers.loseResult(id);
    });
}

void Book::Inside::setMark(const JobRow& row, const StageMark& mark, base::Message what) {
    const auto stamp =
        record("change", std::move(what), {"stage", row.id, records::write(row.mark()), records::write(mark)});
    stores.jobs.setMark(row.id, mark, stamp);
}

/// Of what was given: that is what was cut for the money. A quote that cannot be reckoned any more leaves it open.
void Book::Inside::keepSetCosts(const Quote& quote) {
    if (!quote.frozen) return;
    const auto& lines = quote.order.lines;
    const bool isAnyPlanned = std::ranges::any_of(lines, [](const auto& line) {
        return std::ranges::any_of(line.places, [](const auto& place) { return place.plannedPieces.has_value(); });
    });
    if (!isAnyPlanned) return;
    layout::FitMemo fits;
    const auto costs = pricing::setCosts(quote.order, *quote.frozen, fits);
    if (!costs) return;
    for (const auto& [id, cost] : *costs) {
        auto design = stores.designs.find(id);
        if (!design || design->setCost || !design->plannedPieces) continue;
        design->setCost = cost;
        saveTo(stores.designs, "design", *design);
    }
}

Done Book::setStage(const Id& id, Stage stage) {
    return m_in->write([&] {
        valueOrThrow(catalogue::fields::check(StageMark{stage, {}}));
        const auto row = m_in->rowOf(id);
        if (row.stage == stage) return;
        if (row.number.empty() && stage != Stage::Enquiry && stage != Stage::Declined)
            throwError(Fault::NotGivenYet, "stage");
        if (!row.number.empty() && stage == Stage::Enquiry) throwError(Fault::NoEnquiryAnyMore, "stage", row.number);
        const auto after = catalogue::stagesAfter(row.stage, !row.number.empty());
        if (std::ranges::find(after, stage) == after.end()) throwError(Fault::StageCannotFollow, "stage", nameOf(row));
        const auto choices = catalogue::choiceCount(row.order);
        if (catalogue::isAgreedTo(stage) && choices > 1 && !row.choiceTaken)
            throwError(Fault::NoChoiceTaken, "stage", row.number, choices);
        if (!catalogue::isAgreedTo(stage)) m_in->throwIfInvoiced(id, row.number);
        // Before the stage is set: a set that is made with the job is not there yet.
        const auto use = valueOrThrow(useAt(id, stage));
        auto mark = row.mark();
        mark.stage = stage;
        m_in->setMark(row, mark, base::say(Note::StageOf, nameOf(row)));
        m_in->bookUse(id, use);
        if (isReturnedBetween(row.stage, stage, m_in->stores.shop.find().value().usedWhen))
            for (const auto& take : m_in->stores.stock.takenFor(id))
                if (take.count > 0)
                    m_in->addMove({{}, take.material, take.count, {}, {}, {}, records::MoveKind::Returned, id},
                                  std::nullopt);
        if (catalogue::isAgreedTo(stage)) m_in->keepSetCosts(m_in->wholeOf(id));
    });
}

Done Book::takeChoice(const Id& id, std::optional<std::int64_t> choice) {
    return m_in->write([&] {
        const auto row = m_in->rowOf(id);
        if (row.choiceTaken == choice) return;
        if (row.number.empty()) throwError(Fault::NotGivenYet, "choice");
        const auto choices = catalogue::choiceCount(row.order);
        if (choice && (*choice < 0 || *choice >= static_cast<std::int64_t>(choices)))
            throwError(Fault::NoSuchChoice, "choice", row.number, choices);
        if (!choice && catalogue::isAgreedTo(row.stage))
            throwError(Fault::NoChoiceTaken, "choice", row.number, choices);
        // A revision is offered whatever was invoiced of the one before.
        if (row.stage != Stage::Quoted) m_in->throwIfInvoiced(id, row.number);
        m_in->setMark(row, {row.stage, choice}, base::say(Note::ChoiceOf, nameOf(row)));
        if (catalogue::isAgreedTo(row.stage)) m_in->keepSetCosts(m_in->wholeOf(id));
    });
}

Result<Quote> Book::quote(const Id& id) {
    return m_in->read([&] { return m_in->wholeOf(id); });
}

Result<Quote> Book::quoteNumbered(std::string_view number) {
    return m_in->read([&] {
        const auto id = m_in->stores.jobs.numbered(number);
        if (id) return m_in->wholeOf(*id);
        const auto given = m_in->stores.papers.quoteNumbered(number);
        if (!given) throwError(Fault::NoQuoteNumbered, std::string(number), number);
        throwError(Fault::QuoteReplaced, std::string(number), number, m_in->rowOf(given->job).number);
    });
}

Result<std::optional<Quote>> Book::lastDraft() {
    return m_in->read([&]() -> std::optional<Quote> {
        const auto id = m_in->stores.jobs.lastDraft();
        if (!id) return std::nullopt;
        return m_in->wholeOf(*id);
    });
}

} // namespace sp::db
