// SPDX-License-Identifier: MIT
#include "core/needs/sheet_use.h"

#include "core/needs/material_need.h"
#include "core/needs/messages.h"

#include <algorithm>

namespace sp::needs {

namespace {

using units::Length;

/// Presses needed to cover one side of the piece with the same side of the platen.
std::int64_t covers(Length piece, Length platen) { return ceilDivide(piece.nanometres(), platen.nanometres()); }

} // namespace

base::Result<std::int64_t> piecesPerSheet(const catalogue::Material& material, Length width, Length height,
                                          layout::FitMemo& fits) {
    const auto& sheet = material.sheet;
    return fits.count({sheet.width, sheet.height}, pieceOf(sheet, width, height), rulesOf(sheet));
}

base::Result<SheetUse> useOfSheet(const catalogue::Material& material, Length width, Length height, std::int64_t pieces,
                                  layout::FitMemo& fits) {
    const auto& sheet = material.sheet;
    SheetUse use;
    use.cut = pieces;
    if (sheet.form == catalogue::SheetForm::Roll) {
        const auto need = fits.length(sheet.width, pieceOf(sheet, width, height), rulesOf(sheet), pieces);
        if (!need) return base::fail(base::about(material.name, need.error()));
        use.rollLength = *need;
        return use;
    }
    const auto fit = piecesPerSheet(material, width, height, fits);
    if (!fit) return base::fail(base::about(material.name, fit.error()));
    use.perSheet = *fit;
    use.sheets = ceilDivide(pieces, use.perSheet);
    return use;
}

base::Result<PressUse> useOfPress(const catalogue::HeatPress& press, Length width, Length height, bool oneAtATime,
                                  layout::FitMemo& fits) {
    const Length across = press.platenWidth;
    const Length deep = press.platenHeight;
    if (across <= Length{} || deep <= Length{}) return base::fail(Fault::PlatenWithoutSize, "press");
    PressUse use;
    use.pressesPerPiece =
        std::min(covers(width, across) * covers(height, deep), covers(width, deep) * covers(height, across));
    if (use.pressesPerPiece > 1 || oneAtATime) return use;
    const auto fit = fits.count({across, deep}, {width, height}, {});
    if (!fit) return base::fail(fit.error());
    use.piecesPerPress = *fit;
    return use;
}

} // namespace sp::needs
