// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/price_order.h"

#include <vector>

namespace sp::pricing {

/// What an order of one line of so many pieces asks.
struct QuantityPrice {
    units::Count quantity;
    units::Money each;
    units::Money total; ///< before tax on top; set-up and the smallest order counted in

    friend bool operator==(const QuantityPrice&, const QuantityPrice&) = default;
};

/// From `from` up to one piece below `at` an order comes to more than `at` pieces do.
struct Cliff {
    units::Count from;
    units::Count at;
    units::Money total; ///< of `at` pieces

    friend bool operator==(const Cliff&, const Cliff&) = default;
};

/// The shop's mark-up ladder in money, for one design.
struct LadderCurve {
    std::vector<QuantityPrice> points; ///< ascending, the first of one piece
    std::vector<Cliff> cliffs;         ///< ascending by `at`

    /// The point of that quantity, or null.
    const QuantityPrice* at(units::Count quantity) const;
};

/// So many quantities are worked out one by one; of a ladder that reaches further some are left out, but none at which
/// a step begins, nor the one before it.
inline constexpr std::int64_t kMostQuantities = 400;

/// The prices of a line by quantity, from one piece to a quarter beyond the highest step of the ladder, and at least to
/// 12. A typed price and sizes are left aside. Errors: as priceOrder.
base::Result<LadderCurve> ladderCurve(catalogue::OrderLine line, const catalogue::PriceBook& book,
                                      layout::FitMemo& fits);

} // namespace sp::pricing
