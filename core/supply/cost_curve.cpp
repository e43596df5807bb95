// SPDX-License-Identifier: MIT
#include "core/supply/cost_curve.h"

#include "core/base/overflow.h"
#include "core/needs/line_check.h"
#include "core/supply/messages.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace sp::supply {

using std::int64_t;
using units::Count;
using units::Fraction;

namespace {

const StrategyCost& costOf(const CostCurvePoint& point, Strategy strategy) {
    switch (strategy) {
    case Strategy::Kits: return point.kits;
    case Strategy::Bulk: return point.bulk;
    case Strategy::Mix: break;
    }
    return point.mix;
}

/// Whether another way than the winner before wins for certain: while the one before may be as cheap, a search that
/// was cut short shall not make it look otherwise.
bool hasChanged(const CostCurvePoint& point, std::optional<Strategy> before) {
    if (point.winner == before) return false;
    if (point.proven || !before || !point.winner) return true;
    const auto& least = costOf(point, *point.winner).cost;
    const auto& other = costOf(point, *before);
    return !other.cost || !least || *least < other.bound;
}

double micros(const units::Money& money) { return static_cast<double>(money.micros()); }

double stonesOf(const Pack& pack, const std::string& material) {
    double stones = 0;
    for (const auto& give : pack.gives)
        if (give.material == material) stones += static_cast<double>(give.count.value());
    return stones;
}

/// A line that lies on one side of a cost: slope x pieces + height, in micro-units.
struct Line {
    double slope = 0;
    double height = 0;
};

double shelfOf(const BuyingStrategies& strategies, const std::string& material) {
    double count = 0;
    for (const auto& item : strategies.shelf)
        if (item.material == material) count += static_cast<double>(item.count.value());
    return count;
}

/// The least that one of the material can cost from these packs, in micro-units; negative when none gives it.
double leastFrom(const std::vector<Pack>& packs, const std::string& material) {
    double least = -1;
    for (const Pack& pack : packs) {
        const double stones = stonesOf(pack, material);
        if (stones <= 0) continue;
        for (const auto& price : pack.prices)
            if (least < 0 || micros(price.each) / stones < least) least = micros(price.each) / stones;
    }
    return least;
}

/// Below what kits alone cost; none from the quantity `neverFrom` on, where the shelf no longer makes up for what they
/// lack.
struct KitsLine {
    Line line;
    std::optional<int64_t> neverFrom;
};

/// The first quantity whose need the shelf cannot meet; none when it always can.
std::optional<int64_t> beyondShelf(const NeedBand& need, double shelf) {
    if (need.once.approximate() > shelf) return 1;
    if (need.perPiece.approximate() <= 0) return std::nullopt;
    const double pieces = (shelf - need.once.approximate()) / need.perPiece.approximate() * (1 + 1e-9);
    if (pieces > 1e9) return std::nullopt;
    return static_cast<int64_t>(std::floor(pieces)) + 1;
}

KitsLine belowKits(const BuyingStrategies& strategies) {
    KitsLine out;
    Line kits;
    for (const auto& need : strategies.needs) {
        const double shelf = shelfOf(strategies, need.material);
        const double fromKits = leastFrom(strategies.kits, need.material);
        const double along = leastFrom(strategies.besides, need.material);
        if (fromKits < 0 && along < 0) {
            const auto never = beyondShelf(need, shelf);
            if (never && (!out.neverFrom || *never < *out.neverFrom)) out.neverFrom = never;
            continue;
        }
        if (fromKits >= 0 && along >= 0) continue; // it may come from either: left out, the line stays below
        const double least = std::max(fromKits, along);
        const Line line{least * need.perPiece.approximate(), least * (need.once.approximate() - shelf)};
        if (along >= 0) {
            out.line.slope += line.slope;
            out.line.height += line.height;
        } else if (line.slope > kits.slope) {
            kits = line;
        }
    }
    out.line.slope += kits.slope;
    out.line.height += kits.height;
    return out;
}

enum class Break { First, Last };

/// A pack's price from a break on, when no later break is dearer: so many packs and more cost at most `each`.
const PackPrice* breakOf(const Pack& pack, Break which) {
    const auto byFrom = [](const auto& a, const auto& b) { return a.from < b.from; };
    const auto [first, last] = std::minmax_element(pack.prices.begin(), pack.prices.end(), byFrom);
    if (first == pack.prices.end()) return nullptr;
    const PackPrice& chosen = which == Break::First ? *first : *last;
    for (const auto& price : pack.prices)
        if (price.from > chosen.from && price.each > chosen.each) return nullptr;
    return &chosen;
}

/// The unlimited pack of a material with the least price for one of it.
struct Cheapest {
    double least = -1;
    double roundUp = 0; ///< what whole packs and the price break can add
    std::string supplier;
};

Cheapest cheapestOf(const std::vector<Pack>& packs, const std::string& material, Break which) {
    Cheapest out;
    for (const Pack& pack : packs) {
        const double stones = stonesOf(pack, material);
        if (stones <= 0 || pack.atMost) continue;
        const auto* price = breakOf(pack, which);
        if (!price || (out.least >= 0 && micros(price->each) / stones >= out.least)) continue;
        out = {micros(price->each) / stones, micros(price->each) * static_cast<double>(price->from.value()),
               pack.supplier};
    }
    return out;
}

/// Above what bulk alone costs; none when a material cannot be had without limit.
std::optional<Line> aboveBulk(const BuyingStrategies& strategies, Break which) {
    Line line;
    std::set<std::string> used;
    for (const auto& need : strategies.needs) {
        const auto pack = cheapestOf(strategies.bulk, need.material, which);
        if (pack.least < 0) {
            const bool isOnShelf = need.perPiece.approximate() <= 0 &&
                                   (need.once + need.extra).approximate() <= shelfOf(strategies, need.material);
            if (isOnShelf) continue;
            return std::nullopt;
        }
        line.slope += pack.least * need.perPiece.approximate();
        line.height += pack.least * (need.once + need.extra).approximate() + pack.roundUp;
        const auto order = std::find_if(strategies.suppliers.begin(), strategies.suppliers.end(),
                                        [&](const Supplier& s) { return s.id == pack.supplier; });
        if (order == strategies.suppliers.end()) return std::nullopt;
        if (order->minimum > units::Money()) {
            if (pack.least <= 0) return std::nullopt;
            line.height += pack.roundUp; // room to reach the minimum with whole packs
        }
        if (used.insert(pack.supplier).second) line.height += micros(order->shipping) + micros(order->minimum);
    }
    return line;
}

} // namespace

