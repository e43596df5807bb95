// SPDX-License-Identifier: MIT
// What an order and its revision come to is checked against priceOrder, which has its own worked examples; what became
// of each line, by hand.
#include "core/catalogue/fields/terms.h"
#include "core/pricing/messages.h"
#include "core/pricing/order_difference.h"
#include "core/pricing/repeat.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace sp::pricing {

namespace {

using catalogue::Order;
using catalogue::OrderLine;
using units::Count;
using units::Money;
using units::Rate;

OrderLine charge(const char* title, std::int64_t cents) {
    OrderLine line;
    line.title = title;
    line.places.clear();
    line.overrideEach = sample::cents(cents);
    return line;
}

OrderLine named(OrderLine line, const char* title) {
    line.title = title;
    return line;
}

/// 24 Lanterns, 30 squares and postage.
Order given() {
    auto order = sample::orderOf({sample::lantern(24), named(sample::square(30), "Square"), charge("Postage", 480)});
    order.quotedOn = sample::day("2026-10-01");
    return order;
}

OrderDifference compared(const Order& was, const Order& is, const catalogue::PriceBook& then = sample::priceBook(),
                         const catalogue::PriceBook& now = sample::priceBook()) {
    layout::FitMemo fits;
    const auto before = priceOrder(was, then, fits);
    const auto after = priceOrder(is, now, fits);
    EXPECT_TRUE(before && after);
    return differenceOf({was, then, amountsOf(*before)}, {is, now, amountsOf(*after)});
}

Money sumOf(const OrderDifference& difference) {
    Money sum;
    for (const auto& line : difference.lines) sum += line.difference();
    for (const auto& amount : difference.amounts) sum += amount.difference();
    return sum;
}

std::vector<std::string> partsOf(const std::vector<ChangedPart>& parts) {
    std::vector<std::string> names;
    for (const auto& part : parts) names.push_back(describe(part.what));
    return names;
}

} // namespace

TEST(OrderDifference, ofTheSameIsNothing) {
    const auto same = compared(given(), given());
    EXPECT_TRUE(same.isNothing());
    ASSERT_EQ(same.lines.size(), 3U);
    for (const auto& line : same.lines) EXPECT_EQ(line.fate, LineFate::Same);
    auto later = given();
    later.quotedOn = sample::day("2026-11-01");
    EXPECT_TRUE(compared(given(), later).isNothing()) << "a revision has a day of its own";
}

TEST(OrderDifference, tellsWhatBecameOfEachLine) {
    auto is = given();
    is.lines[0].quantity = Count::of(26);
    is.lines[1].baseMaterial = sample::idOf("Hoodie");
    is.lines.erase(is.lines.begin() + 2);
    is.lines.insert(is.lines.begin() + 1, named(sample::lantern(2), "Heron"));
    const auto difference = compared(given(), is);
    ASSERT_EQ(difference.lines.size(), 4U);
    EXPECT_EQ(difference.lines[0].fate, LineFate::Changed);
    EXPECT_EQ(partsOf(difference.lines[0].parts), std::vector<std::string>{"Quantity"});
    EXPECT_EQ(difference.lines[0].was->quantity, Count::of(24));
    EXPECT_EQ(difference.lines[0].is->quantity, Count::of(26));
    EXPECT_EQ(difference.lines[1].fate, LineFate::Added);
    EXPECT_EQ(difference.lines[1].title(), "Heron");
    EXPECT_EQ(difference.lines[1].difference(), difference.lines[1].is->charged);
    EXPECT_EQ(difference.lines[2].fate, LineFate::Changed);
    EXPECT_EQ(partsOf(difference.lines[2].parts), std::vector<std::string>{"Base"});
    EXPECT_EQ(difference.lines[2].parts[0].was, base::asValue("Backing"));
    EXPECT_EQ(difference.lines[2].parts[0].is, base::asValue("Hoodie"));
    EXPECT_EQ(difference.lines[3].fate, LineFate::Removed);
    EXPECT_EQ(difference.lines[3].title(), "Postage");
    EXPECT_EQ(difference.lines[3].difference(), sample::cents(-480));
    EXPECT_EQ(sumOf(difference), difference.difference());
    EXPECT_FALSE(difference.isNothing());
}

