// SPDX-License-Identifier: MIT
#include "core/layout/bounds.h"

#include <algorithm>

namespace sp::layout {

using units::Int128;

namespace {

constexpr std::int64_t kTryEach = 2'000;
constexpr Tick kMaxHullLength = 200'000; // pieces along a side; beyond it Barnes' bound is within a millionth or so
constexpr Tick kShortSide = 1 << 19;     // up to here every product of three sides fits 64 bits with room for a sum

/// Nearly every sheet: reckoned in 64 bits, where a division costs a tenth of one in 128.
bool isShort(const Problem& problem) {
    return std::max({problem.width, problem.height, problem.sideA, problem.sideB}) <= kShortSide;
}

struct Point {
    Tick x;
    Tick y;
};

/// The corners of the convex hull of {(i, j): i a + j b <= length}, from the greatest j to the greatest i.
std::vector<Point> hullOfSums(Tick length, Tick a, Tick b) {
    std::vector<Point> hull;
    const Tick most = length / a;
    for (Tick i = 0; i <= most; ++i) {
        const Point next{i, (length - i * a) / b};
        while (hull.size() >= 2) {
            const Point& u = hull[hull.size() - 2];
            const Point& v = hull.back();
            const Int128 turn =
                static_cast<Int128>(v.x - u.x) * (next.y - u.y) - static_cast<Int128>(v.y - u.y) * (next.x - u.x);
            if (turn < 0) break;
            hull.pop_back();
        }
        hull.push_back(next);
    }
    return hull;
}

/// perFirst * first + perSecond * second <= limit for the counts of upright and turned pieces.
template<class Whole>
struct Limit {
    Whole perFirst;
    Whole perSecond;
    Whole limit;
};

/// Lines of `count` ticks; every upright piece is met by `linesFirst` of them, every turned one by
/// `linesSecond`.
template<class Whole>
void addLimits(std::vector<Limit<Whole>>& limits, const std::vector<Point>& hull, Tick count, Tick linesFirst,
               Tick linesSecond) {
    limits.push_back({0, linesSecond, static_cast<Whole>(hull.front().y) * count});
    limits.push_back({linesFirst, 0, static_cast<Whole>(hull.back().x) * count});
    for (std::size_t k = 1; k < hull.size(); ++k) {
        const Whole nx = hull[k - 1].y - hull[k].y;
        const Whole ny = hull[k].x - hull[k - 1].x;
        limits.push_back({nx * linesFirst, ny * linesSecond, (nx * hull[k].x + ny * hull[k].y) * count});
    }
}

template<class Whole>
std::int64_t mostSecond(const std::vector<Limit<Whole>>& limits, std::int64_t first) {
    Whole most = -1;
    for (const auto& line : limits) {
        const Whole left = line.limit - line.perFirst * first;
        if (left < 0) return -1;
        if (line.perSecond == 0) continue;
        const Whole here = left / line.perSecond;
        if (most < 0 || here < most) most = here;
    }
    return static_cast<std::int64_t>(most);
}

/// The greatest sum of both counts when there are too many to try each: the sum is concave in `first`, so
/// halving finds its peak; rounding can only raise the answer.
template<class Whole>
std::int64_t peakOf(const std::vector<Limit<Whole>>& limits, std::int64_t last) {
    const auto sum = [&limits](std::int64_t first) {
        long double second = -1;
        for (const auto& line : limits) {
            if (line.perSecond == 0) continue;
            const auto left = static_cast<long double>(line.limit - line.perFirst * first);
            const long double here = left / static_cast<long double>(line.perSecond);
            if (second < 0 || here < second) second = here;
        }
        return static_cast<long double>(first) + second;
    };
    std::int64_t low = 0;
    std::int64_t high = last;
    while (low < high) {
        const std::int64_t middle = low + (high - low) / 2;
        if (sum(middle) < sum(middle + 1)) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    return static_cast<std::int64_t>(sum(low) + 1e-6L);
}

/// Cells (i, j) of an r x s block with i + j == diagonal.
Tick cellsOn(Tick diagonal, Tick r, Tick s) {
    return std::max<Tick>(0, std::min({diagonal + 1, r, s, r + s - 1 - diagonal}));
}

Tick modulo(Tick value, Tick side) { return ((value % side) + side) % side; }

/// A block of r x s cells (remainders, < side) whose corner has colour `from`.
struct Block {
    Tick from;
    Tick r;
    Tick s;

    Tick cells(Tick colour, Tick side) const {
        const Tick local = colour >= from ? colour - from : colour - from + side; // both < side
        return cellsOn(local, r, s) + cellsOn(local + side, r, s);
    }
};

/// The waste that bars of 1 x side must leave in an L, colours i + j when `rising`, else i - j.
Int128 barWaste(Tick width, Tick height, Tick armX, Tick armY, Tick side, bool rising) {
    // The L is the bar [0, width) x [0, armY) below [0, armX) x [armY, height); the full rounds of a colour
    // cancel.
    const Tick r1 = width % side;
    const Tick s1 = armY % side;
    const Tick r2 = armX % side;
    const Tick s2 = (height - armY) % side;
    // Falling colours are rising ones seen from the top of each block.
    const Block lower{rising ? 0 : modulo(-(armY - 1), side), r1, s1};
    const Block upper{rising ? modulo(armY, side) : modulo(-(height - 1), side), r2, s2};
    // A whole round of columns or rows holds every colour equally, so only the r x s remainder matters; when
    // falling, the remainder is taken at the top rows, which is where `from` stands.
    Tick rarest = -1;
    const auto look = [&](Tick colour) {
        const Tick cells = lower.cells(colour, side) + upper.cells(colour, side);
        if (rarest < 0 || cells < rarest) rarest = cells;
    };
    // The count is piecewise linear in the colour: its least value lies at a bend of one of the two blocks.
    constexpr Tick kFew = 16;
    if (side <= kFew) {
        for (Tick colour = 0; colour < side; ++colour) look(colour);
    } else {
        for (const Block& block : {lower, upper}) {
            for (const Tick bend : {Tick{-1}, Tick{0}, block.r - 1, block.r, block.s - 1, block.s,
                                    block.r + block.s - 2, block.r + block.s - 1, block.r + block.s}) {
                look(modulo(block.from + bend, side));
            }
        }
    }
    const Int128 total = static_cast<Int128>(r1) * s1 + static_cast<Int128>(r2) * s2;
    return total - static_cast<Int128>(rarest) * side;
}

template<class Whole>
std::int64_t barnesIn(const Problem& problem) {
    const Whole cells = static_cast<Whole>(problem.width) * problem.height;
    Whole waste = 0;
    for (const Tick side : {problem.sideA, problem.sideB}) {
        const Tick r = problem.width % side;
        const Tick s = problem.height % side;
        waste = std::max(waste, std::min(static_cast<Whole>(r) * s, static_cast<Whole>(side - r) * (side - s)));
    }
    return static_cast<std::int64_t>((cells - waste) / (static_cast<Whole>(problem.sideA) * problem.sideB));
}

template<class Whole>
std::int64_t partitionIn(const Problem& problem) {
    const auto& [width, height, a, b] = problem;
    std::vector<Limit<Whole>> limits;
    addLimits(limits, hullOfSums(width, a, b), height, b, a);
    addLimits(limits, hullOfSums(height, b, a), width, a, b);
    Whole mostFirst = -1;
    for (const auto& line : limits) {
        if (line.perFirst == 0) continue;
        const Whole here = line.limit / line.perFirst;
        if (mostFirst < 0 || here < mostFirst) mostFirst = here;
    }
    const auto last = static_cast<std::int64_t>(mostFirst);
    if (last > kTryEach) return peakOf(limits, last);
    std::int64_t best = 0;
    for (std::int64_t first = 0; first <= last; ++first) {
        const std::int64_t second = mostSecond(limits, first);
        if (second >= 0) best = std::max(best, first + second);
    }
    return best;
}

} // namespace

std::int64_t barnesBound(const Problem& problem) {
    return isShort(problem) ? barnesIn<std::int64_t>(problem) : barnesIn<Int128>(problem);
}

std::int64_t partitionBound(const Problem& problem) {
    if (problem.width / problem.sideA > kMaxHullLength || problem.height / problem.sideB > kMaxHullLength)
        return barnesBound(problem);
    return isShort(problem) ? partitionIn<std::int64_t>(problem) : partitionIn<Int128>(problem);
}

std::int64_t relaxedBound(const Problem& problem, std::int64_t enough, Tick mostSide) {
    constexpr Tick kMaxPlay = 4;
    constexpr Tick kMaxRelaxed = 10'000; // pieces along a side, so that nothing below overflows
    const auto& [width, height, a, b] = problem;
    std::int64_t best = upperBound(problem);
    if (best <= enough || width / a > kMaxRelaxed || height / b > kMaxRelaxed) return best;
    const auto across = hullOfSums(width, a, b);
    const auto up = hullOfSums(height, b, a);
    const auto longest = [](const std::vector<Point>& hull, Tick perX, Tick perY) {
        Tick most = 0;
        for (const auto& corner : hull) most = std::max(most, corner.x * perX + corner.y * perY);
        return most;
    };
    for (Tick newA = 1; newA <= mostSide; ++newA) {
        for (Tick newB = 1; newB <= mostSide; ++newB) {
            const Tick newWidth = longest(across, newA, newB);
            const Tick newHeight = longest(up, newB, newA);
            const Tick side = std::max(newA, newB);
            // Barnes' waste is at most a quarter of the side's square: often that is too little to help.
            if (newWidth * newHeight - side * side / 4 >= best * newA * newB) continue;
            for (Tick playX = 0; playX < kMaxPlay; ++playX) {
                for (Tick playY = 0; playY < kMaxPlay; ++playY) {
                    best = std::min(best, barnesBound({newWidth + playX, newHeight + playY, newA, newB}));
                }
            }
            if (best <= enough) return best;
        }
    }
    return best;
}

std::int64_t upperBound(const Problem& problem) { return std::min(barnesBound(problem), partitionBound(problem)); }

std::int64_t lShapeBound(Tick width, Tick height, Tick armX, Tick armY, Tick sideA, Tick sideB) {
    const Int128 cells = static_cast<Int128>(width) * armY + static_cast<Int128>(armX) * (height - armY);
    Int128 waste = 0;
    for (const Tick side : {sideA, sideB}) {
        waste = std::max(
            {waste, barWaste(width, height, armX, armY, side, true), barWaste(width, height, armX, armY, side, false)});
    }
    return static_cast<std::int64_t>((cells - waste) / (static_cast<Int128>(sideA) * sideB));
}

} // namespace sp::layout
