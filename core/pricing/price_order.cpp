// SPDX-License-Identifier: MIT
#include "core/pricing/price_order.h"

#include "core/base/overflow.h"
#include "core/catalogue/fields/tables.h"
#include "core/costing/cost_line.h"
#include "core/pricing/deposit.h"
#include "core/pricing/mark_up.h"
#include "core/pricing/messages.h"
#include "core/pricing/order_share.h"
#include "core/pricing/rounding.h"
#include "core/pricing/tax.h"
#include "core/units/apportion.h"

#include <algorithm>
#include <utility>

namespace sp::pricing {

namespace {

using base::fail;
using units::Count;
using units::Fraction;
using units::Money;
using units::Rate;

/// What a line or an order takes of the shop.
struct Outlay {
    Money cost;
    Money paidOut;
    Money ownTax;
    Money cardFee;
    Money floor;
    Money labour;
    units::Duration bench;

    Outlay(const LinePrice& line, Money fee)
        : cost(line.cost.total + line.ownTax)
        , paidOut(line.cost.outOfPocket + line.ownTax)
        , ownTax(line.ownTax)
        , cardFee(fee)
        , floor(line.floor)
        , labour(line.cost.labour + line.cost.spoiledLabour)
        , bench(line.cost.bench.total() + line.cost.spoiledTime) {}
    Outlay() = default;

