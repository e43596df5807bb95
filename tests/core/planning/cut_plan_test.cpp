// SPDX-License-Identifier: MIT
// Counts are checked by hand (the arithmetic stands beside them) and by going through every place: inside the
// sheet, apart by the gap, every piece there once.
#include "core/planning/cut_plan.h"
#include "tests/reference/rectangles_random.h"
#include "tests/support/amounts.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

#include <random>

namespace sp::planning {

namespace {

using support::inches;
using units::Count;
using units::Length;

struct Edge {
    Length left, low, right, high;
};

Edge edgesOf(const CutPlan& plan, const CutPlace& place) {
    const auto& size = plan.list.pieces[place.piece].size;
    return {place.at.x, place.at.y, place.at.x + (place.at.turned ? size.height : size.width),
            place.at.y + (place.at.turned ? size.width : size.height)};
}

/// Every promise of the header that can be seen in the plan itself.
void expectSound(const CutPlan& plan) {
    const auto& traits = plan.list.material.sheet;
    const bool roll = traits.form == catalogue::SheetForm::Roll;
    const Length high = roll ? plan.length : traits.height;
    std::vector<std::int64_t> cut(plan.list.pieces.size());
    std::int64_t sheets = 0;
    for (const auto& sheet : plan.sheets) {
        sheets += sheet.count;
        std::vector<Edge> taken;
        for (const auto& place : sheet.places) {
            cut[place.piece] += sheet.count;
            EXPECT_FALSE(traits.oneWay && place.at.turned);
            taken.push_back(edgesOf(plan, place));
        }
        const auto pieces = taken.size();
        if (!sheet.left.width.isZero())
            taken.push_back({sheet.leftAt.x, sheet.leftAt.y, sheet.leftAt.x + sheet.left.width,
                             sheet.leftAt.y + sheet.left.height});
        for (std::size_t i = 0; i < taken.size(); ++i) {
            EXPECT_GE(taken[i].left, traits.margin);
            EXPECT_GE(taken[i].low, traits.margin);
            EXPECT_LE(taken[i].right, traits.width - traits.margin);
            EXPECT_LE(taken[i].high, high - traits.margin);
            for (std::size_t j = 0; j < i && j < pieces; ++j) {
                const bool apart =
                    taken[i].left >= taken[j].right + traits.gap || taken[j].left >= taken[i].right + traits.gap ||
                    taken[i].low >= taken[j].high + traits.gap || taken[j].low >= taken[i].high + traits.gap;
                EXPECT_TRUE(apart) << i << " and " << j;
            }
        }
    }
    EXPECT_EQ(sheets, plan.count);
    EXPECT_LE(plan.bound, plan.count);
    for (std::size_t i = 0; i < cut.size(); ++i) EXPECT_EQ(cut[i], plan.list.pieces[i].count) << i;
}

const CutList* listOf(const std::vector<CutList>& lists, const char* name) {
    for (const auto& list : lists)
        if (list.material.name == name) return &list;
    return nullptr;
}

catalogue::OrderLine crest(std::int64_t quantity) {
    auto line = sample::lantern(quantity);
    line.title = "Crest";
    line.first().width = inches(5);
    line.first().height = inches(4);
    return line;
}

} // namespace

TEST(CutLists, holdATemplateForEachColourAndTapeByItsLifts) {
    const auto book = sample::priceBook();
    const std::vector lines{sample::lantern(25)};
    const auto lists = cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    ASSERT_EQ(lists->size(), 3U);
    const auto* templates = listOf(*lists, "Template");
    ASSERT_NE(templates, nullptr);
    ASSERT_EQ(templates->pieces.size(), 2U);
    EXPECT_EQ(templates->pieces[0].name, "Lantern, Aqua");
    EXPECT_EQ(templates->pieces[1].name, "Lantern, Jet");
    EXPECT_EQ(templates->pieces[0].count, 1);
    // 25 pieces, of which 0.77 are expected to be spoiled at 3 %: one spare; two lifts of each piece of tape.
    EXPECT_EQ(listOf(*lists, "Tape")->pieces[0].count, 13);
    EXPECT_EQ(listOf(*lists, "Backing")->pieces[0].count, 26);
}

// 100 pieces at 3 %: 3.09 are expected to be spoiled, so 4 more are cut; none where the shop plans none. On the
// customer's own garment a spare is tape alone.
TEST(CutLists, holdTheSparesToo) {
    auto book = sample::priceBook();
    std::vector lines{sample::lantern(100)};
    EXPECT_EQ(listOf(*cutLists(lines, book), "Backing")->pieces[0].count, 104);
    EXPECT_EQ(listOf(*cutLists(lines, book), "Tape")->pieces[0].count, 52);
    EXPECT_EQ(listOf(*cutLists(lines, book), "Template")->pieces[0].count, 1);
    lines[0].customersGarment = true;
    EXPECT_EQ(listOf(*cutLists(lines, book), "Tape")->pieces[0].count, 52);
    EXPECT_EQ(listOf(*cutLists(lines, book), "Backing"), nullptr);
    lines[0].customersGarment = false;
    book.shop.rates.spares = catalogue::Spares::Never;
    EXPECT_EQ(listOf(*cutLists(lines, book), "Backing")->pieces[0].count, 100);
}

TEST(CutLists, leaveOutWhatIsNotCut) {
    auto book = sample::priceBook();
    auto onHoodie = sample::lantern(3);
    onHoodie.baseMaterial = sample::idOf("Hoodie");
    onHoodie.first().templatesOnWall = true;
    const std::vector lines{onHoodie};
    const auto lists = cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    ASSERT_EQ(lists->size(), 1U);
    EXPECT_EQ(lists->front().material.name, "Tape");
    book.shop.usualTape = {};
    EXPECT_TRUE(cutLists(lines, book)->empty());
}

// Under the customer's own garment there is no backing, even where one is still written down from before.
TEST(CutLists, cutNothingToPutACustomersGarmentOn) {
    const auto book = sample::priceBook();
    std::vector lines{sample::lantern(3), sample::lantern(2), sample::lantern(4)};
    lines[0].customersGarment = true;
    lines[1].baseMaterial = {};
    const auto lists = cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    ASSERT_EQ(lists->size(), 3U);
    ASSERT_EQ(listOf(*lists, "Backing")->pieces.size(), 1U);
    EXPECT_EQ(listOf(*lists, "Backing")->pieces[0].count, 4);
}

TEST(CutLists, addTheBorderOnEverySideAndPutEqualPiecesTogether) {
    auto book = sample::priceBook();
    book.materials[sample::idOf("Backing")].material.sheet.border = Length::fromInch64ths(16);
    const std::vector lines{sample::lantern(5), sample::lantern(7), crest(2)};
    const auto lists = cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    const auto& pieces = listOf(*lists, "Backing")->pieces;
    ASSERT_EQ(pieces.size(), 2U);
    EXPECT_EQ(pieces[0].count, 12);
    EXPECT_EQ(pieces[0].size.width, inches(4)); // 3 1/2 and twice 1/4
    EXPECT_EQ(pieces[1].name, "Crest");
}

// Five hoodies with the lantern in front and the crest, which hangs on the wall, on the back: a template of each of the
// lantern's colours, and of tape that lifts twice three pieces of each design. A charge is not cut.
TEST(CutLists, haveEachPlaceOfAPiece) {
    const auto book = sample::priceBook();
    auto line = sample::lantern(5);
    line.baseMaterial = sample::idOf("Hoodie");
    line.first().place = "Front";
    line.places.push_back(crest(1).first());
    line.places[1].title = "Crest";
    line.places[1].place = "Back";
    line.places[1].templatesOnWall = true;
    catalogue::OrderLine postage;
    postage.title = "Postage";
    postage.places.clear();
    const std::vector lines{line, postage};
    const auto lists = cutLists(lines, book);
    ASSERT_TRUE(lists.has_value());
    ASSERT_EQ(lists->size(), 2U);
    EXPECT_EQ(listOf(*lists, "Template")->pieces.size(), 2U);
    EXPECT_EQ(listOf(*lists, "Template")->pieces[0].name, "Lantern, Front, Aqua");
    const auto& tape = listOf(*lists, "Tape")->pieces;
    ASSERT_EQ(tape.size(), 2U);
    EXPECT_EQ(tape[0].count, 3);
    EXPECT_EQ(tape[1].name, "Crest, Back");
    EXPECT_EQ(tape[1].count, 3);
}

TEST(CutLists, nameThePlaceWhereThereAreSeveral) {
    const auto book = sample::priceBook();
    auto line = sample::lantern(5);
    line.baseMaterial = sample::idOf("Hoodie");
    line.first().place = "Front";
    const auto firstName = [&] { return listOf(*cutLists(std::vector{line}, book), "Tape")->pieces[0].name; };
    EXPECT_EQ(firstName(), "Lantern") << "the only one";
    line.places.push_back(crest(1).first());
    EXPECT_EQ(firstName(), "Lantern, Front");
    line.first().place.clear();
    EXPECT_EQ(firstName(), "Lantern") << "without a name";
}

TEST(CutLists, refuseALineWithoutSizeOrMaterial) {
    const auto book = sample::priceBook();
    std::vector lines{sample::lantern(5)};
    lines[0].first().width = {};
    EXPECT_EQ(cutLists(lines, book).error().code, base::Code::OutOfRange);
    lines = {sample::lantern(5)};
    lines[0].baseMaterial = sample::idOf("Gone");
    EXPECT_EQ(cutLists(lines, book).error().code, base::Code::NotFound);
}

TEST(CutPlan, twoTemplatesOfADesignShareASheet) {
    const auto book = sample::priceBook();
    const std::vector lines{sample::lantern(24)};
    const auto lists = cutLists(lines, book);
    const auto plan = planCut(*listOf(*lists, "Template"), {});
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    EXPECT_EQ(plan->count, 1);
    EXPECT_TRUE(plan->proven);
    // 9 × 12 in, two pieces of 3 1/2 × 2 3/4 in lying at one end: at least 12 − 3 1/2 in by the whole width
    // stay free.
    const auto& left = plan->sheets.back().left;
    EXPECT_GE(left.width.millimetres() * left.height.millimetres(), 9 * 8.5 * 25.4 * 25.4 - 1e-6);
}

TEST(CutPlan, sheetsCutAlikeAreOneWithTheirNumber) {
    auto book = sample::priceBook();
    book.shop.rates.spares = catalogue::Spares::Never;
    const std::vector lines{crest(50)};
    const auto lists = cutLists(lines, book);
    const auto plan = planCut(*listOf(*lists, "Backing"), {});
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    EXPECT_EQ(plan->count, 10); // 9 × 12 in takes five of 5 × 4 in by area (108 / 20); a pinwheel lays them
    EXPECT_TRUE(plan->proven);
    EXPECT_LE(plan->sheets.size(), 2U);
}

TEST(CutPlan, equalPiecesOfSeveralNamesFillSheetsTogether) {
    // Twelve names with two pieces each of 5 3/8 × 4 3/8 in. Four lie on
    // 9 × 12 in (two by 4 3/8 across 9 in, two by 5 3/8 along 12 in), so 24 take six sheets.
    auto book = sample::priceBook();
    book.shop.rates.spares = catalogue::Spares::Never;
    std::vector<catalogue::OrderLine> lines;
    for (int i = 0; i < 12; ++i) {
        auto& line = lines.emplace_back(crest(2));
        line.title = "Crest " + std::to_string(i);
        line.first().width = Length::fromInch64ths(5 * 64 + 24);
        line.first().height = Length::fromInch64ths(4 * 64 + 24);
    }
    const auto lists = cutLists(lines, book);
    const auto plan = planCut(*listOf(*lists, "Backing"), {});
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    EXPECT_EQ(plan->count, 6);
}

// Four of 4 × 5 in lie on 9 × 12 in, two beside each other and two above. Of three Lanterns and three Crests of that
// size the Lanterns are the first three, from left to right and upwards, and a Crest is the fourth; two Crests are
// left.
TEST(CutPlan, equalSizesAreDealtOutInTheOrderOfTheList) {
    const auto book = sample::priceBook();
    CutList list{book.find(sample::idOf("Backing"))->material, {}};
    list.material.sheet.oneWay = true;
    list.pieces = {{"Lantern", {inches(4), inches(5)}, 3}, {"Crest", {inches(4), inches(5)}, 3}};
    const auto plan = planCut(list, {});
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    ASSERT_EQ(plan->sheets.size(), 2U);
    const auto numbers = [](const CutSheet& sheet) {
        std::vector<std::size_t> pieces;
        for (const auto& place : sheet.places) pieces.push_back(place.piece);
        return pieces;
    };
    EXPECT_EQ(numbers(plan->sheets[0]), (std::vector<std::size_t>{0, 0, 0, 1}));
    EXPECT_EQ(numbers(plan->sheets[1]), (std::vector<std::size_t>{1, 1}));
}

TEST(CutPlan, saysWhatNoPlanCanBeat) {
    // Nine squares of 5 in on 9 × 12 in: no two lie side by side across 9 in, two lie along 12 in.
    auto book = sample::priceBook();
    auto line = crest(9);
    line.first().height = inches(5);
    const std::vector lines{line};
    const auto plan = planCut(*listOf(*cutLists(lines, book), "Backing"), {});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->count, 5);
    EXPECT_EQ(plan->bound, 5);
    EXPECT_TRUE(plan->proven);
}

