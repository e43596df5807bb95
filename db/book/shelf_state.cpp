// SPDX-License-Identifier: MIT
#include "db/book/shelf_state.h"

namespace sp::db {

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
