// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string_view>

namespace sp::supply {

/// What a scale showed, in milligrams.
struct Weighing {
    std::int64_t sample = 100;     ///< things counted by hand, 1 to 1,000,000
    std::int64_t sampleWeight = 0; ///< of those, without the tray, above 0
    std::int64_t tare = 0;         ///< of the empty tray
    std::int64_t onScale = 0;      ///< of the tray with all that is to be counted, the tare or more
    std::int64_t step = 10;        ///< the scale shows whole steps of it, 1 or more
};

/// How many things that are.
struct WeighedCount {
    std::int64_t count = 0; ///< (on the scale − tare) × sample ÷ weight of the sample, halves to even
    std::int64_t least = 0; ///< what the steps of the scale leave open
    std::int64_t most = 0;

    friend bool operator==(const WeighedCount&, const WeighedCount&) = default;
};

/// Counts by weight. Each of the three readings may be half a step off either way; that things differ in weight among
/// themselves is no part of `least` and `most`: a larger sample evens that out. Common practice, no source. Errors:
/// OutOfRange for a sample or a weight outside its range (weights are at most 1,000 kg); Invalid where the scale shows
/// less than the tare, or a sample is not above half a step; TooLarge for more things than a shelf may hold.
base::Result<WeighedCount> countByWeight(const Weighing& weighing);

/// Grams as typed, "12.34", to the milligram. Errors: OutOfRange for anything but 0 to 1,000,000 with at most three
/// decimals behind a point.
base::Result<std::int64_t> parseGrams(std::string_view text);

} // namespace sp::supply
