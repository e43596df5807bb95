// SPDX-License-Identifier: MIT
#include "core/layout/mixed.h"

#include "core/base/overflow.h"
#include "core/layout/count_search.h"
#include "core/layout/messages.h"
#include "core/layout/mixed_bounds.h"
#include "core/layout/mixed_search.h"
#include "core/layout/one_bin.h"
#include "core/layout/pattern_cover.h"
#include "core/layout/roll.h"

#include <algorithm>
#include <numeric>

namespace sp::layout {

using std::int64_t;
using units::Length;
using units::Money;

namespace {

constexpr int64_t kUnlimited = kMaxMixedPieces;

base::Done checkedRules(const FitRules& rules) {
    if (!rules.margin.isNegative() && !rules.gap.isNegative() && rules.margin <= units::kMaxLength &&
        rules.gap <= units::kMaxLength)
        return {};
    return base::fail(Fault::RulesOutOfRange, "rules");
}

bool isSide(Length side) { return side > Length() && side <= units::kMaxLength; }

base::Done checkedPieces(const std::vector<MixedPiece>& pieces) {
    if (pieces.empty()) return base::fail(Fault::NothingToLay, "pieces");
    if (pieces.size() > kMaxMixedSizes) return base::fail(Fault::TooManySizes, "pieces");
    int64_t sum = 0;
    for (const auto& piece : pieces) {
        if (!isSide(piece.size.width) || !isSide(piece.size.height))
            return base::fail(Fault::PieceOutOfRange, piece.id, piece.id);
        if (piece.count < 1) return base::fail(Fault::PieceCountBelowOne, piece.id, piece.id);
        if (piece.count > kMaxMixedPieces || (sum += piece.count) > kMaxMixedPieces)
            return base::fail(Fault::TooManyPieces, piece.id);
    }
    return {};
}

/// Boxes with the gap added, equal ones of one kind whatever their id or way round.
std::vector<Box> boxesOf(const std::vector<MixedPiece>& pieces, Length gap, bool mayTurn,
                         std::vector<std::size_t>& pieceOf) {
    std::vector<Box> boxes;
    std::vector<std::pair<int64_t, int64_t>> kinds;
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        const int64_t w = (pieces[p].size.width + gap).nanometres();
        const int64_t h = (pieces[p].size.height + gap).nanometres();
        const auto sides = mayTurn ? std::pair(std::min(w, h), std::max(w, h)) : std::pair(w, h);
        const auto kind = static_cast<std::size_t>(std::find(kinds.begin(), kinds.end(), sides) - kinds.begin());
        if (kind == kinds.size()) kinds.push_back(sides);
        for (int64_t i = 0; i < pieces[p].count; ++i) {
            boxes.push_back({w, h, kind});
            pieceOf.push_back(p);
        }
    }
    return boxes;
}

bool fits(const Box& box, int64_t width, int64_t height, bool mayTurn) {
    return (box.width <= width && box.height <= height) || (mayTurn && box.height <= width && box.width <= height);
}

Placement placed(const Laid& laid, std::int64_t sheet, Length margin, const std::vector<std::size_t>& pieceOf) {
    return {sheet,
            pieceOf[laid.box],
            {Length::fromNanometres(laid.x) + margin, Length::fromNanometres(laid.y) + margin, laid.turned}};
}

/// The least count of sheets and the least cost of any plan.
struct Bounds {
    int64_t sheets = 0;
    int64_t cost = 0;
};

Bounds boundsOf(const std::vector<Box>& boxes, const std::vector<Bin>& bins, bool mayTurn) {
    // A bin as wide and as high as the widest and highest kind takes at least what any kind takes.
    Bin widest;
    int64_t step = 0;
    long double least = -1;
    for (const Bin& bin : bins) {
        widest.width = std::max(widest.width, bin.width);
        widest.height = std::max(widest.height, bin.height);
        step = std::gcd(step, bin.price);
        const long double price = static_cast<long double>(bin.price) /
                                  (static_cast<long double>(bin.width) * static_cast<long double>(bin.height));
        if (least < 0 || price < least) least = price;
    }
    Bounds bounds;
    bounds.sheets = binBound(boxes, widest.width, widest.height, mayTurn);
    int64_t cheapest = bins.front().price;
    for (const Bin& bin : bins) cheapest = std::min(cheapest, bin.price);
    bounds.cost = bounds.sheets * cheapest;
    long double area = 0;
    for (const Box& box : boxes) area += static_cast<long double>(box.width) * static_cast<long double>(box.height);
    const auto byArea = static_cast<int64_t>(area * least * (1 - 1e-12L));
    bounds.cost = std::max(bounds.cost, byArea);
    if (step > 0) bounds.cost = (bounds.cost + step - 1) / step * step;
    return bounds;
}

/// So many lie on a sheet in rows all one way round: quickly found, and no fit has fewer.
int64_t plainFit(const MixedSheet& sheet, const Piece& piece, const FitRules& rules) {
    const Length room = rules.gap - rules.margin - rules.margin;
    const auto rows = [&](Length wide, Length high) {
        const int64_t across = (sheet.size.width + room).nanometres() / (wide + rules.gap).nanometres();
        const int64_t down = (sheet.size.height + room).nanometres() / (high + rules.gap).nanometres();
        return across > 0 && down > 0 ? std::min(across, kUnlimited) * std::min(down, kUnlimited) : 0;
    };
    return std::max(rows(piece.width, piece.height), rules.oneWay ? 0 : rows(piece.height, piece.width));
}

/// How many of each piece one sheet holds, where there are enough to fill one; else nothing.
using Fits = std::vector<std::optional<SheetFit>>;

Fits fitsOf(const std::vector<MixedPiece>& pieces, const MixedSheet& sheet, const FitRules& rules) {
    Fits fits(pieces.size());
    for (std::size_t p = 0; p < pieces.size(); ++p)
        if (plainFit(sheet, pieces[p].size, rules) <= pieces[p].count)
            if (auto fit = fitSheet(sheet.size, pieces[p].size, rules)) fits[p] = *std::move(fit);
    return fits;
}

/// Whole sheets of one piece each, for every piece that fills some: taken off the boxes.
struct Prefilled {
    BinPlan plan;
    std::vector<char> used;
};

Prefilled prefilled(const std::vector<MixedPiece>& pieces, const std::vector<Box>& boxes,
                    const std::vector<std::size_t>& pieceOf, const Fits& fits, std::size_t kind, const Bin& bin,
                    const FitRules& rules) {
    int64_t had = bin.left;
    Prefilled out;
    out.used.assign(boxes.size(), 0);
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        const auto& fit = fits[p];
        if (!fit || fit->count < 1 || fit->count > pieces[p].count) continue;
        auto box = static_cast<std::size_t>(std::find(pieceOf.begin(), pieceOf.end(), p) - pieceOf.begin());
        for (int64_t n = pieces[p].count / fit->count; n > 0 && had > 0; --n, --had) {
            FilledBin filled{kind, {}};
            for (const Position& at : fit->positions) {
                out.used[box] = 1;
                filled.laid.push_back(
                    {box++, (at.x - rules.margin).nanometres(), (at.y - rules.margin).nanometres(), at.turned});
            }
            out.plan.bins.push_back(std::move(filled));
            out.plan.cost += bin.price;
        }
    }
    return out;
}

