// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/design.h"
#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/units/count.h"
#include "core/units/fraction.h"
#include "core/units/rate.h"

#include <cstdint>

namespace sp::needs {

/// How what is taken of a material follows from the number of pieces.
enum class NeedKind {
    Stones,    ///< perPiece good stones on a piece, `loss` of those taken out is lost
    Cuts,      ///< tape, backing: one cut serves `lifts` pieces, `perSheet` cuts on a sheet or roll
    Templates, ///< `cuts` once for the job, `perSheet` on a sheet
    ReadyCut,  ///< one set of templates, once for the job, ready cut
    Things,    ///< blanks, packing: perPiece a piece
    ForOrder   ///< packing: perPiece once for the order, whatever the pieces
};

/// How one material serves a line, whatever the number of its pieces. The one home of these rules: the cost sheet, the
/// cutting plan, the shopping list, the kit's yield and the Counter's stones all ask here.
struct MaterialNeed {
    NeedKind kind = NeedKind::Things;
    units::Count perPiece = units::Count::of(1); ///< 1 or more
    units::Rate loss = {};                       ///< share of what is taken out, 0 to below one
    std::int64_t lifts = 1;                      ///< 1 or more
    std::int64_t perSheet = 1;                   ///< 1 or more; see sheet_use.h for who counts it
    std::int64_t cuts = 0;

    friend bool operator==(const MaterialNeed&, const MaterialNeed&) = default;
};

MaterialNeed needOfStone(units::Count perPiece, const catalogue::Material& stone);
/// A piece of tape lifts the stones of `lifts` pieces before it is spent.
MaterialNeed needOfTape(const catalogue::Material& tape);
/// One template for each colour; none where they hang on the wall.
MaterialNeed needOfTemplates(const catalogue::Placement& place);
/// Of a backing one cut a piece, of a blank one thing a piece.
MaterialNeed needOfBase(const catalogue::Material& base);
MaterialNeed needOfPacking(const catalogue::PackingUse& use);

/// Pieces to be cut for so many pieces of a line: tape and backing ⌈pieces ÷ lifts⌉, templates `cuts`; 0 for what is
/// not cut. Source: common practice, no source.
std::int64_t cutsFor(const MaterialNeed& need, std::int64_t pieces);

/// What so many pieces take of it, exactly: stones pieces × perPiece ÷ (1 − loss), for the share is of what is taken
/// out, not of what is good; sheets ⌈cuts ÷ perSheet⌉; things pieces × perPiece; a set ready cut and what goes with an
/// order once. Throws base::Overflow.
units::Fraction takenFor(const MaterialNeed& need, std::int64_t pieces);

/// The same as whole things, rounded up. Throws base::Overflow.
std::int64_t wholeFor(const MaterialNeed& need, std::int64_t pieces);

/// ⌈n ÷ by⌉ of counts: n 0 or more, by 1 or more.
constexpr std::int64_t ceilDivide(std::int64_t n, std::int64_t by) { return (n + by - 1) / by; }

} // namespace sp::needs
