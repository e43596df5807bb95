// SPDX-License-Identifier: MIT
#include "core/costing/cost_line.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <random>

using namespace sp;
using costing::CostSheet;
using costing::Part;
using sample::amountOf;
using sample::cents;
using sample::costed;
using sample::freeBook;
using sample::idOf;
using units::Count;
using units::Money;
using units::Rate;

namespace {

/// Every node that has parts is exactly their sum.
void expectAddsUp(const CostSheet& sheet) {
    const auto& nodes = sheet.nodes;
    for (std::size_t parent = 0; parent < nodes.size(); ++parent) {
        Money sum;
        std::size_t parts = 0;
        for (std::size_t i = parent + 1; i < nodes.size() && nodes[i].depth > nodes[parent].depth; ++i) {
            if (nodes[i].depth != nodes[parent].depth + 1) continue;
            sum += nodes[i].amount;
            ++parts;
        }
        if (parts > 0) { EXPECT_EQ(sum, nodes[parent].amount) << static_cast<int>(nodes[parent].part); }
    }
}

TEST(CostLine, dividesStonesByOneMinusTheirLoss) {
    // 212 × 24 / 0.98 × 9.99 / 1,440, by hand: 36.018367...
    const auto sheet = costed(sample::lantern(), sample::priceBook());
    EXPECT_EQ(amountOf(sheet, Part::Stone, 0).micros(), 36'018'367);
}

// OpenStax, Principles of Accounting vol. 2, m68004 and m68005 (a sign shop): materials 700, labour 66, overhead at
// 2.50 for each labour dollar 165, job 931. Overhead here is per bench hour, so the month is chosen to give 2.50 for
// each labour dollar: 250,000 over the hours that 100,000 of labour pay.
TEST(CostLine, agreesWithThePublishedSignJob) {
    auto book = freeBook();
    book.materials[idOf("Backing")].price->price = cents(70'000);
    book.shop.rates.labourPerHour = cents(2'000);
    book.shop.rates.overheadPerMonth = cents(25'000'000);
    book.shop.rates.productivePerMonth = units::Duration::fromMinutes(5'000 * 60);
    book.bench.of(catalogue::Step::Pack).perPiece = units::Duration::fromMinutes(198); // 66 at 20 an hour
    const auto sheet = costed(sample::lantern(1), book);
    EXPECT_EQ(amountOf(sheet, Part::Base), cents(70'000));
    EXPECT_EQ(amountOf(sheet, Part::Labour), cents(6'600));
    EXPECT_EQ(amountOf(sheet, Part::Overhead), cents(16'500));
    EXPECT_EQ(sheet.total, cents(93'100));
}

// OpenStax, Principles of Accounting vol. 1, m67897 (a silk-screen machine): 10,000 less 1,000 salvage over 100,000
// presses is 0.09 a press; 20,000 presses wear 1,800 and 30,000 wear 2,700.
TEST(CostLine, wearsThePressByThePublishedExample) {
    auto book = freeBook();
    book.bench.press.price = cents(1'000'000);
    book.bench.press.salvage = cents(100'000);
    book.bench.press.lifePresses = 100'000;
    auto line = sample::lantern(20'000);
    line.baseMaterial = idOf("Hoodie"); // one garment under the platen at a time
    EXPECT_EQ(amountOf(costed(line, book), Part::PressWear), cents(180'000));
    line.quantity = Count::of(30'000);
    EXPECT_EQ(amountOf(costed(line, book), Part::PressWear), cents(270'000));
}

// The same module: a press of 58,000 less 10,000 over 960,000 pages is 0.05 a page; 180,000 pages wear 9,000.
TEST(CostLine, wearsThePressByTheSecondPublishedExample) {
    auto book = freeBook();
    book.bench.press.price = cents(5'800'000);
    book.bench.press.salvage = cents(1'000'000);
    book.bench.press.lifePresses = 960'000;
    auto line = sample::lantern(180'000);
    line.baseMaterial = idOf("Hoodie");
    EXPECT_EQ(amountOf(costed(line, book), Part::PressWear), cents(900'000));
}

// OpenStax, Principles of Accounting vol. 2, m68115: two vans of eight at 200 each carry 9 to 16 people for 400, one
// carries 1 to 8 for 200. Whole sheets step alike: here six pieces fit a sheet of 1.18.
TEST(CostLine, wholeSheetsStepLikeThePublishedVans) {
    const auto book = sample::priceBook();
    struct Row {
        std::int64_t pieces;
        std::int64_t sheets;
    };
    const auto six = costed(sample::lantern(1), book).places[0].backing.use.perSheet;
    for (const Row& row : {Row{1, 1}, Row{six, 1}, Row{six + 1, 2}, Row{2 * six, 2}, Row{2 * six + 1, 3}}) {
        const auto sheet = costed(sample::lantern(row.pieces), book);
        EXPECT_EQ(amountOf(sheet, Part::Base), cents(118 * row.sheets)) << row.pieces;
    }
}

TEST(CostLine, chargesTapeByPositionAndLifts) {
    const auto sheet = costed(sample::lantern(), sample::priceBook());
    const auto expected =
        Money::fromExact(units::Fraction::ratio(24 * 1'450'000, 2 * sheet.places[0].tape.use.perSheet));
    EXPECT_EQ(amountOf(sheet, Part::Tape), expected);
}

TEST(CostLine, templatesOnTheWallTakeSetUpAway) {
    const auto book = sample::priceBook();
    auto line = sample::lantern();
    const auto cut = costed(line, book);
    line.first().templatesOnWall = true;
    const auto onWall = costed(line, book);
    EXPECT_GT(cut.setUp, Money{});
    EXPECT_EQ(onWall.setUp, Money{});
    // Spoilage and the press do not depend on the set-up, so it accounts for the whole difference.
    EXPECT_EQ(cut.total - onWall.total, cut.setUp);
}

TEST(CostLine, spreadsTemplatesOverPlannedPieces) {
    auto line = sample::lantern(24);
    const auto whole = amountOf(costed(line, sample::priceBook()), Part::Template);
    line.first().plannedPieces = Count::of(96);
    EXPECT_EQ(amountOf(costed(line, sample::priceBook()), Part::Template).micros() * 4, whole.micros());
    line.first().plannedPieces = Count::of(12);
    EXPECT_EQ(amountOf(costed(line, sample::priceBook()), Part::Template), whole);
}

TEST(CostLine, ofACustomersGarmentSpoilsStonesAndLabourOnly) {
    auto book = sample::priceBook();
    auto line = sample::lantern(10);
    line.customersGarment = true;
    line.baseMaterial = {};
    const auto sheet = costed(line, book);
    const auto lost = [](Money amount) {
        return Money::fromExact(amount.exact() * units::Fraction::ratio(30'000, 970'000));
    };
    Money labour;
    for (const auto step : catalogue::kSteps)
        if (!catalogue::isOncePerJob(step) && step != catalogue::Step::Pack && !sheet.bench.of(step).isZero())
            labour += amountOf(sheet, Part::LabourStep, static_cast<std::size_t>(step));
    EXPECT_EQ(amountOf(sheet, Part::SpoiledMaterials), lost(amountOf(sheet, Part::Stones)));
    EXPECT_EQ(amountOf(sheet, Part::SpoiledWork), lost(labour));
    EXPECT_EQ(amountOf(sheet, Part::GarmentAllowance), lost(cents(20'000)));
}

TEST(CostLine, learningShortensTheRun) {
    auto book = freeBook();
    book.shop.rates.labourPerHour = cents(6'000);
    book.bench.of(catalogue::Step::Brush).perPiece = units::Duration::fromMinutes(100);
    book.bench.of(catalogue::Step::Brush).learning = Rate::fromPercent(85);
    // CRAN learningCurve: the total of 125 units is 52.01085 times the first.
    const auto sheet = costed(sample::lantern(125), book);
    EXPECT_NEAR(static_cast<double>(sheet.bench.total().milliseconds()) / 60'000, 5201.085, 0.0005);
}

struct Refusal {
    const char* name;
    std::function<void(catalogue::OrderLine&, catalogue::PriceBook&)> spoil;
    base::Code code;
    const char* says;
};

void PrintTo(const Refusal& row, std::ostream* out) { *out << row.name; }

class CostLineRefusal : public testing::TestWithParam<Refusal> {};

TEST_P(CostLineRefusal, saysWhatIsWrong) {
    auto line = sample::lantern();
    auto book = sample::priceBook();
    GetParam().spoil(line, book);
    layout::FitMemo fits;
    const auto sheet = costing::costLine(line, book, fits);
    ASSERT_FALSE(sheet.has_value());
    EXPECT_EQ(sheet.error().code, GetParam().code);
    EXPECT_THAT(describe(sheet.error()), testing::HasSubstr(GetParam().says));
}

using Line = catalogue::OrderLine;
using Book = catalogue::PriceBook;

INSTANTIATE_TEST_SUITE_P(
    Lines, CostLineRefusal,
    testing::Values(
        Refusal{"no pieces", [](Line& l, Book&) { l.quantity = Count::of(0); }, base::Code::OutOfRange,
                "PiecesOutOfRange(0, Lantern)"},
        Refusal{"negative pieces", [](Line& l, Book&) { l.quantity = Count::of(-3); }, base::Code::OutOfRange,
                "PiecesOutOfRange(-3, Lantern)"},
        Refusal{"too many pieces", [](Line& l, Book&) { l.quantity = Count::of(1'000'001); }, base::Code::OutOfRange,
                "PiecesOutOfRange(1000001, Lantern)"},
        Refusal{"no width", [](Line& l, Book&) { l.first().width = {}; }, base::Code::OutOfRange,
                "SizeOutOfRange(Lantern)"},
        Refusal{"negative height", [](Line& l, Book&) { l.first().height = units::Length::fromInch64ths(-5); },
                base::Code::OutOfRange, "SizeOutOfRange(Lantern)"},
        Refusal{"absurd width", [](Line& l, Book&) { l.first().width = units::kMaxLength + units::kMaxLength; },
                base::Code::OutOfRange, "SizeOutOfRange(Lantern)"},
        Refusal{"piece larger than the sheet",
                [](Line& l, Book&) { l.first().width = units::Length::fromInch64ths(64 * 13); }, base::Code::TooLarge,
                "About(Tape, PieceTooLargeForSheet("},
        Refusal{"no stones", [](Line& l, Book&) { l.first().stones.clear(); }, base::Code::Missing,
                "NoStones(Lantern)"},
        Refusal{"zero of a stone", [](Line& l, Book&) { l.first().stones[1].count = {}; }, base::Code::OutOfRange,
                "StonesOutOfRange(Lantern, 0, Jet)"},
        Refusal{"a colour twice", [](Line& l, Book&) { l.first().stones[1].material = l.first().stones[0].material; },
                base::Code::Invalid, "StoneTwice(Lantern, "},
        Refusal{"a colour without a price", [](Line&, Book& b) { b.materials[idOf("Jet")].price.reset(); },
                base::Code::Missing, "NoPrice(Jet)"},
        Refusal{"a colour that is gone", [](Line&, Book& b) { b.materials.erase(idOf("Jet")); }, base::Code::NotFound,
                "SupplyGone(StoneInRow(2), Lantern)"},
        Refusal{"tape as a stone", [](Line& l, Book&) { l.first().stones[0].material = idOf("Tape"); },
                base::Code::Invalid, "WrongKind(Tape, StoneInRow(1), Lantern, tape)"},
        Refusal{"onto nothing", [](Line& l, Book&) { l.baseMaterial = {}; }, base::Code::Missing, "NoBase(Lantern)"},
        Refusal{"loss of everything",
                [](Line&, Book& b) { b.materials[idOf("Jet")].material.stone.loss = Rate::fromPercent(100); },
                base::Code::OutOfRange, "LossOutOfRange(Jet)"},
        Refusal{"spoilage of everything", [](Line&, Book& b) { b.shop.rates.spoilage = Rate::fromPercent(100); },
                base::Code::OutOfRange, "SpoilageOutOfRange"},
        Refusal{"overhead without hours", [](Line&, Book& b) { b.shop.rates.productivePerMonth = {}; },
                base::Code::OutOfRange, "NoProductiveHours"},
        Refusal{"an unknown size",
                [](Line& l, Book&) {
                    l.sizes = {{"9XL", Count::of(1)}};
                },
                base::Code::NotFound, "NoSuchSize(9XL, Lantern)"},
        Refusal{"more sizes than pieces",
                [](Line& l, Book&) {
                    l.baseMaterial = idOf("Hoodie");
                    l.sizes = {{"M", Count::of(20)}, {"2XL", Count::of(20)}};
                },
                base::Code::OutOfRange, "TooManySizedPieces(Lantern, 40, 24)"},
        Refusal{"more money than there is",
                [](Line& l, Book& b) {
                    l.quantity = Count::of(1'000'000);
                    l.first().stones[0].count = Count::of(1'000'000);
                    b.materials[idOf("Aqua")].price->price = cents(100'000'000'000);
                },
                base::Code::TooLarge, "LineTooCostly(Lantern)"}));

TEST(CostLine, nodesAddUpForRandomLines) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](int most) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(most)) + 1; };
    layout::FitMemo fits;
    for (int i = 0; i < 1'000; ++i) {
        auto book = sample::priceBook();
        auto line = sample::lantern(upTo(500));
        line.first().stones[0].count = Count::of(upTo(2000));
        line.first().stones[1].count = Count::of(upTo(2000));
        line.first().width = units::Length::fromNanometres(upTo(10) * 15'000'000);
        line.first().height = units::Length::fromNanometres(upTo(10) * 15'000'000);
        line.first().templatesOnWall = random() % 2 == 0;
        if (random() % 3 == 0) line.baseMaterial = idOf("Hoodie");
        if (line.baseMaterial == idOf("Hoodie")) line.sizes = {{"2XL", Count::of(upTo(2) - 1)}};
        book.shop.rules.cardFee = {random() % 2 == 0, Rate::fromPpm(29'000), cents(30)};
        book.materials[idOf("Aqua")].price->price = cents(upTo(5000));
        const std::int64_t rules = upTo(3);
        const auto sheet = costing::costLine(line, book, fits, {cents(30), {}}, rules);
        ASSERT_TRUE(sheet.has_value()) << describe(sheet.error());
        EXPECT_EQ(sheet->nodes.front().amount, sheet->total);
        expectAddsUp(*sheet);
        EXPECT_LE(sheet->outOfPocket, sheet->total);
        const auto figures = costing::costFigures(line, book, fits, {cents(30), {}}, rules);
        ASSERT_TRUE(figures.has_value()) << describe(figures.error());
        EXPECT_EQ(*figures, static_cast<const costing::LineCost&>(*sheet)) << "without its parts";
    }
}

TEST(CostLine, moreStonesNeverCostLess) {
    const auto book = sample::priceBook();
    layout::FitMemo fits;
    Money before;
    for (std::int64_t stones = 1; stones < 400; ++stones) {
        auto line = sample::lantern(7);
        line.first().stones[0].count = Count::of(stones);
        const auto sheet = costing::costLine(line, book, fits);
        ASSERT_TRUE(sheet.has_value());
        EXPECT_GE(sheet->total, before) << stones;
        before = sheet->total;
    }
}

} // namespace
