// SPDX-License-Identifier: MIT
//
// What a card costs the shop. All prices are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

INSTANTIATE_TEST_SUITE_P(
    Fee, PartFigure,
    testing::Values(
        // To keep 100 of what is charged at 2.9 % and 0.30: (100 + 0.30) ÷ 0.971 = 103.295572 (computed; the formula
        // is that of any payment processor's guide, common practice, no source)
        PartRow{"the card fee",
                [](Line& l, Book& b) {
                    l.quantity = Count::of(1);
                    setPrice(b, "Backing", 10'000);
                    b.shop.rules.cardFee = {true, Rate::fromPpm(29'000), {}};
                },
                Part::CardFee, 0, 2'986'612}));

TEST(CardFee, countsTheFixedPartOnce) {
    auto book = sample::freeBook();
    setPrice(book, "Backing", 10'000);
    book.shop.rules.cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    const auto sheet = sample::costed(sample::square(1), book, cents(30));
    EXPECT_EQ(sample::amountOf(sheet, Part::CardFee).micros(), 3'295'572);
    book.shop.rules.cardFee.charged = false;
    EXPECT_FALSE(sample::findAmount(sample::costed(sample::square(1), book, cents(30)), Part::CardFee));
}

} // namespace

} // namespace sp::costing
