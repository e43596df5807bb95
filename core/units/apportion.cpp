// SPDX-License-Identifier: MIT
#include "core/units/apportion.h"

#include <algorithm>

namespace sp::units {

Money toMinor(const Fraction& micros, const Currency& currency) {
    const auto minor = currency.microsPerMinor();
    return Money::fromExact(
        Fraction::of(static_cast<Int128>((micros * Fraction::ratio(1, minor)).roundedHalfUp()) * minor));
}

Money eachOf(Money amount, Count pieces) { return Money::fromExact(Fraction::ratio(amount.micros(), pieces.value())); }

Money shownEachOf(Money amount, Count pieces, const Currency& currency) {
    return toMinor(Fraction::ratio(amount.micros(), pieces.value()), currency);
}

Money allOf(Money each, Count things) { return Money::fromExact(each.exact() * Fraction::of(things.value())); }

Money forLength(Money price, Length per, Length length) {
    return Money::fromExact(price.exact() * Fraction::ratio(length.nanometres(), per.nanometres()));
}

std::vector<Money> apportion(Money amount, std::span<const Money> weights, const Currency& currency) {
    std::vector<Money> shares(weights.size());
    if (weights.empty() || amount.isZero()) return shares;
    Int128 all = 0;
    for (const auto weight : weights) all += weight.micros();
    if (all == 0) {
        shares.front() = amount;
        return shares;
    }
    Int128 running = 0;
    Money given;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        running += weights[i].micros();
        const Money upToHere = toMinor(amount.exact() * Fraction::ratio(running, all), currency);
        shares[i] = upToHere - given;
        given = upToHere;
    }
    return shares;
}

std::vector<std::optional<Money>> shownParts(std::vector<std::optional<Money>> parts, const Currency& currency) {
    Money running;
    Money given;
    for (auto& part : parts) {
        if (!part) continue;
        running += *part;
        const Money upToHere = toMinor(running.exact(), currency);
        part = upToHere - given;
        given = upToHere;
    }
    return parts;
}

std::vector<Money> inProportion(Money amount, std::vector<Money> weights) {
    Money sum;
    for (const Money weight : weights) sum += weight;
    if (sum.isZero()) {
        std::fill(weights.begin(), weights.end(), Money::fromMicros(1));
        sum = Money::fromMicros(static_cast<std::int64_t>(weights.size()));
    }
    std::vector<Money> parts;
    parts.reserve(weights.size());
    Money reached;
    Money given;
    for (const Money weight : weights) {
        reached += weight;
        const Money upTo = Money::fromExact(amount.exact() * Fraction::ratio(reached.micros(), sum.micros()));
        parts.push_back(upTo - given);
        given = upTo;
    }
    return parts;
}

Money evenShare(Money amount, std::int64_t part, std::int64_t parts) {
    return Money::fromMicros(amount.micros() / parts + (part < amount.micros() % parts ? 1 : 0));
}

} // namespace sp::units