class SheetPacker {
  public:
    SheetPacker(const std::vector<MixedSheet>& sheets, const std::vector<MixedPiece>& pieces, const FitRules& rules,
                const MixedEffort& effort)
        : m_sheets(sheets)
        , m_pieces(pieces)
        , m_rules(rules)
        , m_effort(effort) {}

    base::Result<MixedPlan> pack() {
        if (const auto done = checkedRules(m_rules); !done) return base::fail(done.error());
        if (const auto done = checkedPieces(m_pieces); !done) return base::fail(done.error());
        if (const auto done = takeSheets(); !done) return base::fail(done.error());
        m_boxes = boxesOf(m_pieces, m_rules.gap, !m_rules.oneWay, m_pieceOf);
        for (std::size_t i = 0; i < m_boxes.size(); ++i)
            if (std::none_of(m_bins.begin(), m_bins.end(),
                             [&](const Bin& bin) { return fits(m_boxes[i], bin.width, bin.height, !m_rules.oneWay); }))
                return base::fail(Fault::PieceFitsNoSheet, m_pieces[m_pieceOf[i]].id, m_pieces[m_pieceOf[i]].id);
        m_isFree = std::all_of(m_bins.begin(), m_bins.end(), [](const Bin& bin) { return bin.price == 0; });
        if (m_isFree) // then the fewest are wanted
            for (Bin& bin : m_bins) bin.price = 1;
        m_bounds = boundsOf(m_boxes, m_bins, !m_rules.oneWay);
        for (const std::size_t kind : m_kindOf) m_fits.push_back(fitsOf(m_pieces, m_sheets[kind], m_rules));
        sharpenByCounts();
        tryOneSize();
        tryPrefilled();
        if (!isEnough()) tryOneBin();
        if (!isEnough()) tryPatterns();
        if (!isEnough()) tryCounts();
        constexpr std::size_t kMaxSearched = 3'000; // beyond, whole sheets come first
        if (!isEnough() && (m_boxes.size() <= kMaxSearched || !m_best.isWhole)) offer(searched());
        if (m_best.isWhole) return answer();
        if (cannotSuffice()) return base::fail(Fault::NotEnoughSheets, "sheets");
        return base::fail(Fault::NoWayFound, "sheets");
    }