// Thirty parts that one sheet was cut into could lie on one; found are two sheets, and that is not claimed to be the
// fewest.
TEST(CutPlan, isNotProvenWhereFewerSheetsMayDo) {
    const auto cut = reference::cutSheet(240, 160, 30, 5);
    CutList list;
    list.material.sheet.width = cut.width;
    list.material.sheet.height = cut.height;
    for (const auto& piece : cut.pieces) list.pieces.push_back({piece.id, piece.size, piece.count});
    layout::MixedEffort effort;
    effort.steps = 1;
    const auto plan = planCut(list, effort);
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    EXPECT_EQ(plan->count, 2);
    EXPECT_EQ(plan->bound, 1);
    EXPECT_FALSE(plan->proven);
}

TEST(CutPlan, ARollIsCutToLength) {
    auto book = sample::priceBook();
    auto& sheet = book.materials[sample::idOf("Tape")].material.sheet;
    sheet.form = catalogue::SheetForm::Roll;
    sheet.width = inches(12);
    sheet.height = inches(360);
    sheet.lifts = 1;
    const std::vector lines{crest(6), sample::lantern(4)};
    const auto plan = planCut(*listOf(*cutLists(lines, book), "Tape"), {});
    ASSERT_TRUE(plan.has_value());
    expectSound(*plan);
    EXPECT_GE(plan->length, plan->lengthBound);
    EXPECT_EQ(plan->proven, plan->length == plan->lengthBound);
    const double area = 6 * 20 + 4 * 3.5 * 2.75; // square inches
    EXPECT_GE(plan->length.millimetres(), area / 12 * 25.4);
}

