// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace sp::catalogue {

/// The version of the rules for calculating orders: needs, layout, costing, pricing and rounding together. It is sealed
/// with each paper that is issued. Raise it by one with every change that may alter the total of an order from the same
/// book, be it a corrected formula or a better packing. What was issued under earlier rules stays as it was printed.
///
/// 1: what the shop set with the tax in it (surcharges of sizes, the smallest order, a typed price) was charged whole
/// where no tax was.
/// 2: it is charged without the tax.
/// 3: a spoiled piece costs nothing of its packing, neither materials nor work; a card fee is taken off the price, of
/// the tax too, and is no cost that mark-up counts; lines made with one set of templates pay for it together, the press
/// is warmed up and tested once an order, and the mark-up goes by a design's pieces over the lines.
inline constexpr std::int64_t kRulesVersion = 3;
/// Of the papers that were issued before what they came to was sealed with them: they are reckoned again by it.
inline constexpr std::int64_t kFirstRulesVersion = 1;

} // namespace sp::catalogue
