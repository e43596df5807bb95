// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/temperature.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace sp::catalogue {

/// Work at the bench, in the order it is done. Art to SetUp are done once for a job and fall away when the templates
/// hang on the wall; the others are done for every piece.
enum class Step { Art, Cut, Weed, SetUp, Brush, Lift, Press, Trim, Pack };

inline constexpr std::array kSteps{Step::Art,  Step::Cut,   Step::Weed, Step::SetUp, Step::Brush,
                                   Step::Lift, Step::Press, Step::Trim, Step::Pack};

constexpr bool isOncePerJob(Step step) { return step <= Step::SetUp; }
/// Done at the piece, however many designs are on it; the others are done for each of them.
constexpr bool isForThePiece(Step step) { return step >= Step::Trim; }

/// "brush", "set up": in English, lower case.
constexpr std::string_view nameOf(Step step) {
    constexpr std::array<std::string_view, kSteps.size()> names{"art",  "cut",   "weed", "set up", "brush",
                                                                "lift", "press", "trim", "pack"};
    return names[static_cast<std::size_t>(step)];
}

/// How long a step takes. A once-per-job step takes perJob + perColour × colours + per100Stones × stones of one
/// piece / 100. A step done for every piece takes perJob once, perPiece + perColour × colours + per100Stones × stones /
/// 100 for each piece, and perCycle for each press cycle that the pieces take: loading, closing and opening the press
/// is done once for all that lie under its platen. `learning` (Crawford) is the share of the time for a piece, and for
/// a cycle, which the one of twice the number takes: 100 % has no effect; range 50 to 100 %.
struct StepStandard {
    units::Duration perJob;
    units::Duration perColour;
    units::Duration perPiece;
    units::Duration per100Stones;
    units::Rate learning = units::Rate::fromPercent(100);
    units::Duration perCycle = {}; ///< of no step that is done once

    friend bool operator==(const StepStandard&, const StepStandard&) = default;
};

/// The heat press: what a cycle takes, what an hour of it costs to run, what it loses in worth.
struct HeatPress {
    units::Money price;
    units::Money salvage;
    std::int64_t lifePresses = 100'000; ///< cycles it is expected to last, 1 or more
    units::Length platenWidth;
    units::Length platenHeight;
    units::Duration dwell;
    units::Duration handling;
    units::Duration warmUp;
    std::int64_t testPresses = 1;
    units::Rate secondPressShare; ///< share of the pieces that get a short second press
    units::Duration secondDwell;
    units::Money runningPerHour;
    units::Temperature temperature; ///< as noted on the bench; the maker's sheet rules

    friend bool operator==(const HeatPress&, const HeatPress&) = default;
};

struct Cutter {
    units::Money price;
    units::Money salvage;
    std::int64_t lifeHoles = 10'000'000; ///< holes it is expected to cut, 1 or more

    friend bool operator==(const Cutter&, const Cutter&) = default;
};

/// "Time your own bench": starting values until the owner did.
struct BenchStandards {
    std::array<StepStandard, kSteps.size()> steps{};
    HeatPress press;
    Cutter cutter;

    const StepStandard& of(Step step) const { return steps[static_cast<std::size_t>(step)]; }
    StepStandard& of(Step step) { return steps[static_cast<std::size_t>(step)]; }

    friend bool operator==(const BenchStandards&, const BenchStandards&) = default;
};

} // namespace sp::catalogue
