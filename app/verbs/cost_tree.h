// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "app/words/cost_words.h"
#include "core/units/currency.h"

#include <string>
#include <vector>

namespace sp::verbs {

/// {"label","amount","rule","children":[…]}; amounts are exact.
Json costJson(const words::CostTree& tree, const units::Currency& currency);

/// A line of text a node; `shown` holds what is read of each node, in reading order (costing::shownForOneOf).
std::string costText(const words::CostTree& tree, const std::vector<units::Money>& shown,
                     const units::Currency& currency);

} // namespace sp::verbs
