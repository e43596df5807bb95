// SPDX-License-Identifier: MIT
#include "core/pricing/mark_up.h"

namespace sp::pricing {

namespace {

using units::Fraction;
using units::Rate;

Rate toRate(const Fraction& share) { return Rate::fromPpm((share * Fraction::of(units::kPpm)).roundedHalfEven()); }

} // namespace

Rate markUpFor(std::span<const catalogue::MarkUpStep> ladder, units::Count quantity) {
    Rate markUp;
    for (const auto& step : ladder)
        if (step.from <= quantity) markUp = step.markUp;
    return markUp;
}

Fraction priceAtMarkUp(const Fraction& cost, Rate markUp) {
    return cost * Fraction::ratio(units::kPpm + markUp.ppm(), units::kPpm);
}

std::optional<Rate> markUpOf(units::Money price, units::Money cost) {
    if (cost.isZero()) return std::nullopt;
    return toRate(Fraction::ratio((price - cost).micros(), cost.micros()));
}

std::optional<Rate> marginOf(units::Money price, units::Money cost) {
    if (price.isZero()) return std::nullopt;
    return toRate(Fraction::ratio((price - cost).micros(), price.micros()));
}

std::optional<Rate> marginFromMarkUp(Rate markUp) {
    if (markUp.ppm() == -units::kPpm) return std::nullopt;
    return toRate(Fraction::ratio(markUp.ppm(), units::kPpm + markUp.ppm()));
}

std::optional<units::Money> perBenchHour(units::Money profit, units::Money labour, units::Duration bench) {
    if (bench.isZero()) return std::nullopt;
    return units::Money::fromExact((profit + labour).exact() *
                                   Fraction::ratio(units::kMillisecondsPerHour, bench.milliseconds()));
}

} // namespace sp::pricing
