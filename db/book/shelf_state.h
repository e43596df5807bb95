// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/bench_queue.h"

#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace sp::db {

/// Whether a job that comes from one stage to the other has used by then what it takes.
bool isUsedBetween(Stage from, Stage to, catalogue::UsedWhen when);
/// Whether what was booked for it goes back on the shelf: it is set back before the stage of its use. Of one that is
/// let go nothing comes back by itself, whether it was made or only begun: ShelfUse::stays says what stays booked.
bool isReturnedBetween(Stage from, Stage to, catalogue::UsedWhen when);

/// What is there of a material, in what it is counted in.
struct OnShelf {
    std::int64_t onHand = 0;   ///< the sum of its movements
    std::int64_t promised = 0; ///< what agreed jobs still take of it, and those that are being made, with spares

    /// What nobody waits for; below zero: so much is to be bought.
    std::int64_t free() const { return onHand - promised; }

    friend bool operator==(const OnShelf&, const OnShelf&) = default;
};

struct ShelfState {
    std::unordered_map<base::Id, OnShelf> materials; ///< those that ever moved or are promised
    std::vector<std::string> notReckoned; ///< numbers of jobs of which it is not known what they take; not promised

    OnShelf of(const base::Id& material) const;
};

/// The shelf as it is now. Errors: the book's.
base::Result<ShelfState> readShelf(Book& book, BenchReader& reader);

} // namespace sp::db
