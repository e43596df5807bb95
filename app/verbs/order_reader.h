// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/order_customer.h"
#include "core/base/result.h"
#include "db/book/book.h"

#include <string_view>

namespace sp::verbs {

/// Reads a whole order as app/verbs/ORDERS.md describes it. What it names is looked up in the book; a line of a design
/// starts out with all that the design has. `today` is the day of an order that names none.
/// Errors: as readProblem, naming the place ("lines[1].pieces"); NotFound and Ambiguous for a name; what the book
/// refuses. Whether it can be priced is not asked here.
base::Result<OrderFor> readOrder(std::string_view text, db::Book& book, units::Date today);

} // namespace sp::verbs
