// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"

namespace sp::supply {

/// What `many` things cost bought in single packs of this sort, shipping left out, to `step` micro-units (1 or more).
/// A pack without a price costs nothing. Throws base::Overflow when it does not fit.
inline units::Money priceOf(const catalogue::Pack& pack, std::int64_t many, std::int64_t step) {
    if (pack.prices.empty()) return {};
    const auto exact = units::Fraction::ratio(pack.prices.front().each.micros(), pack.amount.value()) *
                       units::Fraction::ratio(many, step);
    return units::Money::fromExact(units::Fraction::of(exact.roundedHalfEven()) * units::Fraction::of(step));
}

} // namespace sp::supply