    void operator+=(const Outlay& other) {
        cost += other.cost;
        paidOut += other.paidOut;
        ownTax += other.ownTax;
        cardFee += other.cardFee;
        floor += other.floor;
        labour += other.labour;
        bench += other.bench;
    }
};

PriceCoverage coverageOf(Money net, const Outlay& outlay) {
    const Money kept = net - outlay.cardFee;
    if (kept < outlay.paidOut) return PriceCoverage::BelowFloor;
    return kept < outlay.cost ? PriceCoverage::BelowCost : PriceCoverage::Pays;
}

/// An amount without the tax that it includes, in micro-units.
Fraction withoutTax(Money amount, Rate rate) {
    return amount.exact() * Fraction::ratio(units::kPpm, units::kPpm + rate.ppm());
}

Earnings earningsOf(Money net, const Outlay& outlay) {
    const Money profit = net - outlay.cardFee - outlay.cost;
    return {.net = net,
            .cost = outlay.cost,
            .paidOut = outlay.paidOut,
            .ownTax = outlay.ownTax,
            .cardFee = outlay.cardFee,
            .floor = outlay.floor,
            .profit = profit,
            .markUp = markUpOf(net - outlay.cardFee, outlay.cost),
            .margin = marginOf(net, outlay.cost + outlay.cardFee),
            .perBenchHour = perBenchHour(profit, outlay.labour, outlay.bench),
            .coverage = coverageOf(net, outlay)};
}

bool holdsTax(const catalogue::TaxRule& rule, bool taxable, bool exempt) {
    return rule.inclusive && taxable && !exempt;
}

/// A price that the shop set, as what holds no tax is charged for it: where its prices include the tax, which is that
/// of `rate`, without it.
Money chargedFor(Money set, Rate rate, const catalogue::PriceBook& book, bool holds, std::int64_t rules) {
    const bool isTakenOut = book.shop.rules.tax.inclusive && !holds && rules >= 2;
    return toMinor(isTakenOut ? withoutTax(set, rate) : set.exact(), book.shop.currency);
}

base::Done checkRules(const catalogue::PriceRules& rules, std::int64_t version) {
    namespace fields = catalogue::fields;
    const auto holds = [](const fields::Field& field, std::int64_t whole) { return field.bounds.range.holds(whole); };
    for (std::size_t i = 0; i <= rules.tax.others.size(); ++i) {
        const auto rate = rateAt(rules.tax, i);
        if (!holds(fields::fieldOf<&catalogue::TaxRule::rate>(), rate.ppm())) return fail(Fault::TaxOutOfRange, "tax");
        if (version >= 3 && !(Fraction{} < keptOfPrice(rules, rate))) return fail(Fault::CardTakesAll, "card fee");
    }
    if (!holds(fields::fieldOf<&catalogue::PriceRules::depositRate>(), rules.depositRate.ppm()))
        return fail(Fault::DepositOutOfRange, "deposit");
    for (const auto& step : rules.ladder)
        if (!holds(fields::fieldOf<&catalogue::MarkUpStep::markUp>(), step.markUp.ppm()))
            return fail(Fault::MarkUpOutOfRange, "mark-up", step.from.value());
    if (rules.rounding.kind == catalogue::RoundingKind::Ending &&
        !holds(fields::fieldOf<&catalogue::Rounding::ending>(), rules.rounding.ending))
        return fail(Fault::PriceEndingOutOfRange, "rounding");
    return {};
}

void chargeSizes(LinePrice& priced, const catalogue::OrderLine& line, const catalogue::PriceBook& book, Rate rate,
                 bool gross, std::int64_t version) {
    if (line.customersGarment || line.sizes.empty()) return;
    const auto* baseMaterial = book.find(line.baseMaterial);
    if (!baseMaterial) return;
    for (const auto& size : line.sizes)
        for (const auto& row : baseMaterial->material.sizes) {
            if (row.name != size.size || row.surcharge.isZero() || size.count.isZero()) continue;
            const Money each = chargedFor(row.surcharge, rate, book, gross, version);
            const Money amount = Money::fromExact(each.exact() * Fraction::of(size.count.value()));
            priced.sizes.push_back({size.size, size.count, each, amount});
        }
}

void chargePlaces(LinePrice& priced, const catalogue::OrderLine& line, const catalogue::PriceBook& book, Rate rate,
                  bool gross, std::int64_t version) {
    for (const auto& row : book.shop.rules.places) {
        const auto isThere = [&](const auto& place) { return catalogue::isOnePlace(place.place, row.place); };
        const auto times = std::ranges::count_if(line.places, isThere);
        if (times == 0 || row.surcharge.isZero()) continue;
        const auto count = Count::of(line.quantity.value() * times);
        const Money each = chargedFor(row.surcharge, rate, book, gross, version);
        priced.places.push_back({row.place, count, each, Money::fromExact(each.exact() * Fraction::of(count.value()))});
    }
}

Money daysSurcharge(PricedOrder& priced, const catalogue::Order& order, const catalogue::PriceBook& book) {
    if (!order.wantedBy) return {};
    const auto days = order.quotedOn.daysUntil(*order.wantedBy);
    for (const auto& step : book.shop.rules.rush)
        if (days <= step.days) {
            priced.rushRate = step.surcharge;
            return toMinor(priced.goods.exact() * Fraction::ratio(step.surcharge.ppm(), units::kPpm),
                           book.shop.currency);
        }
    return {};
}

base::Result<Money> discountOn(Money sum, const catalogue::Discount& discount, const units::Currency& currency) {
    if (discount.share) {
        if (discount.share->isNegative() || *discount.share > Rate::fromPercent(100))
            return fail(Fault::DiscountShareOutOfRange, "discount");
        return toMinor(sum.exact() * Fraction::ratio(discount.share->ppm(), units::kPpm), currency);
    }
    if (!discount.amount) return Money{};
    if (discount.amount->isNegative() || *discount.amount > sum) return fail(Fault::DiscountOutOfRange, "discount");
    return toMinor(discount.amount->exact(), currency);
}

/// Shares rush, discount and minimum over the lines, by what they charge.
void adjustLines(PricedOrder& priced, const units::Currency& currency) {
    std::vector<Money> charged;
    for (const auto& line : priced.lines) charged.push_back(line.charged);
    const auto adjusted =
        units::apportion(priced.rush - priced.discount + priced.minimumOrderCharge, charged, currency);
    for (std::size_t i = 0; i < charged.size(); ++i) priced.lines[i].adjusted = adjusted[i];
}

/// The tax rate by rate, and what each line holds of it: nothing where the tax comes on top.
std::vector<Money> addUpTax(PricedOrder& priced, const catalogue::Order& order, const catalogue::PriceBook& book) {
    const auto& rule = book.shop.rules.tax;
    std::vector<Money> inside(priced.lines.size());
    const bool exempt = priced.taxStanding == TaxStanding::Exempt;
    priced.taxIncluded = rule.inclusive && !exempt;
    for (std::size_t number = 0; number <= rule.others.size() && !exempt; ++number) {
        std::vector<std::size_t> lines;
        std::vector<Money> taxable;
        TaxAmount tax{nameAt(rule, number), rateAt(rule, number), {}, {}};
        for (std::size_t i = 0; i < priced.lines.size(); ++i) {
            if (catalogue::isGivenAway(order, order.lines[i])) continue;
            if (!order.lines[i].taxable || findRate(rule, order.lines[i].taxRate) != number) continue;
            lines.push_back(i);
            taxable.push_back(priced.lines[i].charged + priced.lines[i].adjusted);
            tax.on += taxable.back();
        }
        if (lines.empty()) continue;
        tax.tax = taxOn(taxable, rule, tax.rate, book.shop.currency);
        priced.tax += tax.tax;
        if (priced.taxIncluded) {
            const auto parts = units::apportion(tax.tax, taxable, book.shop.currency);
            for (std::size_t i = 0; i < lines.size(); ++i) inside[lines[i]] = parts[i];
        }
        priced.taxes.push_back(std::move(tax));
    }
    return inside;
}

/// The order's total and what of it is due when, from its lines, surcharges, discounts and tax.
void settle(PricedOrder& priced, const catalogue::PriceBook& book) {
    priced.total = priced.taxIncluded ? priced.subtotal : priced.subtotal + priced.tax;
    priced.deposit = depositOn(priced.total, book.shop.rules, book.shop.currency);
    priced.balance = priced.total - priced.deposit;
}

/// What the card takes of the order, shared over its lines by what they charge. Before rules 3 it is in their cost.
std::vector<Money> cardFees(const PricedOrder& priced, const catalogue::PriceBook& book) {
    std::vector<Money> charged;
    for (const auto& line : priced.lines) charged.push_back(line.charged);
    const std::int64_t payments = (priced.deposit.isZero() ? 0 : 1) + (priced.balance.isZero() ? 0 : 1);
    const Money fee =
        priced.rules < 3 ? Money{} : cardFeeOn(priced.total, payments, book.shop.rules, book.shop.currency);
    return units::apportion(fee, charged, book.shop.currency);
}

/// `tax` is what each line's charge holds of it.
void addUpEarnings(PricedOrder& priced, const std::vector<Money>& tax, const catalogue::PriceBook& book) {
    const auto fees = cardFees(priced, book);
    Money net;
    Outlay all;
    for (std::size_t i = 0; i < priced.lines.size(); ++i) {
        auto& line = priced.lines[i];
        const Outlay outlay(line, fees[i]);
        line.earnings = earningsOf(line.charged + line.adjusted - tax[i], outlay);
        net += line.earnings.net;
        all += outlay;
    }
    priced.earnings = earningsOf(net, all);
}

/// Nothing is asked for the line; what it costs stays, with the tax that the shop owes on it.
void giveAway(LinePrice& priced, const catalogue::OrderLine& line, const catalogue::PriceBook& book, bool exempt) {
    priced.each = priced.goods = priced.setUp = priced.charged = {};
    priced.typedWithTax.reset();
    priced.sizes.clear();
    priced.places.clear();
    const auto& rule = book.shop.rules.tax;
    if (rule.onGifts == catalogue::TaxOnGifts::None) return;
    const auto rate = rateOn(line, rule, exempt);
    priced.ownTax = toMinor(priced.cost.total.exact() * Fraction::ratio(rate.ppm(), units::kPpm), book.shop.currency);
}

base::Result<PricedOrder> priceChecked(const catalogue::Order& order, const catalogue::PriceBook& book,
                                       layout::FitMemo& fits, std::int64_t version) {
    const auto& rules = book.shop.rules;
    PricedOrder priced;
    priced.rules = version;
    priced.taxStanding = taxStanding(order, book);
    const bool exempt = priced.taxStanding == TaxStanding::Exempt;
    auto costed = costLines(order, book, fits, version);
    if (!costed) return fail(costed.error());
    priced.lines.reserve(order.lines.size());
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        auto line = priceLine(order.lines[i], std::move((*costed)[i]), book, exempt, fits, version);
        if (!line) return fail(line.error());
        if (catalogue::isGivenAway(order, order.lines[i])) giveAway(*line, order.lines[i], book, exempt);
        priced.goods += line->charged;
        static_cast<LinePrice&>(priced.lines.emplace_back()) = std::move(*line);
    }
    priced.rush = daysSurcharge(priced, order, book);
    const Money beforeDiscount = priced.goods + priced.rush;
    const auto isPaid = [&](const auto& line) { return !catalogue::isGivenAway(order, line); };
    const bool isAnyPaid = std::ranges::any_of(order.lines, isPaid);
    const auto discount =
        discountOn(beforeDiscount, isAnyPaid ? order.discount : catalogue::Discount{}, book.shop.currency);
    if (!discount) return fail(discount.error());
    priced.discount = *discount;
    const bool holdsAny = std::ranges::any_of(
        order.lines, [&](const auto& line) { return isPaid(line) && holdsTax(rules.tax, line.taxable, exempt); });
    const Money minimum =
        !isAnyPaid ? Money{} : chargedFor(rules.minimumOrder, rules.tax.rate, book, holdsAny, priced.rules);
    const Money afterDiscount = beforeDiscount - priced.discount;
    priced.minimumOrderCharge = std::max(Money{}, minimum - afterDiscount);
    priced.subtotal = afterDiscount + priced.minimumOrderCharge;
    if (priced.subtotal > kMaxMoney) throw base::Overflow();
    adjustLines(priced, book.shop.currency);
    const auto taxInside = addUpTax(priced, order, book);
    settle(priced, book);
    addUpEarnings(priced, taxInside, book);
    return priced;
}

/// The line with sizes that have a surcharge counted as the plain size: the surcharge covers their extra cost, which
/// would be charged twice if it were also spread over all pieces. Nothing if there are no such sizes.
std::optional<catalogue::OrderLine> withoutChargedSizes(const catalogue::OrderLine& line,
                                                        const catalogue::PriceBook& book) {
    if (line.customersGarment || line.sizes.empty()) return std::nullopt;
    const auto* baseMaterial = book.find(line.baseMaterial);
    if (!baseMaterial) return std::nullopt;
    const auto isCharged = [&](const catalogue::SizeCount& size) {
        return std::ranges::any_of(baseMaterial->material.sizes, [&](const auto& row) {
            return row.name == size.size && !row.surcharge.isZero() && !row.extraCost.isZero();
        });
    };
    auto plain = line;
    if (std::erase_if(plain.sizes, isCharged) == 0) return std::nullopt;
    return plain;
}

/// `asked` is the cost on which the price of every piece is based: without the extra cost of sizes with a surcharge.
base::Result<LinePrice> priceCosted(CostedLine costed, Money asked, const catalogue::OrderLine& line,
                                    const catalogue::PriceBook& book, bool exempt, std::int64_t version) {
    const auto& rules = book.shop.rules;
    const auto& currency = book.shop.currency;
    LinePrice priced;
    priced.cost = std::move(costed.cost);
    priced.ladderMarkUp = markUpFor(rules.ladder, costed.counted);
    const bool ownLine = rules.setUp == catalogue::SetUpCharge::OwnLine;
    const bool gross = holdsTax(rules.tax, line.taxable, exempt);
    const Rate rate = rateAt(rules.tax, findRate(rules.tax, line.taxRate).value_or(0)); // whether it is due or not
    // Of rules 1 and 2 the card fee is in the cost.
    const Fraction kept = version < 3 ? Fraction::of(1) : keptOfPrice(rules, rateOn(line, rules.tax, exempt));
    const Fraction fixed = version < 3 ? Fraction{} : costed.share.cardFixed.exact();
    priced.floor = Money::fromExact((priced.cost.outOfPocket.exact() + fixed) / kept);
    const Fraction asking = priceAtMarkUp(Fraction::of(1), gross ? rate : Rate{}) / kept;
    const auto ask = [&](const Fraction& atCost, const Fraction& fixedFee) {
        return (priceAtMarkUp(atCost, priced.ladderMarkUp) + fixedFee) * asking;
    };
    const Money spread = ownLine ? asked - priced.cost.setUp : asked;
    const Fraction pieces = Fraction::of(line.quantity.value());
    priced.calculatedEach = roundPrice(ask(Fraction::ratio(spread.micros(), line.quantity.value()), fixed / pieces),
                                       rules.rounding, currency);
    priced.each = priced.calculatedEach;
    if (line.overrideEach) {
        // Typed with the tax, where there is any on the line.
        priced.each = chargedFor(*line.overrideEach, rate, book, gross || !line.taxable, version);
        if (rules.tax.inclusive && line.taxable && exempt && version >= 2) priced.typedWithTax = line.overrideEach;
    }
    priced.goods = Money::fromExact(priced.each.exact() * pieces);
    if (ownLine) priced.setUp = toMinor(ask(priced.cost.setUp.exact(), {}), currency);
    chargeSizes(priced, line, book, rate, gross, version);
    chargePlaces(priced, line, book, rate, gross, version);
    priced.charged = priced.goods + priced.setUp;
    for (const auto* charges : {&priced.sizes, &priced.places})
        for (const auto& charge : *charges) priced.charged += charge.amount;
    if (priced.charged > kMaxMoney) throw base::Overflow();
    return priced;
}

} // namespace

