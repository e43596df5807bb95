// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace sp::pricing {

/// The number of the rules by which orders are reckoned: needs, layout, costing, pricing and rounding together. It is
/// sealed with each paper that is issued. Raise it by one with every change after which an order from the same book may
/// come to something else than before, be it a formula mended or a better packing found. What was issued under earlier
/// rules stays as it was printed.
inline constexpr std::int64_t kRulesVersion = 1;

} // namespace sp::pricing
