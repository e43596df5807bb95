// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/bench.h"
#include "core/catalogue/material.h"
#include "core/layout/fit.h"
#include "core/layout/fit_memo.h"
#include "core/units/length.h"

#include <cstdint>

namespace sp::needs {

/// How a sheet material serves a line.
struct SheetUse {
    std::int64_t perSheet = 0; ///< pieces on a sheet; 0 for rolls and where there is no such material
    std::int64_t cut = 0;      ///< pieces to be cut: tape pieces, templates, backings
    std::int64_t sheets = 0;   ///< whole sheets to be cut into, ⌈cut ÷ perSheet⌉; 0 for rolls
    units::Length rollLength;  ///< of a roll: what is cut off

    friend bool operator==(const SheetUse&, const SheetUse&) = default;
};

/// What is cut of a material for a design of that size: the design with the material's border on every side.
inline layout::Piece pieceOf(const catalogue::SheetTraits& traits, units::Length width, units::Length height) {
    return {width + traits.border + traits.border, height + traits.border + traits.border};
}
/// How such pieces are laid.
inline layout::FitRules rulesOf(const catalogue::SheetTraits& traits) {
    return {traits.margin, traits.gap, traits.oneWay};
}

/// How many pieces of that size one sheet of the material takes, its border, margin and gap kept; of a roll, its whole
/// length. Errors: the layout's own, TooLarge when not one fits.
base::Result<std::int64_t> piecesPerSheet(const catalogue::Material& material, units::Length width,
                                          units::Length height, layout::FitMemo& fits);

/// How `pieces` pieces of that size are cut from a sheet material. Width and height are the design's; the material's
/// border is added on every side here.
/// Errors: TooLarge when the piece does not fit, naming the material; the layout's own.
base::Result<SheetUse> useOfSheet(const catalogue::Material& material, units::Length width, units::Length height,
                                  std::int64_t pieces, layout::FitMemo& fits);

/// How the press takes pieces of that size: how many lie under the platen at once, and how often one is pressed where
/// it is larger than the platen.
struct PressUse {
    std::int64_t piecesPerPress = 1;
    std::int64_t pressesPerPiece = 1;
};
base::Result<PressUse> useOfPress(const catalogue::HeatPress& press, units::Length width, units::Length height,
                                  bool oneAtATime, layout::FitMemo& fits);

} // namespace sp::needs