  private:
    bool isEnough() const { return m_best.isWhole && m_best.cost <= m_bounds.cost; }

    /// All on one sheet, the cheapest kind first: as a strip that ends on it, and by trying every place.
    void tryOneBin() {
        if (m_bounds.sheets > 1) return;
        double area = 0;
        for (const Box& box : m_boxes) area += static_cast<double>(box.width) * static_cast<double>(box.height);
        std::vector<std::size_t> order(m_bins.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return m_bins[a].price < m_bins[b].price; });
        for (const std::size_t kind : order) {
            const Bin& bin = m_bins[kind];
            if (m_best.isWhole && m_best.cost <= bin.price) return;
            if (area > static_cast<double>(bin.width) * static_cast<double>(bin.height)) continue;
            auto laid = inOneBin(bin);
            if (laid.size() == m_boxes.size()) offer({{{kind, std::move(laid)}}, true, bin.price, 0});
        }
    }

    std::vector<Laid> inOneBin(const Bin& bin) {
        const bool mayTurn = !m_rules.oneWay;
        const auto share = [&](auto work) {
            const MixedEffort part = m_effort.part(5);
            Effort effort(part);
            auto laid = work(effort);
            m_effort.steps() -= part.steps - effort.steps();
            return laid;
        };
        auto laid = share([&](Effort& effort) {
            const Filling strip = searchStrip(m_boxes, bin.width, mayTurn, bin.height, effort);
            return strip.height <= bin.height ? strip.laid : std::vector<Laid>();
        });
        constexpr std::size_t kMaxTried = 80; // places are tried to the bottom of the stack
        if (laid.size() == m_boxes.size() || m_boxes.size() > kMaxTried) return laid;
        return share([&](Effort& effort) { return laidInOneBin(m_boxes, bin, mayTurn, effort.steps()); });
    }

    /// Whole bins by patterns, where boxes are equal or there is a choice of bins.
    void tryPatterns() {
        std::size_t kinds = 0;
        for (const Box& box : m_boxes) kinds = std::max(kinds, box.kind + 1);
        if (kinds > kMaxPatternKinds || (m_boxes.size() < 2 * kinds && m_bins.size() == 1)) return;
        const MixedEffort part = m_effort.part(m_counts ? 4 : 2);
        Effort effort(part);
        offer(coverWithPatterns(m_boxes, m_bins, !m_rules.oneWay, m_bounds.cost, m_ways, effort));
        m_effort.steps() -= part.steps - effort.steps();
    }

    /// What one sheet holds of each size at most, and of few sizes together: the bound of many sheets of one kind.
    void sharpenByCounts() {
        if (m_bins.size() != 1) return;
        const auto kinds = kindsOf(m_boxes);
        BoxCounts most;
        for (const BoxKind& kind : kinds) most.push_back(kind.count);
        for (std::size_t p = 0, box = 0; p < m_pieces.size(); box += static_cast<std::size_t>(m_pieces[p].count), ++p) {
            const std::size_t kind = m_boxes[box].kind;
            const auto& fit = m_fits[0][p];
            if (!fit || fit->bound < 1 || fit->bound >= most[kind]) continue;
            most[kind] = fit->bound;
            raiseBound((kinds[kind].count + fit->bound - 1) / fit->bound);
            m_ways.push_back(wayOf(*fit, kind, kinds, m_boxes[box].width != kinds[kind].width));
        }
        if (kinds.size() > CountSearch::kMaxKinds) return;
        m_counts.emplace(kinds, m_bins[0].width, m_bins[0].height, !m_rules.oneWay, std::move(most));
        constexpr int64_t kBoundSteps = 1'000'000;
        int64_t steps = kBoundSteps;
        raiseBound(m_counts->bound(steps));
    }

    BinWay wayOf(const SheetFit& fit, std::size_t kind, const std::vector<BoxKind>& kinds, bool isExchanged) const {
        BinWay way{0, BoxCounts(kinds.size(), 0), {}};
        way.counts[kind] = static_cast<int64_t>(fit.positions.size());
        for (const Position& at : fit.positions)
            way.laid.push_back({kind, (at.x - m_rules.margin).nanometres(), (at.y - m_rules.margin).nanometres(),
                                at.turned != isExchanged});
        return way;
    }

    void raiseBound(int64_t sheets) {
        m_bounds.sheets = std::max(m_bounds.sheets, sheets);
        m_bounds.cost = std::max(m_bounds.cost, m_bounds.sheets * m_bins[0].price);
    }

    /// Counts that fill sheets best are laid, or shown not to lie; then whole sheets of them.
    void tryCounts() {
        if (!m_counts) return;
        const MixedEffort part{m_effort.steps() / 3 * 2, m_effort.part(1).outOfTime};
        Effort effort(part);
        raiseBound(m_counts->search(m_ways, effort));
        m_effort.steps() -= part.steps - effort.steps();
        if (!isEnough()) tryPatterns();
    }

    /// Of one kind of sheet the fewest are looked for as if there were enough, and counted afterwards: a plan of one
    /// sheet too many leads to better ones, half a plan does not.
    BinPlan searched() {
        if (m_bins.size() != 1) return searchBins(m_boxes, m_bins, !m_rules.oneWay, m_bounds.cost, m_effort);
        auto enough = m_bins;
        enough[0].left = kUnlimited;
        auto plan = searchBins(m_boxes, enough, !m_rules.oneWay, m_bounds.cost, m_effort);
        plan.isWhole = plan.isWhole && static_cast<int64_t>(plan.bins.size()) <= m_bins[0].left;
        return plan;
    }

    /// Proven by the bound: not even so many of the widest and highest could.
    bool cannotSuffice() const {
        int64_t had = 0;
        for (const Bin& bin : m_bins) had = std::min(kUnlimited, had + bin.left);
        return m_bounds.sheets > had;
    }

    base::Done takeSheets() {
        if (m_sheets.empty()) return base::fail(Fault::NoSheet, "sheets");
        if (m_sheets.size() > kMaxMixedSheets) return base::fail(Fault::TooManySheetKinds, "sheets");
        const Length twice = m_rules.margin + m_rules.margin;
        for (std::size_t s = 0; s < m_sheets.size(); ++s) {
            const MixedSheet& sheet = m_sheets[s];
            if (!isSide(sheet.size.width) || !isSide(sheet.size.height))
                return base::fail(Fault::SheetOutOfRange, sheet.id, sheet.id);
            if (sheet.price.isNegative() || sheet.atMost.value_or(0) < 0)
                return base::fail(Fault::SheetPriceOrLimitNegative, sheet.id, sheet.id);
            const Bin bin{(sheet.size.width - twice + m_rules.gap).nanometres(),
                          (sheet.size.height - twice + m_rules.gap).nanometres(), sheet.price.micros(),
                          std::min(kUnlimited, sheet.atMost.value_or(kUnlimited))};
            if (sheet.size.width <= twice || sheet.size.height <= twice || bin.left == 0) continue;
            m_bins.push_back(bin);
            m_kindOf.push_back(s);
        }
        if (!m_bins.empty()) return {};
        return base::fail(Fault::NothingInsideMargins, "margin");
    }

    /// One size of piece that needs no second sheet: as fitSheet lays it.
    void tryOneSize() {
        if (m_sheets.size() != 1 || m_pieces.size() != 1) return;
        const auto fit = fitSheet(m_sheets[0].size, m_pieces[0].size, m_rules);
        if (!fit || m_pieces[0].count > static_cast<int64_t>(fit->positions.size())) return;
        FilledBin filled{0, {}};
        for (int64_t i = 0; i < m_pieces[0].count; ++i) {
            const Position& at = fit->positions[static_cast<std::size_t>(i)];
            filled.laid.push_back({static_cast<std::size_t>(i), (at.x - m_rules.margin).nanometres(),
                                   (at.y - m_rules.margin).nanometres(), at.turned});
        }
        offer({{filled}, true, m_bins[0].price, 0});
    }

    void tryPrefilled() {
        for (std::size_t kind = 0; kind < m_bins.size(); ++kind) {
            auto first = prefilled(m_pieces, m_boxes, m_pieceOf, m_fits[kind], kind, m_bins[kind], m_rules);
            if (first.plan.bins.empty()) continue;
            std::vector<Box> rest;
            std::vector<std::size_t> restOf;
            for (std::size_t i = 0; i < m_boxes.size(); ++i)
                if (!first.used[i]) {
                    rest.push_back(m_boxes[i]);
                    restOf.push_back(i);
                }
            BinPlan plan = std::move(first.plan);
            plan.isWhole = rest.empty();
            if (!rest.empty()) {
                auto bins = m_bins;
                bins[kind].left -= static_cast<int64_t>(plan.bins.size());
                if (std::all_of(bins.begin(), bins.end(), [](const Bin& bin) { return bin.left == 0; })) continue;
                const MixedEffort part = m_effort.part(4);
                Effort effort(part);
                BinPlan more = searchBins(rest, bins, !m_rules.oneWay, m_bounds.cost - plan.cost, effort);
                m_effort.steps() -= part.steps - effort.steps();
                for (auto& bin : more.bins) {
                    for (auto& laid : bin.laid) laid.box = restOf[laid.box];
                    plan.bins.push_back(std::move(bin));
                }
                plan.cost += more.cost;
                plan.isWhole = more.isWhole;
            }
            offer(std::move(plan));
        }
    }

    void offer(BinPlan plan) {
        const auto rank = [](const BinPlan& p) { return std::tuple(!p.isWhole, p.cost, p.bins.size()); };
        if (m_best.bins.empty() || rank(plan) < rank(m_best)) m_best = std::move(plan);
    }

    MixedPlan answer() const {
        MixedPlan plan;
        if (!m_isFree) {
            plan.cost = Money::fromMicros(m_best.cost);
            plan.costBound = Money::fromMicros(std::min(m_bounds.cost, m_best.cost));
        }
        plan.sheetBound = m_bounds.sheets;
        for (const auto& bin : m_best.bins) {
            for (const Laid& laid : bin.laid)
                plan.placements.push_back(
                    placed(laid, static_cast<int64_t>(plan.sheets.size()), m_rules.margin, m_pieceOf));
            plan.sheets.push_back(m_kindOf[bin.kind]);
        }
        const auto used = static_cast<int64_t>(plan.sheets.size());
        plan.proven = plan.cost == plan.costBound && (!plan.cost.isZero() || used == plan.sheetBound);
        return plan;
    }

    const std::vector<MixedSheet>& m_sheets;
    const std::vector<MixedPiece>& m_pieces;
    const FitRules& m_rules;
    Effort m_effort;
    std::vector<Bin> m_bins;
    std::vector<std::size_t> m_kindOf; ///< by bin: index of its sheet
    std::vector<Box> m_boxes;
    std::vector<std::size_t> m_pieceOf;
    Bounds m_bounds;
    std::optional<CountSearch> m_counts; ///< for few sizes on one kind of sheet
    std::vector<BinWay> m_ways;          ///< patterns known so far
    std::vector<Fits> m_fits;            ///< by bin
    bool m_isFree = false;               ///< no sheet costs anything; each then counts as one micro-unit here
    BinPlan m_best;
};

} // namespace

