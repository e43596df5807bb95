// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/reorder.h"
#include "db/book/shelf_state.h"

#include <optional>
#include <vector>

namespace sp::db {

/// When more of a material is to be ordered, by what the shop used of it.
struct ReorderState {
    base::Id material;
    OnShelf there;
    supply::Demand demand;                          ///< since its first movement, or the first of the days
    std::optional<std::int64_t> leadDays = {};      ///< none: no supplier of it says
    std::optional<supply::ReorderPoint> point = {}; ///< none: its lead time is not known

    /// What is free of it is not above the point.
    bool isLow() const { return point && there.free() <= point->point; }
};

/// Of each material of which anything was used in the last `days` days (1 or more), today counted; by the order of the
/// book's materials. Errors: the book's; those of supply::reorderPointOf.
base::Result<std::vector<ReorderState>> readReorder(Book& book, BenchReader& reader, std::int64_t days,
                                                    supply::Service service);

} // namespace sp::db
