// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace sp::paper {

/// Care and safety notes that a new shop starts out with, one to a line. They warn and point to those who decide;
/// they give no advice in law or tax.
inline constexpr std::string_view kCareNotes =
    "Freshly pressed work is hot: let it cool before you touch it.\n"
    "Wash garments inside out and cold, dry them without heat, keep the iron off the stones.\n"
    "Not for children under three: stones are small parts that can be swallowed.\n"
    "Stones may hold lead: for anything a child will wear ask for the maker's certificate and check the local rules.\n"
    "On a vehicle keep the glass clear where you drive: rules differ by place, and where it goes is yours to decide.\n"
    "Tax is charged as the shop has confirmed it with its authority or accountant.\n"
    "Local rules, the makers' data and licensed practice come before these notes.";

/// On every cutting plan.
inline constexpr std::string_view kBladeCaution =
    "Blades cut: retract the blade before loading, and keep fingers off its path.";

} // namespace sp::paper