TEST(OrderDifference, ofPricesAloneChangesLinesWithoutParts) {
    auto dearer = sample::priceBook();
    dearer.materials.at(sample::idOf("Jet")).price->price = sample::cents(90'000);
    const auto difference = compared(given(), given(), sample::priceBook(), dearer);
    EXPECT_EQ(difference.lines[0].fate, LineFate::Changed);
    EXPECT_TRUE(difference.lines[0].parts.empty());
    EXPECT_NE(difference.lines[0].was->each, difference.lines[0].is->each);
    EXPECT_EQ(difference.lines[2].fate, LineFate::Same) << "postage holds no stones";
    EXPECT_EQ(sumOf(difference), difference.difference());
}

TEST(OrderDifference, findsALineThatMovedOrWasRenamed) {
    auto is = given();
    std::swap(is.lines[0], is.lines[1]);
    auto moved = compared(given(), is);
    for (const auto& line : moved.lines) EXPECT_EQ(line.fate, LineFate::Same) << line.title();
    is.lines[0].title = "Tile";
    is.lines[0].first().title.clear();
    const auto renamed = compared(given(), is);
    ASSERT_EQ(renamed.lines.size(), 3U);
    EXPECT_EQ(renamed.lines[0].fate, LineFate::Changed);
    EXPECT_EQ(renamed.lines[0].parts.at(0).what, base::say(catalogue::fields::Term::Title));
    EXPECT_TRUE(renamed.difference().isZero());
}

TEST(OrderDifference, isSomethingWhereALineIsOnlyRenamed) {
    auto is = given();
    is.lines[1].title = "Tile";
    is.lines[1].first().title.clear();
    const auto renamed = compared(given(), is);
    EXPECT_TRUE(renamed.difference().isZero() && renamed.parts.empty() && renamed.amounts.empty());
    EXPECT_FALSE(renamed.isNothing());
}

TEST(OrderDifference, saysWhatOfAPlaceIsAnother) {
    const auto with = [](auto change) {
        auto is = given();
        change(is.lines[0].places);
        return partsOf(compared(given(), is).lines.at(0).parts);
    };
    using Names = std::vector<std::string>;
    using Places = std::vector<catalogue::Placement>;
    EXPECT_EQ(with([](Places& on) { on[0].width = units::Length::fromNanometres(50'800'000); }), (Names{"Width"}));
    EXPECT_EQ(with([](Places& on) { on[0].height = units::Length::fromNanometres(50'800'000); }), (Names{"Height"}));
    EXPECT_EQ(with([](Places& on) { on[0].stones[0].count = Count::of(17); }), (Names{"Stones"}));
    EXPECT_EQ(with([](Places& on) { on[0].templatesOnWall = true; }), (Names{"TemplatesOnTheWall"}));
    EXPECT_EQ(with([](Places& on) { on[0].artTime = units::Duration::fromMinutes(7); }), (Names{"ArtTime"}));
    EXPECT_EQ(with([](Places& on) {
                  on.push_back(on[0]);
                  on[1].width = units::Length::fromNanometres(50'800'000);
              }),
              (Names{"PlacesOnThePiece"}))
        << "places that cannot be told one by one";
}

TEST(OrderDifference, saysWhatOfALineIsAnother) {
    auto book = sample::priceBook();
    book.shop.rules.tax.others = {{"Reduced", Rate::fromPercent(2)}};
    auto is = given();
    is.lines[0].taxRate = "Reduced";
    is.lines[1].packing = std::vector<catalogue::PackingUse>{};
    const auto difference = compared(given(), is, book, book);
    EXPECT_EQ(partsOf(difference.lines.at(0).parts), (std::vector<std::string>{"TaxRateOfALine"}));
    EXPECT_EQ(partsOf(difference.lines.at(1).parts), (std::vector<std::string>{"Packing"}));
}

TEST(OrderDifference, listsALineThatIsGoneWhereItStood) {
    auto is = given();
    is.lines.erase(is.lines.begin() + 1);
    const auto difference = compared(given(), is);
    ASSERT_EQ(difference.lines.size(), 3U);
    EXPECT_EQ(difference.lines[1].fate, LineFate::Removed);
    EXPECT_EQ(difference.lines[1].title(), "Square");
    EXPECT_EQ(difference.lines[2].title(), "Postage");
}

TEST(OrderDifference, tellsLinesApartThatAreCalledAlike) {
    auto was = sample::orderOf({charge("Charge", 100), charge("Charge", 200), charge("Charge", 300)});
    auto is = sample::orderOf({charge("Charge", 300), charge("Charge", 100)});
    const auto difference = compared(was, is);
    ASSERT_EQ(difference.lines.size(), 3U);
    EXPECT_EQ(std::ranges::count(difference.lines, LineFate::Same, &LineDifference::fate), 2);
    EXPECT_EQ(std::ranges::count(difference.lines, LineFate::Removed, &LineDifference::fate), 1);
    for (const auto& line : difference.lines)
        if (line.fate == LineFate::Removed) { EXPECT_EQ(line.difference(), sample::cents(-200)); }
}

TEST(OrderDifference, saysWhatOfTheWholeOrderIsAnother) {
    auto is = given();
    is.wantedBy = sample::day("2026-12-24");
    is.discount.share = Rate::fromPercent(10);
    is.asksExemption = true;
    const auto difference = compared(given(), is);
    EXPECT_EQ(partsOf(difference.parts), (std::vector<std::string>{"DayItIsWanted", "Discount", "Exemption"}));
    EXPECT_EQ(difference.parts[0].was, base::Value());
    EXPECT_EQ(difference.parts[1].is, base::asValue("10 %"));
    ASSERT_FALSE(difference.amounts.empty());
    EXPECT_EQ(difference.amounts[0].what, base::say(Note::DiscountOfOrder));
    EXPECT_TRUE(difference.amounts[0].is.isNegative());
    EXPECT_EQ(sumOf(difference), difference.difference());
}

TEST(OrderDifference, keepsTheSumWhereLinesAreNotKnown) {
    const auto was = given();
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    const auto now = priceOrder(was, book, fits);
    ASSERT_TRUE(now);
    OrderAmounts lost;
    lost.total = sample::cents(12'345);
    const auto difference = differenceOf({was, book, lost}, {was, book, amountsOf(*now)});
    EXPECT_EQ(difference.amounts.back().what, base::say(Note::ReckonedOtherwise));
    EXPECT_EQ(sumOf(difference), difference.difference());
}

TEST(Revision, beginsAsTheOrderWasButForAPastDay) {
    auto order = given();
    order.wantedBy = sample::day("2026-11-20");
    order.lines[0].overrideEach = sample::cents(650);
    order.lines[1].atNoCharge = true;
    const auto inTime = revisionOf(order, sample::day("2026-11-20"));
    EXPECT_EQ(inTime.quotedOn, sample::day("2026-11-20"));
    EXPECT_EQ(inTime.wantedBy, order.wantedBy);
    EXPECT_EQ(inTime.lines, order.lines) << "what was typed was agreed upon";
    EXPECT_FALSE(revisionOf(order, sample::day("2026-11-21")).wantedBy);
}

// Whatever changes: the lines and amounts add up to the difference of the totals; every line of both orders is in it
// once; the other way round it is the same difference, taken back.
TEST(OrderDifference, lawsOverRandomOrders) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    const auto anyLine = [&]() -> OrderLine {
        switch (upTo(3)) {
        case 0: return charge(upTo(1) == 0 ? "Postage" : "Art", upTo(3'000));
        case 1: return named(sample::square(1 + upTo(60)), "Square");
        default: return sample::lantern(1 + upTo(60));
        }
    };
    for (int round = 0; round < 200; ++round) {
        auto was = sample::orderOf({});
        for (std::int64_t i = 0, lines = 1 + upTo(5); i < lines; ++i) was.lines.push_back(anyLine());
        auto is = was;
        for (std::int64_t i = 0, edits = upTo(4); i < edits; ++i) {
            const auto at = static_cast<std::size_t>(upTo(static_cast<std::int64_t>(is.lines.size()) - 1));
            switch (upTo(5)) {
            case 0: is.lines.insert(is.lines.begin() + static_cast<std::ptrdiff_t>(at), anyLine()); break;
            case 1:
                if (is.lines.size() > 1) is.lines.erase(is.lines.begin() + static_cast<std::ptrdiff_t>(at));
                break;
            case 2: is.lines[at].quantity = Count::of(1 + upTo(60)); break;
            case 3: is.lines[at].overrideEach = sample::cents(upTo(2'000)); break;
            case 4: is.discount.share = Rate::fromPercent(upTo(30)); break;
            default: is.lines[at].taxable = !is.lines[at].taxable;
            }
        }
        auto now = sample::priceBook();
        if (upTo(1) == 0) now.materials.at(sample::idOf("Aqua")).price->price = sample::cents(upTo(9'000));
        now.shop.rules.tax.inclusive = upTo(1) == 0;
        const auto there = compared(was, is, sample::priceBook(), now);
        const auto back = compared(is, was, now, sample::priceBook());
        EXPECT_EQ(sumOf(there), there.difference()) << round;
        EXPECT_EQ(there.difference(), -back.difference()) << round;
        EXPECT_EQ(sumOf(back), back.difference()) << round;
        const auto has = [](const auto& list, auto side) {
            return std::ranges::count_if(list, [side](const LineDifference& line) { return (line.*side).has_value(); });
        };
        EXPECT_EQ(has(there.lines, &LineDifference::was), static_cast<std::ptrdiff_t>(was.lines.size())) << round;
        EXPECT_EQ(has(there.lines, &LineDifference::is), static_cast<std::ptrdiff_t>(is.lines.size())) << round;
        if (was == is && now == sample::priceBook()) { EXPECT_TRUE(there.isNothing()); }
    }
}

} // namespace sp::pricing
