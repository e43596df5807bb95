// SPDX-License-Identifier: MIT
//
// Laws that hold for every order and shop, and every figure beside a second reckoning that shares no code with ours
// (tests/reference/plain_price).
#include "core/pricing/price_order.h"
#include "tests/reference/plain_price.h"
#include "tests/reference/price_random.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace sp;
using costing::CostSheet;
using units::Count;
using units::Money;
using units::Rate;

namespace {

constexpr int kDraws = 1'200;

class PriceLaws : public testing::Test {
  protected:
    PriceLaws()
        : m_random(test::printedSeed()) {}

    /// A priced case; draws another where money outgrows the program.
    reference::PriceCase draw(pricing::PricedOrder& priced) {
        for (;;) {
            auto drawn = reference::randomPriceCase(m_random);
            auto result = pricing::priceOrder(drawn.order, drawn.book, m_fits);
            if (!result) {
                // The one thing that a draw may ask too much of is an amount off.
                EXPECT_EQ(result.error().subject, "discount") << describe(result.error());
                if (testing::Test::HasFailure()) return drawn;
                continue;
            }
            priced = *result;
            return drawn;
        }
    }

    CostSheet sheetOf(const reference::PriceCase& drawn, std::size_t line) {
        auto sheet = pricing::costSheetOf(drawn.order, line, drawn.book, m_fits);
        EXPECT_TRUE(sheet.has_value());
        return sheet.value_or(CostSheet{});
    }
    Money totalOf(const catalogue::OrderLine& line, const catalogue::PriceBook& book) {
        const auto sheet = costing::costLine(line, book, m_fits);
        EXPECT_TRUE(sheet.has_value());
        return sheet ? sheet->total : Money{};
    }

