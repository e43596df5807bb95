// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/order.h"
#include "core/catalogue/price_book.h"
#include "tests/support/amounts.h"

#include <string_view>

namespace sp::sample {

/// A small shop for tests of costing and pricing: two colours of stones, tape, template, backing and a hoodie, all
/// with prices. Every figure in it is invented. Names are the map's keys: "Aqua", "Jet", "Tape", "Template",
/// "Backing", "Hoodie", "Bag".
base::Id idOf(std::string_view name);
catalogue::PriceBook priceBook();
/// The same shop where nothing costs anything and nothing takes time, to switch on one thing at a time.
catalogue::PriceBook freeBook();
/// 24 Lanterns on backing: 212 Aqua and 96 Jet, 3 1/2 × 2 3/4 in.
catalogue::OrderLine lantern(std::int64_t quantity = 24);
/// 4 × 4 in on backing, 200 Aqua and 100 Jet: six lie on a sheet of 9 × 12 in, two beside each other.
catalogue::OrderLine square(std::int64_t quantity);
/// A line of `quantity` hoodies that cost `each` and nothing else, in a shop without rules.
struct PlainJob {
    catalogue::PriceBook book = freeBook();
    catalogue::OrderLine line = lantern();

    PlainJob(std::int64_t quantity, units::Money each);
};
catalogue::Order orderOf(std::vector<catalogue::OrderLine> lines);

using support::cents;
units::Date day(std::string_view iso);

} // namespace sp::sample
