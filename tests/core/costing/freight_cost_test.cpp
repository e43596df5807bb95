// SPDX-License-Identifier: MIT
//
// Freight in: what of a supplier's shipping the goods carry. With the figure worked by hand beside each row; common
// practice, no source. All prices are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

using catalogue::Freight;
using catalogue::FreightKind;

Freight share(std::int64_t percent) { return {FreightKind::Share, Rate::fromPercent(percent), {}, {}}; }
/// 7.50 over 60.00 is an eighth.
Freight anEighth() { return {FreightKind::Spread, {}, cents(750), cents(6000)}; }

void carry(Book& book, std::string_view name, const Freight& freight) { book.materials[idOf(name)].freight = freight; }

INSTANTIATE_TEST_SUITE_P(FreightIn, PartFigure,
                         testing::Values(
                             // 24 × 200 × 14.40 / 1440 = 48.00, of which 5 %
                             PartCase{"a share of the stones",
                                      [](Line&, Book& b) {
                                          setPrice(b, "Aqua", 1440, 1440);
                                          carry(b, "Aqua", share(5));
                                      },
                                      Part::FreightOnStone, 0, 2'400'000},
                             // the same 48.00 × 7.50 / 60.00
                             PartCase{"spread over a usual order",
                                      [](Line&, Book& b) {
                                          setPrice(b, "Aqua", 1440, 1440);
                                          carry(b, "Aqua", anEighth());
                                      },
                                      Part::FreightOnStone, 0, 6'000'000},
                             // 24 × 13.90 + 3 × 2.10 = 339.90, of which an eighth
                             PartCase{"blanks with a larger size",
                                      [](Line& l, Book& b) {
                                          onHoodie(l);
                                          setPrice(b, "Hoodie", 1390);
                                          l.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
                                          carry(b, "Hoodie", anEighth());
                                      },
                                      Part::FreightOnBase, 0, 42'487'500},
                             // two templates on one sheet at 8.00
                             PartCase{"templates",
                                      [](Line&, Book& b) {
                                          useTemplates(b, 800);
                                          carry(b, "Template", anEighth());
                                      },
                                      Part::FreightOnTemplate, 0, 1'000'000},
                             // 24 × 2 × 6.20 / 100 = 2.976, of which a tenth
                             PartCase{"packing",
                                      [](Line&, Book& b) {
                                          b.shop.packing = {{idOf("Bag"), Count::of(2)}};
                                          setPrice(b, "Bag", 620, 100);
                                          carry(b, "Bag", share(10));
                                      },
                                      Part::FreightOnPacking, 0, 297'600},
                             // 6.00 on the stones and 1.00 on the templates
                             PartCase{"all of it",
                                      [](Line&, Book& b) {
                                          setPrice(b, "Aqua", 1440, 1440);
                                          carry(b, "Aqua", anEighth());
                                          useTemplates(b, 800);
                                          carry(b, "Template", anEighth());
                                      },
                                      Part::Freight, 0, 7'000'000}));

// Stones 48.00 and 6.00 of freight; a template for 8.00 and 1.00; of the pieces a fifth is spoiled: a quarter of 54.00.
TEST(FreightIn, isPaidOutSpoiledAndSetUpWithItsGoods) {
    auto book = sample::freeBook();
    setPrice(book, "Aqua", 1440, 1440);
    useTemplates(book, 800);
    carry(book, "Aqua", anEighth());
    carry(book, "Template", anEighth());
    book.shop.rates.spoilage = Rate::fromPercent(20);
    const auto sheet = sample::costed(sample::square(24), book);
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledMaterials), cents(1350));
    EXPECT_EQ(sample::setUpOf(sheet), cents(900));
    EXPECT_EQ(sample::floorOf(sheet), cents(7650));
    EXPECT_EQ(sample::totalOf(sheet), cents(7650));
}

// Of the tape as of the stones: a quarter of it and of its freight is lost with the fifth of the pieces.
TEST(FreightIn, onTapeIsLostWithTheTape) {
    auto book = sample::freeBook();
    useTape(book, 2, 150, kWhole);
    const auto tape = sample::amountOf(sample::costed(sample::square(24), book), Part::Tape);
    ASSERT_FALSE(tape.isZero());
    carry(book, "Tape", share(100));
    book.shop.rates.spoilage = Rate::fromPercent(20);
    const auto sheet = sample::costed(sample::square(24), book);
    EXPECT_EQ(sample::amountOf(sheet, Part::FreightOnTape), tape);
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledMaterials).micros() * 2, tape.micros());
}

TEST(FreightIn, isNotThereBeforeRules3OrWhereNothingIsCarried) {
    auto book = sample::freeBook();
    setPrice(book, "Aqua", 1440, 1440);
    carry(book, "Aqua", anEighth());
    layout::FitMemo fits;
    EXPECT_EQ(costLine(sample::square(24), book, fits, {}, 2)->total, cents(4800));
    EXPECT_EQ(costLine(sample::square(24), book, fits, {}, 3)->total, cents(5400));
    for (const auto& none : {Freight{}, share(0), Freight{FreightKind::Spread, {}, {}, cents(6000)},
                             Freight{FreightKind::Spread, {}, cents(750), {}}}) {
        carry(book, "Aqua", none);
        EXPECT_FALSE(sample::findAmount(sample::costed(sample::square(24), book), Part::Freight));
    }
}

// A plain hoodie sold as it is: 24 × 13.90, and an eighth of it.
TEST(FreightIn, isOnABlankWithoutStonesToo) {
    auto book = sample::freeBook();
    setPrice(book, "Hoodie", 1390);
    carry(book, "Hoodie", anEighth());
    catalogue::OrderLine charge;
    charge.title = "Plain hoodie";
    charge.places.clear();
    charge.baseMaterial = idOf("Hoodie");
    charge.quantity = Count::of(24);
    const auto sheet = sample::costed(charge, book);
    EXPECT_EQ(sample::amountOf(sheet, Part::Freight), cents(4170));
    EXPECT_EQ(sample::totalOf(sheet), cents(37'530));
}

// 7.50 a shipment, free from 60.00.
TEST(FreightIn, isWhatTheSupplierIsSaidToCarry) {
    catalogue::Supplier supplier;
    supplier.shipping = cents(750);
    supplier.freeFrom = cents(6000);
    supplier.usualOrder = cents(5000);
    supplier.freightShare = Rate::fromPercent(4);
    EXPECT_EQ(catalogue::freightOf(supplier), Freight{});
    supplier.freight = FreightKind::Share;
    EXPECT_EQ(catalogue::freightOf(supplier), share(4));
    supplier.freight = FreightKind::Spread;
    EXPECT_EQ(catalogue::freightOf(supplier).ratio(), units::Fraction::ratio(15, 100));
    supplier.usualOrder = cents(6000);
    EXPECT_EQ(catalogue::freightOf(supplier), Freight{}) << "a usual order is shipped free";
    supplier.freeFrom.reset();
    EXPECT_EQ(catalogue::freightOf(supplier), anEighth());
}

} // namespace

} // namespace sp::costing
