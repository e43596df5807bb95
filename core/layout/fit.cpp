// SPDX-License-Identifier: MIT
#include "core/layout/fit.h"

#include "core/layout/bounds.h"
#include "core/layout/l_shapes.h"
#include "core/layout/rules.h"
#include "core/layout/strips.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace sp::layout {

using units::Int128;

namespace {

/// A count with its bound and its first kMostPositions places, in ticks.
struct Answer {
    std::int64_t count = 0;
    std::int64_t bound = 0;
    std::vector<Spot> spots;
};

/// Rows and columns, all one way round.
Answer layPlain(const Problem& problem, bool turned) {
    const Tick spanX = turned ? problem.sideB : problem.sideA;
    const Tick spanY = turned ? problem.sideA : problem.sideB;
    const std::int64_t columns = problem.width / spanX;
    const std::int64_t rows = problem.height / spanY;
    Answer answer{columns * rows, columns * rows, {}};
    const std::int64_t shown = std::min(answer.count, kMostPositions);
    for (std::int64_t k = 0; k < shown; ++k)
        answer.spots.push_back({k / rows * spanX, k % rows * spanY, turned});
    return answer;
}

/// Every layout the searches know; nothing when the sheet has too many different sums.
std::optional<Answer> search(const Problem& problem) {
    const Grid grid(problem, kMostSums);
    if (!grid.fits()) return {};
    Work work(kFiveBlockWork);
    FiveBlock five(grid, work);
    const int width = grid.below(problem.width);
    const int height = grid.below(problem.height);
    Answer answer;
    answer.count = five.solve(width, height);
    answer.bound = five.upper(width, height);
    if (answer.count == answer.bound) {
        five.place(width, height, {}, answer.spots);
        return answer;
    }
    Work more(kLShapeWork);
    LShapes shapes(grid, five, more);
    while (answer.count < answer.bound && shapes.reaches(width, height, static_cast<int>(answer.count) + 1)) {
        ++answer.count;
    }
    shapes.place(width, height, {}, answer.spots);
    answer.count = static_cast<std::int64_t>(answer.spots.size());
    return answer;
}

/// Strips along the longer side.
Answer layStrips(const Problem& problem) {
    const bool upright = problem.width >= problem.height;
    const Problem along =
        upright ? problem : Problem{problem.height, problem.width, problem.sideA, problem.sideB};
    Work work(kFiveBlockWork);
    Strips strips(along, work);
    Answer answer;
    answer.bound = upperBound(problem);
    const Chain chain(strips.links(), answer.bound);
    answer.count = chain.mostWithin(along.width);
    strips.placeAll(chain.parts(answer.count), kMostPositions, answer.spots);
    if (upright) return answer;
    for (Spot& spot : answer.spots)
        spot = {spot.y, spot.x, !spot.turned};
    return answer;
}

Answer solve(const Problem& problem, bool oneWay) {
    if (oneWay || problem.sideA == problem.sideB) return layPlain(problem, false);
    if (auto answer = search(problem)) return *std::move(answer);
    return layStrips(problem);
}

} // namespace

base::Result<SheetFit> fitSheet(const Sheet& sheet, const Piece& piece, const FitRules& rules) {
    const auto scaled = scale(sheet, piece, rules);
    if (!scaled) return base::fail(scaled.error());
    const Problem& problem = scaled->problem;
    const Int128 ratio = static_cast<Int128>(problem.width) * problem.height /
                         (static_cast<Int128>(problem.sideA) * problem.sideB);
    if (ratio > kMostPieces) {
        return base::fail(
            base::Code::TooLarge, "piece",
            fmt::format("More than {} pieces of {} would fit the sheet; check the unit the piece was "
                        "entered in.",
                        kMostPieces, inWords(piece.width, piece.height)));
    }
    const Answer answer = solve(problem, rules.oneWay);
    return SheetFit{answer.count, answer.bound, answer.count == answer.bound,
                    scaled->positions(answer.spots)};
}

} // namespace sp::layout
