// SPDX-License-Identifier: MIT
#include "core/needs/requirements.h"

#include <array>
#include <span>

namespace sp::needs {

namespace {

using units::Fraction;

base::Done plan(SheetRequirement& out, const catalogue::PricedMaterial& priced, const MaterialNeed& need,
                const catalogue::Placement& place, std::int64_t pieces, layout::FitMemo& fits) {
    const auto use = useOfSheet(priced.material, place.width, place.height, cutsFor(need, pieces), fits);
    if (!use) return base::fail(use.error());
    out.use = *use;
    out.paidByPosition =
        need.kind == NeedKind::Templates ? Fraction::of(need.cuts) : Fraction::ratio(pieces, need.lifts);
    return {};
}

base::Done planSheets(PlaceRequirement& out, const LineMaterials& found, const catalogue::Placement& place,
                      std::int64_t pieces, layout::FitMemo& fits) {
    if (found.tape)
        if (auto ok = plan(out.tape, *found.tape, needOfTape(found.tape->material), place, pieces, fits); !ok)
            return ok;
    if (found.templates && !place.templatesOnWall)
        if (auto ok = plan(out.templates, *found.templates, needOfTemplates(place), place, pieces, fits); !ok)
            return ok;
    if (found.isOnBacking())
        return plan(out.backing, *found.base, needOfBase(found.base->material), place, pieces, fits);
    return {};
}

/// What lies under the platen is the piece with its backing's border.
base::Done planPress(PlaceRequirement& out, const LineMaterials& found, const catalogue::Placement& place,
                     std::int64_t pieces, const catalogue::HeatPress& press, layout::FitMemo& fits) {
    const bool oneAtATime = !found.isOnBacking();
    const auto piece = oneAtATime ? layout::Piece{place.width, place.height}
                                  : pieceOf(found.base->material.sheet, place.width, place.height);
    const auto use = useOfPress(press, piece.width, piece.height, oneAtATime, fits);
    if (!use) return base::fail(use.error());
    out.press = {use->piecesPerPress, use->pressesPerPiece,
                 ceilDivide(pieces, use->piecesPerPress) * use->pressesPerPiece,
                 Fraction::of(pieces) * Fraction::ratio(press.secondPressShare.ppm(), units::kPpm)};
    return {};
}

} // namespace

std::int64_t Requirements::holes() const {
    std::int64_t sum = 0;
    for (const auto& place : places) sum += place.holes;
    return sum;
}

base::Result<Requirements> requirementsOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                          std::int64_t pieces, layout::FitMemo& fits,
                                          std::span<const units::Count> setPieces) {
    Requirements out;
    auto materials = checkLine(line, book, pieces);
    if (!materials) return base::fail(materials.error());
    out.pieces = pieces;
    out.materials = std::move(*materials);
    out.places.reserve(line.places.size());
    for (std::size_t i = 0; i < line.places.size(); ++i) {
        const auto& place = line.places[i];
        auto& takes = out.places.emplace_back();
        if (auto ok = planSheets(takes, out.materials, place, pieces, fits); !ok) return base::fail(ok.error());
        if (auto ok = planPress(takes, out.materials, place, pieces, book.bench.press, fits); !ok)
            return base::fail(ok.error());
        if (!place.templatesOnWall && (setPieces.empty() || !setPieces[i].isZero()))
            for (const auto& stone : place.stones) takes.holes += stone.count.value();
    }
    std::array<std::int64_t, catalogue::kMaxPlaces> cycles{};
    for (std::size_t i = 0; i < out.places.size(); ++i) cycles[i] = out.places[i].press.cycles;
    out.bench = benchTime(book.bench, line, pieces, std::span(cycles).first(out.places.size()), setPieces);
    return out;
}

} // namespace sp::needs
