// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"
#include "app/words/words.h"
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
    const std::string sentence = words::text(answer.error());
    base::ensure(sentence.size() > 10 && sentence.back() == '.', "a refusal is a sentence");
}

} // namespace sp::fuzz
