// SPDX-License-Identifier: MIT
//
// The whole cost sheet with every part on it, each figure worked by hand. All prices and times are invented.
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

#include <vector>

namespace sp::costing {

namespace {

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
    book.shop.packing = {{idOf("Bag")}, {idOf("Card")}};
    setPrice(book, "Bag", 1000, 100);
    auto& rates = book.shop.rates;
    rates.labourPerHour = cents(3600); // 0.01 a second
    overheadIs(book);                  // 0.00125 a second
    rates.spoilage = Rate::fromPercent(20);
    rates.garmentAllowance = cents(2000);
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
    line.baseMaterial = idOf("Hoodie");
    line.sizes = {{"M", Count::of(20)}, {"2XL", Count::of(5)}};
    line.first().plannedPieces = Count::of(160);
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
    {Part::Job, 0, 751'035'000},                           //
    {Part::Stones, 0, 120'000'000},                        //
    {Part::Stone, 0, 100'000'000, true, false, true},      // 40 × 200 ÷ 0.8 × 0.01
    {Part::Stone, 1, 20'000'000, true, false, true},       // 40 × 100 × 0.005
    {Part::Tape, 0, 6'000'000, true, false, true},         // 20 pieces, six to a sheet: 4 × 1.50
    {Part::Template, 0, 2'000'000, true, true},            // 2 on 1 sheet × 8.00 × 40 of 160
    {Part::Base, 0, 410'000'000},                          //
    {Part::BasePrice, 0, 400'000'000, true, false, true},  // 40 × 10.00
    {Part::SizeExtra, 1, 10'000'000, true, false, true},   // 5 × 2.00
    {Part::Packing, 0, 8'000'000},                         //
    {Part::PackingItem, 0, 4'000'000, true},               // 40 × 0.10
    {Part::PackingItem, 1, 4'000'000, true},               // 40 × 0.10
    {Part::Labour, 0, 45'000'000},                         // 4,500 s × 0.01
    {Part::LabourStep, 0, 6'000'000, false, true},         // art 600 s
    {Part::LabourStep, 1, 2'600'000, false, true},         // cut 100 + 2 × 50 + 3 × 20 s
    {Part::LabourStep, 2, 1'200'000, false, true},         // weed 2 × 60 s
    {Part::LabourStep, 3, 1'200'000, false, true},         // set up 120 s
    {Part::LabourStep, 4, 20'400'000, false, false, true}, // brush 40 + 40 × (2 × 10 + 3 × 10 s)
    {Part::LabourStep, 5, 2'000'000, false, false, true},  // lift 40 × 5 s
    {Part::LabourStep, 6, 8'000'000, false, false, true},  // press 40 × 20 s
    {Part::LabourStep, 8, 3'600'000},                      // pack 40 × 9 s; nothing is trimmed
    {Part::Press, 0, 2'580'000},                           //
    {Part::PressCycles, 0, 1'600'000, true, false, true},  // 40 × 40 s × 0.001
    {Part::SecondPress, 0, 300'000, true, false, true},    // 10 × 30 s
    {Part::WarmUp, 0, 600'000, true},                      // 600 s
    {Part::TestPress, 0, 80'000, true},                    // 2 × 40 s
    {Part::Wear, 0, 7'680'000},                            //
    {Part::PressWear, 0, 4'680'000, false, false, false},  // 0.09 × (40 + 10 + 2); 4.50 of it are lost
    {Part::CutterWear, 0, 3'000'000, false, true},         // 0.01 × 300
    {Part::Overhead, 0, 5'625'000},                        //
    {Part::OverheadOnce, 0, 1'375'000, false, true},       // 1,100 s × 0.00125
    {Part::OverheadPieces, 0, 4'250'000},                  // 3,400 s; 3.80 of it are lost
    {Part::Spoilage, 0, 144'150'000},                      //
    {Part::SpoiledMaterials, 0, 134'475'000, true},        // (120 + 6 + 410 + 1.90) ÷ 4
    {Part::SpoiledWork, 0, 9'675'000},                     // (30.40 + 4.50 + 3.80) ÷ 4
};

TEST(EveryPart, isTheFigureWorkedByHand) {
    const auto sheet = sample::costed(fortySquares(), everyPart());
    for (const auto& figure : kEveryPart)
        EXPECT_EQ(sample::amountOf(sheet, figure.part, figure.index).micros(), figure.micros)
            << static_cast<int>(figure.part) << ", " << figure.index;
    EXPECT_EQ(sheet.nodes.size(), kEveryPart.size());
    EXPECT_EQ(sample::totalOf(sheet).micros(), 751'035'000);
    EXPECT_EQ(sample::labourOf(sheet).micros(), 45'000'000);
    EXPECT_EQ(sheet.spoiledLabour.micros(), 7'600'000);       // (34 − 3.60) ÷ 4
    EXPECT_EQ(sheet.spoiledTime, Duration::fromSeconds(760)); // (3,400 − 360 s) ÷ 4
    EXPECT_EQ(sample::cyclesOf(sheet), 40);
    EXPECT_EQ(sample::piecesPerPressOf(sheet), 1);
    EXPECT_EQ(sample::pressesPerPieceOf(sheet), 1);
    EXPECT_EQ(sample::benchTimeOf(sheet, Step::Brush), Duration::fromSeconds(2'040));
    EXPECT_EQ(sheet.places[0].tape.use.cut, 20);
    EXPECT_EQ(sheet.places[0].templates.use.cut, 2);
    EXPECT_EQ(sheet.places[0].backing.use.cut, 0); // a hoodie
}

// By hand: 2 + 11 of labour + 3 of the cutter + 1.375 of overhead fall away with the templates on the wall; 2 + 544 of
// materials + 2.58 + 134.475 are paid out.
TEST(EveryPart, isSetUpOrPaidOutAsTheTableSays) {
    const auto sheet = sample::costed(fortySquares(), everyPart());
    std::int64_t setUp = 0;
    std::int64_t floor = 0;
    for (const auto& figure : kEveryPart) {
        if (figure.setUp) setUp += figure.micros;
        if (figure.paidOut) floor += figure.micros;
    }
    EXPECT_EQ(setUp, 17'375'000);
    EXPECT_EQ(floor, 683'055'000);
    EXPECT_EQ(sample::setUpOf(sheet).micros(), setUp);
    EXPECT_EQ(sample::floorOf(sheet).micros(), floor);
}

// The same job with the templates hanging on the wall: 17.375 less.
TEST(EveryPart, withTemplatesOnTheWallLeavesTheSetUpOut) {
    auto line = fortySquares();
    line.first().templatesOnWall = true;
    const auto sheet = sample::costed(line, everyPart());
    EXPECT_EQ(sample::totalOf(sheet).micros(), 733'660'000);
    EXPECT_EQ(sample::setUpOf(sheet), Money{});
    EXPECT_EQ(sample::labourOf(sheet).micros(), 34'000'000);
    EXPECT_EQ(sample::floorOf(sheet).micros(), 544'000'000 + 2'580'000 + 134'475'000);
    EXPECT_FALSE(sample::findAmount(sheet, Part::CutterWear));
    EXPECT_FALSE(sample::findAmount(sheet, Part::OverheadOnce));
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledWork).micros(), 9'675'000);
}

// On the customer's own garment: no blank, no size; of a spoiled piece the stones (120) and the labour until it is
// packed (30.40) are lost and the allowance of 40 × 20 paid, a quarter each. 120 + 6 + 2 + 8 + 45 + 2.58 + 7.68 + 5.625
// + 237.60 = 434.485; paid out are 120 + 6 + 8 + 2 + 2.58 + 30 + 200.
TEST(EveryPart, ofACustomersGarment) {
    auto line = fortySquares();
    line.customersGarment = true;
    line.baseMaterial = {};
    line.sizes.clear();
    const auto sheet = sample::costed(line, everyPart());
    EXPECT_FALSE(sample::findAmount(sheet, Part::Base));
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledMaterials).micros(), 30'000'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::SpoiledWork).micros(), 7'600'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::GarmentAllowance).micros(), 200'000'000);
    EXPECT_EQ(sample::totalOf(sheet).micros(), 434'485'000);
    EXPECT_EQ(sample::floorOf(sheet).micros(), 368'580'000);
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
    line.baseMaterial = idOf("Hoodie");
    line.sizes = {{"M", Count::of(24)}};
    EXPECT_FALSE(sample::findAmount(sample::costed(line, sample::freeBook()), Part::SizeExtra));
}

} // namespace

} // namespace sp::costing
