// SPDX-License-Identifier: MIT
#include "core/layout/fit_memo.h"

#include <gtest/gtest.h>

using namespace sp::layout;
using sp::units::Length;

namespace {

Length mm(std::int64_t n) {
    return Length::fromNanometres(n * sp::units::kNanometresPerMillimetre);
}

TEST(FitMemo, givesTheSameAnswerWithoutLayingItOutAgain) {
    FitMemo memo;
    const auto first = memo.fit({mm(200), mm(100)}, {mm(30), mm(20)}, {});
    const auto again = memo.fit({mm(200), mm(100)}, {mm(30), mm(20)}, {});
    ASSERT_TRUE(first && again);
    EXPECT_EQ(first->get(), again->get());
    EXPECT_EQ(**first, *fitSheet({mm(200), mm(100)}, {mm(30), mm(20)}, {}));
    const auto roll = memo.roll(mm(200), {mm(30), mm(20)}, {}, 40);
    ASSERT_TRUE(roll);
    EXPECT_EQ(roll->get(), memo.roll(mm(200), {mm(30), mm(20)}, {}, 40)->get());
    EXPECT_NE((*roll)->length, (*memo.roll(mm(200), {mm(30), mm(20)}, {}, 80))->length);
}

TEST(FitMemo, tellsRulesApart) {
    FitMemo memo;
    const auto free = memo.fit({mm(50), mm(30)}, {mm(30), mm(25)}, {});
    const auto oneWay = memo.fit({mm(50), mm(30)}, {mm(30), mm(25)}, {{}, {}, true});
    ASSERT_TRUE(free && oneWay);
    EXPECT_EQ((*free)->count, 2);
    EXPECT_EQ((*oneWay)->count, 1);
}

TEST(FitMemo, forgetsTheLongestUnasked) {
    FitMemo memo(2);
    const auto ask = [&memo](std::int64_t width) {
        return *memo.fit({mm(width), mm(100)}, {mm(30), mm(20)}, {});
    };
    const auto a = ask(100);
    const auto b = ask(110);
    EXPECT_EQ(ask(100), a);
    (void)ask(120);
    EXPECT_EQ(memo.size(), 2U);
    EXPECT_EQ(ask(100), a);
    EXPECT_NE(ask(110), b);
}

TEST(FitMemo, boundsThePositionsItHolds) {
    FitMemo memo;
    for (std::int64_t k = 0; k < 15; ++k)
        ASSERT_TRUE(memo.fit({mm(3000 + 3 * k), mm(2000)}, {mm(3), mm(2)}, {}));
    EXPECT_EQ(memo.size(), FitMemo::kMostRemembered / static_cast<std::size_t>(kMostPositions));
}

TEST(FitMemo, doesNotRememberErrors) {
    FitMemo memo;
    EXPECT_FALSE(memo.fit({mm(0), mm(100)}, {mm(30), mm(20)}, {}));
    EXPECT_EQ(memo.size(), 0U);
}

} // namespace
