// SPDX-License-Identifier: MIT
#include "core/artwork/stone_sizes.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace sp::artwork {

namespace {

StoneSize tenths(const char* name, std::int64_t smallest, std::int64_t largest) {
    return {name, units::Length::fromMicrometres(smallest * 100), units::Length::fromMicrometres(largest * 100)};
}

} // namespace

std::span<const StoneSize> publishedStoneSizes() {
    static const std::vector<StoneSize> sizes = {
        tenths("SS6", 19, 21),  tenths("SS8", 23, 25),  tenths("SS10", 27, 29), tenths("SS12", 30, 32),
        tenths("SS16", 38, 40), tenths("SS20", 46, 48), tenths("SS30", 63, 65), tenths("SS34", 71, 73),
    };
    return sizes;
}

std::optional<std::size_t> sizeOfHole(double diameterMm, double allowanceMm, std::span<const StoneSize> sizes) {
    const double stone = diameterMm - allowanceMm;
    std::optional<std::size_t> best;
    double nearest = 0;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        if (stone < sizes[i].smallest.millimetres() - kSizeSlackMm) continue;
        if (stone > sizes[i].largest.millimetres() + kSizeSlackMm) continue;
        const double away = std::abs(stone - sizes[i].middle().millimetres());
        if (!best || away < nearest) {
            best = i;
            nearest = away;
        }
    }
    return best;
}

namespace {

/// "SS10" is "ss" and 10.
struct SizeName {
    std::string letters;
    double number = 0;
};
std::optional<SizeName> partsOf(std::string_view name) {
    name = trimmed(name);
    SizeName parts;
    while (!name.empty() && isLetter(name.front())) {
        parts.letters.push_back(lower(name.front()));
        name.remove_prefix(1);
    }
    const auto number = numberFrom(name);
    if (!number) return std::nullopt;
    parts.number = *number;
    return parts;
}

} // namespace

std::vector<std::size_t> sizesBeside(std::string_view name, std::span<const StoneSize> sizes) {
    const auto asked = partsOf(name);
    if (!asked) return {};
    std::optional<std::size_t> below, above;
    std::vector<double> numbers(sizes.size());
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const auto own = partsOf(sizes[i].name);
        if (!own || (!asked->letters.empty() && own->letters != asked->letters)) continue;
        numbers[i] = own->number;
        if (own->number <= asked->number && (!below || numbers[*below] < own->number)) below = i;
        if (own->number >= asked->number && (!above || numbers[*above] > own->number)) above = i;
    }
    std::vector<std::size_t> beside;
    if (below) beside.push_back(*below);
    if (above && above != below) beside.push_back(*above);
    return beside;
}

std::optional<std::size_t> sizeNamed(std::string_view name, std::span<const StoneSize> sizes) {
    const auto same = [name](const StoneSize& size) {
        return std::equal(name.begin(), name.end(), size.name.begin(), size.name.end(),
                          [](char a, char b) { return lower(a) == lower(b); });
    };
    const auto found = std::find_if(sizes.begin(), sizes.end(), same);
    if (found == sizes.end()) return std::nullopt;
    return static_cast<std::size_t>(found - sizes.begin());
}

} // namespace sp::artwork
