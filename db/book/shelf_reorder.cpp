// SPDX-License-Identifier: MIT
#include "db/book/shelf_reorder.h"

#include "core/base/overflow.h"
#include "core/supply/messages.h"

#include <algorithm>

namespace sp::db {

namespace {

/// What was used of it from `first` on and where its point lies; what cannot be told of it is left open.
void reckon(ReorderState& state, const UsedOfMaterial& used, units::Date first, units::Date today,
            supply::Service service) {
    // Before it ever lay there nobody could use it.
    try {
        state.demand = supply::demandOf(used.uses, std::max(used.since, first), today);
    } catch (const base::Overflow&) {
        state.whyNone = base::makeError(supply::Fault::ReorderTooLarge, "demand");
        return;
    }
    if (state.demand.used == 0 || !state.leadDays || !state.isKnownLongEnough()) return;
    const auto point = supply::reorderPointOf(state.demand, *state.leadDays, supply::safetyFactor(service));
    if (point)
        state.point = *point;
    else
        state.whyNone = point.error();
}

} // namespace

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
        ReorderState state{material.id, shelf->of(material.id), {}};
        if (const auto lead = leadDays->find(material.id); lead != leadDays->end()) state.leadDays = lead->second;
        if (const auto used = uses->find(material.id); used != uses->end())
            reckon(state, used->second, today.plusDays(1 - days), today, service);
        if (state.demand.used > 0 || state.whyNone || state.there.free() < 0) states.push_back(std::move(state));
    }
    return states;
}

} // namespace sp::db
