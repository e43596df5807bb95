// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"
#include "core/units/text.h"

#include <optional>
#include <string>
#include <vector>

namespace sp::pricing {

/// Something of the price book that is not as it was, and what it does to the order's total.
struct PriceCause {
    base::Message what; ///< "Aquamarine SS10", "Labour an hour"
    base::Value was;    ///< "0.69", "18.00": empty where a figure does not say it (a table that was changed)
    base::Value now;
    units::Money effect; ///< on the total, with the causes before it as they are now and those after it as they were

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

/// An amount with as many decimals as it has, ungrouped: "6.95", "0,004861".
std::string exactText(units::Money amount, const units::Currency& currency, const units::NumberStyle& style);

/// What the same order comes to with the book it was given with and with another, and why. Every field of the table
/// that can make a price and differs is a cause. One after the other is put in the place of what was, in this order:
/// prices of materials, what else they are, how far the sets of designs are paid off, the currency, the materials that
/// are usual, what an hour and a month cost, the bench, card fees, then the rules of the price. Amounts of money are
/// written with as many decimals as they have. `given` is the total that was given, where it is known: what the book of
/// then does not come to any more is the last cause, Note::ReckonedOtherwise. Causes always add up. Errors: what
/// priceOrder refuses for either book, so Missing where a material is no longer there or has no price.
base::Result<PriceComparison> comparePrices(const catalogue::Order& order, const catalogue::PriceBook& then,
                                            const catalogue::PriceBook& now, layout::FitMemo& fits,
                                            const units::NumberStyle& style = {},
                                            std::optional<units::Money> given = std::nullopt);

} // namespace sp::pricing
