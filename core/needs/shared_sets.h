// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/material.h"
#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace sp::needs {

/// The set of templates that a place of a line is made with: drawn, cut, weeded and set up once, for every place of the
/// order that can be made with it.
struct SharedSet {
    std::int64_t pieces = 0; ///< of all places that share it
    std::size_t line = 0;    ///< the first of them
    std::size_t place = 0;

    friend bool operator==(const SharedSet&, const SharedSet&) = default;
};

using FindMaterial = std::function<const catalogue::Material*(const base::Id&)>;

/// For each line the sets of its places. Places share a set that have the same design of the book, the same size and
/// the same layers: as many colours, of the same stone sizes and counts in the same order. The colours may differ: a
/// template knows holes. What hangs on the wall, and a one-off, shares with nobody. Empty where no place of the order
/// shares with another. Source: common practice, no source.
std::vector<std::vector<SharedSet>> sharedSets(std::span<const catalogue::OrderLine> lines, const FindMaterial& find);

/// The same with the materials of a book.
std::vector<std::vector<SharedSet>> sharedSets(std::span<const catalogue::OrderLine> lines,
                                               const catalogue::PriceBook& book);

/// Whether a place is the first of those that share its set, or shares with none: there the set is cut.
inline bool hasOwnSet(const std::vector<std::vector<SharedSet>>& sets, std::size_t line, std::size_t place) {
    return sets.empty() || (sets[line][place].line == line && sets[line][place].place == place);
}

} // namespace sp::needs
