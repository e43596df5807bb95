// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/needs/material_need.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sp::needs {

/// A material of a line with how it serves it.
struct LineTake {
    const catalogue::PricedMaterial* material = nullptr;
    MaterialNeed need;
};

/// The materials of a line, found once; they belong to the price book. None where there is none.
struct LineMaterials {
    std::vector<LineTake> stones;                    ///< as the line names them, place by place
    std::vector<LineTake> packing;                   ///< as catalogue::packingOf names it
    const catalogue::PricedMaterial* base = nullptr; ///< none under the customer's own garment
    const catalogue::PricedMaterial* tape = nullptr;
    const catalogue::PricedMaterial* templates = nullptr; ///< also where they hang on the wall

    /// Pieces on backing share a press cycle; a blank and the customer's own garment lie under it one at a time.
    bool isOnBacking() const { return base && base->material.kind == catalogue::MaterialKind::Backing; }
};

/// Whether so many pieces of a line can be made and costed at all: pieces, sizes, stones and materials are there, of
/// the right kind, with prices; a charge needs a blank, a packing or a typed price. Errors: OutOfRange, Missing,
/// NotFound, Invalid, each with the sentence to show.
base::Result<LineMaterials> checkLine(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                      std::int64_t pieces);

// The parts of that check that whoever only cuts or buys for a line asks for alone; `name` is what it is called.

/// What a design on a line is called: by its own name, else the line's; empty where neither has one.
const std::string& titleOf(const catalogue::OrderLine& line, const catalogue::Placement& place);

/// 1 to catalogue::kMaxPieces.
constexpr bool isNumberOfPieces(std::int64_t pieces) { return pieces >= 1 && pieces <= catalogue::kMaxPieces; }
/// Width and height above nothing and up to units::kMaxLength.
bool hasSize(const catalogue::Placement& place);
/// Errors: Missing for no stones, OutOfRange for more than catalogue::kMaxColours.
base::Done checkColours(const catalogue::OrderLine& line, const catalogue::Placement& place, const base::Value& name);
/// Errors: OutOfRange for a count or a loss outside its range.
base::Done checkStone(const catalogue::Material& stone, units::Count perPiece, const base::Value& name);

} // namespace sp::needs
