// SPDX-License-Identifier: MIT
#include "core/layout/roll.h"

#include "core/layout/bounds.h"
#include "core/layout/messages.h"
#include "core/layout/rules.h"
#include "core/layout/search.h"
#include "core/layout/strips.h"

#include <algorithm>
#include <utility>

namespace sp::layout {

using units::Length;

namespace {

constexpr int kMaxCandidates = 24;                 // lengths between bound and answer that are looked at
constexpr std::int64_t kCandidateWork = 1'000'000; // and cuts tried on Ls for each

/// In ticks, the roll's length as the problem's width.
struct Need {
    Tick length = 0;
    Tick bound = 0;
    std::int64_t count = 0;
    std::vector<Spot> spots;
};

/// The least sum of piece sides >= length.
Tick nextSum(Tick length, Tick sideA, Tick sideB) {
    constexpr Tick kMaxTries = 100'000;
    const Tick tries = std::min({length / sideA + 1, sideB, kMaxTries});
    Tick best = (length + sideA - 1) / sideA * sideA;
    for (Tick a = 0; a < tries && a * sideA <= length; ++a) {
        best = std::min(best, a * sideA + (length - a * sideA + sideB - 1) / sideB * sideB);
    }
    return tries == kMaxTries ? length : best;
}

/// Rows across the roll, all one way round.
Need layRows(const Problem& problem, std::int64_t pieces) {
    const std::int64_t across = problem.height / problem.sideB;
    Need need;
    need.length = (pieces + across - 1) / across * problem.sideA;
    need.bound = need.length;
    need.count = pieces;
    for (std::int64_t k = 0; k < std::min(pieces, kMaxPositions); ++k) {
        need.spots.push_back({k / across * problem.sideA, k % across * problem.sideB, false});
    }
    return need;
}

/// A length below which `pieces` do not fit, found by halving: the true count never falls as a roll grows.
Tick lowerBound(const Problem& problem, std::int64_t pieces, Tick known) {
    Tick low = 0; // too short
    Tick high = known;
    while (high - low > 1) {
        const Tick middle = low + (high - low) / 2;
        (upperBound({middle, problem.height, problem.sideA, problem.sideB}) < pieces ? low : high) = middle;
    }
    return nextSum(low + 1, problem.sideA, problem.sideB);
}

/// Looks at the lengths between the bound and the answer, shortest first, and closes the gap from both ends.
void closeGap(Need& need, const Problem& problem, std::int64_t pieces) {
    Tick length = need.bound;
    for (int k = 0; k < kMaxCandidates && length < need.length; ++k) {
        const Problem sheet{length, problem.height, problem.sideA, problem.sideB};
        const Tick next = nextSum(length + 1, problem.sideA, problem.sideB);
        if (relaxedBound(sheet, pieces - 1, kRootSide) < pieces) {
            need.bound = next; // and so is every shorter one
        } else if (auto answer = search(sheet, kCandidateWork); answer && answer->count >= pieces) {
            need.length = length;
            need.count = answer->count;
            need.spots = std::move(answer->spots);
        }
        length = next;
    }
}

Need layStrips(const Problem& roll, std::int64_t pieces) {
    Problem problem = roll;
    const auto rows = [&](Tick along, Tick across) {
        const std::int64_t each = problem.height / across;
        return each == 0 ? roll.width : (pieces + each - 1) / each * along;
    };
    problem.width = std::min(rows(problem.sideA, problem.sideB), rows(problem.sideB, problem.sideA));
    Work work(kFiveBlockWork);
    Strips strips(problem, work);
    const Chain chain(strips.links(), pieces);
    const auto parts = chain.parts(pieces);
    Need need;
    need.length = chain.shortest(pieces);
    for (const auto& [link, times] : parts) need.count += strips.links()[link].count * times;
    need.bound = lowerBound(problem, pieces, need.length);
    strips.placeAll(parts, kMaxPositions, need.spots);
    closeGap(need, problem, pieces);
    return need;
}

} // namespace

base::Result<RollNeed> lengthForPieces(Length rollWidth, const Piece& piece, const FitRules& rules,
                                       std::int64_t pieces) {
    if (pieces < 1 || pieces > kMaxRollPieces) {
        return base::fail(Fault::PieceCountOutOfRange, "pieces", kMaxRollPieces);
    }
    const auto scaled = scale({rollWidth, units::kMaxLength}, piece, rules, true);
    if (!scaled) return base::fail(scaled.error());
    const auto& [across, along, sideA, sideB] = scaled->problem;
    const Problem problem{along, across, sideB, sideA};
    const Need need = rules.oneWay || sideA == sideB ? layRows(problem, pieces) : layStrips(problem, pieces);
    const auto onRoll = [&](Tick length) {
        return Length::fromNanometres(length * scaled->unit) - rules.gap + rules.margin + rules.margin;
    };
    if (need.length > along || onRoll(need.length) > units::kMaxLength) {
        return base::fail(Fault::TooMuchRoll, "pieces", pieces, units::extent(piece.width, piece.height));
    }
    std::vector<Spot> spots = need.spots;
    for (Spot& spot : spots) spot = {spot.y, spot.x, spot.turned};
    return RollNeed{onRoll(need.length), need.count, onRoll(need.bound), need.length == need.bound,
                    scaled->positions(spots)};
}

} // namespace sp::layout
