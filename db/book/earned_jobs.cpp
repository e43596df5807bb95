// SPDX-License-Identifier: MIT
#include "db/book/earned_jobs.h"

#include "core/catalogue/paper_kind.h"
#include "core/pricing/bill.h"
#include "core/units/apportion.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace sp::db {

using base::fail;
using base::Result;
using figures::Earned;
using figures::EarnedLine;
using units::Money;

namespace {

/// What a quote came to, by line.
struct Sold {
    Money total;               ///< with the tax
    Money income;              ///< without it
    std::vector<Earned> lines; ///< their incomes are weights, until the job's income is shared by them
};

Earned earnedBy(const pricing::PricedLine& line, const catalogue::OrderLine& ordered) {
    const auto& cost = line.cost;
    return {.pieces = ordered.isCharge() ? units::Count{} : ordered.quantity,
            .income = line.earnings.net,
            .cost = line.earnings.cost,
            .paidOut = line.earnings.paidOut,
            .cardFee = line.earnings.cardFee,
            .labour = cost.labour + cost.spoiledLabour,
            .bench = cost.bench.total() + cost.spoiledTime};
}

/// A line as it was sealed, which does not say the time at the bench.
Earned earnedBy(const records::LineFigures& line, const catalogue::OrderLine& ordered) {
    return {.pieces = ordered.isCharge() ? units::Count{} : ordered.quantity,
            .income = line.charged,
            .cost = line.cost,
            .paidOut = line.outOfPocket,
            .cardFee = line.cardFee,
            .isBenchKnown = false};
}

bool isAsSealed(const pricing::PricedOrder& again, const records::OrderFigures& sealed) {
    if (again.total != sealed.total || again.tax != sealed.tax || again.lines.size() != sealed.lines.size())
        return false;
    for (std::size_t i = 0; i < again.lines.size(); ++i)
        if (again.lines[i].cost.total != sealed.lines[i].cost) return false;
    return true;
}

/// The tax that each line holds of what the customer pays for it; none where that is not known any more.
std::optional<std::vector<Money>> taxInside(const records::OrderFigures& sealed, const std::vector<Money>& paid,
                                            const units::Currency& currency) {
    if (sealed.tax.isZero() || sealed.total != sealed.subtotal) return std::vector<Money>(paid.size()); // on top
    const bool isOneLine = std::ranges::count_if(paid, [](Money each) { return !each.isZero(); }) == 1;
    const bool isOneRate = sealed.taxes.size() == 1 && sealed.taxes.front().on == sealed.subtotal;
    if (!isOneLine && !isOneRate) return std::nullopt;
    return units::apportion(sealed.tax, paid, currency);
}

/// From the sealed figures alone. None where these do not tell what each line was sold for and took: with taxes of
/// several rates inside the prices, or the shop's own tax on several gifts.
std::optional<Sold> soldAsSealed(const Quote& quote) {
    if (!quote.result || quote.result->figures.lines.size() != quote.order.lines.size()) return std::nullopt;
    const auto& sealed = quote.result->figures;
    const auto& currency = quote.frozen->shop.currency;
    std::vector<Money> paid;
    for (const auto& line : sealed.lines) paid.push_back(line.charged);
    const auto adjusted = units::apportion(sealed.rush - sealed.discount + sealed.minimumOrderCharge, paid, currency);
    for (std::size_t i = 0; i < paid.size(); ++i) paid[i] += adjusted[i];
    const auto tax = taxInside(sealed, paid, currency);
    if (!tax) return std::nullopt;
    Sold sold{.total = sealed.total, .income = sealed.total - sealed.tax, .lines = {}};
    Money ownTax = sealed.cost;
    Money net;
    std::vector<std::size_t> gifts;
    for (std::size_t i = 0; i < sealed.lines.size(); ++i) {
        if (catalogue::isGivenAway(quote.order, quote.order.lines[i])) gifts.push_back(i);
        auto& earned = sold.lines.emplace_back(earnedBy(sealed.lines[i], quote.order.lines[i]));
        earned.income = paid[i] - (*tax)[i];
        net += earned.income;
        ownTax -= earned.cost;
    }
    if (net != sold.income) return std::nullopt;
    if (ownTax.isZero()) return sold;
    if (gifts.size() != 1 || ownTax.isNegative()) return std::nullopt;
    sold.lines[gifts.front()].cost += ownTax;
    sold.lines[gifts.front()].paidOut += ownTax;
    return sold;
}

/// None where what it cost is not known.
std::optional<Sold> soldBy(const Quote& quote, layout::FitMemo& fits) {
    const auto rules = quote.result ? quote.result->rules : catalogue::kFirstRulesVersion;
    const auto again = pricing::priceOrder(quote.order, *quote.frozen, fits, rules);
    const bool isReached =
        again && (quote.result ? isAsSealed(*again, quote.result->figures) : again->total == quote.sealedTotal);
    Sold sold;
    if (isReached) {
        sold.total = again->total;
        sold.income = again->earnings.net;
        for (std::size_t i = 0; i < again->lines.size(); ++i)
            sold.lines.push_back(earnedBy(again->lines[i], quote.order.lines[i]));
        return sold;
    }
    return soldAsSealed(quote);
}

/// Without the tax that is printed on them: of the invoices, less what was credited. None where there are none, or
/// where they are not all that the job comes to: it was revised since, to more than was invoiced.
std::optional<Money> invoiced(const std::vector<IssuedBill>& bills, Money comesTo) {
    Money total;
    Money net;
    bool isAny = false;
    for (const auto& bill : bills) {
        if (bill.kind == catalogue::PaperKind::Receipt) continue;
        isAny = true;
        const Money whole = pricing::wholeOf(bill.result.parts);
        const Money part = whole - pricing::taxOf(bill.result.parts);
        const bool isTakenBack = bill.kind == catalogue::PaperKind::Credit;
        total += isTakenBack ? -whole : whole;
        net += isTakenBack ? -part : part;
    }
    return isAny && total == comesTo ? std::optional(net) : std::nullopt;
}

std::string designNameOf(const catalogue::OrderLine& line) {
    if (line.isCharge() || line.first().title.empty()) return line.title;
    return line.first().title;
}

figures::Answer answerTo(const QuoteSummary& job) {
    if (catalogue::isAgreedTo(job.stage)) return figures::Answer::Won;
    return job.stage == Stage::Declined || job.isLapsed ? figures::Answer::Lost : figures::Answer::Open;
}

} // namespace

