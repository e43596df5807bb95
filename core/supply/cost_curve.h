// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase.h"
#include "core/units/fraction.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sp::supply {

enum class Strategy { Kits, Bulk, Mix };

/// One way of buying for one quantity; no plan when that way cannot cover it.
struct StrategyCost {
    std::optional<units::Money> cost;
    units::Money bound; ///< equal to the cost when proven
};

struct CostCurvePoint {
    std::int64_t pieces = 0;
    StrategyCost kits;
    StrategyCost bulk;
    StrategyCost mix;
    /// The cheapest way: Mix only when it is cheaper than either alone; kits before bulk at the same cost. None when
    /// nothing covers the quantity, or nothing has to be bought.
    std::optional<Strategy> winner;
    bool proven = false; ///< all three costs are
};

/// A run of quantities with one winner; one that is not proven goes on with the winner before it.
struct CostCurveRun {
    std::int64_t from = 1;
    std::int64_t to = 1;
    std::optional<Strategy> winner;
};

struct CostCurve {
    std::vector<CostCurvePoint> points; ///< pieces 1, 2, ...; fewer than asked for when time ran out
    std::vector<CostCurveRun> runs;     ///< in order, neighbours differ
    /// From this quantity on, for ever, bulk alone costs less than kits alone; only when that is proven by the points
    /// and by the slopes beyond them.
    std::optional<std::int64_t> bulkStaysCheaperFrom;
};

/// Between which lines the need of a material grows: for every number n of pieces, 1 or more, it is at least
/// perPiece n + once and at most `extra` more than that.
struct NeedBand {
    std::string material; ///< each in one band
    units::Fraction perPiece;
    units::Fraction once;
    units::Fraction extra;
};

/// What the proof for every quantity looks at. Kits alone means kits and `besides`, bulk alone means `bulk`.
struct BuyingStrategies {
    std::vector<NeedBand> needs;
    std::vector<MaterialCount> shelf;
    std::vector<Pack> kits;
    std::vector<Pack> bulk;    ///< packs of one material
    std::vector<Pack> besides; ///< those of them that are bought along with kits
    std::vector<Supplier> suppliers;
};

/// The first quantity from which the lines below alone prove bulk cheaper than kits; none when they never do.
///
/// Kits alone cost at least k n - s: of the materials that only kits give, the one that costs most at the best kit's
/// price for it; and each material that only `besides` gives, at its least price; s is what the shelf saves. Bulk
/// alone costs at most b n + K: each material from the unlimited pack with the least price, rounded up to whole packs
/// and to the price break, shipping and minimum of each supplier; once with the last price breaks and once with the
/// first. If k > b, bulk is cheaper for every n > (K + s) / (k - b). Kits that lack a material never cover what goes
/// beyond the shelf.
std::optional<std::int64_t> provenBeyond(const BuyingStrategies& strategies);

/// Runs and the proven quantity from points 1, 2, ... in order; what lies before provenBeyond the points must show.
CostCurve assembled(const BuyingStrategies& strategies, std::vector<CostCurvePoint> points);

} // namespace sp::supply
