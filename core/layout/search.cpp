// SPDX-License-Identifier: MIT
#include "core/layout/search.h"

#include "core/layout/bounds.h"
#include "core/layout/fit.h"
#include "core/layout/l_shapes.h"

#include <algorithm>

namespace sp::layout {

using units::Int128;

namespace {

constexpr std::int64_t kQuickWork = 30'000;

/// Whether `count` pieces would leave less than half a piece of waste.
bool isTight(Tick width, Tick height, const Problem& problem, std::int64_t count) {
    const Int128 piece = static_cast<Int128>(problem.sideA) * problem.sideB;
    return 2 * (static_cast<Int128>(width) * height - piece * count) < piece;
}

/// Whether more than every other length is a sum of sides. Where few are, as of pieces measured in tenths of a
/// millimetre, no L-shaped layout was better in 14,000 tries.
bool isDense(const Grid& grid, Tick width) { return 2 * static_cast<Tick>(grid.size()) > width; }

std::optional<Answer> searchUpright(const Problem& problem, std::int64_t lShapeWork) {
    const Grid grid(problem, kMaxSums);
    if (!grid.fits()) return {};
    const int width = grid.below(problem.width);
    const int height = grid.below(problem.height);
    // Most sheets are settled within few cuts; for the others a sharper bound first often saves the search.
    Work quick(kQuickWork);
    FiveBlock first(grid, quick);
    Answer answer;
    answer.count = first.solve(width, height);
    answer.bound = first.upper(width, height);
    if (answer.count < answer.bound) answer.bound = relaxedBound(problem, answer.count, kRootSide);
    if (answer.count == answer.bound) {
        first.place(width, height, {}, answer.spots);
        return answer;
    }
    Work work(kFiveBlockWork);
    FiveBlock five(grid, work);
    five.cap(width, height, static_cast<int>(answer.bound));
    answer.count = five.solve(width, height);
    answer.bound = std::min<std::int64_t>(answer.bound, five.upper(width, height));
    if (answer.count < answer.bound) answer.bound = relaxedBound(problem, answer.count, kRootSide);
    if (answer.count == answer.bound) {
        five.place(width, height, {}, answer.spots);
        return answer;
    }
    const bool mayHelp = isTight(grid.at(width), grid.at(height), problem, answer.count + 1) &&
                         isDense(grid, std::max(problem.width, problem.height));
    Work more(mayHelp ? lShapeWork : std::min(lShapeWork, kLooseWork));
    LShapes shapes(grid, five, more);
    while (answer.count < answer.bound && shapes.reaches(width, height, static_cast<int>(answer.count) + 1)) {
        ++answer.count;
    }
    shapes.place(width, height, {}, answer.spots);
    // A part may have been improved after the whole was counted.
    answer.count = static_cast<std::int64_t>(answer.spots.size());
    return answer;
}

} // namespace

std::optional<Answer> search(const Problem& problem, std::int64_t lShapeWork) {
    const Upright upright(problem);
    auto answer = searchUpright(upright.problem, lShapeWork);
    if (answer) upright.undo(answer->spots);
    return answer;
}

} // namespace sp::layout
