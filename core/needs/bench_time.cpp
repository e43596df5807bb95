// SPDX-License-Identifier: MIT
#include "core/needs/bench_time.h"

#include "core/needs/learning.h"
#include "core/units/fraction.h"

#include <cmath>

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

Duration durationOf(Step step, const catalogue::StepStandard& standard, const catalogue::OrderLine& line,
                    std::int64_t colours, std::int64_t stones, std::int64_t pieces) {
    if (catalogue::isOncePerJob(step)) {
        if (line.templatesOnWall) return {};
        const Duration fixed = step == Step::Art && line.artTime ? *line.artTime : standard.perJob;
        return Duration::fromMilliseconds(
            Fraction::ratio(hundredthsForOne(standard, fixed, colours, stones), 100).roundedHalfEven());
    }
    const units::Int128 one = hundredthsForOne(standard, standard.perPiece, colours, stones);
    if (standard.learning.ppm() == units::kPpm)
        return standard.perJob + Duration::fromMilliseconds(Fraction::ratio(one * pieces, 100).roundedHalfEven());
    const double learned = static_cast<double>(one) / 100 * totalTimeFactor(standard.learning, pieces);
    return standard.perJob + Duration::fromMilliseconds(std::llround(learned));
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

BenchTime benchTime(const catalogue::BenchStandards& standards, const catalogue::OrderLine& line, std::int64_t pieces) {
    std::int64_t stones = 0;
    for (const auto& stone : line.stones) stones += stone.count.value();
    const auto colours = static_cast<std::int64_t>(line.stones.size());
    BenchTime time;
    for (const Step step : catalogue::kSteps)
        time.steps[static_cast<std::size_t>(step)] =
            durationOf(step, standards.of(step), line, colours, stones, pieces);
    return time;
}

} // namespace sp::needs
