// SPDX-License-Identifier: MIT
#include "core/needs/requirements.h"

namespace sp::needs {

namespace {

using units::Fraction;

base::Done plan(SheetRequirement& out, const catalogue::PricedMaterial& priced, const MaterialNeed& need,
                const catalogue::OrderLine& line, std::int64_t pieces, layout::FitMemo& fits) {
    const auto use = useOfSheet(priced.material, line.width, line.height, cutsFor(need, pieces), fits);
    if (!use) return base::fail(use.error());
    out.use = *use;
    out.paidByPosition =
        need.kind == NeedKind::Templates ? Fraction::of(need.cuts) : Fraction::ratio(pieces, need.lifts);
    return {};
}

base::Done planSheets(Requirements& out, const catalogue::OrderLine& line, layout::FitMemo& fits) {
    const auto& found = out.materials;
    if (found.tape)
        if (auto ok = plan(out.tape, *found.tape, needOfTape(found.tape->material), line, out.pieces, fits); !ok)
            return ok;
    if (found.templates && !line.templatesOnWall)
        if (auto ok = plan(out.templates, *found.templates, needOfTemplates(line), line, out.pieces, fits); !ok)
            return ok;
    if (found.isOnBacking())
        return plan(out.backing, *found.base, needOfBase(found.base->material), line, out.pieces, fits);
    return {};
}

/// What lies under the platen is the piece with its backing's border.
base::Done planPress(Requirements& out, const catalogue::OrderLine& line, const catalogue::HeatPress& press,
                     layout::FitMemo& fits) {
    const bool oneAtATime = !out.materials.isOnBacking();
    const auto piece = oneAtATime ? layout::Piece{line.width, line.height}
                                  : pieceOf(out.materials.base->material.sheet, line.width, line.height);
    const auto use = useOfPress(press, piece.width, piece.height, oneAtATime, fits);
    if (!use) return base::fail(use.error());
    out.press = {use->piecesPerPress, use->pressesPerPiece,
                 ceilDivide(out.pieces, use->piecesPerPress) * use->pressesPerPiece,
                 Fraction::of(out.pieces) * Fraction::ratio(press.secondPressShare.ppm(), units::kPpm)};
    return {};
}

} // namespace

base::Result<Requirements> requirementsOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                          std::int64_t pieces, layout::FitMemo& fits) {
    Requirements out;
    auto materials = checkLine(line, book, pieces);
    if (!materials) return base::fail(materials.error());
    out.pieces = pieces;
    out.materials = std::move(*materials);
    if (auto ok = planSheets(out, line, fits); !ok) return base::fail(ok.error());
    if (auto ok = planPress(out, line, book.bench.press, fits); !ok) return base::fail(ok.error());
    if (!line.templatesOnWall)
        for (const auto& stone : line.stones) out.holes += stone.count.value();
    out.bench = benchTime(book.bench, line, pieces);
    return out;
}

} // namespace sp::needs
