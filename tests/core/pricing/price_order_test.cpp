// SPDX-License-Identifier: MIT
#include "core/pricing/ladder.h"
#include "core/pricing/messages.h"
#include "core/pricing/price_order.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace sp;
using pricing::PriceCoverage;
using pricing::PricedOrder;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Fraction;
using units::Money;
using units::Rate;

namespace {

PricedOrder priced(const catalogue::Order& order, const catalogue::PriceBook& book) {
    layout::FitMemo fits;
    auto result = pricing::priceOrder(order, book, fits);
    EXPECT_TRUE(result.has_value()) << (result ? "" : describe(result.error()));
    return result.value_or(PricedOrder{});
}

PricedOrder pricedLantern(std::int64_t quantity = 24) {
    return priced(sample::orderOf({sample::lantern(quantity)}), sample::priceBook());
}

/// A line of `quantity` pieces that cost `each` and nothing else.
struct Plain : sample::PlainJob {
    using PlainJob::PlainJob;
    PricedOrder price() const { return priced(sample::orderOf({line}), book); }
};

// OpenStax, Principles of Accounting vol. 2, m68005: the sign job costs 931 and sells for 2,000: profit 1,069, which
// is a margin of 53.45 % and a mark-up of 114.82 % (the last two computed).
TEST(PriceOrder, aTypedPriceIsAnsweredAsForThePublishedSignJob) {
    Plain sign(1, cents(93'100));
    sign.line.overrideEach = cents(200'000);
    const auto line = sign.price().lines.front();
    EXPECT_EQ(line.earnings.profit, cents(106'900));
    EXPECT_NEAR(static_cast<double>(line.earnings.margin->ppm()), 534'500, 1);
    EXPECT_NEAR(static_cast<double>(line.earnings.markUp->ppm()), 1'148'228, 1);
}

// The same book, m68115: shirts at 25 that cost 15 and 0.50; 100 of them leave 950, which after the 700 the stand
// costs is the published 250; 200 leave 1,900, which is 1,200.
TEST(PriceOrder, leavesWhatTheKioskPublished) {
    for (const auto& [quantity, income] : {std::pair{100, 25'000}, std::pair{200, 120'000}}) {
        Plain shirts(quantity, cents(1'550));
        shirts.line.overrideEach = cents(2'500);
        EXPECT_EQ(shirts.price().earnings.profit, cents(income + 70'000)) << quantity;
    }
}

// m68116: price 100, variable 20, fixed 18,000: nothing is earned at 225 units, 6,000 at 300, -4,000 at 175. The
// fixed part is the art of the job here: once, whatever the quantity.
TEST(PriceOrder, breaksEvenWhereThePublishedExampleDoes) {
    for (const auto& [quantity, income] : {std::pair{225, 0}, std::pair{300, 600'000}, std::pair{175, -400'000}}) {
        Plain units(quantity, cents(2'000));
        units.line.overrideEach = cents(10'000);
        units.book.shop.rates.labourPerHour = cents(1'800'000);
        units.book.bench.of(catalogue::Step::Art).perJob = units::Duration::fromMinutes(60);
        const auto order = units.price();
        EXPECT_EQ(order.earnings.profit, cents(income)) << quantity;
    }
}

TEST(PriceOrder, asksCostTimesOnePlusTheLaddersMarkUp) {
    Plain shirt(1, cents(2'500));
    shirt.book.shop.rules.ladder = {{Count::of(1), Rate::fromPercent(18)}};
    EXPECT_EQ(shirt.price().lines.front().each, cents(2'950)); // m00058: 25.00 at 18 % is 29.50
}

TEST(PriceOrder, everythingAddsUp) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](int most) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(most)) + 1; };
    layout::FitMemo fits;
    for (int i = 0; i < 1'000; ++i) {
        auto book = sample::priceBook();
        auto& rules = book.shop.rules;
        rules.setUp = random() % 2 ? catalogue::SetUpCharge::OwnLine : catalogue::SetUpCharge::Spread;
        rules.tax.inclusive = random() % 2;
        rules.tax.rounding = random() % 2 ? catalogue::TaxRounding::PerLine : catalogue::TaxRounding::PerInvoice;
        rules.minimumOrder = cents(upTo(20'000));
        rules.cardFee = {random() % 2 == 0, Rate::fromPpm(29'000), cents(30)};
        std::vector<catalogue::OrderLine> lines;
        for (std::int64_t n = upTo(5); n > 0; --n) {
            lines.push_back(sample::lantern(upTo(60)));
            lines.back().taxable = random() % 4 != 0;
            if (random() % 3 == 0) lines.back().overrideEach = cents(upTo(4000));
            if (random() % 3 == 0) {
                lines.back().baseMaterial = idOf("Hoodie");
                lines.back().sizes = {{"2XL", Count::of(1)}};
            }
        }
        auto order = sample::orderOf(lines);
        if (random() % 2) order.wantedBy = order.quotedOn.plusDays(upTo(10));
        if (random() % 2) order.discount.share = Rate::fromPpm(upTo(500'000));
        const auto result = pricing::priceOrder(order, book, fits);
        ASSERT_TRUE(result.has_value()) << describe(result.error());
        Money goods;
        for (const auto& line : result->lines) {
            goods += line.charged;
            EXPECT_EQ(line.charged.micros() % 10'000, 0);
            EXPECT_EQ(line.earnings.net - line.earnings.cardFee - line.earnings.cost, line.earnings.profit);
        }
        EXPECT_EQ(goods, result->goods);
        EXPECT_EQ(result->goods + result->rush - result->discount + result->minimumOrderCharge, result->subtotal);
        const bool isTaxed = std::ranges::any_of(order.lines, [](const auto& line) { return line.taxable; });
        if (rules.tax.inclusive && !isTaxed) // 7.25 % less, to the cent
            EXPECT_GE((static_cast<double>(result->subtotal.micros()) + 5'001) * 1.0725,
                      static_cast<double>(rules.minimumOrder.micros()));
        else
            EXPECT_GE(result->subtotal, rules.minimumOrder);
        EXPECT_EQ(result->taxIncluded ? result->subtotal : result->subtotal + result->tax, result->total);
        EXPECT_EQ(result->deposit + result->balance, result->total);
        for (const auto amount : {result->rush, result->discount, result->tax, result->total, result->deposit})
            EXPECT_EQ(amount.micros() % 10'000, 0);
    }
}

TEST(PriceOrder, chargesRushByTheDaysLeft) {
    auto order = sample::orderOf({sample::lantern()});
    const auto book = sample::priceBook();
    struct Row {
        std::int64_t days;
        int percent;
    };
    for (const Row& row : {Row{0, 60}, Row{2, 60}, Row{3, 20}, Row{7, 20}, Row{8, 0}}) {
        order.wantedBy = order.quotedOn.plusDays(row.days);
        const auto result = priced(order, book);
        EXPECT_EQ(result.rushRate, Rate::fromPercent(row.percent)) << row.days;
        EXPECT_EQ(result.rush.micros(),
                  Fraction::ratio(result.goods.micros() / 10'000 * row.percent, 100).roundedHalfUp() * 10'000);
    }
}

// 1.50 less 5 % is 1.42 when the discount is rounded by itself, as it is here, since it stands on the sheet as a line
// (showmethemath.com, "Markup and discount", gives both ways of rounding).
TEST(PriceOrder, roundsTheDiscountByItself) {
    Plain pen(1, cents(100));
    pen.line.overrideEach = cents(150);
    auto order = sample::orderOf({pen.line});
    order.discount.share = Rate::fromPercent(5);
    EXPECT_EQ(priced(order, pen.book).subtotal, cents(142));
}

TEST(PriceOrder, topsUpToTheMinimumAfterTheDiscountAndBeforeTax) {
    Plain pen(1, cents(100));
    pen.line.overrideEach = cents(1'600);
    pen.book.shop.rules.minimumOrder = cents(1'500);
    pen.book.shop.rules.tax.rate = Rate::fromPercent(10);
    auto order = sample::orderOf({pen.line});
    order.discount.share = Rate::fromPercent(50);
    const auto result = priced(order, pen.book);
    EXPECT_EQ(result.minimumOrderCharge, cents(700));
    EXPECT_EQ(result.tax, cents(150));
}

TEST(PriceOrder, setUpStandsAloneOrIsSpread) {
    auto book = sample::priceBook();
    const auto spread = priced(sample::orderOf({sample::lantern()}), book).lines.front();
    EXPECT_EQ(spread.setUp, Money{});
    book.shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    const auto alone = priced(sample::orderOf({sample::lantern()}), book).lines.front();
    EXPECT_GT(alone.setUp, Money{});
    EXPECT_LT(alone.each, spread.each);
    auto onWall = sample::lantern();
    onWall.first().templatesOnWall = true;
    EXPECT_EQ(priced(sample::orderOf({onWall}), book).lines.front().setUp, Money{});
}

TEST(PriceOrder, surchargesLargerSizes) {
    auto line = sample::lantern(6);
    line.baseMaterial = idOf("Hoodie");
    line.sizes = {{"M", Count::of(4)}, {"2XL", Count::of(2)}};
    const auto result = priced(sample::orderOf({line}), sample::priceBook()).lines.front();
    ASSERT_EQ(result.sizes.size(), 1u);
    EXPECT_EQ(result.sizes.front().amount, cents(550)); // 2 at + 2.75 (theoryprint.com, published upcharge for 2XL)
    EXPECT_EQ(result.charged, result.goods + cents(550));
}

TEST(PriceOrder, freesOnlyACustomerWithACertificateInForce) {
    auto order = sample::orderOf({sample::lantern()});
    auto book = sample::priceBook();
    book.customer = catalogue::Customer{};
    order.asksExemption = true;
    EXPECT_EQ(priced(order, book).taxStanding, pricing::TaxStanding::ExemptionMissing);
    EXPECT_GT(priced(order, book).tax, Money{});
    book.customer->certificate = catalogue::Certificate{"14-2201", "Westmark", sample::day("2025-01-01"), {}};
    EXPECT_EQ(priced(order, book).tax, Money{});
    EXPECT_EQ(priced(order, book).taxStanding, pricing::TaxStanding::Exempt);
    book.customer->certificate->expiresOn = sample::day("2026-11-24");
    EXPECT_GT(priced(order, book).tax, Money{});
    book.customer->certificate->expiresOn = sample::day("2026-11-25");
    EXPECT_EQ(priced(order, book).tax, Money{});
}

TEST(PriceOrder, freesByAnyCertificateThatIsInForceOnTheDay) {
    auto order = sample::orderOf({sample::lantern()});
    auto book = sample::priceBook();
    order.asksExemption = true;
    const catalogue::Certificate ended{"1", "Westmark", sample::day("2025-01-01"), sample::day("2026-11-24")};
    const catalogue::Certificate begins{"2", "Westmark", sample::day("2026-11-25"), {}};
    book.customer.emplace().certificate = ended;
    book.customer->otherCertificates = {begins};
    EXPECT_EQ(priced(order, book).taxStanding, pricing::TaxStanding::Exempt) << "the second, from this day on";
    book.customer->otherCertificates[0].issuedOn = sample::day("2026-11-26");
    EXPECT_EQ(priced(order, book).taxStanding, pricing::TaxStanding::ExemptionMissing);
    book.customer->certificate.reset();
    book.customer->otherCertificates = {ended, begins};
    EXPECT_EQ(priced(order, book).taxStanding, pricing::TaxStanding::Exempt) << "none but further ones";
}

/// Prices hold 20 % of tax, and the customer has a certificate.
Plain taxInside(std::int64_t quantity, Money cost) {
    Plain job(quantity, cost);
    job.book.shop.rules.tax = {"VAT", Rate::fromPercent(20), true, catalogue::TaxRounding::PerInvoice};
    job.book.customer.emplace().certificate =
        catalogue::Certificate{"14-2201", "Westmark", sample::day("2025-01-01"), {}};
    return job;
}

PricedOrder exempted(const Plain& job, catalogue::Discount discount = {}) {
    auto order = sample::orderOf({job.line});
    order.asksExemption = true;
    order.discount = discount;
    return priced(order, job.book);
}

// Worked by hand, the rate invented: ten at 40.00 without tax are 480.00 with it, and 2XL at 2.75 each on top 27.50:
// 507.50, of which 507.50 ÷ 6 = 84.583 are tax. Without tax a surcharge is 2.75 ÷ 1.2 = 2.2917: 400.00 + 22.90.
TEST(PriceOrder, aSurchargeGivesUpTheTaxThatItHolds) {
    auto job = taxInside(10, cents(4'000));
    job.line.sizes = {{"2XL", Count::of(10)}};
    const auto taxed = job.price();
    EXPECT_EQ(taxed.total, cents(50'750));
    EXPECT_EQ(taxed.tax, cents(8'458));
    const auto exempt = exempted(job);
    EXPECT_EQ(exempt.lines[0].sizes.front().each, cents(229));
    EXPECT_EQ(exempt.total, cents(42'290));
    EXPECT_EQ(exempt.tax, Money{});
    EXPECT_EQ(exempted(job, {{}, cents(500)}).total, cents(41'790)) << "a discount in money is as typed";
    job.line.taxable = false;
    EXPECT_EQ(job.price().total, cents(42'290)) << "a line without tax holds none for anybody";
}

// 10.00 without tax are 12.00 with it, and the smallest order of 15.00 adds 3.00; without tax that is 12.50.
TEST(PriceOrder, theSmallestOrderGivesUpTheTaxThatItHolds) {
    auto job = taxInside(1, cents(1'000));
    job.book.shop.rules.minimumOrder = cents(1'500);
    EXPECT_EQ(job.price().minimumOrderCharge, cents(300));
    EXPECT_EQ(job.price().total, cents(1'500));
    EXPECT_EQ(exempted(job).minimumOrderCharge, cents(250));
    EXPECT_EQ(exempted(job).total, cents(1'250));
    job.line.taxable = false;
    EXPECT_EQ(job.price().total, cents(1'250));
}

// 20.00 ÷ 1.2 = 16.667.
TEST(PriceOrder, aTypedPriceIsWithTheTaxThatPricesHold) {
    auto job = taxInside(3, cents(1'000));
    job.line.overrideEach = cents(2'000);
    EXPECT_EQ(job.price().total, cents(6'000));
    EXPECT_EQ(job.price().tax, cents(1'000));
    EXPECT_FALSE(job.price().lines[0].typedWithTax);
    const auto exempt = exempted(job);
    EXPECT_EQ(exempt.lines[0].each, cents(1'667));
    EXPECT_EQ(exempt.lines[0].typedWithTax, cents(2'000));
    EXPECT_EQ(exempt.total, cents(5'001));
    job.line.taxable = false;
    EXPECT_EQ(exempted(job).total, cents(6'000)) << "there was no tax in it";
    job.line.taxable = true;
    job.book.shop.rules.tax.inclusive = false;
    EXPECT_EQ(exempted(job).total, cents(6'000));
    EXPECT_FALSE(exempted(job).lines[0].typedWithTax);
}

TEST(PriceOrder, inclusiveTaxLeavesTheSameEarnings) {
    auto book = sample::priceBook();
    const auto exclusive = priced(sample::orderOf({sample::lantern()}), book);
    book.shop.rules.tax.inclusive = true;
    const auto inclusive = priced(sample::orderOf({sample::lantern()}), book);
    EXPECT_NEAR(static_cast<double>(inclusive.total.micros()), static_cast<double>(exclusive.total.micros()),
                24 * 10'000.0);
    EXPECT_NEAR(static_cast<double>(inclusive.earnings.profit.micros()),
                static_cast<double>(exclusive.earnings.profit.micros()), 24 * 10'000.0);
}

TEST(PriceOrder, warnsBelowCostAndBelowTheFloor) {
    auto line = sample::lantern();
    const auto cost = pricedLantern().lines.front().cost;
    const auto each = [&](Money total) { return Money::fromMicros(total.micros() / 24 / 10'000 * 10'000); };
    line.overrideEach = each(cost.total) + cents(1);
    EXPECT_EQ(priced(sample::orderOf({line}), sample::priceBook()).lines.front().earnings.coverage,
              PriceCoverage::Pays);
    line.overrideEach = each(cost.total);
    EXPECT_EQ(priced(sample::orderOf({line}), sample::priceBook()).lines.front().earnings.coverage,
              PriceCoverage::BelowCost);
    line.overrideEach = each(cost.outOfPocket);
    EXPECT_EQ(priced(sample::orderOf({line}), sample::priceBook()).lines.front().earnings.coverage,
              PriceCoverage::BelowFloor);
}

// The picture of the Counter in our own design notes: 24 pieces at 6.95 that cost 3.83 with 1.02 labour in 3 h 20 min
// earn 29.81 an hour; the rule, with invented figures.
TEST(PriceOrder, earnsProfitAndLabourPerBenchHour) {
    Plain piece(24, cents(281));
    piece.book.shop.rates.labourPerHour = cents(734); // 24 × 1.02 over 3 h 20 min
    piece.book.bench.of(catalogue::Step::Brush).perPiece = units::Duration::fromSeconds(500);
    piece.line.overrideEach = cents(695);
    const auto line = piece.price().lines.front();
    EXPECT_NEAR(static_cast<double>(line.earnings.perBenchHour->micros()) / 1e6, 24 * (6.95 - 2.81) / (10 / 3.0), 0.01);
}

TEST(Ladder, pricesEachQuantityAsIfOrdered) {
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    auto line = sample::lantern(30);
    line.overrideEach = cents(900);
    const auto ladder = pricing::ladderFor(sample::orderOf({line}), 0, book, false, fits);
    ASSERT_TRUE(ladder.has_value());
    ASSERT_EQ(ladder->size(), 4u);
    for (const auto& step : *ladder) {
        EXPECT_EQ(step.isOrdered, step.quantity == Count::of(30));
        const auto expected = step.isOrdered ? cents(900) : pricedLantern(step.quantity.value()).lines.front().each;
        EXPECT_EQ(step.each, expected) << step.quantity.value();
        EXPECT_EQ(step.total.micros(), step.each.micros() * step.quantity.value());
    }
}

// What the sheet prints for the pieces ordered and on the ladder must be one figure.
TEST(Ladder, asksWhatTheLineAsks) {
    auto book = sample::priceBook();
    book.shop.rules.cardFee = {true, Rate::fromPpm(29'000), cents(500)};
    auto line = sample::lantern(12);
    line.baseMaterial = sample::idOf("Hoodie");
    line.sizes = {{"M", Count::of(8)}, {"2XL", Count::of(4)}};
    const auto order = sample::orderOf({sample::lantern(3), line});
    layout::FitMemo fits;
    const auto priced = pricing::priceOrder(order, book, fits);
    ASSERT_TRUE(priced.has_value());
    for (std::size_t i = 0; i < 2; ++i) {
        const auto ladder = pricing::ladderFor(order, i, book, false, fits);
        ASSERT_TRUE(ladder.has_value());
        int own = 0;
        for (const auto& step : *ladder) {
            if (!step.isOrdered) continue;
            ++own;
            EXPECT_EQ(step.each, priced->lines[i].each) << i;
        }
        EXPECT_EQ(own, 1);
    }
}

// A larger blank that costs more and is charged for is charged once: its extra cost is in the surcharge, and the price
// of every piece is that of an order without it.
TEST(PriceOrder, chargesALargerSizeOnce) {
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    auto line = sample::lantern(10);
    line.baseMaterial = sample::idOf("Hoodie");
    const auto plain = pricing::priceOrder(sample::orderOf({line}), book, fits);
    line.sizes = {{"2XL", Count::of(4)}};
    const auto sized = pricing::priceOrder(sample::orderOf({line}), book, fits);
    ASSERT_TRUE(plain && sized);
    EXPECT_EQ(sized->lines[0].each, plain->lines[0].each);
    EXPECT_EQ(sized->goods, plain->goods + cents(4 * 275));
    EXPECT_GT(sized->lines[0].cost.total, plain->lines[0].cost.total + cents(4 * 210) - cents(1))
        << "it does cost more";
}

TEST(PriceOrder, refusesWithASentence) {
    layout::FitMemo fits;
    const auto book = sample::priceBook();
    auto order = sample::orderOf({});
    EXPECT_EQ(pricing::priceOrder(order, book, fits).error().fault, idOf(pricing::Fault::NothingOrdered));
    order = sample::orderOf({sample::lantern()});
    order.wantedBy = sample::day("2026-11-24");
    EXPECT_EQ(pricing::priceOrder(order, book, fits).error().fault, idOf(pricing::Fault::WantedBeforeQuoted));
    order.wantedBy.reset();
    order.discount.amount = cents(100'000'000);
    EXPECT_EQ(pricing::priceOrder(order, book, fits).error().fault, idOf(pricing::Fault::DiscountOutOfRange));
    order.discount = {Rate::fromPercent(101), {}};
    EXPECT_EQ(pricing::priceOrder(order, book, fits).error().fault, idOf(pricing::Fault::DiscountShareOutOfRange));
    order.discount = {};
    order.lines.front().overrideEach = cents(10'000'000'000);
    EXPECT_EQ(pricing::priceOrder(order, book, fits).error().code, base::Code::TooLarge);
}

} // namespace
