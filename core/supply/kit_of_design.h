// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/design.h"
#include "core/catalogue/kit.h"
#include "core/catalogue/price_book.h"
#include "core/layout/fit_memo.h"
#include "core/supply/kit_yield.h"

namespace sp::supply {

/// What `kits` of these kits, bought with or without the design's templates cut, hold together for that design: the
/// problem that kitYield answers. Materials are named as in the book.
///
/// - Stones: the design's, with the material's loss and the kit's short count; a colour the kit lacks is there with 0.
/// - Tape: one cut a piece, serving as many pieces as it lifts. Template sheets: one cut for each colour, once; none
///   when they are cut already or hang on the wall. Backing: one cut a piece, when the design goes on backing as a
///   rule. A kit without what is needed has 0 of it, under the name of its sort. Several materials of one sort count
///   together.
/// - The blank that the design goes on limits only when it is in the kit; it is not what a kit is for.
/// - Whatever else is in the kit is listed and does not limit.
///
/// Errors: Missing when the design has no stones; NotFound for a material that the price book lacks; those of the
/// layout except TooLarge: a piece that does not fit a sheet cannot be cut from it.
base::Result<YieldProblem> yieldProblemOf(const catalogue::Kit& kit, units::Count kits, bool templatesCut,
                                          const catalogue::Design& design, const catalogue::PriceBook& prices,
                                          layout::FitMemo& fits);

} // namespace sp::supply
