// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/length.h"

#include <optional>
#include <span>
#include <string_view>

namespace sp::catalogue {

/// One row of the SS table. Sizes are a convention of the trade without a standard behind it: makers differ, so both
/// ends of the range are kept and the middle is derived.
struct StoneSize {
    std::string_view name; ///< "SS10"
    units::Length smallest;
    units::Length largest;

    constexpr units::Length middle() const {
        return units::Length::fromNanometres((smallest.nanometres() + largest.nanometres()) / 2);
    }
};

/// The sizes a shop meets, smallest first: SS6 to SS40. Source: threadart.com "Rhinestone Facts" and taylorcrystal.hu
/// conversion chart (agreeing to a tenth of a millimetre); SS40 rhinestonestore.com article 254, range from memory.
std::span<const StoneSize> stoneSizes();

/// The row of that name, letter case ignored; nothing for a name that is not in the table.
std::optional<StoneSize> stoneSizeNamed(std::string_view name);

} // namespace sp::catalogue
