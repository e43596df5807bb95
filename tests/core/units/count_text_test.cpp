// SPDX-License-Identifier: MIT
#include "text_cases.h"

using namespace sp::units;
using namespace text_cases;

namespace {

class CountReads : public testing::TestWithParam<ReadCase> {};

TEST_P(CountReads, toAWholeNumber) {
    const auto& row = GetParam();
    const auto count = parseCount(row.text, row.style);
    ASSERT_TRUE(count.has_value()) << describe(count.error());
    EXPECT_EQ(count->value(), row.value);
}

// A gross is 12 dozen, a great gross 12 gross (common practice, no source).
INSTANTIATE_TEST_SUITE_P(Things, CountReads,
                         testing::Values(ReadCase{"24", 24}, ReadCase{"2*12", 24}, ReadCase{"10 gross", 1440},
                                         ReadCase{"3 dozen", 36}, ReadCase{"1 great gross", 1728},
                                         ReadCase{"1 Great\u00A0Gross", 1728}, ReadCase{"2 gross + 5", 293},
                                         ReadCase{"2 gross 3 dozen", 324}, ReadCase{"½ gross", 72},
                                         ReadCase{"1/2 dozen", 6}, ReadCase{"2.5 gross", 360}, ReadCase{"1/3*3", 1},
                                         ReadCase{"10 × 144", 1440}, ReadCase{"0", 0}, ReadCase{"7 doz.", 84},
                                         ReadCase{"2.0", 2}, ReadCase{"1000000000", 1'000'000'000}));

INSTANTIATE_TEST_SUITE_P(Styles, CountReads,
                         testing::Values(ReadCase{"1,440", 1440}, ReadCase{"1.440", 1440, kGerman},
                                         ReadCase{"1 440", 1440, kFrench}, ReadCase{"1\u202F440", 1440, kFrench},
                                         ReadCase{"1’440", 1440, kSwiss}, ReadCase{"1,440,000", 1'440'000},
                                         ReadCase{"2,5 gross", 360}, ReadCase{"1.440,0", 1440}));

class CountRefuses : public testing::TestWithParam<Refusal> {};

TEST_P(CountRefuses, inOneSentence) {
    const auto& row = GetParam();
    const auto count = parseCount(row.text, row.style);
    ASSERT_FALSE(count.has_value()) << count->value();
    expectRefusal(row, count.error());
}

INSTANTIATE_TEST_SUITE_P(
    Things, CountRefuses,
    testing::Values(Refusal{"2.5", Code::Invalid, "NotWhole(“2.5”)"}, Refusal{"1/3", Code::Invalid, "NotWhole(“1/3”)"},
                    Refusal{"1.440", Code::Invalid, "NotWhole(“1.440”)"},
                    Refusal{"1,440", Code::Invalid, "NotWhole(“1,440”)", kGerman},
                    Refusal{"1,440", Code::Ambiguous, "AmbiguousNumber(“1,440”, 1.440, 1440)", kSwiss},
                    Refusal{"-1", Code::OutOfRange, "BeyondRange(“-1”, ACount, CountRange)"},
                    Refusal{"1000000001", Code::OutOfRange, "BeyondRange(“1000000001”, ACount, CountRange)"},
                    Refusal{"2 gross 5", Code::Invalid, "SignMissing(“2 gross 5”, “5”)"},
                    Refusal{"2 gross*3 dozen", Code::Invalid, "MultipliesMeasures(“2 gross*3 dozen”, ACount)"},
                    Refusal{"3 boxes", Code::Invalid, "UnknownUnit(“3 boxes”, “boxes”, CountUnits)"},
                    Refusal{"10-1/2", Code::Ambiguous, "MixedOrDifference(“10-1/2”, 10, 1/2)"},
                    Refusal{"", Code::Invalid, "NothingTyped(ACount, CountExample)"}));

TEST(CountText, groupsThousands) {
    EXPECT_EQ(formatCount(Count::of(1440)), "1,440");
    EXPECT_EQ(formatCount(Count::of(144)), "144");
    EXPECT_EQ(formatCount(Count::of(-1'000'000)), "-1,000,000");
    EXPECT_EQ(formatCount(Count::of(1440), kGerman), "1.440");
    EXPECT_EQ(formatCount(Count::of(1440), kPlain), "1440");
}

TEST(CountText, readsBackWhatItWrites) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < 4000; ++i)
        for (const auto& style : kStyles) {
            const Count count = Count::of(anySize(random, 1'000'000'000));
            const std::string text = formatCount(count, style);
            const auto again = parseCount(text, style);
            ASSERT_TRUE(again.has_value()) << text << ": " << describe(again.error());
            ASSERT_EQ(*again, count) << text;
        }
}

} // namespace
