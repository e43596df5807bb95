// SPDX-License-Identifier: MIT
// The card fee in a line's cost; worked by hand.
#include "tests/core/pricing/price_job.h"

#include <gtest/gtest.h>

using namespace sp;
using Job = pricing::PriceJob;
using sample::cents;
using units::Money;
using units::Rate;

namespace {

// 10 micro-units over three lines are 4, 3 and 3.
TEST(CardFees, shareTheFixedCardFeeOut) {
    Job job;
    job.order.lines.resize(3, job.first());
    job.rules().cardFee = {true, {}, Money::fromMicros(10)};
    EXPECT_EQ(pricing::cardFeeShare(job.order, 0, job.rules()), Money::fromMicros(4));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 1, job.rules()), Money::fromMicros(3));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 2, job.rules()), Money::fromMicros(3));
    job.rules().cardFee.fixed = Money::fromMicros(11);
    EXPECT_EQ(pricing::cardFeeShare(job.order, 1, job.rules()), Money::fromMicros(4));
    EXPECT_EQ(pricing::cardFeeShare(job.order, 2, job.rules()), Money::fromMicros(3));
    job.rules().cardFee.charged = false;
    EXPECT_EQ(pricing::cardFeeShare(job.order, 0, job.rules()), Money{});
}

// To keep 100.00 at 2.9 % and 0.30: 103.295572 (computed), and in the cost sheet of each of two lines half the 0.30.
TEST(CardFees, chargeTheCardFeeOnce) {
    Job job(1, 10'000);
    job.rules().cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    EXPECT_EQ(job.line0().cost.total.micros(), 103'295'572);
    EXPECT_EQ(job.line0().each, cents(10'330));
    job.order.lines.push_back(job.first());
    EXPECT_EQ(job.price().lines[1].cost.total.micros(), 103'141'092); // (100 + 0.15) ÷ 0.971
    layout::FitMemo fits;
    const auto sheet = pricing::costSheetOf(job.order, 1, job.book, fits);
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(sheet->total.micros(), 103'141'092);
}

} // namespace
