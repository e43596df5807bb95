// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"

namespace {

using namespace sp;
using base::Code;
using catalogue::PriceBasis;
using catalogue::PriceOrigin;
using test::BookTest;
using units::Count;
using units::Money;
using units::UnitPrice;

PriceOrigin harbourLane(bool isShelfBare) {
    return {PriceOrigin::Kind::Pack, isShelfBare, "Harbour Lane Beads", "bag of 10 gross",
            units::Date::parse("2026-10-12").value()};
}

using sp::support::cents;

class PriceTest : public BookTest {
  protected:
    catalogue::PricedMaterial priceOf(const base::Id& id) { return book->priceBook({})->materials.at(id); }
    base::Id offer(const char* name, std::int64_t amount, Money price, bool usual) {
        auto offered = test::samplePack(stone, supplier);
        offered.name = name;
        offered.amount = Count::of(amount);
        offered.prices[0].each = price;
        offered.usual = usual;
        return book->save(offered).value();
    }
    void priceBy(PriceBasis basis) {
        auto material = test::sampleStone();
        material.id = stone;
        material.basis = basis;
        ASSERT_TRUE(book->save(material));
    }
    void SetUp() override {
        BookTest::SetUp();
        stone = book->save(test::sampleStone()).value();
        supplier = book->save(test::sampleSupplier()).value();
    }
};

TEST_F(PriceTest, isMissingWithoutAPack) {
    const auto priced = priceOf(stone);
    EXPECT_FALSE(priced.price.has_value());
    EXPECT_EQ(priced.origin, (PriceOrigin{.kind = PriceOrigin::Kind::NoPack}));
}

TEST_F(PriceTest, isThatOfTheUsualPackThoughAnotherIsCheaper) {
    offer("bag of 10 gross", 1'440, cents(694), true);
    offer("bag of 50 gross", 7'200, cents(2'495), false);
    const auto priced = priceOf(stone);
    EXPECT_EQ(priced.price, (UnitPrice{cents(694), Count::of(1'440)}));
    EXPECT_EQ(priced.origin, harbourLane(false));
}

TEST_F(PriceTest, hasTheFurtherPricesOfItsPack) {
    auto offered = test::samplePack(stone, supplier);
    offered.usual = true;
    offered.prices = {{Count::of(1), cents(694)}, {Count::of(5), cents(640)}, {Count::of(20), {}}};
    ASSERT_TRUE(book->save(offered));
    const std::vector<catalogue::PriceBreak> five{{Count::of(5), cents(640)}};
    EXPECT_EQ(priceOf(stone).breaks, five) << "one of 0 was not typed yet";
    auto material = test::sampleStone();
    material.id = stone;
    material.meantAsNothing = true;
    ASSERT_TRUE(book->save(material));
    EXPECT_EQ(priceOf(stone).breaks.size(), 2U);
    material.basis = PriceBasis::ShelfAverage;
    ASSERT_TRUE(book->save(material));
    EXPECT_EQ(priceOf(stone).breaks.size(), 2U) << "nothing lies on the shelf";
    ASSERT_TRUE(book->moveStock(stone, 100, cents(50), "bought"));
    EXPECT_TRUE(priceOf(stone).breaks.empty()) << "an average holds for any number";
    material.basis = PriceBasis::Fixed;
    material.fixedPrice = cents(1);
    ASSERT_TRUE(book->save(material));
    EXPECT_TRUE(priceOf(stone).breaks.empty());
}

TEST_F(PriceTest, isThatOfTheCheapestThingWithoutAUsualPack) {
    offer("bag of 10 gross", 1'440, cents(694), false);
    offer("bag of 50 gross", 7'200, cents(2'495), false);
    offer("bag of 1 gross", 144, cents(95), false);
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(2'495), Count::of(7'200)}));
}

// A pack that was just added stands at nothing: it makes no material free.
TEST_F(PriceTest, isNotThatOfAPackWithoutAPrice) {
    offer("just added", 1'440, {}, false);
    EXPECT_FALSE(priceOf(stone).price.has_value());
    EXPECT_EQ(priceOf(stone).origin, (PriceOrigin{.kind = PriceOrigin::Kind::NoPack}));
    offer("bag of 1 gross", 144, cents(95), false);
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(95), Count::of(144)}));
    offer("a gift", 100, {}, true);
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{Money{}, Count::of(100)})) << "chosen as it is";
}

