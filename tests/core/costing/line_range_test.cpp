// SPDX-License-Identifier: MIT
//
// Each range of a line and of the shop at both its ends: the last figure that is taken and the first that is not.
#include "core/costing/cost_line.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include <functional>
#include <optional>
#include <string>

using namespace sp;
using base::Code;
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

struct Row {
    const char* name;
    std::function<void(Line&, Book&)> change; ///< of 24 squares on hoodies in a book where nothing costs anything
    std::optional<Code> refusal;              ///< none: it is taken
    const char* says = "";
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class LineRange : public testing::TestWithParam<Row> {};

TEST_P(LineRange, isKept) {
    auto line = sample::square(24);
    line.baseMaterial = idOf("Hoodie");
    auto book = sample::freeBook();
    GetParam().change(line, book);
    layout::FitMemo fits;
    const auto sheet = costing::costLine(line, book, fits);
    EXPECT_EQ(sheet.has_value(), !GetParam().refusal) << (sheet ? "" : describe(sheet.error()));
    if (sheet || !GetParam().refusal) return;
    EXPECT_EQ(sheet.error().code, *GetParam().refusal);
    EXPECT_EQ(describe(sheet.error().message()), GetParam().says);
}

constexpr auto kOut = Code::OutOfRange;

INSTANTIATE_TEST_SUITE_P(
    Pieces, LineRange,
    testing::Values(
        Row{"one piece", [](Line& l, Book&) { l.quantity = Count::of(1); }, {}},
        Row{"no piece", [](Line& l, Book&) { l.quantity = {}; }, kOut, "PiecesOutOfRange(0, Square)"},
        Row{"a million", [](Line& l, Book&) { l.quantity = Count::of(1'000'000); }, {}},
        Row{"one more", [](Line& l, Book&) { l.quantity = Count::of(1'000'001); }, kOut,
            "PiecesOutOfRange(1000001, Square)"},
        Row{"a nanometre wide", [](Line& l, Book&) { l.first().width = Length::fromNanometres(1); }, {}},
        Row{"not wide at all", [](Line& l, Book&) { l.first().width = {}; }, kOut, "SizeOutOfRange(Square)"},
        Row{"not high at all", [](Line& l, Book&) { l.first().height = {}; }, kOut, "SizeOutOfRange(Square)"},
        Row{"a kilometre", [](Line& l, Book&) { l.first().width = l.first().height = units::kMaxLength; }, {}},
        Row{"more than wide", [](Line& l, Book&) { l.first().width = units::kMaxLength + Length::fromNanometres(1); },
            kOut, "SizeOutOfRange(Square)"},
        Row{"more than high", [](Line& l, Book&) { l.first().height = units::kMaxLength + Length::fromNanometres(1); },
            kOut, "SizeOutOfRange(Square)"},
        Row{"asked for nothing", [](Line& l, Book&) { l.overrideEach = Money{}; }, {}},
        Row{"asked for less", [](Line& l, Book&) { l.overrideEach = Money::fromMicros(-1); }, kOut,
            "TypedPriceNegative(Square)"},
        Row{"planned for one", [](Line& l, Book&) { l.first().plannedPieces = Count::of(1); }, {}},
        Row{"planned for none", [](Line& l, Book&) { l.first().plannedPieces = Count{}; }, kOut,
            "PlannedPiecesBelowOne(Square, 0)"},
        Row{"a title of nothing",
            [](Line& l, Book&) {
                l.title.clear();
                l.quantity = {};
            },
            kOut, "PiecesOutOfRange(0, ThisLine)"}));

/// So many colours of one stone a piece each.
void takeColours(Line& line, Book& book, int colours) {
    line.first().stones.clear();
    for (int i = 0; i < colours; ++i) {
        auto stone = book.materials[idOf("Jet")];
        stone.material.id = idOf("Colour" + std::to_string(i));
        book.materials[stone.material.id] = stone;
        line.first().stones.push_back({stone.material.id, Count::of(1)});
    }
}

INSTANTIATE_TEST_SUITE_P(
    Stones, LineRange,
    testing::Values(
        Row{"one stone", [](Line& l, Book&) { l.first().stones[1].count = Count::of(1); }, {}},
        Row{"no stone", [](Line& l, Book&) { l.first().stones[1].count = {}; }, kOut,
            "StonesOutOfRange(Square, 0, Jet)"},
        Row{"a million", [](Line& l, Book&) { l.first().stones[1].count = Count::of(1'000'000); }, {}},
        Row{"one more", [](Line& l, Book&) { l.first().stones[1].count = Count::of(1'000'001); }, kOut,
            "StonesOutOfRange(Square, 1000001, Jet)"},
        Row{"200 colours", [](Line& l, Book& b) { takeColours(l, b, 200); }, {}},
        Row{"201 colours", [](Line& l, Book& b) { takeColours(l, b, 201); }, kOut, "TooManyColours(Square, 200)"},
        Row{"the first colour again",
            [](Line& l, Book& b) {
                takeColours(l, b, 3);
                l.first().stones.push_back(l.first().stones.front());
            },
            Code::Invalid, "StoneTwice(Square, Jet)"},
        Row{"nearly all lost",
            [](Line&, Book& b) { b.materials[idOf("Jet")].material.stone.loss = Rate::fromPpm(999'999); },
            {}},
        Row{"all lost", [](Line&, Book& b) { b.materials[idOf("Jet")].material.stone.loss = Rate::fromPpm(1'000'000); },
            kOut, "LossOutOfRange(Jet)"},
        Row{"less than none lost",
            [](Line&, Book& b) { b.materials[idOf("Jet")].material.stone.loss = Rate::fromPpm(-1); }, kOut,
            "LossOutOfRange(Jet)"}));

INSTANTIATE_TEST_SUITE_P(Sizes, LineRange,
                         testing::Values(Row{"all of one size",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"2XL", Count::of(24)}};
                                             },
                                             {}},
                                         Row{"one more than all",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"2XL", Count::of(25)}};
                                             },
                                             kOut, "SizeCountOutOfRange(25, 2XL, 24)"},
                                         Row{"none of a size",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"2XL", Count{}}};
                                             },
                                             {}},
                                         Row{"less than none",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"2XL", Count::of(-1)}};
                                             },
                                             kOut, "SizeCountOutOfRange(-1, 2XL, 24)"},
                                         Row{"sizes of all pieces",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"M", Count::of(20)}, {"2XL", Count::of(4)}};
                                             },
                                             {}},
                                         Row{"sizes of one more",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"M", Count::of(20)}, {"2XL", Count::of(5)}};
                                             },
                                             kOut, "TooManySizedPieces(Square, 25, 24)"},
                                         Row{"a size of the customer's own garment",
                                             [](Line& l, Book&) {
                                                 l.customersGarment = true;
                                                 l.sizes = {{"M", Count::of(1)}};
                                             },
                                             Code::NotFound, "NoSuchSize(M, Square)"},
                                         Row{"a size that the blank lacks beside one it has",
                                             [](Line& l, Book&) {
                                                 l.sizes = {{"XS", Count::of(1)}, {"M", Count::of(1)}};
                                             },
                                             Code::NotFound, "NoSuchSize(XS, Square)"}));

