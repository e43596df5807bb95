// SPDX-License-Identifier: MIT
#include "core/layout/mixed_bounds.h"

#include "core/units/int128.h"

#include <algorithm>
#include <functional>

namespace sp::layout {

using std::int64_t;
using units::Int128;

namespace {

/// A dual feasible function on whole numbers: sides and the whole map to multiples of the same unit.
struct Dual {
    int64_t whole = 0;      ///< what the bin's side maps to
    std::vector<int64_t> a; ///< what each box's width maps to when laid along this side
    std::vector<int64_t> b; ///< and its height
};

template<class Map>
Dual dualOf(const std::vector<Box>& boxes, int64_t whole, Map map) {
    Dual dual;
    dual.whole = whole;
    for (const Box& box : boxes) {
        dual.a.push_back(map(box.width));
        dual.b.push_back(map(box.height));
    }
    return dual;
}

/// The side as it is; sides near the whole counted full and small ones not at all; and the whole cut into k + 1 parts
/// (Fekete and Schepers' u^(k)).
std::vector<Dual> dualsOf(const std::vector<Box>& boxes, int64_t side) {
    std::vector<Dual> duals;
    duals.push_back(dualOf(boxes, side, [](int64_t x) { return x; }));
    for (int64_t k = 1; k <= 4; ++k)
        duals.push_back(dualOf(boxes, side * k, [side, k](int64_t x) {
            if (x > side) return x * k;
            return (k + 1) * x % side == 0 ? x * k : (k + 1) * x / side * side;
        }));
    std::vector<int64_t> edges;
    for (const Box& box : boxes)
        for (const int64_t x : {box.width, box.height}) {
            if (2 * x <= side) edges.push_back(x);
            if (2 * x > side && x < side) edges.push_back(side - x);
        }
    std::sort(edges.begin(), edges.end());
    edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
    constexpr std::size_t kMaxEdges = 24;
    const std::size_t stride = edges.size() / kMaxEdges + 1;
    for (std::size_t i = 0; i < edges.size(); i += stride) {
        const int64_t edge = edges[i];
        duals.push_back(dualOf(boxes, side, [side, edge](int64_t x) {
            return x > side - edge ? side : x < edge ? int64_t{0} : x;
        }));
    }
    return duals;
}

} // namespace

int64_t binBound(const std::vector<Box>& boxes, int64_t width, int64_t height, bool mayTurn) {
    if (boxes.empty()) return 0;
    const auto across = dualsOf(boxes, width);
    const auto along = dualsOf(boxes, height);
    int64_t bound = 1;
    for (const Dual& f : across)
        for (const Dual& g : along) {
            Int128 sum = 0;
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                const bool upright = boxes[i].width <= width && boxes[i].height <= height;
                const bool turned = mayTurn && boxes[i].height <= width && boxes[i].width <= height;
                const Int128 asIs = Int128{f.a[i]} * g.b[i];
                const Int128 other = Int128{f.b[i]} * g.a[i];
                sum += upright && turned ? std::min(asIs, other) : upright ? asIs : other;
            }
            const Int128 whole = Int128{f.whole} * g.whole;
            bound = std::max(bound, static_cast<int64_t>((sum + whole - 1) / whole));
        }
    return bound;
}

int64_t stripBound(const std::vector<Box>& boxes, int64_t width, bool mayTurn) {
    int64_t bound = 0;
    for (const Box& box : boxes) {
        const bool upright = box.width <= width;
        const bool turned = mayTurn && box.height <= width;
        bound = std::max(bound, upright && turned ? std::min(box.width, box.height) : upright ? box.height : box.width);
    }
    for (const Dual& f : dualsOf(boxes, width)) {
        Int128 sum = 0;
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const bool upright = boxes[i].width <= width;
            const bool turned = mayTurn && boxes[i].height <= width;
            const Int128 asIs = Int128{f.a[i]} * boxes[i].height;
            const Int128 other = Int128{f.b[i]} * boxes[i].width;
            sum += upright && turned ? std::min(asIs, other) : upright ? asIs : other;
        }
        bound = std::max(bound, static_cast<int64_t>((sum + f.whole - 1) / f.whole));
    }
    return bound;
}

} // namespace sp::layout
