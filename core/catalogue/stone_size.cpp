// SPDX-License-Identifier: MIT
#include "core/catalogue/stone_size.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace sp::catalogue {

namespace {

constexpr StoneSize row(std::string_view name, std::int64_t smallestUm, std::int64_t largestUm) {
    return {name, units::Length::fromMicrometres(smallestUm), units::Length::fromMicrometres(largestUm)};
}

constexpr std::array kSizes{
    row("SS6", 1900, 2100),  row("SS8", 2300, 2500),  row("SS10", 2700, 2900),
    row("SS12", 3000, 3200), row("SS16", 3800, 4000), row("SS20", 4600, 4800),
    row("SS30", 6300, 6500), row("SS34", 7100, 7300), row("SS40", 8500, 8700),
};

} // namespace

std::span<const StoneSize> stoneSizes() { return kSizes; }

std::optional<StoneSize> stoneSizeNamed(std::string_view name) {
    const auto same = [&](const StoneSize& size) {
        return std::equal(size.name.begin(), size.name.end(), name.begin(), name.end(), [](char a, char b) {
            return a == static_cast<char>(std::toupper(static_cast<unsigned char>(b)));
        });
    };
    const auto found = std::find_if(kSizes.begin(), kSizes.end(), same);
    if (found == kSizes.end()) return std::nullopt;
    return *found;
}

} // namespace sp::catalogue
