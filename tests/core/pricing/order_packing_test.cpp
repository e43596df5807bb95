// SPDX-License-Identifier: MIT
//
// Packing that goes once with an order, and what lines bear of it. Figures by hand, working beside them; the rule is
// common practice, no source. All prices are invented.
#include "core/needs/order_packing.h"
#include "core/pricing/compare.h"
#include "core/pricing/ladder.h"
#include "core/pricing/left_out.h"
#include "core/pricing/order_share.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sp::pricing {

namespace {

using catalogue::PackingPer;
using catalogue::PackingUse;
using sample::cents;
using sample::idOf;
using testing::ElementsAre;
using units::Count;
using units::Money;

constexpr auto kOrder = PackingPer::Order;

/// Hoodies that cost 10.00 each and nothing else, as many as each line says; a box at 2.00 and a bag at 0.10.
struct Boxed {
    catalogue::PriceBook book = sample::freeBook();
    catalogue::Order order;

    explicit Boxed(const std::vector<std::int64_t>& pieces) {
        setPrice("Hoodie", 1000);
        setPrice("Box", 200);
        setPrice("Bag", 10);
        book.shop.packing = {{idOf("Box"), Count::of(1), kOrder}};
        for (const auto quantity : pieces) {
            auto line = sample::square(quantity);
            line.baseMaterial = idOf("Hoodie");
            order.lines.push_back(line);
        }
        order.quotedOn = sample::day("2026-11-25");
    }
    void setPrice(const char* of, std::int64_t price) {
        book.materials[idOf(of)].price = units::UnitPrice{cents(price), Count::of(1)};
    }
    std::vector<std::int64_t> shares() const {
        layout::FitMemo fits;
        const auto shared = costLines(order, book, fits);
        EXPECT_TRUE(shared) << (shared ? "" : describe(shared.error()));
        std::vector<std::int64_t> micros;
        for (const auto& line : shared.value()) micros.push_back(line.share.packing.micros());
        return micros;
    }
    PricedOrder priced() const {
        layout::FitMemo fits;
        const auto made = priceOrder(order, book, fits);
        EXPECT_TRUE(made) << (made ? "" : describe(made.error()));
        return made.value();
    }
};

// 10 and 30 hoodies cost 100.00 and 300.00, so a quarter and three quarters of 2.00; the order costs 402.00.
TEST(OrderPacking, isSharedByWhatTheLinesCost) {
    const Boxed job({10, 30});
    EXPECT_THAT(job.shares(), ElementsAre(500'000, 1'500'000));
    const auto priced = job.priced();
    EXPECT_EQ(priced.lines[0].cost.total, cents(10'050));
    EXPECT_EQ(priced.lines[1].cost.total, cents(30'150));
    EXPECT_EQ(priced.earnings.cost, cents(40'200));
    EXPECT_EQ(priced.earnings.paidOut, cents(40'200));
    EXPECT_EQ(priced.lines[0].each, cents(1005)); // 100.50 ÷ 10
    EXPECT_EQ(priced.lines[1].each, cents(1005)); // 301.50 ÷ 30
}

TEST(OrderPacking, standsOnTheSheetOfEachLine) {
    const Boxed job({10, 30});
    layout::FitMemo fits;
    const auto sheet = costSheetOf(job.order, 1, job.book, fits).value();
    EXPECT_EQ(sample::amountOf(sheet, costing::Part::OrderPacking), cents(150));
    EXPECT_EQ(sample::amountOf(sheet, costing::Part::Packing), cents(150));
    EXPECT_EQ(sheet.total, job.priced().lines[1].cost.total);
}

// 1.00 over three lines that cost the same: up to 0.333333, 0.666667 and 1.000000.
TEST(OrderPacking, addsUpToTheMicroUnit) {
    Boxed job({4, 4, 4});
    job.setPrice("Box", 100);
    EXPECT_THAT(job.shares(), ElementsAre(333'333, 333'334, 333'333));
    job.setPrice("Hoodie", 0); // lines that cost nothing bear it evenly
    EXPECT_THAT(job.shares(), ElementsAre(333'333, 333'334, 333'333));
}

// The line of 30 goes out in three boxes of its own choice; all go together, so three boxes at 2.00 are paid, a quarter
// and three quarters of 6.00. Two bags at 0.10 go with the order of the second line alone.
TEST(OrderPacking, takesWhatTheLineThatNamesMostTakes) {
    Boxed job({10, 30});
    job.order.lines[1].packing = {{idOf("Box"), Count::of(3), kOrder}, {idOf("Bag"), Count::of(2), kOrder}};
    EXPECT_EQ(
        needs::orderPackingOf(job.order.lines, job.book.shop.packing),
        (std::vector<needs::OrderPacking>{{idOf("Box"), Count::of(3), {0, 1}}, {idOf("Bag"), Count::of(2), {1}}}));
    EXPECT_THAT(job.shares(), ElementsAre(1'500'000, 4'700'000));
}

// Of a design that goes out without packing nothing is borne, and the other line pays the box.
TEST(OrderPacking, isNotBorneByALineThatNamesNone) {
    Boxed job({10, 30});
    job.order.lines[1].packing.emplace();
    EXPECT_THAT(job.shares(), ElementsAre(2'000'000, 0));
    job.order.lines[0].packing = {{idOf("Bag"), Count::of(2)}}; // 10 × 2 × 0.10, and no box at all
    EXPECT_THAT(job.shares(), ElementsAre(0, 0));
    EXPECT_EQ(job.priced().lines[0].cost.total, cents(10'200));
}

// 40 alone: 400.00 + 2.00, 10.05 each; 8 alone: 80.00 + 2.00, 10.25 each.
TEST(OrderPacking, isInThePriceOfAnotherQuantity) {
    Boxed job({40});
    job.book.shop.ladderQuantities = {Count::of(8)};
    layout::FitMemo fits;
    const auto ladder = ladderFor(job.order, 0, job.book, false, fits).value();
    ASSERT_EQ(ladder.size(), 2U);
    EXPECT_EQ(ladder[0].each, cents(1025));
    EXPECT_EQ(ladder[1].each, cents(1005));
    EXPECT_EQ(ladder[1].each, job.priced().lines[0].each);
}

// A box of 2.00 carries 12.5 %: 0.25, shared 1 : 3 as the box is.
TEST(OrderPacking, carriesItsFreight) {
    Boxed job({10, 30});
    job.book.materials[idOf("Box")].freight = {catalogue::FreightKind::Spread, {}, cents(750), cents(6000)};
    layout::FitMemo fits;
    const auto lines = costLines(job.order, job.book, fits).value();
    EXPECT_EQ(lines[0].share.freight.micros(), 62'500);
    EXPECT_EQ(lines[1].share.freight.micros(), 187'500);
    EXPECT_EQ(job.priced().earnings.cost, cents(40'225));
    const auto before = costLines(job.order, job.book, fits, 2).value();
    EXPECT_TRUE(before[0].share.freight.isZero());
}

TEST(OrderPacking, isNamedWhereItCostsNothing) {
    Boxed job({10, 30});
    job.setPrice("Bag", 0);
    const auto named = [&] {
        std::vector<std::string> of;
        for (const auto& found : leftOutOf(job.order, job.book, job.priced()))
            if (found.material == idOf("Bag")) of.push_back(describe(found.what));
        return of;
    };
    EXPECT_THAT(named(), ElementsAre());
    job.order.lines[0].packing = {{idOf("Bag"), Count::of(1), kOrder}};
    EXPECT_THAT(named(), ElementsAre("CostsNothing(Bag, 0.00)"));
}

// Its price from 2.00 to 3.00: the whole 1.00 more.
TEST(OrderPacking, hasACauseWhereItsPriceChanged) {
    Boxed job({10});
    job.order.lines[0].packing = {{idOf("Box"), Count::of(1), kOrder}};
    job.book.shop.packing.clear();
    auto now = job.book;
    now.materials[idOf("Box")].price->price = cents(300);
    layout::FitMemo fits;
    const auto compared = comparePrices(job.order, job.book, now, fits).value();
    EXPECT_EQ(compared.difference(), cents(100));
    ASSERT_EQ(compared.causes.size(), 1U);
    EXPECT_EQ(describe(compared.causes[0].what), "PriceOf(Box)");
}

TEST(OrderPacking, isRefusedWithTheLineThatCannotBeCosted) {
    Boxed job({10, 30});
    job.book.materials[idOf("Box")].price.reset();
    layout::FitMemo fits;
    EXPECT_EQ(describe(priceOrder(job.order, job.book, fits).error()), "NoPrice(Box) of Box");
}

} // namespace

} // namespace sp::pricing
