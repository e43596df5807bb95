// SPDX-License-Identifier: MIT
// What a price leaves out without a word is said: a row for each, with the field that mends it.
#include "core/pricing/left_out.h"

#include "core/catalogue/fields/tables.h"
#include "core/pricing/messages.h"
#include "tests/support/described.h"
#include "tests/support/sample_shop.h"

#include <gtest/gtest.h>

#include <functional>

namespace sp::pricing {

namespace {

using catalogue::PriceBook;
using sample::idOf;

std::vector<LeftOut> leftOut(const catalogue::Order& order, const PriceBook& book) {
    layout::FitMemo fits;
    const auto priced = priceOrder(order, book, fits);
    EXPECT_TRUE(priced) << (priced ? "" : describe(priced.error()));
    return leftOutOf(order, book, priced.value());
}

std::vector<std::string> said(const std::vector<LeftOut>& found) {
    std::vector<base::Message> all;
    for (const auto& one : found) all.push_back(one.what);
    return test::described(all);
}

using Said = std::vector<std::string>;

struct Row {
    const char* name;
    std::function<void(PriceBook&)> leave;
    const char* says;
    const char* field;
    bool catalogue::MeantAsNothing::*meant;
};

class LeftOutRow : public testing::TestWithParam<Row> {};

TEST_P(LeftOutRow, isSaidUntilItIsMeant) {
    auto book = sample::priceBook();
    const auto order = sample::orderOf({sample::lantern(24)});
    EXPECT_EQ(said(leftOut(order, book)), Said{});
    GetParam().leave(book);
    const auto found = leftOut(order, book);
    ASSERT_EQ(said(found), Said{GetParam().says});
    EXPECT_EQ(found[0].field->id(), GetParam().field);
    EXPECT_TRUE(found[0].material.isNone());
    book.shop.meantAsNothing.*GetParam().meant = true;
    EXPECT_EQ(said(leftOut(order, book)), Said{});
}

INSTANTIATE_TEST_SUITE_P(
    Each, LeftOutRow,
    testing::Values(Row{"tape", [](PriceBook& b) { b.shop.usualTape = {}; }, "NoTape", "Shop.usual_tape",
                        &catalogue::MeantAsNothing::tape},
                    Row{"templates", [](PriceBook& b) { b.shop.usualTemplate = {}; }, "NoTemplate",
                        "Shop.usual_template", &catalogue::MeantAsNothing::templates},
                    Row{"labour", [](PriceBook& b) { b.shop.rates.labourPerHour = {}; }, "NoLabour(0.00)",
                        "ShopRates.labour_per_hour_micros", &catalogue::MeantAsNothing::labour},
                    Row{"overhead", [](PriceBook& b) { b.shop.rates.overheadPerMonth = {}; }, "NoOverhead(0.00)",
                        "ShopRates.overhead_per_month_micros", &catalogue::MeantAsNothing::overhead},
                    Row{"running", [](PriceBook& b) { b.bench.press.runningPerHour = {}; }, "NoPressRunning(0.00)",
                        "HeatPress.running_per_hour_micros", &catalogue::MeantAsNothing::pressRunning},
                    Row{"wear", [](PriceBook& b) { b.bench.press.salvage = b.bench.press.price; }, "NoPressWear(0.00)",
                        "HeatPress.price_micros", &catalogue::MeantAsNothing::pressWear},
                    Row{"cutter", [](PriceBook& b) { b.bench.cutter.price = {}; }, "NoCutterWear(0.00)",
                        "Cutter.price_micros", &catalogue::MeantAsNothing::cutterWear}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(LeftOut, isNotSaidOfWhatTheOrderDoesNotNeed) {
    auto book = sample::priceBook();
    book.shop.usualTemplate = {};
    book.bench.cutter.price = {};
    auto onWall = sample::lantern(24);
    onWall.first().templatesOnWall = true;
    EXPECT_EQ(said(leftOut(sample::orderOf({onWall}), book)), Said{});
    EXPECT_EQ(said(leftOut(sample::orderOf({onWall, sample::square(1)}), book)),
              (Said{"NoTemplate", "NoCutterWear(0.00)"}));
}

// Three plain hoodies are sold as they are: there is nothing to make that could be left out.
TEST(LeftOut, isNotSaidOfWhatIsOnlySold) {
    auto book = sample::priceBook();
    book.shop.usualTape = {};
    book.shop.rates.labourPerHour = {};
    book.bench.press.runningPerHour = {};
    auto hoodies = sample::lantern(3);
    hoodies.places.clear();
    hoodies.baseMaterial = idOf("Hoodie");
    EXPECT_EQ(said(leftOut(sample::orderOf({hoodies}), book)), Said{});
    book.materials[idOf("Hoodie")].price->price = {};
    EXPECT_EQ(said(leftOut(sample::orderOf({hoodies}), book)), Said{"CostsNothing(Hoodie, 0.00)"});
    EXPECT_EQ(said(leftOut(sample::orderOf({hoodies, sample::lantern(1)}), book)).size(), 4U);
}

// Nobody is told of a template sheet for nothing where none is cut, and is where one is.
TEST(LeftOut, namesATemplateSheetThatCostsNothingWhereOneIsCut) {
    auto book = sample::priceBook();
    book.materials[book.shop.usualTemplate].price->price = {};
    auto line = sample::lantern(24);
    EXPECT_EQ(said(leftOut(sample::orderOf({line}), book)), Said{"CostsNothing(Template, 0.00)"});
    line.first().templatesOnWall = true;
    EXPECT_EQ(said(leftOut(sample::orderOf({line}), book)), Said{});
}

TEST(LeftOut, isWorkThatTakesNoTime) {
    auto book = sample::priceBook();
    book.bench.steps = {};
    const auto order = sample::orderOf({sample::lantern(24)});
    EXPECT_EQ(said(leftOut(order, book)), Said{"NoBenchTime"});
    book.shop.rates.labourPerHour = book.shop.rates.overheadPerMonth = {};
    book.shop.meantAsNothing.labour = book.shop.meantAsNothing.overhead = true;
    EXPECT_EQ(said(leftOut(order, book)), Said{}) << "an hour that costs nothing may be any number of hours";
}

TEST(LeftOut, namesAMaterialOnceThatCostsNothing) {
    auto book = sample::priceBook();
    for (const auto* name : {"Jet", "Tape", "Hoodie"}) book.materials[idOf(name)].price->price = {};
    const auto found = leftOut(sample::orderOf({sample::lantern(24), sample::square(2)}), book);
    EXPECT_EQ(said(found), (Said{"CostsNothing(Jet, 0.00)", "CostsNothing(Tape, 0.00)"}));
    EXPECT_EQ(found[0].material, idOf("Jet"));
    EXPECT_EQ(found[0].field->id(), "PriceBreak.each_micros");
}

TEST(LeftOut, isNotSaidOfAMaterialThatIsMeantToCostNothing) {
    auto book = sample::priceBook();
    auto& jet = book.materials[idOf("Jet")];
    jet.price->price = {};
    jet.material.meantAsNothing = true;
    const auto order = sample::orderOf({sample::lantern(24)});
    EXPECT_EQ(said(leftOut(order, book)), Said{});
    jet.material.meantAsNothing = false;
    EXPECT_EQ(said(leftOut(order, book)), Said{"CostsNothing(Jet, 0.00)"});
}

// A new book has neither: what the owner has not set is said all together, in the order a shop is set up.
TEST(LeftOut, isEverythingInABookThatSaysNothing) {
    const auto found = leftOut(sample::orderOf({sample::lantern(24)}), sample::freeBook());
    EXPECT_EQ(said(found), (Said{"NoTape", "NoTemplate", "NoLabour(0.00)", "NoOverhead(0.00)", "NoPressRunning(0.00)",
                                 "NoPressWear(0.00)", "NoCutterWear(0.00)", "CostsNothing(Aqua, 0.00)",
                                 "CostsNothing(Jet, 0.00)", "CostsNothing(Backing, 0.00)"}));
}

// A material without any price is no price of 0: the order has none, and it is named.
TEST(LeftOut, aMaterialWithoutAPriceIsNamed) {
    auto book = sample::priceBook();
    book.materials[idOf("Jet")].price.reset();
    layout::FitMemo fits;
    const auto priced = priceOrder(sample::orderOf({sample::lantern(24)}), book, fits);
    ASSERT_FALSE(priced);
    EXPECT_EQ(test::described(priced.error()), "NoPrice(Jet)");
}

} // namespace

} // namespace sp::pricing
