// SPDX-License-Identifier: MIT
//
// One row a part of the cost sheet, alone and together, with the figure worked by hand beside it where no source is
// named. All prices and times are invented.
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <functional>
#include <vector>

using namespace sp;
using catalogue::Step;
using costing::Part;
using sample::cents;
using sample::idOf;
using units::Count;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;

namespace {

using Line = catalogue::OrderLine;
using Book = catalogue::PriceBook;

constexpr auto kArt = static_cast<std::size_t>(Step::Art);
constexpr auto kWeed = static_cast<std::size_t>(Step::Weed);
constexpr auto kBrush = static_cast<std::size_t>(Step::Brush);

Length quarters(std::int64_t n) { return Length::fromInch64ths(n * 16); }
Length inches(std::int64_t n) { return quarters(4 * n); }

void setPrice(Book& book, std::string_view name, std::int64_t price, std::int64_t per = 1) {
    book.materials[idOf(name)].price = units::UnitPrice{cents(price), Count::of(per)};
}

catalogue::SheetTraits& sheetOf(Book& book, std::string_view name) { return book.materials[idOf(name)].material.sheet; }

void useTape(Book& book, std::int64_t lifts, std::int64_t price, catalogue::ShareBasis basis) {
    book.shop.usualTape = idOf("Tape");
    setPrice(book, "Tape", price);
    sheetOf(book, "Tape").lifts = lifts;
    sheetOf(book, "Tape").basis = basis;
}

void useTemplates(Book& book, std::int64_t price) {
    book.shop.usualTemplate = idOf("Template");
    setPrice(book, "Template", price);
}

/// 9 in wide and 120 in long.
void makeRoll(catalogue::SheetTraits& sheet) {
    sheet.form = catalogue::SheetForm::Roll;
    sheet.width = inches(9);
    sheet.height = inches(120);
}

void addCard(Book& book) {
    catalogue::Material card;
    card.id = idOf("Card");
    card.name = "Card";
    card.kind = catalogue::MaterialKind::Packing;
    book.materials[card.id] = {card, units::UnitPrice{cents(500), Count::of(50)}, {}};
}

void pressRunsAt(Book& book, std::int64_t perHour) {
    book.bench.press.runningPerHour = cents(perHour);
    book.bench.press.dwell = Duration::fromSeconds(10);
    book.bench.press.handling = Duration::fromSeconds(20);
}

constexpr auto kWhole = catalogue::ShareBasis::WholeSheets;
constexpr auto kByPosition = catalogue::ShareBasis::ByPosition;

struct Row {
    const char* name;
    std::function<void(Line&, Book&)> change; ///< of 24 squares in a book where nothing costs anything
    Part part;
    std::size_t index;
    std::int64_t micros;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class PartFigure : public testing::TestWithParam<Row> {};

TEST_P(PartFigure, isTheOneWorkedByHand) {
    auto line = sample::square(24);
    auto book = sample::freeBook();
    GetParam().change(line, book);
    EXPECT_EQ(sample::amountOf(sample::costed(line, book), GetParam().part, GetParam().index).micros(),
              GetParam().micros);
}

INSTANTIATE_TEST_SUITE_P(Stones, PartFigure,
                         testing::Values(
                             // 24 × 200 × 9.99 / 1,440
                             Row{"stones", [](Line&, Book& b) { setPrice(b, "Aqua", 999, 1440); }, Part::Stone, 0,
                                 33'300'000},
                             // 24 × 100 ÷ 0.96 = 2,500, × 6.50 / 1,440 = 11.2847222…
                             Row{"stones of the second row, with loss",
                                 [](Line&, Book& b) {
                                     setPrice(b, "Jet", 650, 1440);
                                     b.materials[idOf("Jet")].material.stone.loss = Rate::fromPercent(4);
                                 },
                                 Part::Stone, 1, 11'284'722},
                             // 24 × 200 ÷ 0.8 × 0.01 = 60 and 24 × 100 × 0.005 = 12
                             Row{"stones together",
                                 [](Line&, Book& b) {
                                     setPrice(b, "Aqua", 1440, 1440);
                                     setPrice(b, "Jet", 720, 1440);
                                     b.materials[idOf("Aqua")].material.stone.loss = Rate::fromPercent(20);
                                 },
                                 Part::Stones, 0, 72'000'000}));

INSTANTIATE_TEST_SUITE_P(
    Sheets, PartFigure,
    testing::Values(
        // 24 ÷ 3 lifts = 8 pieces of tape, six to a sheet: 2 sheets
        Row{"tape, whole sheets", [](Line&, Book& b) { useTape(b, 3, 145, kWhole); }, Part::Tape, 0, 2'900'000},
        // 18 ÷ 3 = 6: 1 sheet
        Row{"tape, a sheet exactly",
            [](Line& l, Book& b) {
                l.quantity = Count::of(18);
                useTape(b, 3, 145, kWhole);
            },
            Part::Tape, 0, 1'450'000},
        // 19 ÷ 3 is 7 pieces: 2 sheets
        Row{"tape, one lift over",
            [](Line& l, Book& b) {
                l.quantity = Count::of(19);
                useTape(b, 3, 145, kWhole);
            },
            Part::Tape, 0, 2'900'000},
        // 25 ÷ 2 lifts ÷ 6 × 1.44: the half-used piece is paid by half
        Row{"tape by position",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                useTape(b, 2, 144, kByPosition);
            },
            Part::Tape, 0, 3'000'000},
        // 25 ÷ 2 lifts is 13 pieces, two beside each other: 7 rows of 4 in, 28 of 120 in × 6.00
        Row{"tape off a roll",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                useTape(b, 2, 600, kWhole);
                makeRoll(sheetOf(b, "Tape"));
            },
            Part::Tape, 0, 1'400'000},
        // Half an inch of margin leaves 8 of 9 in: still two beside each other, 28 + 1 in × 6.00 / 120
        Row{"tape off a roll with margins",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                useTape(b, 2, 600, kByPosition);
                makeRoll(sheetOf(b, "Tape"));
                sheetOf(b, "Tape").margin = quarters(2);
            },
            Part::Tape, 0, 1'450'000},
        // One for each of two colours: 1 sheet
        Row{"templates, whole sheets", [](Line&, Book& b) { useTemplates(b, 325); }, Part::Template, 0, 3'250'000},
        // 2 ÷ 6 × 3.24, however many pieces
        Row{"templates by position",
            [](Line&, Book& b) {
                useTemplates(b, 324);
                sheetOf(b, "Template").basis = kByPosition;
            },
            Part::Template, 0, 1'080'000},
        // 2 beside each other: 4 of 120 in × 30.00
        Row{"templates off a roll",
            [](Line&, Book& b) {
                useTemplates(b, 3000);
                makeRoll(sheetOf(b, "Template"));
            },
            Part::Template, 0, 1'000'000},
        // 24 of 96 × 3.25
        Row{"templates with planned pieces",
            [](Line& l, Book& b) {
                useTemplates(b, 325);
                l.plannedPieces = Count::of(96);
            },
            Part::Template, 0, 812'500},
        // More ordered than planned: the job carries them all, once
        Row{"templates with fewer pieces planned",
            [](Line& l, Book& b) {
                useTemplates(b, 325);
                l.plannedPieces = Count::of(23);
            },
            Part::Template, 0, 3'250'000},
        Row{"templates on the wall",
            [](Line& l, Book& b) {
                useTemplates(b, 325);
                l.templatesOnWall = true;
            },
            Part::Template, 0, 0},
        // Six to a sheet: 25 are 5 sheets
        Row{"backing, whole sheets",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
            },
            Part::Base, 0, 5'900'000},
        // 25 ÷ 6 × 1.20
        Row{"backing by position",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 120);
                sheetOf(b, "Backing").basis = kByPosition;
            },
            Part::Base, 0, 5'000'000},
        // 25 are 13 rows of 4 in: 52 of 120 in × 6.00; a roll has no whole sheets
        Row{"backing off a roll",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 600);
                makeRoll(sheetOf(b, "Backing"));
            },
            Part::Base, 0, 2'600'000},
        // Cut as 4 1/2 × 4 1/2 in: four to a sheet of 9 × 12, 25 are 7 sheets
        Row{"backing with a border",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
                sheetOf(b, "Backing").border = quarters(1);
            },
            Part::Base, 0, 8'260'000},
        // Half an inch all round leaves 8 × 11 in: four to a sheet
        Row{"backing with a margin",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
                sheetOf(b, "Backing").margin = quarters(2);
            },
            Part::Base, 0, 8'260'000},
        // An inch between neighbours: 4 + 1 + 4 twice across 9 in, twice in 12 in: four to a sheet
        Row{"backing with a gap",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
                sheetOf(b, "Backing").gap = inches(1);
            },
            Part::Base, 0, 8'260'000},
        // 6 × 4 1/2 in: turned, four fill 9 × 12 in: 25 are 7 sheets
        Row{"backing turned",
            [](Line& l, Book& b) {
                l.width = inches(6);
                l.height = quarters(18);
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
            },
            Part::Base, 0, 8'260'000},
        // … and not turned two: 13 sheets
        Row{"backing with a direction",
            [](Line& l, Book& b) {
                l.width = inches(6);
                l.height = quarters(18);
                l.quantity = Count::of(25);
                setPrice(b, "Backing", 118);
                sheetOf(b, "Backing").oneWay = true;
            },
            Part::Base, 0, 15'340'000}));

