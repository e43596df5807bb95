// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "core/base/ensure.h"
#include "core/base/result.h"

namespace sp::fuzz {

/// Any bytes give an answer that can be written, or one printable sentence.
inline void checkAnswer(const base::Result<verbs::Json>& answer) {
    if (answer) {
        base::ensure(answer->is_object() &&
                         !answer->dump(-1, ' ', false, verbs::Json::error_handler_t::replace).empty(),
                     "an answer is an object");
        return;
    }
    base::ensure(answer.error().detail.size() > 10 && answer.error().detail.back() == '.', "a refusal is a sentence");
}

} // namespace sp::fuzz
