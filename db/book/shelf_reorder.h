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
    std::optional<supply::ReorderPoint> point = {}; ///< none: without use, lead days, days enough, or by whyNone
    std::optional<base::Error> whyNone = {};        ///< why it cannot be worked out

    /// The days known of it tell when to order; without that there is no point.
    bool isKnownLongEnough() const { return supply::isKnownLongEnough(demand, leadDays.value_or(0)); }
    /// What is free of it is not above the point, or agreed jobs lack of it; nothing where that cannot be told.
    std::optional<bool> isLow() const {
        if (there.free() < 0) return true;
        if (!point) return std::nullopt;
        return there.free() <= point->point;
    }
};

/// Of each material of which anything was used in the last `days` days (1 or more), today counted, or of which agreed
/// jobs lack something; by the order of the book's materials. Errors: the book's; what is wrong with one material
/// stands with it.
base::Result<std::vector<ReorderState>> readReorder(Book& book, BenchReader& reader, std::int64_t days,
                                                    supply::Service service);

} // namespace sp::db
