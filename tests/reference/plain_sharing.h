// SPDX-License-Identifier: MIT
#pragma once

#include "tests/reference/plain_price.h"

#include <vector>

namespace sp::reference {

/// What is done once for all of an order, with the lines by what they cost without it.
void shareOrder(const catalogue::Order& order, const catalogue::PriceBook& book, layout::FitMemo& fits,
                std::vector<PlainShare>& shares);

} // namespace sp::reference
