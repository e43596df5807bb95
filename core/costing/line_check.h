// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"

#include <vector>

namespace sp::costing {

/// Bounds on what a line may ask for. Beyond them a figure is a slip of the finger, not an order.
inline constexpr std::int64_t kMostPieces = 1'000'000;
inline constexpr std::int64_t kMostStonesAPiece = 1'000'000;
inline constexpr std::int64_t kMostColours = 200;

/// The materials of a line, found once; they belong to the price book. None where there is none.
struct LineMaterials {
    std::vector<const catalogue::PricedMaterial*> stones; ///< as the line names them
    std::vector<const catalogue::PricedMaterial*> packing;
    const catalogue::PricedMaterial* base = nullptr; ///< none under the customer's own garment
    const catalogue::PricedMaterial* tape = nullptr;
    const catalogue::PricedMaterial* templates = nullptr; ///< also where they hang on the wall
};

/// Whether a line can be costed at all: pieces, size, stones and materials are there, of the right kind, with prices.
/// Errors: OutOfRange, Missing, NotFound, Invalid, each with the sentence to show.
base::Result<LineMaterials> checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book);

} // namespace sp::costing
