// SPDX-License-Identifier: MIT
#include "core/supply/kit_yield.h"

#include <boost/math/distributions/binomial.hpp>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace sp::supply;
using sp::units::Count;
using sp::units::Money;
using sp::units::Rate;
using testing::ElementsAre;

namespace {

YieldLine stones(std::string material, std::int64_t bought, std::int64_t perPiece, std::int64_t lossPpm = 0,
                 std::int64_t shortPpm = 0) {
    YieldLine line;
    line.material = std::move(material);
    line.counted =
        CountedStock{Count::of(bought), Rate::fromPpm(shortPpm), Rate::fromPpm(lossPpm), Count::of(perPiece)};
    return line;
}

YieldLine sheets(std::string material, std::int64_t count, std::int64_t perSheet, std::int64_t uses = 1) {
    YieldLine line;
    line.material = std::move(material);
    line.sheets = SheetStock{{SheetLot{Count::of(count), Count::of(perSheet), Count::of(uses)}}};
    return line;
}

YieldAnswer yieldOf(std::vector<YieldLine> lines, std::int64_t priceMicros = 39'950'000) {
    const auto answer = kitYield({Money::fromMicros(priceMicros), std::move(lines)});
    EXPECT_TRUE(answer.has_value());
    return answer.value_or(YieldAnswer{});
}

// check-values.md 3.5, the worked example there (computed, not published).
TEST(KitYield, namesBothLimitingColours) {
    const auto answer = yieldOf({stones("crystal", 1440, 212), stones("red", 288, 48), sheets("tape", 1, 10)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_THAT(answer.limiting, ElementsAre("crystal", "red"));
    EXPECT_EQ(answer.left[0].count, Count::of(168));
    EXPECT_EQ(answer.left[1].count, Count::of(0));
    EXPECT_EQ(answer.left[2].count, Count::of(4));
    EXPECT_TRUE(answer.left[2].inPieces);
    EXPECT_EQ(answer.costEach, Money::fromMicros(6'658'333));
    // 1440 + 144 = 1584 = 7 x 212 + 100, but red allows no more than 6; and the other way round.
    ASSERT_EQ(answer.gains.size(), 2U);
    EXPECT_EQ(answer.gains[0].pieces, Count::of(0));
    EXPECT_EQ(answer.gains[1].pieces, Count::of(0));
}

// Common practice, no source: ten gross of each of two colours, two tape sheets, one template and one backing sheet
// make 6 or 7 pieces of a hand-sized design whose limiting colour takes 205 to 240 stones.
TEST(KitYield, ofACommonKitIsSixOrSeven) {
    for (std::int64_t perPiece = 205; perPiece <= 240; ++perPiece) {
        const auto answer = yieldOf({stones("crystal", 1440, perPiece), stones("jet", 1440, 150),
                                     sheets("tape", 2, 6, 2), sheets("backing", 1, 9)});
        EXPECT_THAT(answer.pieces.value(), testing::AllOf(testing::Ge(6), testing::Le(7))) << perPiece;
        EXPECT_THAT(answer.limiting, ElementsAre("crystal")) << perPiece;
    }
}

TEST(KitYield, roundsOnceAfterBothShares) {
    // 1440 x 0.986 x 0.98 = 1391.4432: six pieces of 212 take 1272, 119 good stones are left.
    const auto answer = yieldOf({stones("M", 1440, 212, 20'000, 14'000)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_EQ(answer.left[0].count, Count::of(119));
    // Exactly enough is enough: 100 x 0.98 = 98 = 2 x 49.
    EXPECT_EQ(yieldOf({stones("M", 100, 49, 20'000)}).pieces, Count::of(2));
}

TEST(KitYield, isNothingWhenANeededMaterialIsNotInTheKit) {
    const auto answer = yieldOf({stones("crystal", 1440, 212), stones("gold", 0, 12)});
    EXPECT_EQ(answer.pieces, Count::of(0));
    EXPECT_THAT(answer.limiting, ElementsAre("gold"));
    EXPECT_FALSE(answer.costEach.has_value());
}

TEST(KitYield, isNotLimitedByWhatTheDesignDoesNotUse) {
    const auto answer = yieldOf({stones("crystal", 1440, 212), stones("gold", 144, 0), sheets("tape", 2, 6, 3)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_EQ(answer.left[1].count, Count::of(144));
}

TEST(KitYield, takesATemplateAsAllOrNothing) {
    auto plate = sheets("template", 1, 2);
    plate.sheets->once = true;
    plate.sheets->perPiece = Count::of(2);
    EXPECT_EQ(yieldOf({stones("crystal", 1440, 212), plate}).pieces, Count::of(6));
    plate.sheets->perPiece = Count::of(3);
    const auto answer = yieldOf({stones("crystal", 1440, 212), plate});
    EXPECT_EQ(answer.pieces, Count::of(0));
    EXPECT_THAT(answer.limiting, ElementsAre("template"));
}

TEST(KitYield, refusesADesignThatTakesNothing) {
    EXPECT_EQ(kitYield({Money(), {stones("gold", 144, 0)}}).error().code, sp::base::Code::Invalid);
    EXPECT_EQ(kitYield({Money(), {stones("gold", 144, 1, 1'000'000)}}).error().code, sp::base::Code::OutOfRange);
    EXPECT_EQ(kitYield({Money(), {stones("gold", -1, 1)}}).error().code, sp::base::Code::OutOfRange);
    auto wide = sheets("tape", INT64_MAX, 3);
    EXPECT_EQ(kitYield({Money(), {wide}}).error().code, sp::base::Code::TooLarge);
}

// The laws of check-values.md 3.5.
TEST(KitYield, keepsTheLawsOfTheLimitingItem) {
    constexpr unsigned kSeed = 7;
    std::mt19937 random(kSeed);
    auto upTo = [&random](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    for (int round = 0; round < 3000; ++round) {
        std::vector<YieldLine> lines;
        for (int i = 0; i < 4; ++i)
            lines.push_back(stones(std::string(1, static_cast<char>('a' + i)), upTo(3000), 1 + upTo(300), upTo(90'000),
                                   upTo(30'000)));
        lines.push_back(sheets("tape", upTo(5), upTo(8), 1 + upTo(2)));
        const auto answer = yieldOf(lines);
        bool oneIsShort = false;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            EXPECT_GE(answer.left[i].count, Count::of(0)) << "seed " << kSeed << " round " << round;
            const Count step = lines[i].counted ? lines[i].counted->perPiece : Count::of(1);
            oneIsShort = oneIsShort || answer.left[i].count < step;
        }
        EXPECT_TRUE(oneIsShort) << "seed " << kSeed << " round " << round;
        double before = 1;
        for (const auto& chance : answer.odds) {
            EXPECT_LE(chance.probability, before);
            before = chance.probability;
        }
        auto more = lines;
        const auto raised = static_cast<std::size_t>(upTo(3));
        more[raised].counted->bought += Count::of(upTo(500));
        EXPECT_GE(yieldOf(more).pieces, answer.pieces) << "seed " << kSeed << " round " << round;
    }
}

// Boost.Math as independent reference: two colours lose their stones independently of one another.
TEST(KitYield, multipliesTheOddsOfTheColours) {
    const auto answer = yieldOf({stones("M", 1500, 212, 20'000, 14'000), stones("N", 700, 98, 30'000)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    ASSERT_FALSE(answer.odds.empty());
    bool sawUncertain = false;
    for (const auto& chance : answer.odds) {
        const auto k = static_cast<double>(chance.pieces.value());
        const boost::math::binomial_distribution<double> m(1479, 0.98); // floor(1500 x 0.986)
        const boost::math::binomial_distribution<double> n(700, 0.97);
        auto tail = [](const auto& d, double need) {
            return need > d.trials() ? 0.0 : boost::math::cdf(boost::math::complement(d, need - 1));
        };
        EXPECT_NEAR(chance.probability, tail(m, 212 * k) * tail(n, 98 * k), 1e-12) << k;
        sawUncertain = sawUncertain || (chance.probability > 0.001 && chance.probability < 0.999);
    }
    const auto lucky = yieldOf({stones("M", 1514, 212, 20'000)});
    EXPECT_EQ(lucky.pieces, Count::of(6));
    for (const auto& chance : lucky.odds)
        sawUncertain = sawUncertain || (chance.probability > 0.1 && chance.probability < 0.9);
    EXPECT_TRUE(sawUncertain);
}

TEST(KitYield, keepsTheOddsShortForVeryManyPieces) {
    const auto answer = yieldOf({stones("M", 1'000'000'000, 1, 20'000)});
    EXPECT_LE(answer.odds.size(), kMostOdds);
    EXPECT_GT(answer.odds.front().probability, 0.9999);
    EXPECT_LT(answer.odds.back().probability, 0.0001);
}

} // namespace
