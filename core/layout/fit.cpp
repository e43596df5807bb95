// SPDX-License-Identifier: MIT
#include "core/layout/fit.h"

#include "core/layout/bounds.h"
#include "core/layout/messages.h"
#include "core/layout/rules.h"
#include "core/layout/search.h"
#include "core/layout/strips.h"

#include <algorithm>
#include <utility>

namespace sp::layout {

using units::Int128;

namespace {

/// Rows and columns, all upright.
Answer layPlain(const Problem& problem) {
    const std::int64_t columns = problem.width / problem.sideA;
    const std::int64_t rows = problem.height / problem.sideB;
    Answer answer{columns * rows, columns * rows, {}};
    const std::int64_t shown = std::min(answer.count, kMaxPositions);
    for (std::int64_t k = 0; k < shown; ++k) {
        answer.spots.push_back({k / rows * problem.sideA, k % rows * problem.sideB, false});
    }
    return answer;
}

constexpr Tick kLongRoll = 20; ///< times as long as wide

/// Strips along the longer side.
Answer layStrips(const Problem& asked) {
    const Upright upright(asked);
    // A long roll has many tiles, and a little more work on each is worth it.
    Work work(upright.problem.width > kLongRoll * upright.problem.height ? kFiveBlockWork : kStripWork);
    Strips strips(upright.problem, work);
    const Chain chain(strips.links(), upperBound(upright.problem));
    Answer answer;
    answer.count = chain.mostWithin(upright.problem.width);
    answer.bound = relaxedBound(upright.problem, answer.count, kRootSide);
    strips.placeAll(chain.parts(answer.count), kMaxPositions, answer.spots);
    upright.undo(answer.spots);
    return answer;
}

Answer solve(const Problem& problem, bool oneWay) {
    if (oneWay || problem.sideA == problem.sideB) return layPlain(problem);
    if (auto answer = search(problem, kLShapeWork)) return *std::move(answer);
    return layStrips(problem);
}

} // namespace

base::Result<SheetFit> fitSheet(const Sheet& sheet, const Piece& piece, const FitRules& rules) {
    const auto scaled = scale(sheet, piece, rules);
    if (!scaled) return base::fail(scaled.error());
    const Problem& problem = scaled->problem;
    const Int128 ratio =
        static_cast<Int128>(problem.width) * problem.height / (static_cast<Int128>(problem.sideA) * problem.sideB);
    if (ratio > kMaxPieces) {
        return base::fail(Fault::TooManyWouldFit, "piece", kMaxPieces, units::extent(piece.width, piece.height));
    }
    const Answer answer = solve(problem, rules.oneWay);
    return SheetFit{answer.count, answer.bound, answer.count == answer.bound, scaled->positions(answer.spots)};
}

} // namespace sp::layout
