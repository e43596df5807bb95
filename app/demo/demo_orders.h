// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/date.h"
#include "db/book/book.h"

namespace sp::demo {

/// Puts three months of invented jobs up to `today` into a demo book: in every stage, with deposits, payments in parts,
/// one let go, one that lapsed, one that is owed, one done again for nothing, one revised, and one that the Counter
/// opens with, of two choices. Errors: as the book's.
base::Done addOrders(db::Book& book, units::Date today);

} // namespace sp::demo
