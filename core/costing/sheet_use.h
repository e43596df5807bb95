// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/bench.h"
#include "core/catalogue/price_book.h"
#include "core/costing/cost_sheet.h"
#include "core/layout/fit_memo.h"
#include "core/units/fraction.h"

namespace sp::costing {

/// How many pieces of that size one sheet of the material takes, its border, margin and gap kept; of a roll, its whole
/// length. Errors: the layout's own, TooLarge when not one fits.
base::Result<std::int64_t> piecesPerSheet(const catalogue::Material& material, units::Length width,
                                          units::Length height, layout::FitMemo& fits);

/// How `pieces` pieces of that size are cut from a sheet material. Width and height are the design's; the material's
/// border is added on every side here.
/// Errors: TooLarge when the piece does not fit, naming the material; the layout's own.
base::Result<SheetUse> useOfSheet(const catalogue::Material& material, units::Length width, units::Length height,
                                  std::int64_t pieces, layout::FitMemo& fits);

/// What that use costs, in micro-units, exactly: by whole sheets, by position, or by the length cut off a roll.
/// For ByPosition `shares` pieces (a fraction where a piece serves more than once) are paid for.
units::Fraction costOfUse(const SheetUse& use, const catalogue::PricedMaterial& material,
                          const units::Fraction& shares);

/// How the press takes pieces of that size: how many lie under the platen at once, and how often one is pressed where
/// it is larger than the platen.
struct PressUse {
    std::int64_t piecesPerPress = 1;
    std::int64_t pressesPerPiece = 1;
};
base::Result<PressUse> useOfPress(const catalogue::HeatPress& press, units::Length width, units::Length height,
                                  bool oneAtATime, layout::FitMemo& fits);

} // namespace sp::costing
