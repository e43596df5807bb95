// SPDX-License-Identifier: MIT
#include "db/book/shelf_reorder.h"

#include <algorithm>

namespace sp::db {

base::Result<std::vector<ReorderState>> readReorder(Book& book, BenchReader& reader, std::int64_t days,
                                                    supply::Service service) {
    const auto materials = book.materials();
    if (!materials) return base::fail(materials.error());
    const auto shelf = readShelf(book, reader);
    if (!shelf) return base::fail(shelf.error());
    const auto uses = book.usedByDay();
    if (!uses) return base::fail(uses.error());
    const auto leadDays = leadDaysOf(book);
    if (!leadDays) return base::fail(leadDays.error());
    const auto today = book.environment().today();
    std::vector<ReorderState> states;
    for (const auto& material : *materials) {
        const auto used = uses->find(material.id);
        if (used == uses->end()) continue;
        // Before it ever lay there nobody could use it.
        const auto from = std::max(used->second.since, today.plusDays(1 - days));
        ReorderState state{material.id, shelf->of(material.id), supply::demandOf(used->second.uses, from, today)};
        if (state.demand.used == 0) continue;
        if (const auto lead = leadDays->find(material.id); lead != leadDays->end()) {
            state.leadDays = lead->second;
            const auto point = supply::reorderPointOf(state.demand, lead->second, supply::safetyFactor(service));
            if (!point) return base::fail(point.error());
            state.point = *point;
        }
        states.push_back(std::move(state));
    }
    return states;
}

} // namespace sp::db
