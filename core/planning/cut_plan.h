// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/layout/mixed.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace sp::planning {

/// Equal pieces to be cut, the material's border already added on every side.
struct CutPiece {
    std::string name; ///< "Lantern", of a template with its colour: "Lantern, Jet SS10"
    layout::Piece size;
    std::int64_t count = 1;

    friend bool operator==(const CutPiece&, const CutPiece&) = default;
};

/// All that is to be cut from one material: tape, template or backing.
struct CutList {
    catalogue::Material material;
    std::vector<CutPiece> pieces;

    friend bool operator==(const CutList&, const CutList&) = default;
};

/// What the lines need cut, material by material: first templates (one for each colour, once for all places that share
/// a set, none where they hang on the wall), then tape (a piece lifts several times), then backings in the order of the
/// lines, tape and backings for the spares too (needs/spares.h). Blanks and garments are not cut. The lines may come from several orders; equal pieces of one name are put
/// together. Errors: OutOfRange for a line without pieces or size; NotFound for a material that the book does not hold.
base::Result<std::vector<CutList>> cutLists(std::span<const catalogue::OrderLine> lines,
                                            const catalogue::PriceBook& book);

/// Where a piece lies; `piece` is its index in the list.
struct CutPlace {
    std::size_t piece = 0;
    layout::Position at;

    friend bool operator==(const CutPlace&, const CutPlace&) = default;
};

/// So many sheets are cut alike. `left` is the largest rectangle that stays free inside the margin, a gap away from
/// every piece, with its corner `leftAt`; without sides where nothing stays.
struct CutSheet {
    std::int64_t count = 1;
    std::vector<CutPlace> places;
    layout::Piece left;
    layout::Position leftAt;

    friend bool operator==(const CutSheet&, const CutSheet&) = default;
};

/// How a list lies on its material, the sheet with most left of it last. A roll is one sheet of `length`.
struct CutPlan {
    CutList list;
    std::vector<CutSheet> sheets;
    std::int64_t count = 0; ///< sheets in all; 1 for a roll
    std::int64_t bound = 0; ///< no plan needs fewer
    units::Length length;   ///< of a roll: what is cut off
    units::Length lengthBound;
    bool proven = false; ///< fewest sheets, or shortest length

    friend bool operator==(const CutPlan&, const CutPlan&) = default;
};

/// Equal sizes are laid as one kind and dealt out in the order of the list. The same list and number of steps always
/// give the same plan. Errors: layout's, naming piece and material.
base::Result<CutPlan> planCut(const CutList& list, const layout::MixedEffort& effort);

} // namespace sp::planning