TaxStanding taxStanding(const catalogue::Order& order, const catalogue::PriceBook& book) {
    if (!order.asksExemption) return TaxStanding::Charged;
    const bool holds = book.customer && catalogue::certificateOn(*book.customer, order.quotedOn);
    return holds ? TaxStanding::Exempt : TaxStanding::ExemptionMissing;
}

base::Result<LinePrice> priceLine(const catalogue::OrderLine& line, CostedLine costed, const catalogue::PriceBook& book,
                                  bool exempt, layout::FitMemo& fits, std::int64_t rules) {
    if (!findRate(book.shop.rules.tax, line.taxRate))
        return fail(Fault::TaxRateGone, line.title, line.taxRate, line.title);
    Money asked = costed.cost.total;
    if (const auto plain = withoutChargedSizes(line, book)) {
        const auto plainCost = costing::costFigures(*plain, book, fits, costed.share, rules);
        if (!plainCost) return fail(plainCost.error());
        asked = plainCost->total;
    }
    try {
        return priceCosted(std::move(costed), asked, line, book, exempt, rules);
    } catch (const base::Overflow&) { return fail(Fault::LineTooLarge, line.title, line.title); }
}

base::Result<costing::CostSheet> costSheetOf(const catalogue::Order& order, std::size_t line,
                                             const catalogue::PriceBook& book, layout::FitMemo& fits,
                                             std::int64_t rules) {
    const auto costed = costLines(order, book, fits, rules);
    if (!costed) return fail(costed.error());
    auto sheet = costing::costLine(order.lines.at(line), book, fits, costed->at(line).share, rules);
    if (!sheet || rules < 3) return sheet;
    auto needed = needsOf(order, *costed, book, fits);
    if (!needed) return fail(needed.error());
    sheet->needs = std::move(*needed);
    return sheet;
}

base::Result<PricedOrder> priceOrder(const catalogue::Order& order, const catalogue::PriceBook& book,
                                     layout::FitMemo& fits, std::int64_t rules) {
    if (order.lines.empty()) return fail(Fault::NothingOrdered, "order");
    if (order.wantedBy && *order.wantedBy < order.quotedOn)
        return fail(Fault::WantedBeforeQuoted, "wanted by", *order.wantedBy, order.quotedOn);
    if (auto ok = checkRules(book.shop.rules, rules); !ok) return fail(ok.error());
    try {
        return priceChecked(order, book, fits, rules);
    } catch (const base::Overflow&) { return fail(Fault::OrderTooLarge, "order"); }
}

} // namespace sp::pricing