void onHoodie(Line& line) { line.onto = idOf("Hoodie"); }

INSTANTIATE_TEST_SUITE_P(BlanksAndPacking, PartFigure,
                         testing::Values(
                             // 24 × 13.90
                             Row{"blanks",
                                 [](Line& l, Book& b) {
                                     onHoodie(l);
                                     setPrice(b, "Hoodie", 1390);
                                 },
                                 Part::BasePrice, 0, 333'600'000},
                             // 24 × 130.00 / 12
                             Row{"blanks by the dozen",
                                 [](Line& l, Book& b) {
                                     onHoodie(l);
                                     setPrice(b, "Hoodie", 13'000, 12);
                                 },
                                 Part::BasePrice, 0, 260'000'000},
                             // 3 of 24 × 2.10; the second size named
                             Row{"a larger size",
                                 [](Line& l, Book&) {
                                     onHoodie(l);
                                     l.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
                                 },
                                 Part::SizeExtra, 1, 6'300'000},
                             // 333.60 + 6.30
                             Row{"blanks with a larger size",
                                 [](Line& l, Book& b) {
                                     onHoodie(l);
                                     setPrice(b, "Hoodie", 1390);
                                     l.sizes = {{"M", Count::of(5)}, {"2XL", Count::of(3)}};
                                 },
                                 Part::Base, 0, 339'900'000},
                             // 24 × 6.20 / 100
                             Row{"packing",
                                 [](Line&, Book& b) {
                                     b.shop.packing = {idOf("Bag")};
                                     setPrice(b, "Bag", 620, 100);
                                 },
                                 Part::PackingItem, 0, 1'488'000},
                             // 24 × 5.00 / 50; the second of two
                             Row{"packing, the second item",
                                 [](Line&, Book& b) {
                                     addCard(b);
                                     b.shop.packing = {idOf("Bag"), idOf("Card")};
                                 },
                                 Part::PackingItem, 1, 2'400'000},
                             // 1.488 + 2.40
                             Row{"packing together",
                                 [](Line&, Book& b) {
                                     addCard(b);
                                     setPrice(b, "Bag", 620, 100);
                                     b.shop.packing = {idOf("Bag"), idOf("Card")};
                                 },
                                 Part::Packing, 0, 3'888'000}));

/// 18.00 an hour is 0.30 a minute.
void labourCosts(Book& book) { book.shop.rates.labourPerHour = cents(1800); }

INSTANTIATE_TEST_SUITE_P(
    Labour, PartFigure,
    testing::Values(
        // 15 min + 2 colours × 3 min + 300 stones × 2 min / 100 = 27 min, whatever the quantity; minutes a piece have
        // no meaning in a step done once
        Row{"a step once a job",
            [](Line&, Book& b) {
                labourCosts(b);
                b.bench.of(Step::Weed) = {Duration::fromMinutes(15), Duration::fromMinutes(3), Duration::fromMinutes(7),
                                          Duration::fromMinutes(2)};
            },
            Part::LabourStep, kWeed, 8'100'000},
        // 35 min of the design's own instead of the standard's 15, and 2 × 1 min
        Row{"art with a time of its own",
            [](Line& l, Book& b) {
                labourCosts(b);
                b.bench.of(Step::Art) = {Duration::fromMinutes(15), Duration::fromMinutes(1), {}, {}};
                l.artTime = Duration::fromMinutes(35);
            },
            Part::LabourStep, kArt, 11'100'000},
        // … which is the art's alone: weeding keeps its 15 min
        Row{"another step beside that art",
            [](Line& l, Book& b) {
                labourCosts(b);
                b.bench.of(Step::Weed).perJob = Duration::fromMinutes(15);
                l.artTime = Duration::fromMinutes(35);
            },
            Part::LabourStep, kWeed, 4'500'000},
        // 6 min once, and 24 × (1 min + 2 colours × 15 s + 300 stones × 10 s / 100) = 24 × 2 min
        Row{"a step for every piece",
            [](Line&, Book& b) {
                labourCosts(b);
                b.bench.of(Step::Brush) = {Duration::fromMinutes(6), Duration::fromSeconds(15),
                                           Duration::fromMinutes(1), Duration::fromSeconds(10)};
            },
            Part::LabourStep, kBrush, 16'200'000},
        // Crawford at 80 %, total of 4 units 3.142 (printed tables of operations textbooks; from memory), to more
        // places 1 + 0.8 + 3^log2(0.8) + 0.64 = 3.1421037: 10 min × that = 31.421037 min = 1,885,262 ms, and 5 min
        // once: 2,185,262 ms at 18.00 an hour
        Row{"a step that is learned",
            [](Line& l, Book& b) {
                labourCosts(b);
                l.quantity = Count::of(4);
                b.bench.of(Step::Brush).perJob = Duration::fromMinutes(5);
                b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(10);
                b.bench.of(Step::Brush).learning = Rate::fromPercent(80);
            },
            Part::LabourStep, kBrush, 10'926'310},
        // 27 min of weeding and 54 of brushing
        Row{"labour together",
            [](Line&, Book& b) {
                labourCosts(b);
                b.bench.of(Step::Weed).perJob = Duration::fromMinutes(27);
                b.bench.of(Step::Brush).perJob = Duration::fromMinutes(54);
            },
            Part::Labour, 0, 24'300'000}));

INSTANTIATE_TEST_SUITE_P(
    Press, PartFigure,
    testing::Values(
        // 4 × 5 squares under a platen of 16 × 20 in: 24 are 2 cycles × 30 s at 36.00 an hour, 0.01 a second
        Row{"press cycles", [](Line&, Book& b) { pressRunsAt(b, 3600); }, Part::PressCycles, 0, 600'000},
        // With their border of 1/4 in 4 1/2 in wide: 3 × 4 at once, 2 cycles; 25 would be 3
        Row{"press cycles of what is cut with a border",
            [](Line& l, Book& b) {
                l.quantity = Count::of(25);
                sheetOf(b, "Backing").border = quarters(1);
                pressRunsAt(b, 3600);
            },
            Part::PressCycles, 0, 900'000},
        // Garments lie one at a time: 24 × 30 s
        Row{"press cycles of garments",
            [](Line& l, Book& b) {
                onHoodie(l);
                pressRunsAt(b, 3600);
            },
            Part::PressCycles, 0, 7'200'000},
        // 17 in are more than the platen's 16 and less than its 20: turned it is pressed once
        Row{"press cycles of what is turned",
            [](Line& l, Book& b) {
                onHoodie(l);
                l.width = inches(17);
                pressRunsAt(b, 3600);
            },
            Part::PressCycles, 0, 7'200'000},
        // 17 × 17 in take two presses each, either way round
        Row{"press cycles of what is larger than the platen",
            [](Line& l, Book& b) {
                onHoodie(l);
                l.width = l.height = inches(17);
                pressRunsAt(b, 3600);
            },
            Part::PressCycles, 0, 14'400'000},
        // 33 × 21 in: 3 × 2 as it lies, 2 × 2 turned
        Row{"press cycles of what is far larger",
            [](Line& l, Book& b) {
                onHoodie(l);
                l.width = inches(33);
                l.height = inches(21);
                pressRunsAt(b, 3600);
            },
            Part::PressCycles, 0, 28'800'000},
        // 25 % of 24 = 6 × (5 + 20 s) × 0.01
        Row{"second presses",
            [](Line&, Book& b) {
                pressRunsAt(b, 3600);
                b.bench.press.secondPressShare = Rate::fromPercent(25);
                b.bench.press.secondDwell = Duration::fromSeconds(5);
            },
            Part::SecondPress, 0, 1'500'000},
        // 12 min × 0.01 a second
        Row{"the warm-up",
            [](Line&, Book& b) {
                pressRunsAt(b, 3600);
                b.bench.press.warmUp = Duration::fromMinutes(12);
            },
            Part::WarmUp, 0, 7'200'000},
        // 2 × 30 s
        Row{"test presses",
            [](Line&, Book& b) {
                pressRunsAt(b, 3600);
                b.bench.press.testPresses = 2;
            },
            Part::TestPress, 0, 600'000},
        // OpenStax, Principles of Accounting vol. 1, m67897: 9,000 over 100,000 presses is 0.09 a press. Here 2 cycles,
        // 6 second presses and 2 tests.
        Row{"press wear",
            [](Line&, Book& b) {
                auto& press = b.bench.press;
                press.price = cents(1'000'000);
                press.salvage = cents(100'000);
                press.lifePresses = 100'000;
                press.secondPressShare = Rate::fromPercent(25);
                press.testPresses = 2;
            },
            Part::PressWear, 0, 900'000},
        // (12,000 − 2,000) ÷ 10,000,000 × 300 holes, cut once
        Row{"cutter wear",
            [](Line&, Book& b) {
                b.bench.cutter = {cents(1'200'000), cents(200'000), 10'000'000};
            },
            Part::CutterWear, 0, 300'000}));

/// 540 a month over 120 hours is 4.50 an hour.
void overheadIs(Book& book) {
    book.shop.rates.overheadPerMonth = cents(54'000);
    book.shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
}

/// 20 % spoiled: a quarter of the good ones is lost besides.
void spoilsAFifth(Book& book) { book.shop.rates.spoilage = Rate::fromPercent(20); }

void costsTenAPieceInStones(Book& book) { setPrice(book, "Aqua", 5); } // 200 × 0.05

INSTANTIATE_TEST_SUITE_P(
    OverheadSpoilageAndFee, PartFigure,
    testing::Values(
        // 30 min of art
        Row{"overhead once",
            [](Line&, Book& b) {
                overheadIs(b);
                b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
            },
            Part::OverheadOnce, 0, 2'250'000},
        // 24 × 2 min
        Row{"overhead of the pieces",
            [](Line&, Book& b) {
                overheadIs(b);
                b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
            },
            Part::OverheadPieces, 0, 3'600'000},
        // OpenStax, Principles of Accounting vol. 2, m68135: 2,500,000 over 1,250,000 hours is 2.00 an hour; 350,000
        // hours for 140,000 units of one product carry 5.00 a unit. In hours: 2.5 a unit, here of 24 units.
        Row{"overhead, published",
            [](Line&, Book& b) {
                b.shop.rates.overheadPerMonth = cents(250'000'000);
                b.shop.rates.productivePerMonth = Duration::fromMinutes(1'250'000LL * 60);
                b.bench.of(Step::Pack).perPiece = Duration::fromMinutes(150);
            },
            Part::OverheadPieces, 0, 120'000'000},
        // A quarter of 24 × 10.00
        Row{"spoiled stones",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                costsTenAPieceInStones(b);
            },
            Part::SpoiledMaterials, 0, 60'000'000},
        // … of 8 pieces of tape on 2 sheets at 1.45
        Row{"spoiled tape",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                useTape(b, 3, 145, kWhole);
            },
            Part::SpoiledMaterials, 0, 725'000},
        // … of 24 × 13.90 + 3 × 2.10
        Row{"spoiled blanks",
            [](Line& l, Book& b) {
                spoilsAFifth(b);
                onHoodie(l);
                setPrice(b, "Hoodie", 1390);
                l.sizes = {{"2XL", Count::of(3)}};
            },
            Part::SpoiledMaterials, 0, 84'975'000},
        // … of 24 × 6.20 / 100
        Row{"spoiled packing",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                b.shop.packing = {idOf("Bag")};
                setPrice(b, "Bag", 620, 100);
            },
            Part::SpoiledMaterials, 0, 372'000},
        // … of 0.60 for cycles and 1.50 for second presses; the warm-up and the tests are not lost with a piece
        Row{"spoiled pressing",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                pressRunsAt(b, 3600);
                b.bench.press.secondPressShare = Rate::fromPercent(25);
                b.bench.press.secondDwell = Duration::fromSeconds(5);
                b.bench.press.warmUp = Duration::fromMinutes(12);
                b.bench.press.testPresses = 2;
            },
            Part::SpoiledMaterials, 0, 525'000},
        // Templates are cut once, spoiled or not
        Row{"spoiled templates",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                useTemplates(b, 325);
            },
            Part::SpoiledMaterials, 0, 0},
        // A quarter of 24 × 2 min at 0.30; not of the art
        Row{"spoiled labour",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                labourCosts(b);
                b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
            },
            Part::SpoiledWork, 0, 3'600'000},
        // … of 24 × 2 min at 4.50 an hour
        Row{"spoiled overhead",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                overheadIs(b);
                b.bench.of(Step::Art).perJob = Duration::fromMinutes(30);
                b.bench.of(Step::Brush).perPiece = Duration::fromMinutes(2);
            },
            Part::SpoiledWork, 0, 900'000},
        // … of 0.09 × (2 cycles + 6 second presses); not of the tests nor of the cutter
        Row{"spoiled wear",
            [](Line&, Book& b) {
                spoilsAFifth(b);
                auto& press = b.bench.press;
                press.price = cents(900'000);
                press.secondPressShare = Rate::fromPercent(25);
                press.testPresses = 2;
                b.bench.cutter.price = cents(1'200'000);
            },
            Part::SpoiledWork, 0, 180'000},
        // 24 × 20.00 × a quarter
        Row{"the allowance for a customer's garment",
            [](Line& l, Book& b) {
                spoilsAFifth(b);
                l.customersGarment = true;
                l.onto = {};
                b.shop.rates.garmentAllowance = cents(2000);
            },
            Part::GarmentAllowance, 0, 120'000'000},
        // To keep 100 of what is charged at 2.9 % and 0.30: (100 + 0.30) ÷ 0.971 = 103.295572 (computed; the formula
        // is that of any payment processor's guide, common practice, no source)
        Row{"the card fee",
            [](Line& l, Book& b) {
                l.quantity = Count::of(1);
                setPrice(b, "Backing", 10'000);
                b.shop.rules.cardFee = {true, Rate::fromPpm(29'000), {}};
            },
            Part::CardFee, 0, 2'986'612}));

TEST(CardFee, countsTheFixedPartOnce) {
    auto book = sample::freeBook();
    setPrice(book, "Backing", 10'000);
    book.shop.rules.cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    const auto sheet = sample::costed(sample::square(1), book, cents(30));
    EXPECT_EQ(sample::amountOf(sheet, Part::CardFee).micros(), 3'295'572);
    book.shop.rules.cardFee.charged = false;
    EXPECT_FALSE(sample::findAmount(sample::costed(sample::square(1), book, cents(30)), Part::CardFee));
}

/// 40 squares on hoodies, every part of the cost switched on, all figures round: they stand in kEveryPart.
Book everyPart() {
    auto book = sample::freeBook();
    setPrice(book, "Aqua", 1440, 1440);
    book.materials[idOf("Aqua")].material.stone.loss = Rate::fromPercent(20);
    setPrice(book, "Jet", 720, 1440);
    useTape(book, 2, 150, kWhole);
    useTemplates(book, 800);
    setPrice(book, "Hoodie", 1000);
    book.materials[idOf("Hoodie")].material.sizes[1].extraCost = cents(200);
    addCard(book);
    book.shop.packing = {idOf("Bag"), idOf("Card")};
    setPrice(book, "Bag", 1000, 100);
    auto& rates = book.shop.rates;
    rates.labourPerHour = cents(3600); // 0.01 a second
    overheadIs(book);                  // 0.00125 a second
    rates.spoilage = Rate::fromPercent(20);
    rates.garmentAllowance = cents(2000);
    book.shop.rules.cardFee = {true, Rate::fromPercent(20), cents(30)};
    const auto s = [](std::int64_t seconds) { return Duration::fromSeconds(seconds); };
    book.bench.of(Step::Art) = {s(600), {}, {}, {}};
    book.bench.of(Step::Cut) = {s(100), s(50), {}, s(20)};
    book.bench.of(Step::Weed) = {{}, s(60), {}, {}};
    book.bench.of(Step::SetUp) = {s(120), {}, {}, {}};
    book.bench.of(Step::Brush) = {s(40), s(10), {}, s(10)};
    book.bench.of(Step::Lift) = {{}, {}, s(5), {}};
    book.bench.of(Step::Press) = {{}, {}, s(20), {}};
    book.bench.of(Step::Pack) = {{}, {}, s(9), {}};
    auto& press = book.bench.press;
    press.price = cents(1'000'000);
    press.salvage = cents(100'000);
    press.lifePresses = 100'000;
    press.dwell = s(15);
    press.handling = s(25);
    press.secondPressShare = Rate::fromPercent(25);
    press.secondDwell = s(5);
    press.warmUp = s(600);
    press.testPresses = 2;
    press.runningPerHour = cents(360); // 0.001 a second
    book.bench.cutter = {cents(1'200'000), cents(200'000), 1'000'000};
    return book;
}

Line fortySquares() {
    auto line = sample::square(40);
    line.onto = idOf("Hoodie");
    line.sizes = {{"M", Count::of(20)}, {"2XL", Count::of(5)}};
    line.plannedPieces = Count::of(160);
    return line;
}

struct Figure {
    Part part;
    std::size_t index;
    std::int64_t micros;
    bool paidOut = false;
    bool setUp = false;
    bool lost = false; ///< a quarter of it is among what spoilage costs
};

/// Of everyPart and fortySquares, in reading order. Sums are written out, so that none is made by the program.
const std::vector<Figure> kEveryPart{
    {Part::Job, 0, 942'934'375},                              // 754.0475 + 188.886875
    {Part::Stones, 0, 120'000'000},                           //
    {Part::Stone, 0, 100'000'000, true, false, true},         // 40 × 200 ÷ 0.8 × 0.01
    {Part::Stone, 1, 20'000'000, true, false, true},          // 40 × 100 × 0.005
    {Part::Tape, 0, 6'000'000, true, false, true},            // 20 pieces, six to a sheet: 4 × 1.50
    {Part::Template, 0, 2'000'000, true, true},               // 2 on 1 sheet × 8.00 × 40 of 160
    {Part::Base, 0, 410'000'000},                             //
    {Part::BasePrice, 0, 400'000'000, true, false, true},     // 40 × 10.00
    {Part::SizeExtra, 1, 10'000'000, true, false, true},      // 5 × 2.00
    {Part::Packing, 0, 8'000'000},                            //
    {Part::PackingItem, 0, 4'000'000, true, false, true},     // 40 × 0.10
    {Part::PackingItem, 1, 4'000'000, true, false, true},     // 40 × 0.10
    {Part::Labour, 0, 45'000'000},                            // 4,500 s × 0.01
    {Part::LabourStep, 0, 6'000'000, false, true},            // art 600 s
    {Part::LabourStep, 1, 2'600'000, false, true},            // cut 100 + 2 × 50 + 3 × 20 s
    {Part::LabourStep, 2, 1'200'000, false, true},            // weed 2 × 60 s
    {Part::LabourStep, 3, 1'200'000, false, true},            // set up 120 s
    {Part::LabourStep, 4, 20'400'000, false, false, true},    // brush 40 + 40 × (2 × 10 + 3 × 10 s)
    {Part::LabourStep, 5, 2'000'000, false, false, true},     // lift 40 × 5 s
    {Part::LabourStep, 6, 8'000'000, false, false, true},     // press 40 × 20 s
    {Part::LabourStep, 8, 3'600'000, false, false, true},     // pack 40 × 9 s; nothing is trimmed
    {Part::Press, 0, 2'580'000},                              //
    {Part::PressCycles, 0, 1'600'000, true, false, true},     // 40 × 40 s × 0.001
    {Part::SecondPress, 0, 300'000, true, false, true},       // 10 × 30 s
    {Part::WarmUp, 0, 600'000, true},                         // 600 s
    {Part::TestPress, 0, 80'000, true},                       // 2 × 40 s
    {Part::Wear, 0, 7'680'000},                               //
    {Part::PressWear, 0, 4'680'000, false, false, false},     // 0.09 × (40 + 10 + 2); 4.50 of it are lost
    {Part::CutterWear, 0, 3'000'000, false, true},            // 0.01 × 300
    {Part::Overhead, 0, 5'625'000},                           //
    {Part::OverheadOnce, 0, 1'375'000, false, true},          // 1,100 s × 0.00125
    {Part::OverheadPieces, 0, 4'250'000, false, false, true}, // 3,400 s
    {Part::Spoilage, 0, 147'162'500},                         //
    {Part::SpoiledMaterials, 0, 136'475'000, true},           // (544 + 1.90) ÷ 4
    {Part::SpoiledWork, 0, 10'687'500},                       // (34 + 4.50 + 4.25) ÷ 4
    {Part::CardFee, 0, 188'886'875, true},                    // (754.0475 + 0.30) ÷ 0.8 − 754.0475
};

TEST(EveryPart, isTheFigureWorkedByHand) {
    const auto sheet = sample::costed(fortySquares(), everyPart(), cents(30));
    for (const auto& figure : kEveryPart)
        EXPECT_EQ(sample::amountOf(sheet, figure.part, figure.index).micros(), figure.micros)
            << static_cast<int>(figure.part) << ", " << figure.index;
    EXPECT_EQ(sheet.nodes.size(), kEveryPart.size());
    EXPECT_EQ(sample::totalOf(sheet).micros(), 942'934'375);
    EXPECT_EQ(sample::labourOf(sheet).micros(), 45'000'000);
    EXPECT_EQ(sample::cyclesOf(sheet), 40);
    EXPECT_EQ(sample::piecesPerPressOf(sheet), 1);
    EXPECT_EQ(sample::pressesPerPieceOf(sheet), 1);
    EXPECT_EQ(sample::benchTimeOf(sheet, Step::Brush), Duration::fromSeconds(2'040));
}

// By hand: 2 + 11 of labour + 3 of the cutter + 1.375 of overhead fall away with the templates on the wall; 2 + 544 of
// materials + 2.58 + 136.475 + 188.886875 are paid out.
TEST(EveryPart, isSetUpOrPaidOutAsTheTableSays) {
    const auto sheet = sample::costed(fortySquares(), everyPart(), cents(30));
    std::int64_t setUp = 0;
    std::int64_t floor = 0;
    for (const auto& figure : kEveryPart) {
        if (figure.setUp) setUp += figure.micros;
        if (figure.paidOut) floor += figure.micros;
    }
    EXPECT_EQ(setUp, 17'375'000);
    EXPECT_EQ(floor, 873'941'875);
    EXPECT_EQ(sample::setUpOf(sheet).micros(), setUp);
    EXPECT_EQ(sample::floorOf(sheet).micros(), floor);
}

// The same job with the templates hanging on the wall: 17.375 less before the card fee, 736.6725; the fee is
// (736.6725 + 0.30) ÷ 0.8 − 736.6725 = 184.543125.
TEST(EveryPart, withTemplatesOnTheWallLeavesTheSetUpOut) {
    auto line = fortySquares();
    line.templatesOnWall = true;
    const auto sheet = sample::costed(line, everyPart(), cents(30));
    EXPECT_EQ(sample::totalOf(sheet).micros(), 736'672'500 + 184'543'125);
    EXPECT_EQ(sample::setUpOf(sheet), Money{});
    EXPECT_EQ(sample::labourOf(sheet).micros(), 34'000'000);
    EXPECT_EQ(sample::floorOf(sheet).micros(), 544'000'000 + 2'580'000 + 136'475'000 + 184'543'125);
    EXPECT_FALSE(sample::findAmount(sheet, Part::CutterWear));
    EXPECT_FALSE(sample::findAmount(sheet, Part::OverheadOnce));
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledWork).micros(), 10'687'500);
}

// On the customer's own garment: no blank, no size; of a spoiled piece the stones (120) and the labour (34) are lost
// and the allowance of 40 × 20 paid, a quarter each. 120 + 6 + 2 + 8 + 45 + 2.58 + 7.68 + 5.625 + 238.50 = 435.385, the
// fee (435.385 + 0.30) ÷ 0.8 − 435.385 = 109.22125; paid out are 120 + 6 + 8 + 2 + 2.58 + 30 + 200 + 109.22125.
TEST(EveryPart, ofACustomersGarment) {
    auto line = fortySquares();
    line.customersGarment = true;
    line.onto = {};
    line.sizes.clear();
    const auto sheet = sample::costed(line, everyPart(), cents(30));
    EXPECT_FALSE(sample::findAmount(sheet, Part::Base));
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledMaterials).micros(), 30'000'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledWork).micros(), 8'500'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::GarmentAllowance).micros(), 200'000'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::CardFee).micros(), 109'221'250);
    EXPECT_EQ(sample::totalOf(sheet).micros(), 435'385'000 + 109'221'250);
    EXPECT_EQ(sample::floorOf(sheet).micros(), 477'801'250);
    EXPECT_EQ(sample::setUpOf(sheet).micros(), 17'375'000);
}

// What costs nothing at all is not on the sheet, so that it is read quickly.
TEST(CostSheet, leavesOutWhatTheShopDoesNotHave) {
    const auto sheet = sample::costed(sample::square(24), sample::freeBook());
    for (const auto part : {Part::Tape, Part::Template, Part::Packing, Part::LabourStep, Part::SecondPress,
                            Part::WarmUp, Part::TestPress, Part::Overhead, Part::Spoilage, Part::CardFee})
        EXPECT_FALSE(sample::findAmount(sheet, part)) << static_cast<int>(part);
    for (const auto part : {Part::Stones, Part::Base, Part::Labour, Part::Press, Part::Wear})
        EXPECT_EQ(sample::amountOf(sheet, part), Money{}) << static_cast<int>(part);
    auto book = sample::freeBook();
    overheadIs(book);
    const auto idle = sample::costed(sample::square(24), book);
    EXPECT_FALSE(sample::findAmount(idle, Part::OverheadOnce));
    EXPECT_TRUE(sample::findAmount(idle, Part::OverheadPieces));
    EXPECT_EQ(sample::totalOf(sheet), Money{});
    auto line = sample::square(24);
    line.onto = idOf("Hoodie");
    line.sizes = {{"M", Count::of(24)}};
    EXPECT_FALSE(sample::findAmount(sample::costed(line, sample::freeBook()), Part::SizeExtra));
}

// Half a millisecond goes to the even one: 5 and 15 stones × 10 ms / 100 are 0.5 and 1.5 ms, once and for one piece.
TEST(BenchTime, roundsHalvesToTheEvenMillisecond) {
    auto book = sample::freeBook();
    const auto ten = Duration::fromMilliseconds(10);
    book.bench.of(Step::Cut).per100Stones = ten;
    book.bench.of(Step::Brush).per100Stones = ten;
    for (const auto& [stones, milliseconds] : {std::pair{5, 0}, {15, 2}, {25, 2}, {26, 3}, {24, 2}}) {
        auto line = sample::square(1);
        line.stones = {{idOf("Aqua"), Count::of(stones)}};
        const auto sheet = sample::costed(line, book);
        EXPECT_EQ(sample::benchTimeOf(sheet, Step::Cut).milliseconds(), milliseconds) << stones;
        EXPECT_EQ(sample::benchTimeOf(sheet, Step::Brush).milliseconds(), milliseconds) << stones;
    }
}

struct PressRow {
    const char* name;
    std::int64_t width; ///< in
    std::int64_t height;
    bool onBlank;
    std::int64_t quantity;
    std::int64_t perPress;
    std::int64_t perPiece;
    std::int64_t cycles;
};

void PrintTo(const PressRow& row, std::ostream* out) { *out << row.name; }

class PressUse : public testing::TestWithParam<PressRow> {};

// Worked by hand for a platen of 16 × 20 in.
TEST_P(PressUse, isTheOneWorkedByHand) {
    const auto& row = GetParam();
    auto line = sample::square(row.quantity);
    line.width = inches(row.width);
    line.height = inches(row.height);
    auto book = sample::freeBook();
    makeRoll(sheetOf(book, "Backing"));
    sheetOf(book, "Backing").width = inches(60);
    if (row.onBlank) line.onto = idOf("Hoodie");
    const auto sheet = sample::costed(line, book);
    EXPECT_EQ(sample::piecesPerPressOf(sheet), row.perPress);
    EXPECT_EQ(sample::pressesPerPieceOf(sheet), row.perPiece);
    EXPECT_EQ(sample::cyclesOf(sheet), row.cycles);
}

INSTANTIATE_TEST_SUITE_P(Platen, PressUse,
                         testing::Values(PressRow{"twenty at once", 4, 4, false, 20, 20, 1, 1},
                                         PressRow{"one more than a platen", 4, 4, false, 21, 20, 1, 2},
                                         PressRow{"one only", 4, 4, false, 1, 20, 1, 1},
                                         PressRow{"a blank alone", 4, 4, true, 3, 1, 1, 3},
                                         PressRow{"as large as the platen", 16, 20, false, 3, 1, 1, 3},
                                         PressRow{"as large, turned", 20, 16, false, 3, 1, 1, 3},
                                         PressRow{"two beside each other, turned", 20, 8, false, 5, 2, 1, 3},
                                         PressRow{"too wide both ways", 21, 4, false, 3, 1, 2, 6},
                                         PressRow{"too high both ways", 4, 21, true, 3, 1, 2, 6},
                                         PressRow{"wider one way only", 17, 4, true, 3, 1, 1, 3},
                                         PressRow{"higher one way only", 4, 17, true, 3, 1, 1, 3},
                                         PressRow{"two by two", 33, 21, false, 2, 1, 4, 8},
                                         PressRow{"two by two, turned", 21, 33, false, 2, 1, 4, 8}));

} // namespace
