// SPDX-License-Identifier: MIT
#include "core/supply/weighed_count.h"

#include "core/supply/messages.h"
#include "core/units/int128.h"

#include <fmt/format.h>

#include <algorithm>

namespace sp::supply {

namespace {

using units::Int128;

constexpr std::int64_t kMostMilligrams = 1'000'000'000;
constexpr std::int64_t kMostSample = 1'000'000;
constexpr std::int64_t kMostThings = 1'000'000'000;
constexpr std::int64_t kMilligrams = 1'000; ///< in a gram

std::string grams(std::int64_t milligrams) {
    auto text = fmt::format("{}.{:03}", milligrams / kMilligrams, milligrams % kMilligrams);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

bool isWeight(std::int64_t milligrams) { return milligrams >= 0 && milligrams <= kMostMilligrams; }

std::int64_t nearest(Int128 numerator, Int128 denominator) {
    const auto whole = numerator / denominator;
    const auto twice = 2 * (numerator % denominator);
    const bool isUp = twice > denominator || (twice == denominator && whole % 2 != 0);
    return static_cast<std::int64_t>(whole + (isUp ? 1 : 0));
}

} // namespace

base::Result<WeighedCount> countByWeight(const Weighing& weighing) {
    const auto& [sample, sampleWeight, tare, onScale, step] = weighing;
    for (const auto weight : {sampleWeight, tare, onScale, step})
        if (!isWeight(weight))
            return base::fail(Fault::WeightOutOfRange, "weight", grams(std::max<std::int64_t>(0, weight)));
    if (sample < 1 || sample > kMostSample || sampleWeight == 0) return base::fail(Fault::SampleOutOfRange, "sample");
    if (onScale < tare) return base::fail(Fault::WeightBelowTare, "weight", grams(onScale), grams(tare));
    if (2 * sampleWeight <= step) return base::fail(Fault::ScaleTooCoarse, "sample", grams(step), grams(sampleWeight));
    const Int128 net = onScale - tare;
    // Two readings make up what is on the tray, one the sample; in halves of a milligram.
    const Int128 lightest = std::max<Int128>(0, 2 * net - 2 * Int128(step));
    const Int128 heaviest = 2 * net + 2 * Int128(step);
    const Int128 most = (heaviest * sample + 2 * sampleWeight - step - 1) / (2 * sampleWeight - step);
    if (most > kMostThings) return base::fail(Fault::WeighedTooMany, "weight", kMostThings);
    return WeighedCount{nearest(net * sample, sampleWeight),
                        static_cast<std::int64_t>(lightest * sample / (2 * sampleWeight + step)),
                        static_cast<std::int64_t>(most)};
}

base::Result<std::int64_t> parseGrams(std::string_view text) {
    const auto refused = [&] { return base::fail(Fault::WeightOutOfRange, std::string(text), text); };
    const auto point = text.find('.');
    const auto whole = text.substr(0, point);
    const auto decimals = point == std::string_view::npos ? std::string_view() : text.substr(point + 1);
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    if (whole.empty() || whole.size() > 7 || decimals.size() > 3 ||
        (point != std::string_view::npos && decimals.empty()))
        return refused();
    if (!std::ranges::all_of(whole, isDigit) || !std::ranges::all_of(decimals, isDigit)) return refused();
    std::int64_t milligrams = 0;
    for (const char digit : whole) milligrams = milligrams * 10 + (digit - '0');
    for (std::size_t i = 0; i < 3; ++i) milligrams = milligrams * 10 + (i < decimals.size() ? decimals[i] - '0' : 0);
    if (!isWeight(milligrams)) return refused();
    return milligrams;
}

} // namespace sp::supply
