// SPDX-License-Identifier: MIT
#include "core/supply/kit_yield.h"
#include "core/supply/odds.h"
#include "tests/support/seed.h"

#include <boost/math/distributions/binomial.hpp>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
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

// Worked by hand (the limiting item rule is common practice, no source).
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
    EXPECT_TRUE(answer.gains.empty());
    EXPECT_EQ(answer.sure, Count::of(6)); // nothing is lost
    EXPECT_EQ(answer.likely.pieces, Count::of(6));
    EXPECT_EQ(answer.likely.probability, 1);
}

// 1,440 stones of which each is lost with 2 %: 1,411.2 on the average, six pieces of 235 take 1,410. They come out
// with odds of 0.6357 (the binomial distribution, by Boost beside), five take 1,175 and are sure: 39.95 / 5 = 7.99.
TEST(KitYield, costsWhatIsSureNotTheAverage) {
    const auto answer = yieldOf({stones("crystal", 1440, 235, 20'000)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_EQ(answer.sure, Count::of(5));
    EXPECT_EQ(answer.likely.pieces, Count::of(6));
    const boost::math::binomial_distribution<double> kept(1440, 0.98);
    EXPECT_NEAR(answer.likely.probability, cdf(complement(kept, 1409)), 1e-9);
    EXPECT_NEAR(answer.likely.probability, 0.6357, 0.00005);
    EXPECT_EQ(answer.costEach, Money::fromMicros(7'990'000));
}

// 1,000 at 98 a piece: ten take 980, with odds of 0.5591; nine take 882.
TEST(KitYield, tellsTheLikelyFromTheSure) {
    const auto answer = yieldOf({stones("jet", 1000, 98, 20'000)}, 36'000'000);
    EXPECT_EQ(answer.sure, Count::of(9));
    EXPECT_EQ(answer.likely.pieces, Count::of(10));
    EXPECT_NEAR(answer.likely.probability, 0.5591, 0.00005);
    EXPECT_EQ(answer.costEach, Money::fromMicros(4'000'000));
    // One piece that takes all but two of a hundred stones: likely (0.98 kept is 98 on the average), not sure.
    const auto one = yieldOf({stones("jet", 100, 98, 20'000)});
    EXPECT_EQ(one.sure, Count::of(0));
    EXPECT_EQ(one.likely.pieces, Count::of(1));
    EXPECT_FALSE(one.costEach.has_value());
}

/// Two colours are lost on their own: the odds of both are the product. By hand of Boost's binomial, at and one above.
TEST(KitYield, isSureAndLikelyWhereTheOddsSaySo) {
    std::mt19937_64 random(sp::test::printedSeed());
    const auto draw = [&](std::int64_t least, std::int64_t most) {
        return least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1));
    };
    for (int round = 0; round < 200; ++round) {
        struct Colour {
            std::int64_t bought, perPiece, loss;
        };
        const std::vector<Colour> colours{{draw(1, 3000), draw(1, 300), draw(1, 100'000)},
                                          {draw(1, 3000), draw(1, 300), draw(1, 100'000)}};
        const auto odds = [&](std::int64_t pieces) {
            double product = 1;
            for (const auto& colour : colours) {
                const auto stones = pieces * colour.perPiece;
                if (stones > colour.bought) return 0.0;
                if (stones == 0) continue;
                const boost::math::binomial_distribution<double> kept(static_cast<double>(colour.bought),
                                                                      1 - static_cast<double>(colour.loss) / 1e6);
                product *= cdf(complement(kept, static_cast<double>(stones - 1)));
            }
            return product;
        };
        const auto answer = yieldOf({stones("a", colours[0].bought, colours[0].perPiece, colours[0].loss),
                                     stones("b", colours[1].bought, colours[1].perPiece, colours[1].loss)});
        const auto sure = answer.sure.value();
        const auto likely = answer.likely.pieces.value();
        EXPECT_GE(odds(sure), 0.999 - 1e-9) << round;
        EXPECT_LT(odds(sure + 1), 0.999 + 1e-9) << round;
        EXPECT_GE(odds(likely), 0.5 - 1e-9) << round;
        EXPECT_LT(odds(likely + 1), 0.5 + 1e-9) << round;
        EXPECT_LE(sure, likely) << round;
    }
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

// What the design does not use stands first in the kit, and changes nothing of what the rest makes: 100 stones of which
// 2 % are lost, 49 a piece: two pieces if at least 98 are kept, 0.98^100 + 100 × 0.02 × 0.98^99 + 4950 × 0.0004 ×
// 0.98^98 = 0.6767.
TEST(KitYield, hasTheSameOddsBesideWhatIsNotUsed) {
    const auto answer = yieldOf({stones("gold", 144, 0), stones("jet", 100, 49, 20'000)});
    EXPECT_EQ(answer.pieces, Count::of(2));
    EXPECT_EQ(answer.sure, Count::of(1));
    EXPECT_EQ(answer.likely.pieces, Count::of(2));
    EXPECT_NEAR(answer.likely.probability, 0.6767, 0.00005);
}

// Odds of exactly a half are likely enough: one stone of which half are lost.
TEST(KitYield, isLikelyAtAHalf) {
    const auto answer = yieldOf({stones("jet", 1, 1, 500'000)});
    EXPECT_EQ(answer.sure, Count::of(0));
    EXPECT_EQ(answer.likely.pieces, Count::of(1));
    EXPECT_EQ(answer.likely.probability, 0.5);
}

// One sheet, on which nothing fits: the first piece comes out with no odds at all, whatever the stones.
TEST(KitYield, hasNoOddsWhereNoSheetDoes) {
    const auto answer = yieldOf({stones("jet", 1440, 48), sheets("tape", 1, 0)});
    EXPECT_EQ(answer.pieces, Count::of(0));
    EXPECT_EQ(answer.likely.pieces, Count::of(0));
    ASSERT_EQ(answer.odds.size(), 1U);
    EXPECT_EQ(answer.odds[0].pieces, Count::of(1));
    EXPECT_EQ(answer.odds[0].probability, 0);
}

// A gross more of each by itself: 144 more of one colour add nothing while the other limits too.
TEST(KitYield, triesOneMoreGrossOfEachByItself) {
    const auto answer = yieldOf({stones("crystal", 288, 48), stones("jet", 288, 48), sheets("tape", 9, 9)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_TRUE(answer.gains.empty());
    const auto one = yieldOf({stones("crystal", 288, 48), stones("jet", 1440, 48), sheets("tape", 9, 9)});
    ASSERT_EQ(one.gains.size(), 1U);
    EXPECT_EQ(one.gains[0].material, "crystal");
    EXPECT_EQ(one.gains[0].pieces, Count::of(3)); // 144 ÷ 48
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

// What follows from the limiting item rule for any kit.
TEST(KitYield, keepsTheLawsOfTheLimitingItem) {
    std::mt19937_64 random(sp::test::printedSeed());
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
            EXPECT_GE(answer.left[i].count, Count::of(0)) << round;
            const Count step = lines[i].counted ? lines[i].counted->perPiece : Count::of(1);
            oneIsShort = oneIsShort || answer.left[i].count < step;
        }
        EXPECT_TRUE(oneIsShort) << round;
        double before = 1;
        for (const auto& chance : answer.odds) {
            EXPECT_LE(chance.probability, before);
            before = chance.probability;
        }
        auto more = lines;
        const auto raised = static_cast<std::size_t>(upTo(3));
        more[raised].counted->bought += Count::of(upTo(500));
        EXPECT_GE(yieldOf(more).pieces, answer.pieces) << round;
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

// 2 sheets × 3 pieces × 2 lifts + 1 sheet × 4 = 16 cuts, two a piece: 8 pieces; 11 of 1,440 / 131 allow more.
TEST(KitYield, addsUpSheetsOfSeveralSizes) {
    auto tape = sheets("tape", 2, 3, 2);
    tape.sheets->lots.push_back({Count::of(1), Count::of(4), Count::of(1)});
    tape.sheets->perPiece = Count::of(2);
    const auto answer = yieldOf({stones("M", 1440, 131), tape});
    EXPECT_EQ(answer.pieces, Count::of(8));
    EXPECT_THAT(answer.limiting, ElementsAre("tape"));
    EXPECT_EQ(answer.left[0].count, Count::of(1440 - 8 * 131));
    EXPECT_EQ(answer.left[1].count, Count::of(0));
    EXPECT_TRUE(answer.gains.empty()) << "no stone limits it";
    tape.sheets->lots[1].perSheet = Count::of(5); // 17 cuts are 8 pieces too
    EXPECT_EQ(yieldOf({stones("M", 1440, 131), tape}).pieces, Count::of(8));
    tape.sheets->lots[1].perSheet = Count::of(6);
    EXPECT_EQ(yieldOf({stones("M", 1440, 131), tape}).pieces, Count::of(9));
}

// A template is cut once whatever it could serve: of 2 sheets × 3 at one lift each 3 sets of 2 can be cut, 2 are left.
TEST(KitYield, cutsATemplateOnce) {
    auto plate = sheets("template", 2, 3, 5);
    plate.sheets->once = true;
    plate.sheets->perPiece = Count::of(2);
    const auto answer = yieldOf({stones("M", 1440, 212), plate});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_EQ(answer.left[1].count, Count::of(2));
    EXPECT_TRUE(answer.left[1].inPieces);
    plate.sheets->perPiece = Count::of(6); // one set, and none left
    EXPECT_EQ(yieldOf({stones("M", 1440, 212), plate}).left[1].count, Count::of(0));
    plate.sheets->perPiece = Count::of(7); // not one set
    EXPECT_EQ(yieldOf({stones("M", 1440, 212), plate}).left[1].count, Count::of(0));
    EXPECT_EQ(yieldOf({stones("M", 1440, 212), plate}).pieces, Count::of(0));
}

// 168 stones left × 6.94 / 1,440 = 0.8096666…; two whole sheets that nothing is cut from × 1.18; cut pieces have no
// price.
TEST(KitYield, valuesWhatIsLeft) {
    auto crystal = stones("crystal", 1440, 212);
    crystal.bulk = sp::units::UnitPrice{Money::fromMicros(6'940'000), Count::of(1440)};
    auto foil = sheets("foil", 1, 8);
    foil.sheets->lots.push_back({Count::of(1), Count::of(2)});
    foil.sheets->perPiece = Count::of(0);
    foil.bulk = sp::units::UnitPrice{Money::fromMicros(1'180'000)};
    auto tape = sheets("tape", 1, 10);
    tape.bulk = foil.bulk;
    const auto answer = yieldOf({crystal, foil, tape, stones("jet", 900, 100)});
    EXPECT_EQ(answer.pieces, Count::of(6));
    EXPECT_EQ(answer.left[0].value, Money::fromMicros(809'667));
    EXPECT_FALSE(answer.left[0].inPieces);
    EXPECT_EQ(answer.left[1].count, Count::of(2));
    EXPECT_EQ(answer.left[1].value, Money::fromMicros(2'360'000));
    EXPECT_FALSE(answer.left[1].inPieces);
    EXPECT_EQ(answer.left[2].count, Count::of(4));
    EXPECT_FALSE(answer.left[2].value.has_value());
    EXPECT_FALSE(answer.left[3].value.has_value()) << "it has no bulk price";
}

// 1,440 + 144 = 1,584 = 7 × 212 + 100: one piece more; 20 + 144 of 10 a piece: fourteen more, but for crystal.
TEST(KitYield, saysWhatAGrossMoreWouldAdd) {
    const auto one = yieldOf({stones("crystal", 1440, 212), stones("jet", 900, 100)});
    ASSERT_EQ(one.gains.size(), 1U);
    EXPECT_EQ(one.gains[0].material, "crystal");
    EXPECT_EQ(one.gains[0].pieces, Count::of(1));
    const auto many = yieldOf({stones("crystal", 1440, 212), stones("jet", 20, 10)});
    ASSERT_EQ(many.gains.size(), 1U);
    EXPECT_EQ(many.gains[0].material, "jet");
    EXPECT_EQ(many.gains[0].pieces, Count::of(4));
}

TEST(KitYield, costsEachToTheMicro) {
    EXPECT_EQ(yieldOf({stones("M", 3, 1)}, 10'000'000).costEach, Money::fromMicros(3'333'333));
    EXPECT_EQ(yieldOf({stones("M", 1, 1)}, 10'000'000).costEach, Money::fromMicros(10'000'000));
    EXPECT_EQ(yieldOf({stones("M", 5, 1)}, 0).costEach, Money());
}

// Without loss nothing is uncertain: the pieces for sure, and no more to be hoped for.
TEST(KitYield, hasNoOddsWithoutLoss) {
    const auto answer = yieldOf({stones("M", 1000, 99)});
    ASSERT_EQ(answer.odds.size(), 1U);
    EXPECT_EQ(answer.odds[0].pieces, Count::of(10));
    EXPECT_EQ(answer.odds[0].probability, 1.0);
    const auto none = yieldOf({stones("M", 50, 100)});
    ASSERT_EQ(none.odds.size(), 1U);
    EXPECT_EQ(none.odds[0].pieces, Count::of(1));
    EXPECT_EQ(none.odds[0].probability, 0.0);
}

// Two stones that are each lost half the time, and as many sheets as one likes: one piece three times in four, two once
// in four. A short count of a third leaves two of three.
TEST(KitYield, saysTheOddsOfEachNumber) {
    for (const auto& line : {stones("M", 2, 1, 500'000), stones("M", 3, 1, 500'000, 333'333)}) {
        const auto answer = yieldOf({line, sheets("tape", 1, 9)});
        EXPECT_EQ(answer.pieces, Count::of(1));
        ASSERT_EQ(answer.odds.size(), 2U);
        EXPECT_EQ(answer.odds[0].pieces, Count::of(1));
        EXPECT_NEAR(answer.odds[0].probability, 0.75, 1e-12);
        EXPECT_EQ(answer.odds[1].pieces, Count::of(2));
        EXPECT_NEAR(answer.odds[1].probability, 0.25, 1e-12);
    }
    // Sheets for one piece alone end the list there.
    const auto short1 = yieldOf({stones("M", 2, 1, 500'000), sheets("tape", 1, 1)});
    ASSERT_EQ(short1.odds.size(), 1U);
    EXPECT_NEAR(short1.odds[0].probability, 0.75, 1e-12);
    // A colour that the piece does not take has no say.
    EXPECT_EQ(yieldOf({stones("M", 2, 1, 500'000), stones("N", 1, 0, 500'000)}).odds.size(), 2U);
}

// From the last number that prints as certain to the first that prints as never, every one of them.
TEST(KitYield, listsEveryNumberThatIsInDoubt) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int round = 0; round < 200; ++round) {
        const auto upTo = [&](std::uint64_t most) { return static_cast<std::int64_t>(random() % most); };
        const auto line = stones("M", 100 + upTo(4000), 1 + upTo(60), upTo(300'000));
        const auto answer = yieldOf({line});
        const auto& odds = answer.odds;
        ASSERT_FALSE(odds.empty());
        const auto received = line.counted->bought;
        const auto perPiece = line.counted->perPiece.value();
        const auto of = [&](std::int64_t k) {
            return chanceOfAtLeast(Count::of(k * perPiece), received, line.counted->loss);
        };
        EXPECT_TRUE(odds.front().pieces == Count::of(1) || odds.front().probability >= 0.99995 ||
                    odds.front().pieces == answer.pieces);
        const auto highest = received.value() / perPiece;
        const auto last = odds.back().pieces.value();
        EXPECT_TRUE(last >= highest || odds.back().probability < 0.00005) << last;
        EXPECT_TRUE(std::ranges::any_of(odds, [&](const auto& o) { return o.pieces == answer.pieces; }) ||
                    answer.pieces.isZero());
        for (std::size_t i = 0; i < odds.size(); ++i) {
            EXPECT_EQ(odds[i].probability, of(odds[i].pieces.value()));
            if (i > 0 && odds.size() < kMaxOdds - 1) { EXPECT_EQ(odds[i].pieces, odds[i - 1].pieces + Count::of(1)); }
        }
        // One more at each end is all: the second is in doubt, and so is the last but one.
        if (odds.size() > 2) {
            if (odds[1].pieces < answer.pieces) { EXPECT_LT(odds[1].probability, 0.99995); }
            if (odds[odds.size() - 2].pieces > answer.pieces) { EXPECT_GE(odds[odds.size() - 2].probability, 0.00005); }
        }
    }
}

struct Refusal {
    const char* name;
    YieldLine line;
    sp::base::Code code;
    const char* says;
};

void PrintTo(const Refusal& row, std::ostream* out) { *out << row.name; }

class KitYieldRefusal : public testing::TestWithParam<Refusal> {};

TEST_P(KitYieldRefusal, saysWhatIsWrong) {
    const auto answer = kitYield({Money(), {stones("M", 10, 1), GetParam().line}});
    ASSERT_FALSE(answer.has_value());
    EXPECT_EQ(answer.error().code, GetParam().code);
    EXPECT_THAT(describe(answer.error()), testing::HasSubstr(GetParam().says));
}

YieldLine lot(std::int64_t count, std::int64_t perSheet, std::int64_t uses, std::int64_t perPiece = 1) {
    auto line = sheets("S", count, perSheet, uses);
    line.sheets->perPiece = Count::of(perPiece);
    return line;
}

YieldLine neither() {
    YieldLine line;
    line.material = "S";
    return line;
}

YieldLine both() {
    auto line = sheets("S", 1, 1);
    line.counted = CountedStock{};
    return line;
}

using sp::base::Code;
INSTANTIATE_TEST_SUITE_P(
    Lines, KitYieldRefusal,
    testing::Values(
        Refusal{"more stones than there are", stones("S", 1'000'000'001, 1), Code::OutOfRange, "KitCountOutOfRange(S)"},
        Refusal{"more a piece", stones("S", 1, 1'000'000'001), Code::OutOfRange, "KitCountOutOfRange(S)"},
        Refusal{"less than none", stones("S", -1, 1), Code::OutOfRange, "KitCountOutOfRange(S)"},
        Refusal{"less than none a piece", stones("S", 1, -1), Code::OutOfRange, "KitCountOutOfRange(S)"},
        Refusal{"all lost", stones("S", 1, 1, 1'000'000), Code::OutOfRange, "ShareLostOutOfRange(S)"},
        Refusal{"a negative loss", stones("S", 1, 1, -1), Code::OutOfRange, "ShareLostOutOfRange(S)"},
        Refusal{"all short", stones("S", 1, 1, 0, 1'000'000), Code::OutOfRange, "ShareLostOutOfRange(S)"},
        Refusal{"negatively short", stones("S", 1, 1, 0, -1), Code::OutOfRange, "ShareLostOutOfRange(S)"},
        Refusal{"less than no sheets", lot(-1, 1, 1), Code::OutOfRange, "KitSheetsOutOfRange(S)"},
        Refusal{"less than no pieces to a sheet", lot(1, -1, 1), Code::OutOfRange, "KitSheetsOutOfRange(S)"},
        Refusal{"of no use", lot(1, 1, 0), Code::OutOfRange, "KitSheetsOutOfRange(S)"},
        Refusal{"less than no cut a piece", lot(1, 1, 1, -1), Code::OutOfRange, "CutsNegative(S)"},
        Refusal{"neither counted nor cut", neither(), Code::Invalid, "CountedOrCut(S)"},
        Refusal{"counted and cut", both(), Code::Invalid, "CountedOrCut(S)"},
        Refusal{"too many sheets", lot(INT64_MAX / 2 + 1, 2, 1), Code::TooLarge, "KitHoldsTooMuch"},
        Refusal{"too many cuts", lot(INT64_MAX / 2, 1, 3), Code::TooLarge, "KitHoldsTooMuch"}));

// The edges of the ranges are taken.
TEST(KitYield, takesTheEdgesOfItsRanges) {
    EXPECT_EQ(yieldOf({stones("M", kMaxStones, kMaxStones)}).pieces, Count::of(1));
    EXPECT_EQ(yieldOf({stones("M", 1'000'000, 1, 999'999)}).pieces, Count::of(1));
    EXPECT_EQ(yieldOf({stones("M", 1'000'000, 1, 0, 999'999)}).pieces, Count::of(1));
    EXPECT_EQ(yieldOf({stones("M", 5, 1), lot(0, 3, 1)}).pieces, Count::of(0));
    EXPECT_EQ(yieldOf({stones("M", 5, 1), lot(3, 0, 1)}).pieces, Count::of(0));
    EXPECT_EQ(yieldOf({stones("M", 5, 1), lot(INT64_MAX, 1, 1)}).pieces, Count::of(5));
    EXPECT_TRUE(kitYield({Money(), std::vector<YieldLine>(kMaxLines, stones("M", 5, 1))}).has_value());
    const auto more = kitYield({Money(), std::vector<YieldLine>(kMaxLines + 1, stones("M", 5, 1))});
    ASSERT_FALSE(more.has_value());
    EXPECT_EQ(more.error().code, Code::TooLarge);
    const auto priced = kitYield({Money::fromMicros(-1), {stones("M", 5, 1)}});
    ASSERT_FALSE(priced.has_value());
    EXPECT_EQ(priced.error().code, Code::OutOfRange);
}

// The selection of very many: both ends, the pieces themselves, rising and none twice.
TEST(KitYield, selectsEvenlyFromVeryMany) {
    const auto answer = yieldOf({stones("M", 1'000'000, 1, 20'000)});
    ASSERT_GT(answer.odds.size(), kMaxOdds - 3);
    ASSERT_LE(answer.odds.size(), kMaxOdds);
    EXPECT_GE(answer.odds.front().probability, 0.99995);
    EXPECT_LT(answer.odds.back().probability, 0.00005);
    EXPECT_GT(answer.odds.back().probability, 0.00003) << "the first of those that print as never";
    EXPECT_TRUE(std::ranges::any_of(answer.odds, [&](const auto& o) { return o.pieces == answer.pieces; }));
    std::int64_t widest = 0;
    for (std::size_t i = 1; i < answer.odds.size(); ++i) {
        const auto step = (answer.odds[i].pieces - answer.odds[i - 1].pieces).value();
        EXPECT_GT(step, 0);
        widest = std::max(widest, step);
    }
    const auto span = (answer.odds.back().pieces - answer.odds.front().pieces).value();
    EXPECT_LE(widest, span / static_cast<std::int64_t>(kMaxOdds - 2) + 1);
}

TEST(KitYield, keepsTheOddsShortForVeryManyPieces) {
    const auto answer = yieldOf({stones("M", 1'000'000'000, 1, 20'000)});
    EXPECT_LE(answer.odds.size(), kMaxOdds);
    EXPECT_GT(answer.odds.front().probability, 0.9999);
    EXPECT_LT(answer.odds.back().probability, 0.0001);
}

TEST(KitYield, leftoversAreWorthTheSumOfTheirValues) {
    YieldAnswer answer;
    EXPECT_TRUE(leftWorth(answer).isZero());
    answer.left = {{"A", false, Count::of(3), Money::fromMicros(1'250'000)},
                   {"B", false, Count::of(9), std::nullopt},
                   {"C", true, Count::of(1), Money::fromMicros(305'000)}};
    EXPECT_EQ(leftWorth(answer).micros(), 1'555'000);
}

} // namespace
