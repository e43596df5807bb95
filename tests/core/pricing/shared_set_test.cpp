// SPDX-License-Identifier: MIT
//
// Lines of one order that are made with one set of templates, warm up the press once and count their pieces together.
// Every figure is worked by hand; prices and times are invented. That a set is drawn and cut once, whatever colours go
// through it: common practice, no source.
#include "core/planning/cut_plan.h"
#include "core/pricing/price_order.h"
#include "tests/support/amounts.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

namespace sp::pricing {

namespace {

using catalogue::Order;
using catalogue::OrderLine;
using catalogue::PriceBook;
using catalogue::Step;
using sample::cents;
using sample::idOf;
using support::inches;
using units::Count;
using units::Duration;
using units::Money;
using units::Rate;

/// A set of two colours of 4 × 4 in costs 22.70: one template sheet 8.00; art 600 s, cutting 200, weeding 120 and
/// setting up 120 s, in all 10.40 at 0.01 a second; 300 holes at 0.01 are 3.00; overhead on 1,040 s at 0.00125 is 1.30.
PriceBook book() {
    auto book = sample::freeBook();
    book.shop.usualTemplate = idOf("Template");
    book.materials[idOf("Template")].price = units::UnitPrice{cents(800), Count::of(1)};
    book.materials[idOf("Hoodie")].price = units::UnitPrice{cents(1000), Count::of(1)};
    book.shop.rates.labourPerHour = cents(3600);
    book.shop.rates.overheadPerMonth = cents(54'000);
    book.shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
    const auto s = [](std::int64_t seconds) { return Duration::fromSeconds(seconds); };
    book.bench.of(Step::Art) = {s(600), {}, {}, {}};
    book.bench.of(Step::Cut) = {s(100), s(50), {}, {}};
    book.bench.of(Step::Weed) = {{}, s(60), {}, {}};
    book.bench.of(Step::SetUp) = {s(120), {}, {}, {}};
    book.bench.cutter = {cents(1'200'000), cents(200'000), 1'000'000};
    return book;
}

/// Thirty squares on hoodies, and ten with the colours exchanged on garments of the customer's.
Order twoSharing() {
    Order order;
    order.quotedOn = sample::day("2026-11-30");
    auto hoodies = sample::square(30);
    hoodies.first().design = idOf("Square");
    hoodies.baseMaterial = idOf("Hoodie");
    auto own = hoodies;
    own.quantity = Count::of(10);
    own.baseMaterial = {};
    own.customersGarment = true;
    std::swap(own.first().stones[0].material, own.first().stones[1].material);
    order.lines = {hoodies, own};
    return order;
}

std::vector<CostedLine> costed(const Order& order, const PriceBook& book,
                               std::int64_t rules = catalogue::kRulesVersion) {
    layout::FitMemo fits;
    auto lines = costLines(order, book, fits, rules);
    EXPECT_TRUE(lines) << (lines ? "" : describe(lines.error()));
    return lines.value_or(std::vector<CostedLine>(order.lines.size()));
}

std::vector<std::int64_t> setUps(const Order& order, const PriceBook& book,
                                 std::int64_t rules = catalogue::kRulesVersion) {
    std::vector<std::int64_t> micros;
    for (const auto& line : costed(order, book, rules)) micros.push_back(line.cost.setUp.micros());
    return micros;
}

// 30 and 10 of 40 pieces: three quarters and one quarter of 22.70.
TEST(SharedSet, isPaidOnceByThePiecesOfItsLines) {
    EXPECT_THAT(setUps(twoSharing(), book()), testing::ElementsAre(17'025'000, 5'675'000));
    const auto lines = costed(twoSharing(), book());
    EXPECT_EQ(lines[0].cost.bench.oncePerJob(), Duration::fromSeconds(780));
    EXPECT_EQ(lines[1].cost.bench.oncePerJob(), Duration::fromSeconds(260));
    EXPECT_EQ(lines[0].cost.total.micros(), 300'000'000 + 17'025'000);
}

// Paid off over 20 planned pieces the 8.00 of templates are paid once by the 40, 6.00 and 2.00; over 80 half of it is.
// What is left, 14.70, is set up as before.
TEST(SharedSet, isPaidNoMoreThanOnceWhereItsTemplatesArePaidOff) {
    auto order = twoSharing();
    const auto paidOff = [&](std::int64_t planned) {
        for (auto& line : order.lines) line.first().plannedPieces = Count::of(planned);
        std::vector<std::int64_t> micros;
        for (const auto& line : costed(order, book())) micros.push_back(line.cost.paidOff.micros());
        return micros;
    };
    EXPECT_THAT(paidOff(20), testing::ElementsAre(6'000'000, 2'000'000));
    EXPECT_THAT(paidOff(80), testing::ElementsAre(3'000'000, 1'000'000));
    EXPECT_THAT(setUps(order, book()), testing::ElementsAre(11'025'000, 3'675'000));
}

// Before rules 3 every line had its own.
TEST(SharedSet, wasOneForEachLineBefore) {
    EXPECT_THAT(setUps(twoSharing(), book(), 2), testing::ElementsAre(22'700'000, 22'700'000));
}

TEST(SharedSet, isNoneForWhatOneTemplateCannotServe) {
    const std::pair<const char*, std::function<void(OrderLine&, PriceBook&)>> others[] = {
        {"a one-off", [](OrderLine& line, PriceBook&) { line.first().design = {}; }},
        {"another design", [](OrderLine& line, PriceBook&) { line.first().design = idOf("Other"); }},
        {"another width", [](OrderLine& line, PriceBook&) { line.first().width = inches(5); }},
        {"another height", [](OrderLine& line, PriceBook&) { line.first().height = inches(5); }},
        {"a plan on one line alone", [](OrderLine& line, PriceBook&) { line.first().plannedPieces = Count::of(80); }},
        {"another count", [](OrderLine& line, PriceBook&) { line.first().stones[1].count = Count::of(101); }},
        {"stones of another size",
         [](OrderLine& line, PriceBook& book) {
             auto& stone = book.materials[idOf("Large jet")] = book.materials[idOf("Jet")];
             stone.material.id = idOf("Large jet");
             stone.material.stone.size = "SS20";
             line.first().stones[0].material = idOf("Large jet");
         }},
    };
    for (const auto& [what, change] : others) {
        auto order = twoSharing();
        auto made = book();
        change(order.lines[1], made);
        EXPECT_EQ(setUps(order, made)[0], 22'700'000) << what;
    }
    auto order = twoSharing();
    order.lines[1].first().templatesOnWall = true;
    EXPECT_THAT(setUps(order, book()), testing::ElementsAre(22'700'000, 0));
}

// Front and back of twenty hoodies and the ten: 20 + 20 of 50 pieces are on the first line.
TEST(SharedSet, servesSeveralPlacesOfAPiece) {
    auto order = twoSharing();
    order.lines[0].quantity = Count::of(20);
    order.lines[0].places.push_back(order.lines[0].first());
    EXPECT_THAT(setUps(order, book()), testing::ElementsAre(18'160'000, 4'540'000));
}

// A template of each colour, once.
TEST(SharedSet, isCutOnce) {
    const auto order = twoSharing();
    const auto lists = planning::cutLists(order.lines, book());
    ASSERT_TRUE(lists) << describe(lists.error());
    ASSERT_EQ(lists->size(), 1U); // nothing is cut to put hoodies on
    EXPECT_EQ(lists->front().pieces.size(), 2U);
    EXPECT_EQ(lists->front().pieces[0].count, 1);
}

// 600 s at 0.001 are 0.60 for the order, by what the lines cost without it: 317.025 and 5.675 of 322.70.
TEST(WarmUp, isPaidOnceByWhatTheLinesCost) {
    auto made = book();
    made.bench.press.warmUp = Duration::fromSeconds(600);
    made.bench.press.runningPerHour = cents(360);
    const auto lines = costed(twoSharing(), made);
    EXPECT_EQ(lines[0].share.press.value().warmUp.micros(), 589'448); // 0.60 × 317.025 ÷ 322.70 = 0.5894484…
    EXPECT_EQ(lines[1].share.press.value().warmUp.micros(), 10'552);
    EXPECT_EQ(lines[0].cost.total.micros(), 317'025'000 + 589'448);
    auto alone = twoSharing();
    alone.lines.pop_back();
    EXPECT_EQ(costed(alone, made)[0].cost.total.micros(), 322'700'000 + 600'000);
    const auto before = costed(twoSharing(), made, 2);
    EXPECT_EQ(before[1].cost.total.micros(), 22'700'000 + 600'000);
}

// Two test presses of 30 s at 3.60 an hour are 0.06, and wear 2 of the 1,000 presses that 500.00 buy, 1.00: once for
// the order, by what the lines cost without it (317.025 and 5.675 of 322.70). What is worn is not paid out.
TEST(TestPresses, areMadeOnceByWhatTheLinesCost) {
    auto made = book();
    auto& press = made.bench.press;
    press.runningPerHour = cents(360);
    press.testPresses = 2;
    press.dwell = {};
    press.handling = {};
    press.price = {};
    press.salvage = {};
    const auto plain = costed(twoSharing(), made);
    press.dwell = Duration::fromSeconds(30);
    press.price = cents(50'000);
    press.lifePresses = 1'000;
    const auto lines = costed(twoSharing(), made);
    Money tests;
    Money wear;
    for (const auto& line : lines) {
        tests += line.share.press.value().tests;
        wear += line.share.press.value().testWear;
    }
    EXPECT_EQ(tests, cents(6));
    EXPECT_EQ(wear, cents(100));
    const auto cycles = [&](std::size_t i) {
        std::int64_t all = 0;
        for (const auto& place : lines[i].cost.places) all += place.press.cycles;
        return all;
    };
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& share = *lines[i].share.press;
        const auto running = Money::fromMicros(30'000 * cycles(i)); // 30 s at 3.60 an hour
        EXPECT_EQ(lines[i].cost.total, plain[i].cost.total + running + share.tests + share.testWear +
                                           Money::fromMicros(500'000 * cycles(i))); // 500.00 ÷ 1,000
        EXPECT_EQ(lines[i].cost.outOfPocket, plain[i].cost.outOfPocket + running + share.tests);
    }
    EXPECT_GT(lines[0].share.press->tests, lines[1].share.press->tests);
}

// One is shared as two are: 500.00 ÷ 1,000 for it and for each cycle.
TEST(TestPresses, wearThePressOnceEvenWhereThereIsOne) {
    auto made = book();
    auto& press = made.bench.press;
    press.testPresses = 1;
    const auto plain = costed(twoSharing(), made);
    press.price = cents(50'000);
    press.lifePresses = 1'000;
    const auto lines = costed(twoSharing(), made);
    Money wear;
    std::int64_t cycles = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        wear += lines[i].cost.total - plain[i].cost.total;
        for (const auto& place : lines[i].cost.places) cycles += place.press.cycles;
    }
    EXPECT_EQ(wear, Money::fromMicros(500'000 * (cycles + 1)));
}

// 95 % below 24 pieces, 65 % from there on: 12 and 12 of a design are 24 where the shop counts so.
TEST(CountedPieces, areThoseOfTheDesignOverItsLines) {
    auto order = twoSharing();
    for (auto& line : order.lines) line.quantity = Count::of(12);
    auto made = book();
    made.shop.rules.ladder = {{Count::of(1), Rate::fromPercent(95)}, {Count::of(24), Rate::fromPercent(65)}};
    layout::FitMemo fits;
    const auto markUps = [&](std::int64_t rules = catalogue::kRulesVersion) {
        std::vector<std::int64_t> percents;
        const auto priced = priceOrder(order, made, fits, rules);
        for (const auto& line : priced.value().lines) percents.push_back(line.ladderMarkUp.ppm() / 10'000);
        return percents;
    };
    EXPECT_THAT(markUps(), testing::ElementsAre(65, 65));
    EXPECT_THAT(markUps(2), testing::ElementsAre(95, 95));
    order.lines[1].first().width = inches(5); // another set, the same design
    EXPECT_THAT(markUps(), testing::ElementsAre(65, 65));
    made.shop.countsDesignOverLines = false;
    EXPECT_THAT(markUps(), testing::ElementsAre(95, 95));
    made.shop.countsDesignOverLines = true;
    order.lines[1].first().design = idOf("Other");
    EXPECT_THAT(markUps(), testing::ElementsAre(95, 95));
}

} // namespace

} // namespace sp::pricing
