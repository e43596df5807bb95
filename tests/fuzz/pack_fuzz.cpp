// SPDX-License-Identifier: MIT
//
// Problems of rectangles on sheets from any bytes: answered or refused, in bounded work.
#include "app/verbs/problem_verbs.h"
#include "tests/fuzz/problem_check.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    sp::fuzz::checkAnswer(sp::verbs::packAnswer(text, 200'000));
    return 0;
}
