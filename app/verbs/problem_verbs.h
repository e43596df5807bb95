// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/base/result.h"

#include <functional>
#include <string_view>

namespace sp::verbs {

// From the text of a problem file to the JSON of its answer. The shapes are in the README. Unknown keys are refused
// by name; each error is one sentence.

/// How many pieces kits make.
base::Result<Json> yieldAnswer(std::string_view problemText);

/// The cheapest purchase. A problem without a plan gives {"impossible": "…"}; the verb then exits with 1.
base::Result<Json> buyAnswer(std::string_view problemText, const std::function<bool()>& outOfTime);

/// Milliseconds that have passed since the call began: packAnswer stops by it as well as by its steps.
using Stopwatch = std::function<double()>;

/// Different rectangles on sheets or a roll.
base::Result<Json> packAnswer(std::string_view problemText, const Stopwatch& stopwatch);

} // namespace sp::verbs
