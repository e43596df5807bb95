// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "core/units/text.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sp::pricing {

/// The heading of the cause that lies in the program's rules, not in the price book.
inline constexpr std::string_view kReckonedOtherwise = "What the program reckons otherwise";

/// A difference between the price books and its effect on the order's total.
struct PriceCause {
    std::string what; ///< "Aquamarine SS10", "Labour an hour"
    std::string was;  ///< "0.69", "18.00": empty if it is not a single figure (a changed table)
    std::string now;
    units::Money effect; ///< on the total, with earlier causes already applied and later ones not yet

    friend bool operator==(const PriceCause&, const PriceCause&) = default;
};

/// A line of the order at both prices.
struct LineRepriced {
    std::string title;
    units::Count quantity = units::Count::of(1);
    units::Money eachThen;
    units::Money eachNow;
    units::Money chargedThen; ///< with sizes and set-up
    units::Money chargedNow;

    units::Money difference() const { return chargedNow - chargedThen; }

    friend bool operator==(const LineRepriced&, const LineRepriced&) = default;
};

/// An order priced with two books. The effects of the causes add up to `totalNow` − `totalThen` exactly.
struct PriceComparison {
    units::Money totalThen;
    units::Money totalNow;
    std::vector<LineRepriced> lines;
    std::vector<PriceCause> causes; ///< every difference in what this order uses, also those without effect

    units::Money difference() const { return totalNow - totalThen; }
};

/// Prices the same order with the book it was given with and with another one, and explains the difference. Every field
/// that affects prices and differs is a cause. Causes are applied one after another in this order: prices of materials,
/// their other traits, the currency, the usual materials, hourly and monthly costs, the bench, card fees, then the
/// rules of the price. Amounts of money are written with all their decimals. `given` is the total the quote was given
/// with, if known: what the old book no longer comes to is the last cause, kReckonedOtherwise. Causes always add up.
/// Errors: what priceOrder refuses for either book, so Missing where a material is no longer there or has no price.
base::Result<PriceComparison> comparePrices(const catalogue::Order& order, const catalogue::PriceBook& then,
                                            const catalogue::PriceBook& now, layout::FitMemo& fits,
                                            const units::NumberStyle& style = {},
                                            std::optional<units::Money> given = std::nullopt);

} // namespace sp::pricing
