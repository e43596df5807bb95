// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/layout/fit_memo.h"
#include "core/needs/requirements.h"
#include "core/needs/shared_sets.h"
#include "core/units/unit_price.h"

#include <cstdint>
#include <memory>
#include <span>
#include <unordered_map>
#include <vector>

namespace sp::needs {

/// What an order takes of a material, in packs.
struct PackedNeed {
    std::int64_t need = 0;  ///< stones, whole sheets or rolls, pieces: of all lines together, rounded up once
    std::int64_t packs = 0; ///< of what has the price, ⌈need ÷ what is in one⌉
    units::UnitPrice price; ///< of one pack where so many are bought

    friend bool operator==(const PackedNeed&, const PackedNeed&) = default;
};

using OrderPrices = std::unordered_map<base::Id, PackedNeed>; ///< by material

/// Which materials are asked for: pricing needs no others than those whose price goes by the number of packs.
enum class PricedBy { Packs, Anything };

/// What one of the material costs on its own, from the pack: at `packs` packs, 1 or more. The material has a price.
units::UnitPrice priceAt(const catalogue::PricedMaterial& material, std::int64_t packs);

/// Prices by what the lines take together, as whoever buys counts it (supply::needsOf): whole sheets and rolls line by
/// line, one set of templates where lines share it, what goes with the order once. The shelf is not deducted, and no
/// spares are counted. `takes` are the requirements of the lines, `sets` those of sharedSets. Null where nothing is
/// taken of the materials asked for. Source: common practice, no source. Errors: as piecesPerSheet. Throws
/// base::Overflow.
base::Result<std::shared_ptr<const OrderPrices>> orderPrices(std::span<const catalogue::OrderLine> lines,
                                                             std::span<const Requirements> takes,
                                                             const std::vector<std::vector<SharedSet>>& sets,
                                                             const catalogue::PriceBook& book, layout::FitMemo& fits,
                                                             PricedBy which = PricedBy::Packs);

} // namespace sp::needs
