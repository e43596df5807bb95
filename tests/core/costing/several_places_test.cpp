// SPDX-License-Identifier: MIT
//
// One blank with designs at several places, and lines without any. Every figure is worked by hand; prices and times are
// invented. That blank, packing and handling are there once: common practice, no source.
#include "core/costing/messages.h"
#include "core/needs/messages.h"
#include "tests/core/costing/part_figure.h"
#include "tests/support/figures_of.h"

#include <gtest/gtest.h>

namespace sp::costing {

namespace {

/// Stones at 0.01 and 0.005, a hoodie at 10.00, a bag at 0.10, work at 0.01 a second, the press at 0.001.
Book twoSided() {
    auto book = sample::freeBook();
    setPrice(book, "Aqua", 1440, 1440);
    setPrice(book, "Jet", 720, 1440);
    setPrice(book, "Hoodie", 1000);
    setPrice(book, "Bag", 10);
    useTape(book, 1, 120, kByPosition);
    useTemplates(book, 800);
    book.shop.packing = {{idOf("Bag")}};
    book.shop.rates.labourPerHour = cents(3600);
    const auto s = [](std::int64_t seconds) { return Duration::fromSeconds(seconds); };
    book.bench.of(Step::Cut) = {s(100), s(50), {}, {}};
    book.bench.of(Step::Brush) = {{}, s(10), {}, {}};
    book.bench.of(Step::Lift) = {{}, {}, s(5), {}};
    book.bench.of(Step::Press) = {{}, {}, s(20), {}};
    book.bench.of(Step::Trim) = {{}, s(1), s(3), {}};
    book.bench.of(Step::Pack) = {{}, {}, s(9), {}};
    auto& press = book.bench.press;
    press.price = cents(1'000'000);
    press.salvage = cents(100'000);
    press.lifePresses = 100'000;
    press.dwell = s(15);
    press.handling = s(25);
    press.secondPressShare = Rate::fromPercent(20);
    press.secondDwell = s(5);
    press.warmUp = s(600);
    press.runningPerHour = cents(360);
    return book;
}

catalogue::Placement back() {
    catalogue::Placement place;
    place.title = "Crest";
    place.place = "Back";
    place.width = inches(8);
    place.height = inches(6);
    place.stones = {{idOf("Aqua"), Count::of(300)}};
    return place;
}

/// Ten hoodies with the square (4 × 4 in, 200 Aqua and 100 Jet) in front and the crest on the back.
Line frontAndBack() {
    auto line = sample::square(10);
    line.baseMaterial = idOf("Hoodie");
    line.first().place = "Front";
    line.places.push_back(back());
    return line;
}

struct FigureOfPlaces {
    Part part;
    std::size_t index;
    std::int64_t micros;
};

const FigureOfPlaces kFrontAndBack[] = {
    {Part::Stones, 0, 55'000'000},     {Part::Stone, 0, 20'000'000}, // 10 × 200 × 0.01
    {Part::Stone, 1, 5'000'000},                                     // 10 × 100 × 0.005
    {Part::Stone, 2, 30'000'000},                                    // 10 × 300 × 0.01
    {Part::Tape, 0, 2'000'000},     // of 9 1/2 × 12 in, six to a sheet: 10 ÷ 6 × 1.20
    {Part::Tape, 1, 6'000'000},     // two to a sheet: 10 ÷ 2 × 1.20
    {Part::Template, 0, 8'000'000}, // two on one sheet of 9 × 12 in
    {Part::Template, 1, 8'000'000}, // one on one sheet
    {Part::Base, 0, 100'000'000},   // one hoodie a piece
    {Part::BasePrice, 0, 100'000'000}, {Part::PackingItem, 0, 1'000'000}, // one bag a piece
    {Part::LabourStep, 1, 3'500'000},                                     // cut 100 + 2 × 50, and 100 + 50 s
    {Part::LabourStep, 4, 3'000'000},                                     // brush 10 × 2 × 10, and 10 × 10 s
    {Part::LabourStep, 5, 1'000'000},                                     // lift 10 × 5 s, twice
    {Part::LabourStep, 6, 4'000'000},                                     // press 10 × 20 s, twice
    {Part::LabourStep, 7, 600'000},                                       // trim 10 × (3 + 3 × 1 s), once
    {Part::LabourStep, 8, 900'000},                                       // pack 10 × 9 s, once
    {Part::PressCycles, 0, 400'000},                                      // 10 × 40 s × 0.001
    {Part::PressCycles, 1, 400'000},   {Part::SecondPress, 0, 60'000},    // 2 × 30 s × 0.001
    {Part::SecondPress, 1, 60'000},    {Part::WarmUp, 0, 600'000},        // once
    {Part::PressWear, 0, 2'160'000},                                      // 0.09 × (20 + 20 % of 10, twice)
    {Part::Job, 0, 196'680'000},
};

TEST(SeveralPlaces, chargeThePieceOnceAndEachDesign) {
    const auto sheet = sample::costed(frontAndBack(), twoSided());
    for (const auto& figure : kFrontAndBack)
        EXPECT_EQ(sample::amountOf(sheet, figure.part, figure.index).micros(), figure.micros)
            << static_cast<int>(figure.part) << ", " << figure.index;
    ASSERT_EQ(sheet.places.size(), 2U);
    EXPECT_EQ(sheet.places[0].press.cycles + sheet.places[1].press.cycles, 20);
    for (const auto& node : sheet.nodes) {
        if (node.formula.kind == Formula::Kind::Parts) continue;
        EXPECT_EQ(Money::fromExact(evaluate(node.formula)), node.amount) << static_cast<int>(node.part);
        EXPECT_TRUE(holds(node.formula)) << static_cast<int>(node.part);
    }
}

// Two lines of ten would charge beside it ten hoodies (100), ten bags (1), trimming 10 × 3 s (0.30), packing (0.90) and
// warming up (0.60).
TEST(SeveralPlaces, costLessThanTwoLinesByWhatIsThereOnce) {
    auto front = frontAndBack();
    auto behind = front;
    front.places.pop_back();
    behind.places.erase(behind.places.begin());
    const auto apart =
        sample::totalOf(sample::costed(front, twoSided())) + sample::totalOf(sample::costed(behind, twoSided()));
    const auto together = sample::totalOf(sample::costed(frontAndBack(), twoSided()));
    EXPECT_EQ((apart - together).micros(), 102'800'000);
}

// Of the crest's alone: 8.00 of template and 1.50 of cutting.
TEST(SeveralPlaces, hangOnTheWallEachByItself) {
    auto line = frontAndBack();
    line.places[1].templatesOnWall = true;
    const auto sheet = sample::costed(line, twoSided());
    EXPECT_EQ(sample::totalOf(sheet).micros(), 196'680'000 - 9'500'000);
    EXPECT_EQ(sample::setUpOf(sheet).micros(), 10'000'000);
}

// On backing each design is a film of its own, pressed as many at once as lie under 16 × 20 in: of 4 × 4 in twenty, of
// 8 × 6 in five. Films of 9 × 12 in: six and two to a sheet.
TEST(SeveralPlaces, areEachCutOfABacking) {
    auto line = frontAndBack();
    line.baseMaterial = idOf("Backing");
    auto book = twoSided();
    setPrice(book, "Backing", 120);
    const auto sheet = sample::costed(line, book);
    EXPECT_EQ(sample::amountOf(sheet, Part::Base, 0).micros(), 2'400'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::Base, 1).micros(), 6'000'000);
    EXPECT_EQ(sheet.places[0].press.cycles, 1);
    EXPECT_EQ(sheet.places[1].press.cycles, 2);
}

TEST(SeveralPlaces, areRefusedByTheNameOfTheDesign) {
    const auto refusal = [](auto change) {
        auto line = frontAndBack();
        change(line);
        layout::FitMemo fits;
        const auto sheet = costLine(line, twoSided(), fits);
        return sheet ? std::string() : sp::base::describe(sheet.error().message());
    };
    EXPECT_EQ(refusal([](Line& l) { l.places[1].stones.clear(); }), "NoStones(Crest)");
    EXPECT_EQ(refusal([](Line& l) { l.places[1].width = {}; }), "SizeOutOfRange(Crest)");
    EXPECT_EQ(refusal([](Line& l) { l.places.resize(9, back()); }), "TooManyPlaces(Square, 8)");
}

/// Postage at 6.50.
Line postage() {
    Line line;
    line.title = "Postage";
    line.places.clear();
    line.overrideEach = cents(650);
    return line;
}

TEST(Charge, ofNothingCostsNothing) {
    const auto sheet = sample::costed(postage(), twoSided());
    EXPECT_TRUE(sheet.total.isZero());
    EXPECT_TRUE(sheet.bench.total().isZero());
    EXPECT_EQ(sheet.nodes.size(), 1U);
}

// Three plain hoodies at 10.00, one of them 2XL for 2.10 more; nothing is packed, made or spoiled.
TEST(Charge, costsWhatIsSold) {
    auto line = postage();
    line.baseMaterial = idOf("Hoodie");
    line.overrideEach.reset();
    line.quantity = Count::of(3);
    line.sizes = {{"2XL", Count::of(1)}};
    auto book = twoSided();
    book.materials[idOf("Hoodie")].material.sizes[1].extraCost = cents(210);
    book.shop.rates.spoilage = Rate::fromPercent(20);
    const auto sheet = sample::costed(line, book);
    EXPECT_EQ(sheet.total.micros(), 32'100'000);
    EXPECT_EQ(sample::floorOf(sheet).micros(), 32'100'000);
    EXPECT_EQ(sample::amountOf(sheet, Part::Base).micros(), 32'100'000);
}

TEST(Charge, needsAPriceOrSomethingToSell) {
    auto line = postage();
    line.overrideEach.reset();
    layout::FitMemo fits;
    const auto sheet = costLine(line, twoSided(), fits);
    ASSERT_FALSE(sheet);
    EXPECT_EQ(sp::base::describe(sheet.error().message()), "ChargeWithoutPrice(Postage)");
}

} // namespace

} // namespace sp::costing
