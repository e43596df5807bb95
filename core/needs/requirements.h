// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/layout/fit_memo.h"
#include "core/needs/bench_time.h"
#include "core/needs/line_check.h"
#include "core/needs/sheet_use.h"
#include "core/units/fraction.h"

#include <cstdint>
#include <span>

namespace sp::needs {

/// Pieces cut from a sheet material.
struct SheetRequirement {
    SheetUse use;
    units::Fraction paidByPosition; ///< cut pieces to pay for where offcuts are kept: of tape, pieces ÷ lifts

    friend bool operator==(const SheetRequirement&, const SheetRequirement&) = default;
};

/// The press cycles of a place.
struct PressRequirement {
    std::int64_t piecesPerPress = 1;  ///< pieces under the platen at once
    std::int64_t pressesPerPiece = 1; ///< more than one where the piece is larger than the platen
    std::int64_t cycles = 0;          ///< ⌈pieces ÷ piecesPerPress⌉ × pressesPerPiece
    units::Fraction secondPresses;    ///< pieces × the share pressed a second time

    friend bool operator==(const PressRequirement&, const PressRequirement&) = default;
};

/// What a design on a line takes.
struct PlaceRequirement {
    SheetRequirement tape;
    SheetRequirement templates; ///< of one set; nothing where they hang on the wall
    SheetRequirement backing;   ///< nothing on a blank and on the customer's own garment
    PressRequirement press;
    std::int64_t holes = 0; ///< the cutter makes: the stones there; 0 where nothing is done once for the set

    friend bool operator==(const PlaceRequirement&, const PlaceRequirement&) = default;
};

/// What a line takes for a number of pieces made: the one answer that costs, plans and lists start from.
struct Requirements {
    std::int64_t pieces = 1;
    LineMaterials materials;
    std::vector<PlaceRequirement> places; ///< as the line has them; none for a charge
    BenchTime bench;

    /// Holes that the cutter makes for all places.
    std::int64_t holes() const;

    /// Stones taken out of the bags: pieces × count ÷ (1 − loss), exactly. Throws base::Overflow.
    units::Fraction stones(std::size_t row) const { return takenFor(materials.stones[row].need, pieces); }
};

/// What `line` takes when `pieces` of it are made, whatever its own quantity: costing asks for the pieces handed over
/// (what is spoiled is a part of the cost of its own), plans and lists for those and the spares (spares.h). `setPieces`
/// as in benchTime; the sheets of a shared set are those of the whole set. No text is made unless it is an error's.
/// Errors: what checkLine refuses; TooLarge when a piece does not fit its sheet or a figure outgrows the program.
base::Result<Requirements> requirementsOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book,
                                          std::int64_t pieces, layout::FitMemo& fits,
                                          std::span<const units::Count> setPieces = {});

} // namespace sp::needs
