// SPDX-License-Identifier: MIT
#include "core/supply/list_words.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using supply::packAmount;

std::int64_t amountOf(const char* words, const units::NumberStyle& style = {}) {
    const auto amount = packAmount(words, style);
    return amount ? amount->value() : -1;
}

// A gross is 144, a great gross 12 gross; how packs are written: common practice, no source.
TEST(ListWords, readsPacksInWords) {
    EXPECT_EQ(amountOf("1 gross"), 144);
    EXPECT_EQ(amountOf("gross"), 144);
    EXPECT_EQ(amountOf("per gross"), 144);
    EXPECT_EQ(amountOf("10 gross"), 1440);
    EXPECT_EQ(amountOf("10gr."), 1440);
    EXPECT_EQ(amountOf("Bag of 10 Gross"), 1440);
    EXPECT_EQ(amountOf("1 great gross"), 1728);
    EXPECT_EQ(amountOf("half gross"), 72);
    EXPECT_EQ(amountOf("1/2 gross"), 72);
    EXPECT_EQ(amountOf("dozen"), 12);
    EXPECT_EQ(amountOf("5 doz"), 60);
    EXPECT_EQ(amountOf("bag of 1440"), 1440);
    EXPECT_EQ(amountOf("pkt 100"), 100);
    EXPECT_EQ(amountOf("pkt100"), 100);
    EXPECT_EQ(amountOf("100/pkt"), 100);
    EXPECT_EQ(amountOf("1,440 pcs"), 1440);
    EXPECT_EQ(amountOf("1.440 pcs", {U',', U'.'}), 1440);
    EXPECT_EQ(amountOf("12 x 144 pcs"), 1728);
    EXPECT_EQ(amountOf("10 × 1 gross"), 1440);
    EXPECT_EQ(amountOf("2 thousand"), 2000);
    EXPECT_EQ(amountOf("each"), 1);
    EXPECT_EQ(amountOf("250"), 250);
}

TEST(ListWords, takesWhatIsSaidTwiceOnlyWhereItAgrees) {
    EXPECT_EQ(amountOf("10 gross (1440 pcs)"), 1440);
    EXPECT_EQ(amountOf("bag (1440)"), 1440);
    EXPECT_EQ(amountOf("1 bag = 144"), 144);
    EXPECT_EQ(amountOf("10 gross (1000 pcs)"), -1);
}

TEST(ListWords, doesNotGuessWhatIsInAPack) {
    for (const char* words : {"", "bag", "1 bag", "on request", "10-12", "small", "2 bags of 144", "10 oz", "x",
                              "great", "1.5", "1 gross 2 dozen of", "gross gross"})
        EXPECT_EQ(amountOf(words), -1) << words;
}

TEST(ListWords, findsSizesInTexts) {
    const auto in = [](const char* text) {
        const auto found = supply::sizeInText(text);
        return found ? std::string(found->size) + "|" + found->rest : "none";
    };
    EXPECT_EQ(in("Aquamarine SS10"), "SS10|Aquamarine");
    EXPECT_EQ(in("ss 10 - Light rose, AB"), "SS10|Light rose, AB");
    EXPECT_EQ(in("Jet 16ss"), "SS16|Jet");
    EXPECT_EQ(in("Jet (SS-6) hot-fix"), "SS6|Jet ( ) hot-fix");
    EXPECT_EQ(in("Glass 10"), "none");
    EXPECT_EQ(in("SS11"), "none") << "not in the table";
    EXPECT_EQ(in("Moss 10"), "none") << "a part of a word";
    EXPECT_EQ(supply::listedSize("10"), "SS10");
    EXPECT_EQ(supply::listedSize(" SS10 (2.8 mm)"), "SS10");
    EXPECT_FALSE(supply::listedSize("2.8 mm"));
    EXPECT_FALSE(supply::listedSize(""));
}

} // namespace