std::optional<int64_t> provenBeyond(const BuyingStrategies& strategies) {
    const auto kits = belowKits(strategies);
    std::optional<int64_t> first;
    for (const Break which : {Break::First, Break::Last}) {
        const auto bulk = aboveBulk(strategies, which);
        if (!bulk) continue;
        if (kits.neverFrom && (!first || *kits.neverFrom < *first)) first = kits.neverFrom;
        const double slope = (kits.line.slope - bulk->slope) * (1 - 1e-9);
        if (slope <= 0) continue;
        const double crossing = (bulk->height - kits.line.height) / slope * (1 + 1e-9);
        if (crossing > 1e9) continue;
        const auto from = static_cast<int64_t>(std::floor(std::max(0.0, crossing))) + 1;
        if (!first || from < *first) first = from;
    }
    return first;
}

CostCurve assembled(const BuyingStrategies& strategies, std::vector<CostCurvePoint> points) {
    CostCurve out;
    out.points = std::move(points);
    for (const auto& point : out.points) {
        if (out.runs.empty() || hasChanged(point, out.runs.back().winner))
            out.runs.push_back({point.pieces, point.pieces, point.winner});
        out.runs.back().to = point.pieces;
    }
    const auto beyond = provenBeyond(strategies);
    if (!beyond || static_cast<int64_t>(out.points.size()) + 1 < *beyond) return out;
    int64_t from = 1;
    for (const auto& point : out.points) {
        if (point.pieces >= *beyond) break;
        // The dearest bulk may be against the cheapest the kits may be; no kits may also mean that time ran out.
        const bool isCheaper =
            point.bulk.cost && (point.kits.cost ? *point.bulk.cost < point.kits.bound : point.proven);
        if (!isCheaper) from = point.pieces + 1;
    }
    out.bulkStaysCheaperFrom = from;
    return out;
}

} // namespace sp::supply
