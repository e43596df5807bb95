// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace sp::support {

/// The ways in which drawing programs write one round hole.
enum class HoleForm { Circle, Ellipse, ArcPath, FourBeziers, Polygon24, CompoundPath, Classes, NestedGroups, Use };
inline constexpr std::array kHoleForms = {HoleForm::Circle,      HoleForm::Ellipse,      HoleForm::ArcPath,
                                          HoleForm::FourBeziers, HoleForm::Polygon24,    HoleForm::CompoundPath,
                                          HoleForm::Classes,     HoleForm::NestedGroups, HoleForm::Use};
std::string_view nameOf(HoleForm form);

/// An SVG in millimetres with `holes` holes on a square grid of 5 mm, every third 3.1 mm across and the
/// others 2.8 mm; every other row in #1f3a93, the others in #c0392b.
std::string drawHoles(HoleForm form, std::size_t holes);

/// The same holes as CIRCLE entities of a DXF in millimetres, on the layers BLUE (colour 5) and RED (colour
/// 1).
std::string drawHolesAsDxf(std::size_t holes);

} // namespace sp::support
