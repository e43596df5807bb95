// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "core/quoting/sheet_words.h"

#include <string>
#include <vector>

namespace sp::quoting {

/// What tells each choice of an order from the others, as its customer reads it: "36 pieces, on Hoodie, navy, in one
/// colour". Lines are told apart by their places in the order: of those called alike, pieces, what they are on,
/// colours, size, stones and places that are not the same in all choices are named; of others the line itself. A choice
/// with a title of its own has that instead. One text a choice, empty where nothing differs.
std::vector<std::string> differencesOf(const catalogue::Order& order, const catalogue::PriceBook& book,
                                       const SheetWords& words);

} // namespace sp::quoting
