// SPDX-License-Identifier: MIT
#include "core/pricing/rounding.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

using namespace sp;
using catalogue::Rounding;
using catalogue::RoundingKind;
using sample::cents;
using units::Currency;
using units::Fraction;
using units::Money;

namespace {

struct RoundingRow {
    const char* name;
    Rounding rule;
    std::int64_t micros;
    std::int64_t cents;
};

void PrintTo(const RoundingRow& row, std::ostream* out) { *out << row.name; }

class RoundPrice : public testing::TestWithParam<RoundingRow> {};

TEST_P(RoundPrice, followsTheRule) {
    const auto& row = GetParam();
    EXPECT_EQ(pricing::roundPrice(Fraction::of(row.micros), row.rule, Currency{}), cents(row.cents));
}

INSTANTIATE_TEST_SUITE_P(
    Rules, RoundPrice,
    testing::Values(RoundingRow{"cent, half up", {RoundingKind::Nearest, 1, 0}, 6'945'000, 695},
                    RoundingRow{"cent, below half", {RoundingKind::Nearest, 1, 0}, 6'944'999, 694},
                    RoundingRow{"five, half up", {RoundingKind::Nearest, 5, 0}, 6'925'000, 695},
                    RoundingRow{"five, down", {RoundingKind::Nearest, 5, 0}, 6'924'999, 690},
                    RoundingRow{"quarter", {RoundingKind::Nearest, 25, 0}, 6'880'000, 700},
                    RoundingRow{"half", {RoundingKind::Nearest, 50, 0}, 6'740'000, 650},
                    RoundingRow{"whole", {RoundingKind::Nearest, 100, 0}, 6'500'000, 700},
                    RoundingRow{"up to the cent", {RoundingKind::Up, 1, 0}, 6'940'001, 695},
                    RoundingRow{"up stays", {RoundingKind::Up, 1, 0}, 6'940'000, 694},
                    RoundingRow{"up to the quarter", {RoundingKind::Up, 25, 0}, 6'760'000, 700},
                    RoundingRow{"ending .95", {RoundingKind::Ending, 1, 95}, 6'010'000, 695},
                    RoundingRow{"ending .95 exactly", {RoundingKind::Ending, 1, 95}, 6'950'000, 695},
                    RoundingRow{"ending .95 just above", {RoundingKind::Ending, 1, 95}, 6'950'001, 795},
                    RoundingRow{"ending .99 of nothing", {RoundingKind::Ending, 1, 99}, 0, 99},
                    RoundingRow{"nothing", {RoundingKind::Nearest, 5, 0}, 0, 0}));

// Halves go away from zero: 2.5 to 3, -4.5 to -5, 7.5 to 8, -1.1 to -1 (docs.cangjie-lang.cn, table of RoundingMode).
INSTANTIATE_TEST_SUITE_P(
    Edges, RoundPrice,
    testing::Values(RoundingRow{"2.5", {RoundingKind::Nearest, 1, 0}, 25'000, 3},
                    RoundingRow{"-4.5", {RoundingKind::Nearest, 1, 0}, -45'000, -5},
                    RoundingRow{"7.5", {RoundingKind::Nearest, 1, 0}, 75'000, 8},
                    RoundingRow{"-1.1", {RoundingKind::Nearest, 1, 0}, -11'000, -1},
                    RoundingRow{"-1.4 to the five", {RoundingKind::Nearest, 5, 0}, -14'000, 0},
                    RoundingRow{"-2.5 to the five", {RoundingKind::Nearest, 5, 0}, -25'000, -5},
                    RoundingRow{"12.5 to the quarter", {RoundingKind::Nearest, 25, 0}, 125'000, 25},
                    RoundingRow{"just below", {RoundingKind::Nearest, 25, 0}, 124'999, 0},
                    RoundingRow{"a step of none is the cent", {RoundingKind::Nearest, 0, 0}, 15'000, 2},
                    RoundingRow{"… upwards too", {RoundingKind::Up, 0, 0}, 10'001, 2},
                    RoundingRow{"-1.1 up", {RoundingKind::Up, 1, 0}, -11'000, -1},
                    RoundingRow{"-26 up to the quarter", {RoundingKind::Up, 25, 0}, -260'000, -25},
                    RoundingRow{"nothing up", {RoundingKind::Up, 25, 0}, 0, 0},
                    RoundingRow{"ending .95 from 95", {RoundingKind::Ending, 1, 95}, 950'000, 95},
                    RoundingRow{"ending .95 from 96", {RoundingKind::Ending, 1, 95}, 960'000, 195},
                    RoundingRow{"ending .95 from 1", {RoundingKind::Ending, 1, 95}, 10'000, 95},
                    RoundingRow{"ending .00 from 1.00", {RoundingKind::Ending, 1, 0}, 1'000'000, 100},
                    RoundingRow{"ending .00 from just above", {RoundingKind::Ending, 1, 0}, 1'000'001, 200},
                    RoundingRow{"ending .00 from nothing", {RoundingKind::Ending, 1, 0}, 0, 0},
                    RoundingRow{"ending .95 from below nothing", {RoundingKind::Ending, 1, 95}, -3'000'000, 95}));

TEST(RoundPrice, knowsCurrenciesWithoutDecimals) {
    const auto yen = *Currency::parse("JPY");
    EXPECT_EQ(pricing::roundPrice(Fraction::of(1'234'500'000), {RoundingKind::Nearest, 5, 0}, yen).micros(),
              1'235'000'000);
}

TEST(RoundPrice, upAndEndingNeverGoBelow) {
    std::mt19937_64 random(test::printedSeed());
    for (int i = 0; i < 2000; ++i) {
        const auto micros = static_cast<std::int64_t>(random() % 500'000'000);
        for (const Rounding& rule : {Rounding{RoundingKind::Up, 25, 0}, Rounding{RoundingKind::Ending, 1, 95}})
            EXPECT_GE(pricing::roundPrice(Fraction::of(micros), rule, Currency{}).micros(), micros);
    }
}

TEST(UpToStep, roundsDepositsUp) {
    EXPECT_EQ(pricing::upToStep(cents(20'366), cents(500), Currency{}), cents(20'500));
    EXPECT_EQ(pricing::upToStep(cents(20'500), cents(500), Currency{}), cents(20'500));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(1), Money{}, Currency{}), cents(1));
}

TEST(UpToStep, staysAtAMultipleAndClimbsFromAnyMore) {
    EXPECT_EQ(pricing::upToStep(cents(500), cents(500), {}), cents(500));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(5'000'001), cents(500), {}), cents(1000));
    EXPECT_EQ(pricing::upToStep(Money{}, cents(500), {}), Money{});
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(10'001), Money{}, {}), cents(2));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(10'001), cents(-5), {}), cents(2));
    EXPECT_EQ(pricing::upToStep(Money::fromMicros(3), Money::fromMicros(2), {}), Money::fromMicros(4));
}

} // namespace