Result<EarnedReader::Known> EarnedReader::read(Book& book, const HandedOver& handed) {
    const auto& job = handed.job;
    Known known{job.number, job.choiceTaken, job.total, handed.papers, {}, {}, false};
    const auto quote = book.quote(job.id);
    if (!quote) return fail(quote.error());
    known.customer = quote->order.customer;
    auto sold = quote->frozen ? soldBy(*quote, m_fits) : std::nullopt;
    if (!sold) {
        known.isLeftOut = true;
        return known;
    }
    const auto billing = book.billing(job.id);
    if (!billing) return fail(billing.error());
    if (const auto net = invoiced(billing->bills, job.total.value_or(sold->total))) sold->income = *net;
    std::vector<Money> weights;
    for (const auto& line : sold->lines) weights.push_back(std::max(Money{}, line.income));
    const auto shares = units::inProportion(sold->income, std::move(weights));
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const auto& ordered = quote->order.lines[i];
        EarnedLine line;
        line.job = job.id;
        line.number = job.number;
        line.designName = designNameOf(ordered);
        if (!ordered.isCharge()) line.design = ordered.first().design;
        line.blank = ordered.baseMaterial;
        if (const auto* blank = quote->frozen->find(ordered.baseMaterial)) line.blankName = blank->material.name;
        line.earned = sold->lines[i];
        line.earned.income = shares[i];
        line.quantity = line.earned.pieces;
        known.lines.push_back(std::move(line));
    }
    return known;
}

Result<EarnedJobs> EarnedReader::earned(Book& book, units::Date from, units::Date to) {
    const auto handed = book.handedOver(from, to);
    if (!handed) return fail(handed.error());
    EarnedJobs earned;
    std::unordered_map<base::Id, std::optional<catalogue::Customer>> people;
    for (const auto& one : *handed) {
        const auto& job = one.job;
        auto known = m_known.find(job.id);
        if (known == m_known.end() || known->second.number != job.number || known->second.choice != job.choiceTaken ||
            known->second.total != job.total || known->second.papers != one.papers) {
            auto fresh = read(book, one);
            if (!fresh) return fail(fresh.error());
            known = m_known.insert_or_assign(job.id, std::move(*fresh)).first;
        }
        if (known->second.isLeftOut) earned.leftOut.push_back(job.number);
        const auto& named = known->second.customer;
        auto person = people.find(named);
        if (person == people.end()) {
            auto found = book.customer(named);
            if (!found) return fail(found.error());
            person = people.emplace(named, std::move(*found)).first;
        }
        for (const auto& line : known->second.lines) {
            auto& told = earned.lines.emplace_back(line);
            told.day = one.day;
            told.customer = person->second ? person->second->id : named;
            told.customerName = person->second ? person->second->name : job.customer;
        }
    }
    return earned;
}

Result<std::vector<figures::OfferedLine>> EarnedReader::offered(Book& book, units::Date from, units::Date to) {
    Wanted wanted;
    wanted.from = from;
    wanted.to = to;
    const auto found = book.find(wanted);
    if (!found) return fail(found.error());
    std::vector<figures::OfferedLine> lines;
    for (const auto& job : found->jobs) {
        if (job.number.empty()) continue;
        const auto quote = book.quote(job.id);
        if (!quote) return fail(quote.error());
        if (!quote->result) continue; // what each piece was to cost is not known
        const auto& sealed = quote->result->figures.lines;
        for (std::size_t i = 0; i < std::min(sealed.size(), quote->order.lines.size()); ++i) {
            const auto& line = quote->order.lines[i];
            if (line.isCharge() || catalogue::isGivenAway(quote->order, line)) continue;
            lines.push_back({line.quantity, sealed[i].each, answerTo(job)});
        }
    }
    return lines;
}

} // namespace sp::db
