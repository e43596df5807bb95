// SPDX-License-Identifier: MIT
// What is reckoned is checked against priceOrder, which has its own worked examples; what comes along, by hand.
#include "core/pricing/messages.h"
#include "core/pricing/repeat.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

namespace sp::pricing {

namespace {

using catalogue::Order;
using catalogue::Stage;
using units::Count;
using units::Money;
using units::Rate;

const auto kDayOfRepeat = sample::day("2026-12-01");

/// 24 Lanterns in a hurry at a typed price, 30 squares given away, and postage.
Order once() {
    auto lantern = sample::lantern(24);
    lantern.overrideEach = sample::cents(650);
    auto square = sample::square(30);
    square.title = "Square";
    square.atNoCharge = true;
    catalogue::OrderLine postage;
    postage.title = "Postage";
    postage.places.clear();
    postage.overrideEach = sample::cents(480);
    auto order = sample::orderOf({lantern, square, postage});
    order.wantedBy = sample::day("2026-11-29");
    order.discount.share = Rate::fromPercent(5);
    return order;
}

std::vector<std::string> namesOf(const std::vector<PriceCause>& causes) {
    std::vector<std::string> names;
    for (const auto& cause : causes) names.push_back(describe(cause.what));
    return names;
}

Money effectOf(const std::vector<PriceCause>& causes) {
    Money sum;
    for (const auto& cause : causes) sum += cause.effect;
    return sum;
}

} // namespace

TEST(Repeat, leavesBehindWhatWasForThatOnce) {
    const auto order = once();
    const auto again = repeatOf(order, Stage::Collected, kDayOfRepeat);
    EXPECT_EQ(again.quotedOn, kDayOfRepeat);
    EXPECT_FALSE(again.wantedBy);
    EXPECT_FALSE(again.lines[0].overrideEach);
    EXPECT_TRUE(again.lines[0].first().templatesOnWall);
    EXPECT_FALSE(again.lines[1].atNoCharge);
    EXPECT_EQ(again.lines[2], order.lines[2]) << "a charge is its typed price";
    EXPECT_EQ(again.discount, order.discount);
    EXPECT_EQ(again.lines[0].first().stones, order.lines[0].first().stones);
    EXPECT_EQ(again.lines[0].quantity, order.lines[0].quantity);
}

TEST(Repeat, findsTemplatesOnTheWallOnlyWhereTheyWereCut) {
    for (const auto stage : {Stage::Quoted, Stage::Agreed, Stage::Declined})
        EXPECT_EQ(repeatOf(once(), stage, kDayOfRepeat).lines[0].first().templatesOnWall, false);
    for (const auto stage : {Stage::InProduction, Stage::Ready, Stage::Collected})
        EXPECT_EQ(repeatOf(once(), stage, kDayOfRepeat).lines[0].first().templatesOnWall, true);
    auto order = once();
    order.lines[0].first().templatesOnWall = true;
    EXPECT_TRUE(repeatOf(order, Stage::Quoted, kDayOfRepeat).lines[0].first().templatesOnWall)
        << "they were there before";
}

TEST(Repeat, keepsEveryChoice) {
    auto order = once();
    catalogue::addChoice(order);
    const auto again = repeatOf(order, Stage::Ready, kDayOfRepeat);
    ASSERT_EQ(catalogue::choiceCount(again), 2U);
    for (const auto& choice : catalogue::choicesOf(again)) {
        EXPECT_FALSE(choice.lines[0].overrideEach);
        EXPECT_FALSE(choice.lines[1].atNoCharge);
        EXPECT_TRUE(choice.lines[0].first().templatesOnWall);
    }
}

TEST(Repeat, saysWhyInputByInput) {
    const auto then = sample::priceBook();
    auto now = then;
    now.materials[sample::idOf("Aqua")].price->price = sample::cents(1249);
    const auto order = once();
    const auto again = repeatOf(order, Stage::Collected, kDayOfRepeat);
    layout::FitMemo fits;
    const auto compared = compareRepeat(order, then, again, now, fits);
    ASSERT_TRUE(compared.has_value());
    EXPECT_EQ(
        namesOf(compared->causes),
        (std::vector<std::string>{"PriceOf(Aqua)", "DayWanted", "DayQuoted", "TypedPrice(Lantern)",
                                  "TemplatesOnWall(Lantern)", "LineWasAtNoCharge(Square)", "TemplatesOnWall(Square)"}));
    EXPECT_EQ(compared->totalThen, priceOrder(order, then, fits)->total);
    const auto priced = priceOrder(again, now, fits);
    EXPECT_EQ(compared->totalNow, priced->total);
    EXPECT_EQ(effectOf(compared->causes), compared->difference());
    EXPECT_EQ(compared->lines[0].eachThen, sample::cents(650));
    EXPECT_EQ(compared->lines[0].eachNow, priced->lines[0].each);
    // Alone: the surcharge falls away, templates are not cut again; a price typed for one line moves no other.
    EXPECT_TRUE(compared->causes[1].effect.isNegative());
    EXPECT_EQ(compared->causes[3].was, base::asValue("6.50"));
    EXPECT_TRUE(compared->causes[4].effect.isNegative());
    EXPECT_FALSE(compared->causes[5].effect.isNegative());
    EXPECT_FALSE(compared->causes[5].effect.isZero());
}

TEST(Repeat, ofAnOrderAsItWasHasNoCauses) {
    auto order = sample::orderOf({sample::lantern(24)});
    order.quotedOn = kDayOfRepeat;
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    const auto compared = compareRepeat(order, book, repeatOf(order, Stage::Quoted, kDayOfRepeat), book, fits);
    ASSERT_TRUE(compared.has_value());
    EXPECT_TRUE(compared->causes.empty());
    EXPECT_TRUE(compared->difference().isZero());
}

TEST(Repeat, keepsWhatTheProgramReckonsOtherwiseLast) {
    const auto book = sample::priceBook();
    const auto order = once();
    layout::FitMemo fits;
    const auto given = priceOrder(order, book, fits)->total + sample::cents(3);
    const auto compared =
        compareRepeat(order, book, repeatOf(order, Stage::Ready, kDayOfRepeat), book, fits, {}, given);
    ASSERT_TRUE(compared.has_value());
    EXPECT_EQ(describe(compared->causes.back().what), "ReckonedOtherwise");
    EXPECT_EQ(compared->causes.back().effect, sample::cents(-3));
    EXPECT_EQ(compared->totalThen, given);
    EXPECT_EQ(effectOf(compared->causes), compared->difference());
}

TEST(Repeat, addsUpForAnyOrder) {
    std::mt19937_64 random(test::printedSeed());
    const auto then = sample::priceBook();
    for (int round = 0; round < 1'000; ++round) {
        auto order = once();
        for (auto& line : order.lines) {
            if (random() % 2) line.quantity = Count::of(1 + static_cast<std::int64_t>(random() % 300));
            if (!line.isCharge() && random() % 2) line.overrideEach.reset();
            line.atNoCharge = random() % 4 == 0;
        }
        order.atNoCharge = random() % 8 == 0;
        if (random() % 2) order.wantedBy.reset();
        auto now = then;
        if (random() % 2)
            now.shop.rates.labourPerHour = sample::cents(1500 + static_cast<std::int64_t>(random() % 2000));
        if (random() % 2) now.shop.rules.minimumOrder = sample::cents(static_cast<std::int64_t>(random() % 90'000));
        const auto again = repeatOf(order, static_cast<Stage>(random() % 7), kDayOfRepeat);
        layout::FitMemo fits;
        const auto compared = compareRepeat(order, then, again, now, fits);
        ASSERT_TRUE(compared.has_value());
        EXPECT_EQ(effectOf(compared->causes), compared->difference());
        EXPECT_EQ(compared->totalNow, priceOrder(again, now, fits)->total);
        EXPECT_FALSE(compared->totalNow.isZero()) << "nothing is given away a second time unsaid";
    }
}

TEST(Repeat, isRefusedWhereItHasNoPriceToday) {
    const auto then = sample::priceBook();
    auto now = then;
    now.materials.erase(sample::idOf("Jet"));
    layout::FitMemo fits;
    const auto compared = compareRepeat(once(), then, repeatOf(once(), Stage::Collected, kDayOfRepeat), now, fits);
    ASSERT_FALSE(compared.has_value());
    EXPECT_EQ(compared.error().code, base::Code::NotFound);
}

} // namespace sp::pricing
