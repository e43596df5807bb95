// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/pricing/ladder.h"
#include "core/pricing/left_out.h"
#include "core/pricing/price_order.h"

#include <string>
#include <vector>

namespace sp::verbs {

// What the owner reads of a line or an order, as the verbs answer it.

/// {"net","cost","paid_out","profit","markup","margin","earned_per_bench_hour","coverage"}
Json earningsJson(const pricing::Earnings& earned, const units::Currency& currency);
/// "pays", "below_cost", "below_floor".
const char* codeOf(pricing::PriceCoverage coverage);
/// What the shop earns, and whether that pays.
std::string earnedText(const pricing::Earnings& earned, const units::Currency& currency);

/// [{"code","says","field"}]: what is not in the price, and the field of the book that mends it.
Json leftOutJson(const std::vector<pricing::LeftOut>& leftOut);
/// Empty where nothing is left out.
std::string leftOutText(const std::vector<pricing::LeftOut>& leftOut);

/// {"pieces","total","ordered"}, or null.
Json moreJson(const std::optional<pricing::MoreForLess>& more, const units::Currency& currency);
/// Empty where no more pieces come to less than `pieces` do.
std::string moreText(const std::optional<pricing::MoreForLess>& more, units::Count pieces,
                     const units::Currency& currency);

} // namespace sp::verbs
