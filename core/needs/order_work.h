// SPDX-License-Identifier: MIT
#pragma once

#include "core/needs/requirements.h"
#include "core/needs/shared_sets.h"
#include "core/needs/spares.h"

#include <cstdint>
#include <unordered_set>
#include <vector>

namespace sp::needs {

/// Where the set of templates is from that a place is made with.
struct PlaceSet {
    bool isThere = false; ///< it hangs on the wall, ticked or cut before
    SharedSet shared;     ///< else the place at which it is cut, with the pieces of all that are made with it
};

/// What the bench makes of a line: the pieces handed over and its spares, and what they take.
struct LineWork {
    LineSpares spares;
    Requirements takes;              ///< of both together
    BenchTime bench = {};            ///< the same, but that spares are not packed
    std::vector<PlaceSet> sets = {}; ///< by place
};

/// So many stones, whole sheets, whole rolls or pieces of a material.
struct MaterialTake {
    base::Id material;
    std::int64_t count = 0;

    friend bool operator==(const MaterialTake&, const MaterialTake&) = default;
};

/// What the bench makes of an order.
struct OrderWork {
    std::vector<LineWork> lines; ///< as the order has them
    units::Duration total; ///< at the bench, by its standards; warming the press up and testing it is no part of it
    std::vector<MaterialTake> takes = {}; ///< of each material with a price, of all lines together; by key
};

/// Designs whose sets with planned pieces are cut and hang on the wall.
using SetsThere = std::unordered_set<base::Id>;

/// The work of an order (of the choice that is looked at): every line with its spares, what lines and places share of a
/// set done once. A set that is there is not made again; that one was sold says nothing of it. What a charge takes is
/// nothing. Errors: as requirementsOf; a figure that is too large.
base::Result<OrderWork> workOf(std::span<const catalogue::OrderLine> lines, const catalogue::PriceBook& book,
                               layout::FitMemo& fits, const SetsThere& there = {});

} // namespace sp::needs
