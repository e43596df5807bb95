// SPDX-License-Identifier: MIT
#include "core/layout/fit_memo.h"

#include "core/layout/roll.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

using namespace sp::layout;
using sp::units::Length;

namespace {

using sp::support::mm;

TEST(FitMemo, answersAsTheLayoutDoes) {
    FitMemo memo;
    for (int time = 0; time < 2; ++time) {
        EXPECT_EQ(memo.count({mm(200), mm(100)}, {mm(30), mm(20)}, {}).value(),
                  fitSheet({mm(200), mm(100)}, {mm(30), mm(20)}, {})->count);
        EXPECT_EQ(memo.length(mm(200), {mm(30), mm(20)}, {}, 40).value(),
                  lengthForPieces(mm(200), {mm(30), mm(20)}, {}, 40)->length);
        EXPECT_EQ(memo.size(), 2U);
    }
}

TEST(FitMemo, tellsRulesApart) {
    FitMemo memo;
    EXPECT_EQ(memo.count({mm(50), mm(30)}, {mm(30), mm(25)}, {}).value(), 2);
    EXPECT_EQ(memo.count({mm(50), mm(30)}, {mm(30), mm(25)}, {{}, {}, true}).value(), 1);
}

TEST(FitMemo, staysBounded) {
    FitMemo memo;
    for (std::int64_t width = 0; width < static_cast<std::int64_t>(FitMemo::kMaxRemembered) + 10; ++width)
        ASSERT_TRUE(memo.count({mm(width + 10), mm(10)}, {mm(10), mm(10)}, {}));
    EXPECT_LE(memo.size(), FitMemo::kMaxRemembered);
}

TEST(FitMemo, doesNotRememberErrors) {
    FitMemo memo;
    EXPECT_FALSE(memo.count({mm(0), mm(100)}, {mm(30), mm(20)}, {}));
    EXPECT_EQ(memo.size(), 0U);
}

} // namespace
