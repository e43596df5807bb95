// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/base/result.h"
#include "core/supply/purchase.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>

namespace sp::verbs {

// From the text of a problem file to the JSON of its answer. The shapes are in resources/schemas. Unknown keys are
// refused by name; each error is one sentence.

/// How many pieces kits make.
base::Result<Json> yieldAnswer(std::string_view problemText);

/// Answers a programme as supply::takeSolution reads it; nothing where it cannot.
using Solver = std::function<std::optional<std::string>(const std::string& programme)>;

/// The cheapest purchase that so many steps find (supply::PlanEffort), and where they do not prove it, what the solver
/// makes of it. A problem without a plan gives {"impossible":
/// "…"}; the verb then exits with 1.
base::Result<Json> buyAnswer(std::string_view problemText, std::int64_t steps = supply::PlanEffort::kUsual,
                             const Solver& solver = {});

/// Different rectangles on sheets or a roll. The problem's budget is counted in steps, so many for a millisecond of a
/// machine of today, and no more than `mostSteps`.
base::Result<Json> packAnswer(std::string_view problemText,
                              std::int64_t mostSteps = std::numeric_limits<std::int64_t>::max());

/// The JSON Schema (draft 2020-12) of the problems of yield, buy or pack, with the shape of the answers in
/// $defs/answer. Errors: NotFound.
base::Result<std::string> schemaOf(std::string_view verb);

} // namespace sp::verbs
