// SPDX-License-Identifier: MIT
#include "core/needs/material_need.h"

#include <algorithm>

namespace sp::needs {

using units::Fraction;

MaterialNeed needOfStone(units::Count perPiece, const catalogue::Material& stone) {
    return {.kind = NeedKind::Stones, .perPiece = perPiece, .loss = stone.stone.loss};
}

MaterialNeed needOfTape(const catalogue::Material& tape) {
    return {.kind = NeedKind::Cuts, .lifts = std::max<std::int64_t>(1, tape.sheet.lifts)};
}

MaterialNeed needOfTemplates(const catalogue::Placement& place) {
    return {.kind = NeedKind::Templates,
            .cuts = place.templatesOnWall ? 0 : static_cast<std::int64_t>(place.stones.size())};
}

MaterialNeed needOfBase(const catalogue::Material& base) {
    return {.kind = base.kind == catalogue::MaterialKind::Backing ? NeedKind::Cuts : NeedKind::Things};
}

MaterialNeed needOfPacking(const catalogue::PackingUse& use) {
    const bool isOnce = use.per == catalogue::PackingPer::Order;
    return {.kind = isOnce ? NeedKind::ForOrder : NeedKind::Things, .perPiece = use.amount};
}

std::int64_t cutsFor(const MaterialNeed& need, std::int64_t pieces) {
    switch (need.kind) {
    case NeedKind::Cuts: return ceilDivide(pieces, need.lifts);
    case NeedKind::Templates: return need.cuts;
    case NeedKind::Stones:
    case NeedKind::ReadyCut:
    case NeedKind::Things:
    case NeedKind::ForOrder: break;
    }
    return 0;
}

Fraction takenFor(const MaterialNeed& need, std::int64_t pieces) {
    switch (need.kind) {
    case NeedKind::Stones:
        return Fraction::of(need.perPiece.value()) * Fraction::of(pieces) *
               Fraction::ratio(units::kPpm, units::kPpm - need.loss.ppm());
    case NeedKind::Cuts:
    case NeedKind::Templates: return Fraction::of(ceilDivide(cutsFor(need, pieces), need.perSheet));
    case NeedKind::ReadyCut: return Fraction::of(1);
    case NeedKind::Things: return Fraction::of(need.perPiece.value()) * Fraction::of(pieces);
    case NeedKind::ForOrder: return Fraction::of(need.perPiece.value());
    }
    return {};
}

std::int64_t wholeFor(const MaterialNeed& need, std::int64_t pieces) { return takenFor(need, pieces).ceiling(); }

} // namespace sp::needs
