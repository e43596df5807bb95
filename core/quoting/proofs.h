// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/laid_stones.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/quoting/sheet_content.h"
#include "core/quoting/sheet_words.h"

#include <functional>
#include <string_view>
#include <vector>

namespace sp::quoting {

/// Of further designs, and where a sheet would show more stones, there is no picture: it goes into the book with the
/// sheet, at some four bytes a stone.
inline constexpr std::size_t kMaxProofs = 12;
inline constexpr std::size_t kMaxProofStones = 40'000;

/// What a design looks like: its stones, `LaidStone::material` an index into `materials`. No stones: it has no drawing.
struct DesignLook {
    std::vector<artwork::LaidStone> stones;
    std::vector<base::Id> materials;
};

/// The proofs of an order: one for each design of its lines, of all choices, that has a drawing. Lines that take the
/// same stones of it at the same size share theirs; a colour that was changed by hand is shown as the line has it.
/// Designs beyond the limits are named together in a last one, without stones.
std::vector<SheetProof> proofsOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                                 const std::function<DesignLook(const base::Id& design)>& lookOf,
                                 const SheetWords& words);

/// Places as a proof keeps them, to a twentieth of a millimetre, as text without blanks.
std::string packed(const std::vector<artwork::Point>& places);
/// The places again, in millimetres. What is no such text ends them.
std::vector<artwork::Point> unpacked(std::string_view places);

} // namespace sp::quoting