INSTANTIATE_TEST_SUITE_P(
    Materials, LineRange,
    testing::Values(Row{"on backing", [](Line& l, Book&) { l.baseMaterial = idOf("Backing"); }, {}},
                    Row{"on tape", [](Line& l, Book&) { l.baseMaterial = idOf("Tape"); }, Code::Invalid,
                        "WrongKind(Tape, Base, Square, tape)"},
                    Row{"on what is gone", [](Line& l, Book&) { l.baseMaterial = idOf("Felt"); }, Code::NotFound,
                        "SupplyGone(Base, Square)"},
                    Row{"on a garment of which no blank is known",
                        [](Line& l, Book&) {
                            l.customersGarment = true;
                            l.baseMaterial = {};
                        },
                        {}},
                    Row{"lifted with backing", [](Line&, Book& b) { b.shop.usualTape = idOf("Backing"); },
                        Code::Invalid, "WrongKind(Backing, Tape, Square, backing)"},
                    Row{"lifted with what is gone", [](Line&, Book& b) { b.shop.usualTape = idOf("Felt"); },
                        Code::NotFound, "SupplyGone(Tape, Square)"},
                    Row{"templates of tape", [](Line&, Book& b) { b.shop.usualTemplate = idOf("Tape"); }, Code::Invalid,
                        "WrongKind(Tape, Template, Square, tape)"},
                    Row{"packed in backing",
                        [](Line&, Book& b) {
                            b.shop.packing = {{idOf("Bag")}, {idOf("Backing")}};
                        },
                        Code::Invalid, "WrongKind(Backing, Packing, Square, backing)"},
                    Row{"a blank without a price", [](Line&, Book& b) { b.materials[idOf("Hoodie")].price.reset(); },
                        Code::Missing, "NoPrice(Hoodie)"}));