// Two of 5 × 4 in and the border of 1/8 in all round lie side by side across 12 in: 4 in and what stands around them.
TEST(CutPlan, ARollIsProvenWhereNothingCouldBeShorter) {
    auto book = sample::priceBook();
    auto& sheet = book.materials[sample::idOf("Tape")].material.sheet;
    sheet.form = catalogue::SheetForm::Roll;
    sheet.width = inches(12);
    sheet.height = inches(360);
    sheet.lifts = 1;
    const std::vector lines{crest(2)};
    const auto list = *listOf(*cutLists(lines, book), "Tape");
    const auto plan = planCut(list, {});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->length, list.pieces.at(0).size.height + sheet.margin + sheet.margin);
    EXPECT_EQ(plan->lengthBound, plan->length);
    EXPECT_TRUE(plan->proven);
}

TEST(CutPlan, aPieceTooLargeIsNamedWithItsMaterial) {
    auto book = sample::priceBook();
    auto line = crest(1);
    line.first().width = inches(13);
    const std::vector lines{line};
    const auto plan = planCut(*listOf(*cutLists(lines, book), "Backing"), {});
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().code, base::Code::TooLarge);
    EXPECT_NE(describe(plan.error()).find("Backing"), std::string::npos);
    EXPECT_NE(describe(plan.error()).find("Crest"), std::string::npos);
}

