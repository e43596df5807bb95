// SPDX-License-Identifier: MIT
// The arithmetic is checked against priceOrder itself, which has its own worked examples: one cause alone must make
// exactly the difference of the two totals, and many causes must add up to it.
#include "core/pricing/compare.h"
#include "core/pricing/messages.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>
#include <utility>

namespace sp::pricing {

namespace {

using catalogue::PriceBook;
using units::Count;
using units::Money;
using units::Rate;

struct Change {
    const char* name;
    void (*make)(PriceBook&);
    const char* what; ///< empty: makes no price
    const char* was;
    const char* now;

    friend void PrintTo(const Change& change, std::ostream* out) { *out << change.name; }
};

class OneCause : public testing::TestWithParam<Change> {};

Money sumOf(const std::vector<PriceCause>& causes) {
    Money sum;
    for (const auto& cause : causes) sum += cause.effect;
    return sum;
}

catalogue::Order rushed() {
    auto order = sample::orderOf({sample::lantern(24)});
    order.wantedBy = sample::day("2026-11-29");
    return order;
}

const Change kChanges[] = {
    {"stonePrice", [](PriceBook& b) { b.materials[sample::idOf("Aqua")].price->price = sample::cents(1249); },
     "PriceOf(Aqua)", "9.99 / 1,440", "12.49 / 1,440"},
    {"stoneLoss", [](PriceBook& b) { b.materials[sample::idOf("Jet")].material.stone.loss = Rate::fromPercent(9); },
     "PartOf(Jet, Loss)", "2 %", "9 %"},
    {"backingSheet",
     [](PriceBook& b) {
         b.materials[sample::idOf("Backing")].material.sheet.margin = units::Length::fromInch64ths(64);
     },
     "PartOf(Backing, Sheet)", "", ""},
    {"noTape", [](PriceBook& b) { b.shop.usualTape = {}; }, "UsualTape", "Tape", ""},
    {"noPacking", [](PriceBook& b) { b.shop.packing.clear(); }, "Packing", "", ""},
    {"labour", [](PriceBook& b) { b.shop.rates.labourPerHour = sample::cents(2450); }, "LabourRate", "18.00", "24.50"},
    {"overhead", [](PriceBook& b) { b.shop.rates.overheadPerMonth = sample::cents(60'000); }, "Overhead", "540.00",
     "600.00"},
    {"spoilage", [](PriceBook& b) { b.shop.rates.spoilage = Rate::fromPercent(6); }, "Spoilage", "3 %", "6 %"},
    {"benchTime", [](PriceBook& b) { b.bench.of(catalogue::Step::Brush).perColour = units::Duration::fromSeconds(90); },
     "BenchTimes", "", ""},
    {"press", [](PriceBook& b) { b.bench.press.runningPerHour = sample::cents(245); }, "Press", "", ""},
    {"ladder", [](PriceBook& b) { b.shop.rules.ladder[1].markUp = Rate::fromPercent(80); }, "MarkUp", "", ""},
    {"rush", [](PriceBook& b) { b.shop.rules.rush[1].surcharge = Rate::fromPercent(35); }, "RushSurcharge", "", ""},
    {"tax", [](PriceBook& b) { b.shop.rules.tax.rate = Rate::fromPpm(80'000); }, "Tax", "7.25 %", "8 %"},
    {"smallestOrder", [](PriceBook& b) { b.shop.rules.minimumOrder = sample::cents(90'000); }, "SmallestOrder", "0.00",
     "900.00"},
    {"letterhead", [](PriceBook& b) { b.shop.letterhead.name = "Kiln Lane Sparkle"; }, "", "", ""},
    {"aMaterialNobodyUses", [](PriceBook& b) { b.materials[sample::idOf("Hoodie")].price->price = sample::cents(1); },
     "", "", ""},
};

} // namespace

TEST_P(OneCause, aloneMakesTheWholeDifference) {
    const auto& change = GetParam();
    const auto then = sample::priceBook();
    auto now = then;
    change.make(now);
    layout::FitMemo fits;
    const auto order = rushed();
    const auto compared = comparePrices(order, then, now, fits);
    ASSERT_TRUE(compared.has_value());
    EXPECT_EQ(compared->totalThen, priceOrder(order, then, fits)->total);
    EXPECT_EQ(compared->totalNow, priceOrder(order, now, fits)->total);
    if (!*change.what) {
        EXPECT_TRUE(compared->causes.empty());
        EXPECT_EQ(compared->totalThen, compared->totalNow);
        return;
    }
    ASSERT_EQ(compared->causes.size(), 1U);
    EXPECT_EQ(describe(compared->causes[0].what), change.what);
    EXPECT_EQ(compared->causes[0].was, base::asValue(change.was));
    EXPECT_EQ(compared->causes[0].now, base::asValue(change.now));
    EXPECT_EQ(compared->causes[0].effect, compared->totalNow - compared->totalThen);
    EXPECT_NE(compared->totalNow, compared->totalThen);
}

INSTANTIATE_TEST_SUITE_P(Comparison, OneCause, testing::ValuesIn(kChanges),
                         [](const auto& change) { return std::string(change.param.name); });

TEST(Comparison, manyCausesAddUpToTheDifference) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 1'000; ++round) {
        const auto then = sample::priceBook();
        auto now = then;
        for (const auto& change : kChanges)
            if (random() % 2) change.make(now);
        auto order = rushed();
        order.lines.push_back(sample::lantern(1 + static_cast<std::int64_t>(random() % 90)));
        layout::FitMemo fits;
        const auto compared = comparePrices(order, then, now, fits);
        ASSERT_TRUE(compared.has_value());
        EXPECT_EQ(sumOf(compared->causes), compared->totalNow - compared->totalThen);
        EXPECT_EQ(compared->difference(), compared->totalNow - compared->totalThen);
        for (const auto& line : compared->lines) EXPECT_EQ(line.difference(), line.chargedNow - line.chargedThen);
    }
}

TEST(Comparison, theSameBookChangesNothing) {
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    const auto compared = comparePrices(rushed(), book, book, fits);
    ASSERT_TRUE(compared.has_value());
    EXPECT_TRUE(compared->causes.empty());
    ASSERT_EQ(compared->lines.size(), 1U);
    EXPECT_EQ(compared->lines[0].title, "Lantern");
    EXPECT_EQ(compared->lines[0].eachThen, compared->lines[0].eachNow);
    EXPECT_EQ(compared->lines[0].chargedThen, compared->lines[0].chargedNow);
}

TEST(Comparison, whatWasGivenOtherwiseIsTheLastCause) {
    const auto then = sample::priceBook();
    auto now = then;
    now.shop.rates.labourPerHour = sample::cents(2450);
    layout::FitMemo fits;
    const auto order = rushed();
    const auto given = priceOrder(order, then, fits)->total - sample::cents(125);
    const auto compared = comparePrices(order, then, now, fits, {}, given);
    ASSERT_TRUE(compared.has_value());
    EXPECT_EQ(compared->totalThen, given);
    ASSERT_EQ(compared->causes.size(), 2U);
    EXPECT_EQ(compared->causes[1].what.id, idOf(Note::ReckonedOtherwise));
    EXPECT_EQ(compared->causes[1].effect, sample::cents(125));
    EXPECT_EQ(sumOf(compared->causes), compared->totalNow - given);
}

// On the way from a blank to a backing there is no sheet yet to cut from: nothing in between can be priced.
TEST(Comparison, causesThatCannotBePricedAloneTakeEffectTogether) {
    auto then = sample::priceBook();
    auto& blank = then.materials[sample::idOf("Backing")].material;
    const auto sheet = std::exchange(blank.sheet, {});
    blank.kind = catalogue::MaterialKind::Blank;
    auto now = then;
    now.materials[sample::idOf("Backing")].material.kind = catalogue::MaterialKind::Backing;
    now.materials[sample::idOf("Backing")].material.sheet = sheet;
    layout::FitMemo fits;
    const auto compared = comparePrices(rushed(), then, now, fits);
    ASSERT_TRUE(compared.has_value());
    ASSERT_EQ(compared->causes.size(), 2U);
    EXPECT_EQ(describe(compared->causes[0].what), "PartOf(Backing, Kind)");
    EXPECT_EQ(describe(compared->causes[1].what), "PartOf(Backing, Sheet)");
    EXPECT_NE(compared->totalNow, compared->totalThen);
    EXPECT_EQ(sumOf(compared->causes), compared->totalNow - compared->totalThen);
}

TEST(Comparison, aTypedPriceStaysAndSaysSo) {
    const auto then = sample::priceBook();
    auto now = then;
    now.shop.rates.labourPerHour = sample::cents(9900);
    auto order = rushed();
    order.lines[0].overrideEach = sample::cents(695);
    layout::FitMemo fits;
    const auto compared = comparePrices(order, then, now, fits);
    ASSERT_TRUE(compared.has_value());
    EXPECT_EQ(compared->totalThen, compared->totalNow);
    ASSERT_EQ(compared->causes.size(), 1U);
    EXPECT_TRUE(compared->causes[0].effect.isZero());
}

TEST(Comparison, anotherUsualTapeIsTakenFromTheBookOfToday) {
    const auto then = sample::priceBook();
    auto now = then;
    auto wide = *now.find(sample::idOf("Tape"));
    wide.material.id = sample::idOf("Wide tape");
    wide.material.name = "Wide tape";
    wide.price->price = sample::cents(990);
    now.materials[wide.material.id] = wide;
    now.shop.usualTape = wide.material.id;
    layout::FitMemo fits;
    const auto compared = comparePrices(rushed(), then, now, fits);
    ASSERT_TRUE(compared.has_value());
    ASSERT_EQ(compared->causes.size(), 1U);
    EXPECT_EQ(compared->causes[0].now, base::asValue("Wide tape"));
    EXPECT_EQ(compared->causes[0].effect, compared->totalNow - compared->totalThen);
    EXPECT_GT(compared->causes[0].effect, Money{});
}

TEST(Comparison, aMaterialThatIsGoneIsNamed) {
    const auto then = sample::priceBook();
    auto now = then;
    now.materials.erase(sample::idOf("Jet"));
    layout::FitMemo fits;
    const auto compared = comparePrices(rushed(), then, now, fits);
    ASSERT_FALSE(compared.has_value());
    EXPECT_FALSE(describe(compared.error()).empty());
}

} // namespace sp::pricing
