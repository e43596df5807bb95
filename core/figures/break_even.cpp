// SPDX-License-Identifier: MIT
#include "core/figures/break_even.h"

#include "core/units/fraction.h"

#include <algorithm>

namespace sp::figures {

using units::Fraction;

BreakEven breakEven(units::Money fixed, const Earned& soFar) {
    BreakEven even{.fixed = fixed, .contribution = soFar.contribution()};
    even.toGo = std::max(units::Money{}, fixed - even.contribution);
    if (even.toGo.isZero() || even.contribution <= units::Money{}) return even;
    const auto times = Fraction::ratio(even.toGo.micros(), even.contribution.micros());
    if (!soFar.pieces.isZero()) even.pieces = units::Count::of((times * Fraction::of(soFar.pieces.value())).ceiling());
    if (soFar.isBenchKnown && !soFar.bench.isZero())
        even.bench = units::Duration::fromMilliseconds((times * Fraction::of(soFar.bench.milliseconds())).ceiling());
    return even;
}

} // namespace sp::figures
