// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"
#include "core/units/text.h"

#include <vector>

namespace sp::first_hour {

enum class SupplyGroup { Sheets, Stones };

/// Something that many such shops use, without any price: the material as it is made once it has one, and the pack it
/// comes in. Names, sizes and packs are common practice, no source; a shop changes them at Supplies.
struct UsualSupply {
    catalogue::Material material; ///< without a key
    std::string pack;             ///< "10 gross"
    units::Count amount;          ///< in the pack
};

/// In the language that the program runs in. Sheets: tape, template, backing, and what a piece is packed in, in sizes
/// that are round in that unit.
std::vector<UsualSupply> usualSupplies(SupplyGroup group, units::LengthUnit unit);

} // namespace sp::first_hour
