// SPDX-License-Identifier: MIT
#include "core/pricing/rounding.h"

#include <algorithm>

namespace sp::pricing {

namespace {

using units::Fraction;
using units::Money;

Money times(std::int64_t steps, units::Int128 microsPerStep) {
    return Money::fromExact(Fraction::of(steps * microsPerStep));
}

} // namespace

Money upToStep(Money amount, Money step, const units::Currency& currency) {
    const auto micros = step > Money{} ? step.micros() : currency.microsPerMinor();
    return times(Fraction::ratio(amount.micros(), micros).ceiling(), micros);
}

Money roundPrice(const Fraction& micros, const catalogue::Rounding& rule, const units::Currency& currency) {
    const auto minor = currency.microsPerMinor();
    const units::Int128 step = static_cast<units::Int128>(std::max<std::int64_t>(1, rule.step)) * minor;
    switch (rule.kind) {
    case catalogue::RoundingKind::Nearest: return times((micros * Fraction::ratio(1, step)).roundedHalfUp(), step);
    case catalogue::RoundingKind::Up: return times((micros * Fraction::ratio(1, step)).ceiling(), step);
    case catalogue::RoundingKind::Ending: break;
    }
    const units::Int128 round = static_cast<units::Int128>(100) * minor;
    const Fraction ending = Fraction::of(static_cast<units::Int128>(rule.ending) * minor);
    const std::int64_t rounds = ((micros - ending) * Fraction::ratio(1, round)).ceiling();
    return Money::fromExact(Fraction::of(std::max<std::int64_t>(0, rounds) * round) + ending);
}

} // namespace sp::pricing