TEST_F(PriceTest, isTheFixedOneWhenTheOwnerSetIt) {
    priceBy(PriceBasis::Fixed);
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{Money::fromMicros(4'861), Count::of(1)}));
    EXPECT_EQ(priceOf(stone).origin, (PriceOrigin{.kind = PriceOrigin::Kind::Fixed}));
    auto material = test::sampleStone();
    material.id = stone;
    material.basis = PriceBasis::Fixed;
    material.fixedPrice = {};
    ASSERT_TRUE(book->save(material));
    EXPECT_FALSE(priceOf(stone).price.has_value());
    EXPECT_EQ(priceOf(stone).origin, (PriceOrigin{.kind = PriceOrigin::Kind::NotFixed}));
}

// The moving average as the accounting textbooks have it (IAS 2, paragraph 27, weighted average after each purchase):
// 1,440 for 6.94; 720 used; 2,880 for 12.60: (720 × 6.94 / 1,440 + 12.60) / 3,600 = 16.07 / 3,600.
TEST_F(PriceTest, averagesWhatLiesOnTheShelf) {
    priceBy(PriceBasis::ShelfAverage);
    ASSERT_TRUE(book->moveStock(stone, 1'440, cents(694), "delivery"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(694), Count::of(1'440)}));
    ASSERT_TRUE(book->moveStock(stone, -720, std::nullopt, "used"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(694), Count::of(1'440)}));
    ASSERT_TRUE(book->moveStock(stone, 2'880, cents(1'260), "delivery"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(1'607), Count::of(3'600)}));
    EXPECT_EQ(priceOf(stone).origin, (PriceOrigin{.kind = PriceOrigin::Kind::ShelfAverage}));
    EXPECT_EQ(book->shelf()->at(stone), 3'600);
}

// 7.50 a shipment over 60.00 of goods: of what the pack costs today, and neither of the average, which holds what was
// paid, nor of a price that was set.
TEST_F(PriceTest, carriesTheFreightOfThePacksSupplierAlone) {
    auto seller = book->suppliers()->at(0);
    seller.freight = catalogue::FreightKind::Spread;
    seller.shipping = cents(750);
    seller.freeFrom.reset();
    seller.usualOrder = cents(6000);
    ASSERT_TRUE(book->save(seller));
    offer("bag of 10 gross", 1'440, cents(694), true);
    const catalogue::Freight carried{catalogue::FreightKind::Spread, {}, cents(750), cents(6000)};
    EXPECT_EQ(priceOf(stone).freight, carried);
    priceBy(PriceBasis::ShelfAverage);
    EXPECT_EQ(priceOf(stone).freight, carried) << "nothing with a cost is on the shelf";
    ASSERT_TRUE(book->moveStock(stone, 1'440, cents(819), "delivery"));
    EXPECT_EQ(priceOf(stone).freight, catalogue::Freight{});
    priceBy(PriceBasis::Fixed);
    EXPECT_EQ(priceOf(stone).freight, catalogue::Freight{});
}

TEST_F(PriceTest, leavesTheAverageAloneWhenThingsComeWithoutACost) {
    priceBy(PriceBasis::ShelfAverage);
    ASSERT_TRUE(book->moveStock(stone, 100, cents(100), "delivery"));
    ASSERT_TRUE(book->moveStock(stone, 50, std::nullopt, "found in a drawer"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(100), Count::of(100)}));
    ASSERT_TRUE(book->moveStock(stone, 150, cents(300), "delivery"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(450), Count::of(300)}));
}

TEST_F(PriceTest, startsTheAverageAnewWhenTheShelfWasEmpty) {
    priceBy(PriceBasis::ShelfAverage);
    ASSERT_TRUE(book->moveStock(stone, 100, cents(100), "delivery"));
    ASSERT_TRUE(book->moveStock(stone, -100, std::nullopt, "used"));
    offer("bag of 10 gross", 1'440, cents(694), true);
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(694), Count::of(1'440)}));
    EXPECT_EQ(priceOf(stone).origin, harbourLane(true));
    ASSERT_TRUE(book->moveStock(stone, 10, cents(20), "delivery"));
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(20), Count::of(10)}));
}

TEST_F(PriceTest, forgetsAMovementThatWasTakenBack) {
    priceBy(PriceBasis::ShelfAverage);
    ASSERT_TRUE(book->moveStock(stone, 100, cents(100), "delivery"));
    ASSERT_TRUE(book->moveStock(stone, 100, cents(300), "delivery"));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(100), Count::of(100)}));
    EXPECT_EQ(book->shelf()->at(stone), 100);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(priceOf(stone).price, (UnitPrice{cents(400), Count::of(200)}));
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->undo());
    EXPECT_FALSE(priceOf(stone).price.has_value());
    EXPECT_EQ(book->shelf()->at(stone), 0);
    expectSound();
}

TEST_F(PriceTest, refusesMovementsThatCannotBe) {
    EXPECT_EQ(book->moveStock(stone, 0, std::nullopt, "").error().code, Code::Invalid);
    EXPECT_EQ(test::described(book->moveStock(stone, -1, std::nullopt, "").error()), "NotOnShelf(0, Aquamarine SS10)");
    EXPECT_EQ(book->moveStock(stone, 10, Money::fromMicros(-1), "").error().code, Code::Invalid);
    ASSERT_TRUE(book->moveStock(stone, 10, std::nullopt, ""));
    EXPECT_EQ(book->moveStock(stone, -1, cents(1), "").error().code, Code::Invalid);
    EXPECT_EQ(book->moveStock({}, 1, std::nullopt, "").error().code, Code::NotFound);
    EXPECT_EQ(book->moveStock(stone, 1'000'000'000, std::nullopt, "").error().code, Code::Invalid);
    EXPECT_EQ(book->moveStock(stone, INT64_MAX, std::nullopt, "").error().code, Code::Invalid);
    EXPECT_EQ(book->shelf()->at(stone), 10);
}

TEST_F(PriceTest, belongsToTheCustomerAskedFor) {
    customer = book->save(test::sampleCustomer()).value();
    EXPECT_FALSE(book->priceBook({})->customer.has_value());
    EXPECT_EQ(book->priceBook(customer)->customer->name, "Rowan Bakery");
    EXPECT_EQ(book->priceBook(stone).error().code, Code::NotFound);
}

} // namespace
