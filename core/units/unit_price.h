// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/count.h"
#include "core/units/money.h"

namespace sp::units {

/// What a counted thing costs, kept as the ratio it was bought at: 6.94 for 1,440 stones. The quotient is never
/// rounded; only its product with a need is.
struct UnitPrice {
    Money price;              ///< for `per` things, 0 or more
    Count per = Count::of(1); ///< 1 or more

    /// Micro-units for one thing, exactly.
    Fraction each() const { return Fraction::ratio(price.micros(), per.value()); }

    friend bool operator==(const UnitPrice&, const UnitPrice&) = default;
};

} // namespace sp::units
