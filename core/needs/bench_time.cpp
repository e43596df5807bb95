// SPDX-License-Identifier: MIT
#include "core/needs/bench_time.h"

#include "core/needs/learning.h"
#include "core/units/fraction.h"

#include <cmath>
#include <numeric>

namespace sp::needs {

namespace {

using catalogue::Step;
using units::Duration;
using units::Fraction;

/// Of one piece, or of the one set of templates: hundredths of a millisecond, so that per-100-stones stays whole.
units::Int128 hundredthsForOne(const catalogue::StepStandard& standard, Duration plain, units::Int128 colours,
                               units::Int128 stones) {
    return 100 * (static_cast<units::Int128>(plain.milliseconds()) + colours * standard.perColour.milliseconds()) +
           stones * standard.per100Stones.milliseconds();
}

/// How many colours and stones a step has to do with.
struct Work {
    std::int64_t colours = 0;
    std::int64_t stones = 0;

    explicit Work(const catalogue::Placement& place)
        : colours(static_cast<std::int64_t>(place.stones.size())) {
        for (const auto& stone : place.stones) stones += stone.count.value();
    }
    explicit Work(const catalogue::OrderLine& line) {
        for (const auto& place : line.places) {
            const Work there(place);
            colours += there.colours;
            stones += there.stones;
        }
    }
};

/// `pieces` of the line of the `setPieces` that it is done for.
Duration onceFor(Step step, const catalogue::StepStandard& standard, const catalogue::Placement& place,
                 std::int64_t pieces, std::int64_t setPieces) {
    if (place.templatesOnWall || setPieces == 0) return {};
    const Work work(place);
    const Duration fixed = step == Step::Art && place.artTime ? *place.artTime : standard.perJob;
    return Duration::fromMilliseconds(
        Fraction::ratio(hundredthsForOne(standard, fixed, work.colours, work.stones) * pieces,
                        units::Int128{100} * setPieces)
            .roundedHalfEven());
}

Duration forPieces(const catalogue::StepStandard& standard, const Work& work, std::int64_t pieces,
                   std::int64_t cycles) {
    const units::Int128 one = hundredthsForOne(standard, standard.perPiece, work.colours, work.stones);
    const units::Int128 cycle = standard.perCycle.milliseconds();
    if (standard.learning.ppm() == units::kPpm)
        return standard.perJob +
               Duration::fromMilliseconds(Fraction::ratio(one * pieces + 100 * cycle * cycles, 100).roundedHalfEven());
    double learned = static_cast<double>(one) / 100 * totalTimeFactor(standard.learning, pieces);
    if (!standard.perCycle.isZero()) learned += static_cast<double>(cycle) * totalTimeFactor(standard.learning, cycles);
    return standard.perJob + Duration::fromMilliseconds(std::llround(learned));
}

Duration durationOf(Step step, const catalogue::StepStandard& standard, const catalogue::OrderLine& line,
                    std::int64_t pieces, std::span<const std::int64_t> cycles,
                    std::span<const units::Count> setPieces) {
    if (line.isCharge()) return {};
    if (catalogue::isForThePiece(step))
        return forPieces(standard, Work(line), pieces, std::accumulate(cycles.begin(), cycles.end(), std::int64_t{0}));
    Duration sum;
    for (std::size_t i = 0; i < line.places.size(); ++i) {
        const auto& place = line.places[i];
        sum += catalogue::isOncePerJob(step)
                   ? onceFor(step, standard, place, pieces, setPieces.empty() ? pieces : setPieces[i].value())
                   : forPieces(standard, Work(place), pieces, cycles[i]);
    }
    return sum;
}

} // namespace

Duration BenchTime::oncePerJob() const {
    Duration sum;
    for (const Step step : catalogue::kSteps)
        if (catalogue::isOncePerJob(step)) sum += of(step);
    return sum;
}

Duration BenchTime::forPieces() const {
    Duration sum;
    for (const Step step : catalogue::kSteps)
        if (!catalogue::isOncePerJob(step)) sum += of(step);
    return sum;
}

Duration BenchTime::untilPacked() const { return forPieces() - of(Step::Pack); }

BenchTime benchTime(const catalogue::BenchStandards& standards, const catalogue::OrderLine& line, std::int64_t pieces,
                    std::span<const std::int64_t> cycles, std::span<const units::Count> setPieces) {
    BenchTime time;
    for (const Step step : catalogue::kSteps)
        time.steps[static_cast<std::size_t>(step)] =
            durationOf(step, standards.of(step), line, pieces, cycles, setPieces);
    return time;
}

} // namespace sp::needs
