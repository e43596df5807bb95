// SPDX-License-Identifier: MIT
#include "core/supply/reorder.h"

#include "core/base/overflow.h"
#include "core/catalogue/fields/tables.h"
#include "core/supply/messages.h"

#include <algorithm>
#include <map>
#include <optional>

namespace sp::supply {

using units::Fraction;
using units::Int128;
using units::Money;

namespace {

constexpr std::int64_t kMostLeadDays = catalogue::fields::kDays.highest;
constexpr std::int64_t kMostPacks = catalogue::fields::kCounts.highest;
constexpr std::int64_t kMostWhole = 1'000'000'000'000'000'000; ///< so that sums of two fit
constexpr std::int64_t kDaysOfYear = 365;

/// The smallest whole number that is not below `least` and whose square beyond `off` is not below `square`:
/// ⌈off + √square⌉, without a square root of a float. Throws base::Overflow beyond kMostWhole.
std::int64_t wholeAbove(const Fraction& off, const Fraction& square) {
    const auto isEnough = [&](std::int64_t whole) {
        const auto beyond = Fraction::of(whole) - off;
        return !(beyond < Fraction::of(0)) && !(beyond * beyond < square);
    };
    std::int64_t low = std::max<std::int64_t>(0, off.ceiling());
    if (low > kMostWhole) throw base::Overflow();
    if (isEnough(low)) return low;
    std::int64_t step = 1;
    while (!isEnough(low + step)) {
        step *= 2;
        if (step > kMostWhole) throw base::Overflow();
    }
    std::int64_t high = low + step;
    while (high - low > 1) {
        const auto middle = low + (high - low) / 2;
        (isEnough(middle) ? high : low) = middle;
    }
    return high;
}

/// An order of so many packs at that price.
EconomicOrder orderOf(const OrderTerms& terms, std::int64_t packs, Money each) {
    const auto price = Fraction::of(each.micros());
    const auto held = price * Fraction::ratio(terms.holding.ppm(), units::kPpm);
    return {packs, terms.used * price, terms.used * Fraction::of(terms.perOrder.micros()) * Fraction::ratio(1, packs),
            held * Fraction::ratio(packs, 2)};
}

/// What costs least among so many packs, and one more or fewer, from `least` to `most`.
EconomicOrder bestOf(const OrderTerms& terms, const catalogue::PriceBreak& price, std::optional<std::int64_t> most) {
    const auto held = Fraction::of(price.each.micros()) * Fraction::ratio(terms.holding.ppm(), units::kPpm);
    const auto square = Fraction::of(2) * terms.used * Fraction::of(terms.perOrder.micros()) / held;
    const auto above = wholeAbove(Fraction::of(0), square);
    std::optional<EconomicOrder> best;
    for (const auto packs : {above - 1, above}) {
        auto kept = std::max(packs, price.from.value());
        if (most) kept = std::min(kept, *most);
        const auto order = orderOf(terms, kept, price.each);
        if (!best || order.cost() < best->cost()) best = order;
    }
    return *best;
}

} // namespace

Demand Demand::known(Fraction perDay, Fraction deviation) { return {1, 1, perDay, deviation * deviation}; }

Demand demandOf(const std::vector<DayUse>& uses, units::Date from, units::Date to) {
    std::map<units::Date, std::int64_t> byDay;
    for (const auto& use : uses)
        if (from <= use.day && use.day <= to) byDay[use.day] += use.count;
    Demand demand;
    demand.days = std::max<std::int64_t>(0, from.daysUntil(to) + 1);
    if (demand.days == 0) return demand;
    Int128 squares = 0;
    for (const auto& [day, count] : byDay) {
        if (count <= 0) continue;
        demand.used += count;
        squares += Int128(count) * count;
    }
    demand.perDay = Fraction::ratio(demand.used, demand.days);
    if (demand.days > 1)
        demand.variance =
            (Fraction::of(squares) - demand.perDay * Fraction::of(demand.used)) * Fraction::ratio(1, demand.days - 1);
    return demand;
}

bool isKnownLongEnough(const Demand& demand, std::int64_t leadDays) {
    return demand.days >= std::max(kLeastDaysKnown, leadDays);
}

Fraction packsInAYear(const Demand& demand, units::Count inPack) {
    return demand.perDay * Fraction::ratio(kDaysOfYear, inPack.value());
}

// The quantiles of the standard normal distribution to four decimals, from memory.
Fraction safetyFactor(Service service) {
    switch (service) {
    case Service::Percent90: return Fraction::ratio(12'816, 10'000);
    case Service::Percent95: return Fraction::ratio(16'449, 10'000);
    case Service::Percent98: return Fraction::ratio(20'537, 10'000);
    case Service::Percent99: return Fraction::ratio(23'263, 10'000);
    }
    return Fraction::of(0);
}

base::Result<ReorderPoint> reorderPointOf(const Demand& demand, std::int64_t leadDays, Fraction factor) {
    if (leadDays < 0 || leadDays > kMostLeadDays)
        return base::fail(Fault::LeadDaysOutOfRange, "leadDays", kMostLeadDays);
    if (demand.used <= 0) return base::fail(Fault::NothingUsed, "demand");
    try {
        const auto mean = demand.perDay * Fraction::of(leadDays);
        const auto square = factor * factor * demand.variance * Fraction::of(leadDays);
        return ReorderPoint{mean, wholeAbove(Fraction::of(0), square), wholeAbove(mean, square)};
    } catch (const base::Overflow&) { return base::fail(Fault::ReorderTooLarge, "demand"); }
}

base::Result<EconomicOrder> economicOrderOf(const OrderTerms& terms) {
    const auto nothing = Fraction::of(0);
    if (!(nothing < terms.used)) return base::fail(Fault::NothingUsed, "used");
    if (terms.perOrder.micros() <= 0 || terms.holding.ppm() <= 0) return base::fail(Fault::OrderCostsNothing, "terms");
    if (terms.prices.empty()) return base::fail(Fault::OrderedPackUnpriced, "prices");
    try {
        std::optional<EconomicOrder> best;
        for (std::size_t i = 0; i < terms.prices.size(); ++i) {
            const auto& price = terms.prices[i];
            if (price.each.micros() <= 0) return base::fail(Fault::OrderedPackUnpriced, "prices");
            const auto next =
                i + 1 < terms.prices.size() ? std::optional(terms.prices[i + 1].from.value() - 1) : std::nullopt;
            const auto order = bestOf(terms, price, next);
            if (!best || order.cost() < best->cost()) best = order;
        }
        if (best->packs > kMostPacks) return base::fail(Fault::OrderTooLarge, "terms", kMostPacks);
        return *best;
    } catch (const base::Overflow&) { return base::fail(Fault::OrderTooLarge, "terms", kMostPacks); }
}

} // namespace sp::supply