base::Result<MixedPlan> packSheets(const std::vector<MixedSheet>& sheets, const std::vector<MixedPiece>& pieces,
                                   const FitRules& rules, const MixedEffort& effort) {
    try {
        return SheetPacker(sheets, pieces, rules, effort).pack();
    } catch (const base::Overflow&) { return base::fail(Fault::SizesTooLarge, "sheets"); }
}

base::Result<MixedRoll> packRoll(Length rollWidth, const std::vector<MixedPiece>& pieces, const FitRules& rules,
                                 const MixedEffort& effort) {
    if (const auto done = checkedRules(rules); !done) return base::fail(done.error());
    if (const auto done = checkedPieces(pieces); !done) return base::fail(done.error());
    const Length twice = rules.margin + rules.margin;
    if (!isSide(rollWidth) || rollWidth <= twice) return base::fail(Fault::NoRollInsideMargins, "roll");
    std::vector<std::size_t> pieceOf;
    const auto boxes = boxesOf(pieces, rules.gap, !rules.oneWay, pieceOf);
    const int64_t width = (rollWidth - twice + rules.gap).nanometres();
    for (std::size_t i = 0; i < boxes.size(); ++i)
        if (boxes[i].width > width && (rules.oneWay || boxes[i].height > width))
            return base::fail(Fault::PieceWiderThanRoll, pieces[pieceOf[i]].id, pieces[pieceOf[i]].id);
    MixedRoll roll;
    if (pieces.size() == 1) {
        const auto need = lengthForPieces(rollWidth, pieces[0].size, rules, pieces[0].count);
        if (!need) return base::fail(need.error());
        roll.length = need->length;
        roll.bound = need->bound;
        roll.proven = need->proven;
        for (const auto& at : need->positions)
            if (static_cast<int64_t>(roll.placements.size()) < pieces[0].count) roll.placements.push_back({0, 0, at});
        return roll;
    }
    const int64_t bound = stripBound(boxes, width, !rules.oneWay);
    Effort left(effort);
    const Filling filling = searchStrip(boxes, width, !rules.oneWay, bound, left);
    const auto lengthOf = [&](int64_t height) { return Length::fromNanometres(height) - rules.gap + twice; };
    roll.length = lengthOf(filling.height);
    roll.bound = lengthOf(bound);
    if (roll.length > units::kMaxLength) return base::fail(Fault::PiecesTakeTooMuchRoll, "roll");
    roll.proven = roll.length == roll.bound;
    for (const Laid& laid : filling.laid) roll.placements.push_back(placed(laid, 0, rules.margin, pieceOf));
    return roll;
}

} // namespace sp::layout
