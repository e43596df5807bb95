// SPDX-License-Identifier: MIT
//
// What a card costs the shop was a part of the cost before rules 3. All prices are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

/// To keep 100 of what is charged at 2.9 %.
Book keepingAHundred(Money fixed) {
    auto book = sample::freeBook();
    setPrice(book, "Backing", 10'000);
    book.shop.rules.cardFee = {true, Rate::fromPpm(29'000), fixed};
    return book;
}

CostSheet byRules(std::int64_t rules, const Book& book, Money cardFixed) {
    layout::FitMemo fits;
    const auto sheet = costLine(sample::square(1), book, fits, {cardFixed, {}}, rules);
    EXPECT_TRUE(sheet.has_value());
    return sheet.value_or(CostSheet{});
}

// (100 + 0.30) ÷ 0.971 = 103.295572 and 100 ÷ 0.971 = 102.986612 (computed; the formula is that of any payment
// processor's guide, common practice, no source).
TEST(CardFee, wasACostBeforeRules3) {
    for (const std::int64_t rules : {1, 2}) {
        EXPECT_EQ(sample::amountOf(byRules(rules, keepingAHundred({}), {}), Part::CardFee).micros(), 2'986'612);
        const auto sheet = byRules(rules, keepingAHundred(cents(30)), cents(30));
        EXPECT_EQ(sample::amountOf(sheet, Part::CardFee).micros(), 3'295'572);
        EXPECT_EQ(sheet.total.micros(), 103'295'572);
        EXPECT_EQ(sheet.outOfPocket.micros(), 103'295'572);
        auto book = keepingAHundred(cents(30));
        book.shop.rules.cardFee.charged = false;
        EXPECT_FALSE(sample::findAmount(byRules(rules, book, cents(30)), Part::CardFee));
    }
}

TEST(CardFee, isNoCostSince) {
    const auto sheet = byRules(3, keepingAHundred(cents(30)), cents(30));
    EXPECT_FALSE(sample::findAmount(sheet, Part::CardFee));
    EXPECT_EQ(sheet.total, cents(10'000));
}

} // namespace

} // namespace sp::costing
