// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/guillotine.h"
#include "core/layout/mixed_search.h"

#include <optional>

namespace sp::layout {

/// Looks for a way to lay all boxes of all kinds in one bin, by trying what lies at the left end of the lowest level,
/// or that nothing does, while the area left empty allows. `Laid::box` names the kind. None where there is no such way
/// or it was not found within `steps`, which are lowered by the work done.
std::optional<std::vector<Laid>> layInOneBin(const std::vector<BoxKind>& kinds, std::int64_t width, std::int64_t height,
                                             bool mayTurn, std::int64_t& steps);

/// The same for boxes and a bin; the places of all boxes, or none.
std::vector<Laid> laidInOneBin(const std::vector<Box>& boxes, const Bin& bin, bool mayTurn, std::int64_t& steps);

} // namespace sp::layout
