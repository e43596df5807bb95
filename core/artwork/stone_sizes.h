// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/length.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sp::artwork {

/// A stone size as the trade sells it: a name and the range of diameters of its stones.
struct StoneSize {
    std::string name;
    units::Length smallest;
    units::Length largest;

    units::Length middle() const {
        return units::Length::fromNanometres((smallest.nanometres() + largest.nanometres()) / 2);
    }
    friend bool operator==(const StoneSize&, const StoneSize&) = default;
};

/// SS6 to SS34 as two published charts give them alike (threadart.com, "Rhinestone facts"; taylorcrystal.hu,
/// size table): a convention of the trade without a standard behind it, so a shop may well hand in a table of
/// its own.
std::span<const StoneSize> publishedStoneSizes();

/// Drawn diameters within this of a range belong to it: drawing programs round to hundredths.
inline constexpr double kSizeSlackMm = 0.02;

/// Index of the size whose stones drop into a hole of `diameterMm` cut `allowanceMm` larger than they are;
/// where two ranges hold it, the one whose middle is nearer. Nothing when none does.
std::optional<std::size_t> sizeOfHole(double diameterMm, double allowanceMm, std::span<const StoneSize> sizes);

/// The sizes whose numbers are next below and above that of a name none has, as SS10 and SS12 for "SS11": indices, the
/// smaller first; none where the name has no number or letters of its own.
std::vector<std::size_t> sizesBeside(std::string_view name, std::span<const StoneSize> sizes);

/// The size of this name, in any case ("ss10").
std::optional<std::size_t> sizeNamed(std::string_view name, std::span<const StoneSize> sizes);

} // namespace sp::artwork