INSTANTIATE_TEST_SUITE_P(
    Shop, LineRange,
    testing::Values(
        Row{"spoilage of nearly all", [](Line&, Book& b) { b.shop.rates.spoilage = Rate::fromPpm(999'999); }, {}},
        Row{"spoilage of all", [](Line&, Book& b) { b.shop.rates.spoilage = Rate::fromPpm(1'000'000); }, kOut,
            "SpoilageOutOfRange"},
        Row{"spoilage below nothing", [](Line&, Book& b) { b.shop.rates.spoilage = Rate::fromPpm(-1); }, kOut,
            "SpoilageOutOfRange"},
        Row{"a fee of nearly all",
            [](Line&, Book& b) {
                b.shop.rules.cardFee = {true, Rate::fromPpm(999'999), {}};
            },
            {}},
        Row{"a fee of all",
            [](Line&, Book& b) {
                b.shop.rules.cardFee = {true, Rate::fromPpm(1'000'000), {}};
            },
            kOut, "CardFeeOutOfRange"},
        Row{"a fee below nothing",
            [](Line&, Book& b) {
                b.shop.rules.cardFee = {true, Rate::fromPpm(-1), {}};
            },
            kOut, "CardFeeOutOfRange"},
        Row{"a fee of all that is not charged",
            [](Line&, Book& b) {
                b.shop.rules.cardFee = {false, Rate::fromPpm(1'000'000), {}};
            },
            {}},
        Row{"overhead over a millisecond",
            [](Line&, Book& b) {
                b.shop.rates.overheadPerMonth = cents(1);
                b.shop.rates.productivePerMonth = Duration::fromMilliseconds(1);
            },
            {}},
        Row{"overhead over no time", [](Line&, Book& b) { b.shop.rates.overheadPerMonth = cents(1); }, kOut,
            "NoProductiveHours"},
        Row{"a press that lasts once", [](Line&, Book& b) { b.bench.press.lifePresses = 1; }, {}},
        Row{"a press that lasts not once", [](Line&, Book& b) { b.bench.press.lifePresses = 0; }, kOut,
            "MachineLifeBelowOne"},
        Row{"a cutter that cuts one hole", [](Line&, Book& b) { b.bench.cutter.lifeHoles = 1; }, {}},
        Row{"a cutter that cuts none", [](Line&, Book& b) { b.bench.cutter.lifeHoles = 0; }, kOut,
            "MachineLifeBelowOne"},
        Row{"a platen of no width", [](Line&, Book& b) { b.bench.press.platenWidth = {}; }, kOut, "PlatenWithoutSize"},
        Row{"a platen of no depth", [](Line&, Book& b) { b.bench.press.platenHeight = {}; }, kOut, "PlatenWithoutSize"},
        Row{"a platen of a nanometre",
            [](Line& l, Book& b) {
                l.first().width = l.first().height = Length::fromNanometres(2);
                b.bench.press.platenWidth = b.bench.press.platenHeight = Length::fromNanometres(1);
            },
            {}}));

// A limit that is reached is no limit that is passed: every one of the most colours there may be is charged.
TEST(ColourRange, chargesEveryOneOfTheMostThereMayBe) {
    auto line = sample::square(3);
    auto book = sample::freeBook();
    takeColours(line, book, 200);
    const auto sheet = sample::costed(line, book);
    EXPECT_EQ(std::ranges::count(sheet.nodes, costing::Part::Stone, &costing::CostNode::part), 200);
}

TEST(ColourRange, namesTheRowOfAStoneThatIsGone) {
    auto line = sample::square(3);
    const auto book = sample::freeBook();
    line.first().stones[1].material = idOf("Gone");
    layout::FitMemo fits;
    const auto sheet = costing::costLine(line, book, fits);
    ASSERT_FALSE(sheet.has_value());
    EXPECT_THAT(describe(sheet.error()), testing::HasSubstr("StoneInRow(2)"));
}

// What fits no sheet names the sheet.
TEST(SheetRange, namesTheSheetThatIsTooSmall) {
    for (const auto* name : {"Tape", "Template", "Backing"}) {
        auto line = sample::square(3);
        auto book = sample::freeBook();
        book.shop.usualTape = idOf("Tape");
        book.shop.usualTemplate = idOf("Template");
        for (const auto* other : {"Tape", "Template", "Backing"}) {
            auto& sheet = book.materials[idOf(other)].material.sheet;
            sheet.width = sheet.height = Length::fromInch64ths(64 * (std::string(other) == name ? 3 : 30));
        }
        layout::FitMemo fits;
        for (const auto form : {catalogue::SheetForm::Sheet, catalogue::SheetForm::Roll}) {
            book.materials[idOf(name)].material.sheet.form = form;
            const auto sheet = costing::costLine(line, book, fits);
            ASSERT_FALSE(sheet.has_value()) << name;
            EXPECT_EQ(sheet.error().code, Code::TooLarge);
            EXPECT_EQ(sheet.error().subject, name);
            EXPECT_THAT(describe(sheet.error()), testing::StartsWith("About(" + std::string(name) + ", "));
        }
    }
}

} // namespace
