// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace sp::pricing {

/// The version of the rules for calculating orders: needs, layout, costing, pricing and rounding together. It is sealed
/// with each paper that is issued. Raise it by one with every change that may alter the total of an order from the same
/// book, be it a corrected formula or a better packing. What was issued under earlier rules stays as it was printed.
inline constexpr std::int64_t kRulesVersion = 1;

} // namespace sp::pricing
