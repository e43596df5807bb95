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

struct Row {
    const char* name;
    Rounding rule;
    std::int64_t micros;
    std::int64_t cents;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class RoundPrice : public testing::TestWithParam<Row> {};

TEST_P(RoundPrice, followsTheRule) {
    const auto& row = GetParam();
    EXPECT_EQ(pricing::roundPrice(Fraction::of(row.micros), row.rule, Currency{}), cents(row.cents));
}

INSTANTIATE_TEST_SUITE_P(Rules, RoundPrice,
                         testing::Values(Row{"cent, half up", {RoundingKind::Nearest, 1, 0}, 6'945'000, 695},
                                         Row{"cent, below half", {RoundingKind::Nearest, 1, 0}, 6'944'999, 694},
                                         Row{"five, half up", {RoundingKind::Nearest, 5, 0}, 6'925'000, 695},
                                         Row{"five, down", {RoundingKind::Nearest, 5, 0}, 6'924'999, 690},
                                         Row{"quarter", {RoundingKind::Nearest, 25, 0}, 6'880'000, 700},
                                         Row{"half", {RoundingKind::Nearest, 50, 0}, 6'740'000, 650},
                                         Row{"whole", {RoundingKind::Nearest, 100, 0}, 6'500'000, 700},
                                         Row{"up to the cent", {RoundingKind::Up, 1, 0}, 6'940'001, 695},
                                         Row{"up stays", {RoundingKind::Up, 1, 0}, 6'940'000, 694},
                                         Row{"up to the quarter", {RoundingKind::Up, 25, 0}, 6'760'000, 700},
                                         Row{"ending .95", {RoundingKind::Ending, 1, 95}, 6'010'000, 695},
                                         Row{"ending .95 exactly", {RoundingKind::Ending, 1, 95}, 6'950'000, 695},
                                         Row{"ending .95 just above", {RoundingKind::Ending, 1, 95}, 6'950'001, 795},
                                         Row{"ending .99 of nothing", {RoundingKind::Ending, 1, 99}, 0, 99},
                                         Row{"nothing", {RoundingKind::Nearest, 5, 0}, 0, 0}));

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

} // namespace
