// SPDX-License-Identifier: MIT
#include "core/units/count.h"
#include "core/units/duration.h"
#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <gtest/gtest.h>

#include <concepts>
#include <limits>

using namespace sp::units;

namespace {

template<class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template<class A, class B>
concept Multipliable = requires(A a, B b) {
    a* b;
};
template<class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

// What must not compile.
static_assert(Addable<Money, Money>);
static_assert(!Addable<Money, Count>);
static_assert(!Addable<Length, Duration>);
static_assert(!Addable<Money, std::int64_t>);
static_assert(!Multipliable<Money, Money>);
static_assert(!Multipliable<Length, Length>);
static_assert(!Comparable<Money, Rate>);
static_assert(!std::convertible_to<std::int64_t, Money>);
static_assert(!std::convertible_to<Money, std::int64_t>);

TEST(Money, addsExactly) {
    Money sum;
    for (int i = 0; i < 1000; ++i) sum += Money::fromMicros(100'001);
    EXPECT_EQ(sum.micros(), 100'001'000);
}

TEST(Money, refusesToWrap) {
    const Money most = Money::fromMicros(std::numeric_limits<std::int64_t>::max());
    EXPECT_THROW(most + Money::fromMicros(1), sp::base::Overflow);
    EXPECT_THROW(-Money::fromMicros(std::numeric_limits<std::int64_t>::min()), sp::base::Overflow);
}

TEST(Length, holdsSixtyFourthsAndHundredthsExactly) {
    EXPECT_EQ(Length::fromInch64ths(64).nanometres(), kNanometresPerInch);
    EXPECT_EQ(Length::fromInch64ths(1).nanometres() * 64, kNanometresPerInch);
    EXPECT_EQ(Length::fromMicrometres(10).nanometres(), 10'000);
}

} // namespace
