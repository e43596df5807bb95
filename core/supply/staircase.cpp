// SPDX-License-Identifier: MIT
#include "core/supply/staircase.h"

#include "core/base/overflow.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace sp::supply {

using base::Code;
using std::int64_t;
using units::Count;
using units::Fraction;

namespace {

base::Done checked(const StaircaseProblem& problem, int64_t pieces) {
    if (pieces < 1 || pieces > 1'000'000)
        return base::fail(Code::OutOfRange, "pieces", "1 to 1,000,000 pieces can be planned: change the quantity.");
    if (problem.piece.empty())
        return base::fail(Code::Missing, "piece", "The design takes nothing: give it its stones.");
    for (const auto& take : problem.piece) {
        if (take.perPiece.value() < 1 || take.perPiece.value() > 1'000'000)
            return base::fail(Code::OutOfRange, take.material,
                              "A piece must take 1 to 1,000,000 of " + take.material + ": change its count.");
        if (take.loss.isNegative() || take.loss.ppm() >= units::kPpm)
            return base::fail(Code::OutOfRange, take.material,
                              "The share lost of " + take.material + " must be 0 or more and below 1: change it.");
    }
    return {};
}

base::Result<WayCost> costOf(const StaircaseProblem& problem, int64_t pieces, std::vector<Pack> packs,
                             const OutOfTime& outOfTime) {
    const auto answer = planPurchase({needsOf(problem.piece, pieces), problem.shelf, std::move(packs), problem.suppliers},
                                     outOfTime);
    if (!answer) return base::fail(answer.error());
    WayCost cost;
    if (answer->plan) {
        cost.cost = answer->plan->cost;
        cost.bound = answer->plan->bound;
    }
    return cost;
}

bool isProven(const WayCost& way) { return !way.cost || *way.cost == way.bound; }

std::optional<Way> winnerOf(const StaircasePoint& point) {
    std::optional<Way> winner;
    std::optional<units::Money> least;
    for (const auto& [way, cost] : {std::pair(Way::Kits, point.kits.cost), std::pair(Way::Bulk, point.bulk.cost),
                                    std::pair(Way::Mix, point.mix.cost)})
        if (cost && (!least || *cost < *least)) {
            least = cost;
            winner = way;
        }
    return winner;
}

double micros(const units::Money& money) { return static_cast<double>(money.micros()); }

double perPiece(const PieceTake& take) {
    return static_cast<double>(take.perPiece.value()) / (1 - static_cast<double>(take.loss.ppm()) / 1e6);
}

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

/// Below what kits alone cost; none when they never cover a piece.
std::optional<Line> belowKits(const StaircaseProblem& problem) {
    Line line;
    for (const auto& take : problem.piece) {
        double least = -1; // micro-units a stone
        for (const Pack& kit : problem.kits) {
            const double stones = stonesOf(kit, take.material);
            if (stones <= 0) continue;
            for (const auto& price : kit.prices)
                if (least < 0 || micros(price.each) / stones < least) least = micros(price.each) / stones;
        }
        if (least < 0) return std::nullopt;
        const double slope = least * perPiece(take);
        if (slope <= line.slope) continue;
        double shelf = 0;
        for (const auto& item : problem.shelf)
            if (item.material == take.material) shelf += static_cast<double>(item.count.value());
        line = {slope, -least * shelf};
    }
    return line;
}

/// Above what bulk alone costs; none when a material cannot be had without limit.
std::optional<Line> aboveBulk(const StaircaseProblem& problem) {
    Line line;
    std::set<std::string> used;
    for (const auto& take : problem.piece) {
        double least = -1;
        double once = 0;
        std::string supplier;
        for (const Pack& pack : problem.bulk) {
            const double stones = stonesOf(pack, take.material);
            if (stones <= 0 || pack.atMost || pack.prices.empty()) continue;
            const auto last = std::max_element(pack.prices.begin(), pack.prices.end(),
                                               [](const auto& a, const auto& b) { return a.from < b.from; });
            const double each = micros(last->each);
            if (least >= 0 && each / stones >= least) continue;
            least = each / stones;
            once = each * (1 + static_cast<double>(last->from.value())) + least;
            supplier = pack.supplier;
        }
        if (least < 0) return std::nullopt;
        line.slope += least * perPiece(take);
        line.height += once;
        const auto order = std::find_if(problem.suppliers.begin(), problem.suppliers.end(),
                                        [&](const Supplier& s) { return s.id == supplier; });
        if (order == problem.suppliers.end()) return std::nullopt;
        if (order->minimum > units::Money() && least <= 0) return std::nullopt;
        line.height += once; // room to reach the minimum with whole packs
        if (used.insert(supplier).second) line.height += micros(order->shipping) + micros(order->minimum);
    }
    return line;
}

/// The first quantity from which on the lines alone prove bulk cheaper.
std::optional<int64_t> provenByLines(const StaircaseProblem& problem) {
    const auto bulk = aboveBulk(problem);
    if (!bulk) return std::nullopt;
    const auto kits = belowKits(problem);
    if (!kits) return 1;
    const double slope = (kits->slope - bulk->slope) * (1 - 1e-9);
    if (slope <= 0) return std::nullopt;
    const double crossing = (bulk->height - kits->height) / slope * (1 + 1e-9);
    if (crossing > 1e9) return std::nullopt;
    return static_cast<int64_t>(std::floor(std::max(0.0, crossing))) + 1;
}

} // namespace

