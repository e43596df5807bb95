// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/text.h"
#include "tests/support/seed.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <array>
#include <cstdint>
#include <ostream>
#include <random>
#include <string>
#include <string_view>

/// What the tests of typed text share: styles of numbers, the form of a refusal, numbers of every size.
namespace text_cases {

using sp::base::Code;
using sp::units::NumberStyle;

inline constexpr NumberStyle kEnglish{U'.', U','};
inline constexpr NumberStyle kGerman{U',', U'.'};
inline constexpr NumberStyle kFrench{U',', U'\u202F'};
inline constexpr NumberStyle kSwiss{U'.', U'\u2019'};
inline constexpr NumberStyle kPlain{U'.', U'\0'};
inline constexpr std::array kStyles{kEnglish, kGerman, kFrench, kSwiss, kPlain};

/// Text that reads: what it comes to, counted in the smallest thing.
struct ReadCase {
    const char* text;
    std::int64_t value;
    NumberStyle style = kEnglish;
};

inline void PrintTo(const ReadCase& row, std::ostream* out) { *out << row.text; }

/// Text that is refused, and the fault with its values.
struct Refusal {
    std::string text;
    Code code;
    const char* says;
    NumberStyle style = kEnglish;
};

inline void PrintTo(const Refusal& row, std::ostream* out) { *out << row.text; }

inline void expectRefusal(const Refusal& row, const sp::base::Error& error) {
    EXPECT_EQ(error.code, row.code) << describe(error);
    EXPECT_EQ(describe(error.message()), row.says);
}

/// Whole numbers from 0 to `most` of every size, not only large ones.
inline std::int64_t anySize(std::mt19937_64& random, std::int64_t most) {
    const auto shift = random() % 63;
    return static_cast<std::int64_t>((random() >> 1) >> shift) % (most + 1);
}

} // namespace text_cases
