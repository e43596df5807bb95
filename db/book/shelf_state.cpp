// SPDX-License-Identifier: MIT
#include "db/book/shelf_state.h"

namespace sp::db {

namespace {

bool isUsedAt(Stage stage, catalogue::UsedWhen when) {
    const bool isMade = stage == Stage::Ready || stage == Stage::Collected;
    switch (when) {
    case catalogue::UsedWhen::Ready: return isMade;
    case catalogue::UsedWhen::Making: return isMade || stage == Stage::InProduction;
    case catalogue::UsedWhen::ByHand: return false;
    }
    return false;
}

} // namespace

bool isUsedBetween(Stage from, Stage to, catalogue::UsedWhen when) {
    if (from == to) return false;
    // What the shelf lacked when it was begun is taken when it is ready.
    return isUsedAt(to, when) && from != Stage::Ready && from != Stage::Collected;
}

bool isReturnedBetween(Stage from, Stage to, catalogue::UsedWhen when) {
    return to != Stage::Declined && isUsedAt(from, when) && !isUsedAt(to, when);
}

OnShelf ShelfState::of(const base::Id& material) const {
    const auto found = materials.find(material);
    return found == materials.end() ? OnShelf{} : found->second;
}

base::Result<ShelfState> readShelf(Book& book, BenchReader& reader) {
    const auto shelf = book.shelf();
    if (!shelf) return base::fail(shelf.error());
    const auto queue = reader.read(book);
    if (!queue) return base::fail(queue.error());
    ShelfState state;
    for (const auto& [material, count] : *shelf) state.materials[material].onHand = count;
    for (const auto& [material, count] : queue->promised()) state.materials[material].promised = count;
    for (const auto& entry : queue->entries)
        if (entry.work.whyNone) state.notReckoned.push_back(entry.job.number);
    return state;
}

} // namespace sp::db