std::vector<MaterialCount> needsOf(const std::vector<PieceTake>& piece, int64_t pieces) {
    std::vector<MaterialCount> needs;
    for (const auto& take : piece)
        needs.push_back({take.material, Count::of(Fraction::ratio(units::Int128{pieces} * take.perPiece.value() * units::kPpm,
                                                                  units::kPpm - take.loss.ppm())
                                                      .ceiling())});
    return needs;
}

base::Result<StaircasePoint> compareWays(const StaircaseProblem& problem, int64_t pieces, const OutOfTime& outOfTime) {
    if (const auto done = checked(problem, pieces); !done) return base::fail(done.error());
    StaircasePoint point;
    point.pieces = pieces;
    std::vector<Pack> all = problem.kits;
    all.insert(all.end(), problem.bulk.begin(), problem.bulk.end());
    using Asked = std::pair<WayCost*, const std::vector<Pack>*>;
    for (const auto& [way, packs] :
         {Asked(&point.kits, &problem.kits), Asked(&point.bulk, &problem.bulk), Asked(&point.mix, &all)}) {
        const auto cost = costOf(problem, pieces, *packs, outOfTime);
        if (!cost) return base::fail(cost.error());
        *way = *cost;
    }
    // A search that was cut short may miss what one of the two ways alone has shown.
    for (const auto& alone : {point.kits, point.bulk})
        if (alone.cost && (!point.mix.cost || *alone.cost < *point.mix.cost)) point.mix.cost = alone.cost;
    point.winner = winnerOf(point);
    point.proven = isProven(point.kits) && isProven(point.bulk) && isProven(point.mix);
    return point;
}

Staircase assembled(const StaircaseProblem& problem, std::vector<StaircasePoint> points) {
    Staircase out;
    out.points = std::move(points);
    for (const auto& point : out.points) {
        if (out.runs.empty() || out.runs.back().winner != point.winner)
            out.runs.push_back({point.pieces, point.pieces, point.winner});
        out.runs.back().to = point.pieces;
    }
    const auto beyond = provenByLines(problem);
    if (!beyond || static_cast<int64_t>(out.points.size()) + 1 < *beyond) return out;
    int64_t from = 1;
    for (const auto& point : out.points) {
        if (point.pieces >= *beyond) break;
        // The dearest bulk may be against the cheapest the kits may be.
        const bool isCheaper = point.bulk.cost && (!point.kits.cost || *point.bulk.cost < point.kits.bound);
        if (!isCheaper) from = point.pieces + 1;
    }
    out.bulkStaysCheaperFrom = from;
    return out;
}

base::Result<Staircase> staircase(const StaircaseProblem& problem, int64_t horizon, const OutOfTime& outOfTime) {
    if (horizon < 1 || horizon > kLongestStaircase)
        return base::fail(Code::OutOfRange, "horizon", "The curve can show 1 to 10,000 pieces: change its length.");
    std::vector<StaircasePoint> points;
    try {
        for (int64_t n = 1; n <= horizon; ++n) {
            auto point = compareWays(problem, n, outOfTime);
            if (!point) return base::fail(point.error());
            if (outOfTime && outOfTime() && !point->proven) break;
            points.push_back(std::move(*point));
            if (outOfTime && outOfTime()) break;
        }
        return assembled(problem, std::move(points));
    } catch (const base::Overflow&) {
        return base::fail(Code::TooLarge, "pieces", "So many pieces need more than the program plans for: show fewer.");
    }
}

} // namespace sp::supply