TEST(CutPlan, aPieceTooWideForARollIsNamedWithItsMaterial) {
    auto book = sample::priceBook();
    auto& sheet = book.materials[sample::idOf("Tape")].material.sheet;
    sheet.form = catalogue::SheetForm::Roll;
    sheet.width = inches(12);
    auto line = crest(1);
    line.first().width = line.first().height = inches(13);
    const std::vector lines{line};
    const auto plan = planCut(*listOf(*cutLists(lines, book), "Tape"), {});
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error().code, base::Code::TooLarge);
    EXPECT_NE(describe(plan.error()).find("Tape"), std::string::npos);
    EXPECT_NE(describe(plan.error()).find("Crest"), std::string::npos);
}

TEST(CutPlan, keepsItsPromisesForAnyOrder) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t n) {
        return 1 + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    for (int round = 0; round < 25; ++round) {
        auto book = sample::priceBook();
        auto& sheet = book.materials[sample::idOf("Backing")].material.sheet;
        sheet.margin = Length::fromInch64ths(upTo(20) - 1);
        sheet.gap = Length::fromInch64ths(upTo(12) - 1);
        sheet.border = Length::fromInch64ths(upTo(12) - 1);
        sheet.oneWay = random() % 2 == 0;
        std::vector<catalogue::OrderLine> lines;
        for (std::int64_t n = upTo(4); n > 0; --n) {
            auto& line = lines.emplace_back(sample::lantern(upTo(12)));
            line.title = "Line " + std::to_string(n);
            line.first().width = Length::fromInch64ths(40 + upTo(400));
            line.first().height = Length::fromInch64ths(40 + upTo(400));
        }
        layout::MixedEffort effort;
        effort.steps = 200'000;
        const auto lists = cutLists(lines, book);
        ASSERT_TRUE(lists.has_value());
        for (const auto& list : *lists) {
            const auto plan = planCut(list, effort);
            ASSERT_TRUE(plan.has_value()) << describe(plan.error());
            expectSound(*plan);
            EXPECT_EQ(*planCut(list, effort), *plan);
        }
    }
}

} // namespace sp::planning