    std::mt19937_64 m_random;
    layout::FitMemo m_fits;
    layout::FitMemo m_plainFits;
};

/// Every node with parts is the sum of them, and every leaf is the reference's.
void expectCost(const CostSheet& sheet, const reference::PlainCost& plain) {
    std::size_t leaves = 0;
    for (std::size_t i = 0; i < sheet.nodes.size(); ++i) {
        const auto& node = sheet.nodes[i];
        Money sum;
        bool hasParts = false;
        for (std::size_t j = i + 1; j < sheet.nodes.size() && sheet.nodes[j].depth > node.depth; ++j)
            if (sheet.nodes[j].depth == node.depth + 1) {
                sum += sheet.nodes[j].amount;
                hasParts = true;
            }
        if (hasParts) {
            EXPECT_EQ(node.amount, sum) << static_cast<int>(node.part);
            continue;
        }
        const auto found = plain.parts.find({node.part, node.index});
        if (found == plain.parts.end()) {
            EXPECT_EQ(node.amount, Money{}) << static_cast<int>(node.part) << " is no part of the reference";
            continue;
        }
        ++leaves;
        EXPECT_EQ(node.amount.micros(), found->second) << static_cast<int>(node.part) << ", " << node.index;
    }
    EXPECT_EQ(leaves, plain.parts.size());
}

// A press that wears by half a micro-unit each time: half of all lines have a wear that lies midway, and half of their
// shares of the test presses are odd. The order's cost of a line is that of its sheet to the micro-unit.
TEST_F(PriceLaws, wearMidwayIsRoundedOnceBesideItsShare) {
    for (std::int64_t tests = 1; tests <= 40; ++tests) {
        auto book = sample::priceBook();
        auto& press = book.bench.press;
        press.price = Money::fromMicros(5);
        press.salvage = {};
        press.lifePresses = 10;
        press.secondPressShare = {};
        press.testPresses = tests;
        auto order = sample::orderOf({sample::square(7), sample::square(12), sample::square(25)});
        for (auto& line : order.lines) line.baseMaterial = sample::idOf("Hoodie");
        const auto priced = pricing::priceOrder(order, book, m_fits);
        ASSERT_TRUE(priced.has_value());
        for (std::size_t n = 0; n < order.lines.size(); ++n) {
            const auto sheet = pricing::costSheetOf(order, n, book, m_fits);
            ASSERT_TRUE(sheet.has_value());
            EXPECT_EQ(sheet->total, priced->lines[n].cost.total) << tests << " tests, line " << n;
        }
    }
}

TEST_F(PriceLaws, everyFigureIsThatOfASecondReckoning) {
    for (int i = 0; i < kDraws && !HasFailure(); ++i) {
        SCOPED_TRACE(i);
        pricing::PricedOrder priced;
        const auto drawn = draw(priced);
        const auto plain = reference::plainPrice(drawn.order, drawn.book, m_plainFits);
        ASSERT_EQ(priced.lines.size(), plain.lines.size());
        for (std::size_t n = 0; n < plain.lines.size(); ++n) {
            SCOPED_TRACE(n);
            const auto& line = priced.lines[n];
            const auto& expected = plain.lines[n];
            const auto sheet = sheetOf(drawn, n);
            expectCost(sheet, expected.cost);
            EXPECT_EQ(static_cast<const costing::LineCost&>(sheet), line.cost);
            EXPECT_EQ(sheet.total.micros(), expected.cost.total);
            EXPECT_EQ(sample::setUpOf(sheet).micros(), expected.cost.setUp);
            EXPECT_EQ(sample::floorOf(sheet).micros(), expected.cost.floor);
            EXPECT_EQ(sample::labourOf(sheet).micros(), expected.cost.labour);
            EXPECT_EQ(sample::cyclesOf(sheet), expected.cost.cycles);
            EXPECT_EQ(sheet.bench.total().milliseconds(), expected.cost.milliseconds);
            EXPECT_EQ(sheet.spoiledLabour.micros(), expected.cost.spoiledLabour);
            EXPECT_EQ(sheet.spoiledTime.milliseconds(), expected.cost.spoiledMilliseconds);
            EXPECT_EQ(line.each.micros(), expected.each);
            EXPECT_EQ(line.goods.micros(), expected.goods);
            EXPECT_EQ(line.setUp.micros(), expected.setUp);
            EXPECT_EQ(line.charged.micros(), expected.charged);
            EXPECT_EQ(line.earnings.net.micros(), expected.net);
            EXPECT_EQ(line.adjusted.micros(), expected.paid - expected.charged);
            EXPECT_EQ(line.earnings.coverage, expected.coverage);
            EXPECT_EQ(line.earnings.perBenchHour.value_or(Money{}).micros(), expected.perHour);
        }
        EXPECT_EQ(priced.goods.micros(), plain.goods);
        EXPECT_EQ(priced.rush.micros(), plain.rush);
        EXPECT_EQ(priced.discount.micros(), plain.discount);
        EXPECT_EQ(priced.minimumOrderCharge.micros(), plain.minimumOrderCharge);
        EXPECT_EQ(priced.subtotal.micros(), plain.subtotal);
        EXPECT_EQ(priced.tax.micros(), plain.tax);
        EXPECT_EQ(priced.total.micros(), plain.total);
        EXPECT_EQ(priced.deposit.micros(), plain.deposit);
        EXPECT_EQ(priced.earnings.net.micros(), plain.net);
        EXPECT_EQ(priced.earnings.cost.micros(), plain.cost);
        EXPECT_EQ(priced.earnings.cardFee.micros(), plain.cardFee);
        EXPECT_EQ(priced.earnings.coverage, plain.coverage);
        EXPECT_EQ(priced.earnings.perBenchHour.value_or(Money{}).micros(), plain.perHour);
    }
}

TEST_F(PriceLaws, whatIsPrintedAddsUp) {
    for (int i = 0; i < kDraws && !HasFailure(); ++i) {
        SCOPED_TRACE(i);
        pricing::PricedOrder priced;
        const auto drawn = draw(priced);
        Money charged;
        Money adjusted;
        pricing::Earnings earned;
        for (std::size_t n = 0; n < priced.lines.size(); ++n) {
            const auto& line = priced.lines[n];
            Money surcharges;
            for (const auto* charges : {&line.sizes, &line.places})
                for (const auto& charge : *charges) {
                    EXPECT_EQ(charge.amount.micros(), charge.each.micros() * charge.count.value());
                    surcharges += charge.amount;
                }
            EXPECT_EQ(line.goods.micros(), line.each.micros() * drawn.order.lines[n].quantity.value());
            EXPECT_EQ(line.charged, line.goods + surcharges + line.setUp);
            EXPECT_EQ(line.earnings.profit, line.earnings.net - line.earnings.cardFee - line.cost.total);
            charged += line.charged;
            adjusted += line.adjusted;
            EXPECT_GE(line.earnings.net, Money{});
            earned.net += line.earnings.net;
            earned.cost += line.earnings.cost;
            earned.paidOut += line.earnings.paidOut;
            earned.cardFee += line.earnings.cardFee;
            earned.floor += line.earnings.floor;
            earned.profit += line.earnings.profit;
        }
        EXPECT_EQ(adjusted, priced.subtotal - priced.goods);
        EXPECT_EQ(earned.net, priced.earnings.net);
        EXPECT_EQ(earned.cost, priced.earnings.cost);
        EXPECT_EQ(earned.paidOut, priced.earnings.paidOut);
        EXPECT_EQ(earned.cardFee, priced.earnings.cardFee);
        EXPECT_EQ(earned.floor, priced.earnings.floor);
        EXPECT_EQ(earned.profit, priced.earnings.profit);
        if (priced.lines.size() == 1) { EXPECT_EQ(priced.lines.front().earnings, priced.earnings); }
        EXPECT_EQ(priced.earnings.net, priced.taxIncluded ? priced.subtotal - priced.tax : priced.subtotal);
        EXPECT_EQ(priced.goods, charged);
        EXPECT_EQ(priced.subtotal, priced.goods + priced.rush - priced.discount + priced.minimumOrderCharge);
        const auto& tax = drawn.book.shop.rules.tax;
        const bool isTaxed = priced.taxStanding != pricing::TaxStanding::Exempt &&
                             std::ranges::any_of(drawn.order.lines, [](const auto& line) { return line.taxable; });
        const double inside = tax.inclusive && !isTaxed ? 1 + static_cast<double>(tax.rate.ppm()) / 1e6 : 1;
        EXPECT_GE((static_cast<double>(priced.subtotal.micros()) + 5'001) * inside,
                  static_cast<double>(drawn.book.shop.rules.minimumOrder.micros()));
        EXPECT_EQ(priced.total, priced.taxIncluded ? priced.subtotal : priced.subtotal + priced.tax);
        EXPECT_EQ(priced.total, priced.deposit + priced.balance);
        EXPECT_GE(priced.balance, Money{});
        EXPECT_EQ(priced.earnings.profit, priced.earnings.net - priced.earnings.cardFee - priced.earnings.cost);
        for (const auto amount :
             {priced.goods, priced.rush, priced.discount, priced.minimumOrderCharge, priced.tax, priced.total})
            EXPECT_EQ(amount.micros() % 10'000, 0);
    }
}

TEST_F(PriceLaws, theSetUpFallsAwayWithTheTemplatesOnTheWall) {
    for (int i = 0; i < kDraws && !HasFailure(); ++i) {
        SCOPED_TRACE(i);
        auto drawn = reference::randomPriceCase(m_random);
        auto line = drawn.order.lines.front();
        line.first().templatesOnWall = false;
        const auto cut = costing::costLine(line, drawn.book, m_fits);
        line.first().templatesOnWall = true;
        const auto onWall = costing::costLine(line, drawn.book, m_fits);
        ASSERT_TRUE(cut && onWall);
        EXPECT_EQ(sample::setUpOf(*onWall), Money{});
        EXPECT_EQ(cut->total - onWall->total, sample::setUpOf(*cut));
        EXPECT_LE(sample::floorOf(*cut), cut->total);
        EXPECT_LE(sample::setUpOf(*cut) + sample::labourOf(*onWall), cut->total);
    }
}

// Every price, wage and machine twice as dear: every line costs twice as much, but for the rounding of its parts.
TEST_F(PriceLaws, twiceTheMoneyIsTwiceTheCost) {
    for (int i = 0; i < kDraws && !HasFailure(); ++i) {
        SCOPED_TRACE(i);
        auto drawn = reference::randomPriceCase(m_random);
        const auto& line = drawn.order.lines.front();
        const auto before = costing::costLine(line, drawn.book, m_fits);
        ASSERT_TRUE(before.has_value());
        auto& book = drawn.book;
        const auto twice = [](Money& amount) { amount += amount; };
        for (auto& [id, priced] : book.materials) {
            twice(priced.price->price);
            for (auto& size : priced.material.sizes) twice(size.extraCost);
        }
        for (auto* amount : {&book.shop.rates.labourPerHour, &book.shop.rates.overheadPerMonth,
                             &book.shop.rates.garmentAllowance, &book.bench.press.price, &book.bench.press.salvage,
                             &book.bench.press.runningPerHour, &book.bench.cutter.price, &book.bench.cutter.salvage})
            twice(*amount);
        const auto after = costing::costLine(line, book, m_fits);
        ASSERT_TRUE(after.has_value());
        // What spoils multiplies what the parts were rounded by.
        const double kept = 1 - static_cast<double>(book.shop.rates.spoilage.ppm()) / units::kPpm;
        const auto near = [&](Money one, Money two) {
            EXPECT_NEAR(static_cast<double>(two.micros()), 2.0 * static_cast<double>(one.micros()), 60 / kept);
        };
        near(before->total, after->total);
        near(before->setUp, after->setUp);
        near(before->outOfPocket, after->outOfPocket);
    }
}

// Dearer stones, labour, blanks or sheets never make a line cheaper, nor does a piece more.
TEST_F(PriceLaws, dearerInputsNeverCostLess) {
    for (int i = 0; i < kDraws && !HasFailure(); ++i) {
        SCOPED_TRACE(i);
        auto drawn = reference::randomPriceCase(m_random);
        const auto& line = drawn.order.lines.front();
        auto dearer = drawn.book;
        for (auto& [id, priced] : dearer.materials)
            if (m_random() % 3 == 0)
                priced.price->price += Money::fromMicros(static_cast<std::int64_t>(m_random() % 1'000'000));
        dearer.shop.rates.labourPerHour += Money::fromMicros(static_cast<std::int64_t>(m_random() % 1'000'000));
        dearer.shop.rates.spoilage += Rate::fromPpm(static_cast<std::int64_t>(m_random() % 100'000));
        EXPECT_GE(totalOf(line, dearer), totalOf(line, drawn.book));
        auto larger = line;
        larger.quantity += Count::of(1);
        // Templates spread over planned pieces and learned steps only add up too.
        EXPECT_GE(totalOf(larger, drawn.book), totalOf(line, drawn.book));
    }
}

} // namespace
