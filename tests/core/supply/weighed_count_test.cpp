// SPDX-License-Identifier: MIT
// Things counted by weight. The rule of three, its bounds by going through every reading the scale may have rounded:
// worked here; that stones are weighed and not counted is common practice, no source.
#include "core/supply/weighed_count.h"

#include "core/supply/messages.h"
#include "tests/support/described.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using supply::countByWeight;
using supply::WeighedCount;
using supply::Weighing;

TEST(WeighedCount, isTheRuleOfThree) {
    // 100 stones weigh 1.50 g, the tray 12.00 g, tray and stones 42.00 g: 30 g are 2,000 stones. The scale shows
    // hundredths: 29.99 g by 1.505 g a hundred are 1,992.7, 30.01 g by 1.495 g are 2,007.4.
    EXPECT_EQ(countByWeight({100, 1'500, 12'000, 42'000, 10}).value(), (WeighedCount{2'000, 1'992, 2'008}));
    // Halves to even: 2.5 of what weighs 2 g, 3.5.
    EXPECT_EQ(countByWeight({1, 2'000, 0, 5'000, 1}).value().count, 2);
    EXPECT_EQ(countByWeight({1, 2'000, 0, 7'000, 1}).value().count, 4);
    EXPECT_EQ(countByWeight({50, 900, 4'000, 4'000, 10}).value(), (WeighedCount{0, 0, 1}));
}

TEST(WeighedCount, holdsWhateverTheScaleRounded) {
    // 144 things of 17 mg each in a tray of 3,333 mg, and `n` of them weighed: whatever the scale rounds, n is between.
    for (const std::int64_t step : {1, 10, 100, 200})
        for (std::int64_t n = 0; n < 5'000; n += 7) {
            const auto shown = [step](std::int64_t weight) { return (weight + step / 2) / step * step; };
            const auto counted =
                countByWeight({144, shown(144 * 17), shown(3'333), shown(3'333 + n * 17), step}).value();
            EXPECT_LE(counted.least, n) << step;
            EXPECT_GE(counted.most, n) << step;
            EXPECT_LE(counted.least, counted.count);
            EXPECT_GE(counted.most, counted.count);
        }
}

TEST(WeighedCount, saysWhatCannotBeWeighed) {
    const auto refused = [](const Weighing& weighing) { return test::described(countByWeight(weighing).error()); };
    EXPECT_EQ(refused({100, 1'500, 12'000, 11'990, 10}), "WeightBelowTare(11.99, 12)");
    EXPECT_EQ(refused({0, 1'500, 0, 10, 10}), "SampleOutOfRange");
    EXPECT_EQ(refused({100, 0, 0, 10, 10}), "SampleOutOfRange");
    EXPECT_EQ(refused({100, 1'500, 0, -1, 10}), "WeightOutOfRange(0)");
    EXPECT_EQ(refused({1, 15, 0, 1'000, 100}), "ScaleTooCoarse(0.1, 0.015)");
    EXPECT_EQ(refused({1'000'000, 100, 0, 1'000'000'000, 10}), "WeighedTooMany(1000000000)");
}

TEST(WeighedCount, readsGrams) {
    EXPECT_EQ(supply::parseGrams("12.34").value(), 12'340);
    EXPECT_EQ(supply::parseGrams("0.005").value(), 5);
    EXPECT_EQ(supply::parseGrams("1000000").value(), 1'000'000'000);
    for (const char* bad : {"", ".", "1.", ".5", "1.2345", "-1", "1,5", "1000000.001", "12 g", "1e3", "99999999"})
        EXPECT_FALSE(supply::parseGrams(bad)) << bad;
}

} // namespace
