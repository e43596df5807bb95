// SPDX-License-Identifier: MIT
//
// What a material costs by how much of it the whole order takes. Every figure is worked by hand; prices are invented.
// That all packs cost what the number of them earns: common practice, no source.
#include "core/needs/order_prices.h"
#include "core/pricing/price_order.h"
#include "tests/support/amounts.h"
#include "tests/support/figures_of.h"
#include "tests/support/sample_shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sp::pricing {

namespace {

using catalogue::OrderLine;
using catalogue::PackingPer;
using costing::Part;
using sample::cents;
using sample::idOf;
using support::inches;
using testing::ElementsAre;
using units::Count;
using units::Money;

/// Lines in a shop where nothing costs anything but what a test says.
struct Bought {
    catalogue::PriceBook book = sample::freeBook();
    catalogue::Order order = sample::orderOf({});

    OrderLine& add(OrderLine line) { return order.lines.emplace_back(std::move(line)); }
    /// 4 × 4 in with 200 Aqua and 100 Jet.
    OrderLine& squares(std::int64_t pieces, const char* onto = "Hoodie") {
        auto& line = add(sample::square(pieces));
        line.baseMaterial = idOf(onto);
        return line;
    }
    /// A pack of `per` at `each`, and at other prices from so many packs on.
    void sell(const char* what, std::int64_t each, std::int64_t per,
              const std::vector<std::pair<std::int64_t, std::int64_t>>& breaks) {
        auto& material = book.materials[idOf(what)];
        material.price = units::UnitPrice{cents(each), Count::of(per)};
        for (const auto& [from, price] : breaks) material.breaks.push_back({Count::of(from), cents(price)});
    }
    std::vector<std::int64_t> costs(std::int64_t rules = catalogue::kRulesVersion) const {
        layout::FitMemo fits;
        const auto lines = costLines(order, book, fits, rules);
        EXPECT_TRUE(lines) << (lines ? "" : describe(lines.error()));
        std::vector<std::int64_t> micros;
        for (const auto& line : lines.value_or(std::vector<CostedLine>{})) micros.push_back(line.cost.total.micros());
        return micros;
    }
    costing::CostSheet sheet(std::size_t line) const {
        layout::FitMemo fits;
        return costSheetOf(order, line, book, fits).value();
    }
};

} // namespace

// 23 × 13.90 = 319.70; 24 × 12.79 = 306.96.
TEST(OrderPrices, areThoseOfThePacksTheNeedTakes) {
    Bought job;
    job.sell("Hoodie", 1390, 1, {{24, 1279}, {48, 1230}});
    auto& line = job.squares(23);
    EXPECT_THAT(job.costs(), ElementsAre(319'700'000));
    line.quantity = Count::of(24);
    EXPECT_THAT(job.costs(), ElementsAre(306'960'000));
    line.quantity = Count::of(48);
    EXPECT_THAT(job.costs(), ElementsAre(590'400'000)); // × 12.30
    EXPECT_THAT(job.costs(2), ElementsAre(667'200'000)) << "before rules 3: the price of one";
}

// 12 + 12 hoodies are 24, on two lines and of two designs; a charge that sells one more makes no difference to 24.
TEST(OrderPrices, countTheLinesTogether) {
    Bought job;
    job.sell("Hoodie", 1390, 1, {{24, 1279}});
    job.squares(12);
    auto& other = job.squares(11);
    other.first().width = inches(5);
    EXPECT_THAT(job.costs(), ElementsAre(166'800'000, 152'900'000));
    OrderLine sold;
    sold.places.clear();
    sold.title = "Plain hoodie";
    sold.baseMaterial = idOf("Hoodie");
    job.add(sold);
    EXPECT_THAT(job.costs(), ElementsAre(153'480'000, 140'690'000, 12'790'000));
    job.order.lines[2].atNoCharge = true; // a gift is bought all the same
    EXPECT_THAT(job.costs(), ElementsAre(153'480'000, 140'690'000, 12'790'000));
    job.order.lines[1].customersGarment = true; // one that is brought is not
    job.order.lines[1].baseMaterial = {};
    EXPECT_THAT(job.costs(), ElementsAre(166'800'000, 0, 13'900'000));
}

// 200 a piece, 2 % lost. 28 pieces take 5,714.3, so 4 bags of 1,440: 5,600 ÷ 0.98 × 9.99 ÷ 1,440 = 39.642857. 29 take
// 5,918.4, so 5 bags at 9.50: 5,800 ÷ 0.98 × 9.50 ÷ 1,440 = 39.044785.
TEST(OrderPrices, countStonesWithTheirLoss) {
    Bought job;
    job.sell("Aqua", 999, 1440, {{5, 950}});
    job.book.materials[idOf("Aqua")].material.stone.loss = units::Rate::fromPercent(2);
    auto& line = job.squares(28);
    EXPECT_THAT(job.costs(), ElementsAre(39'642'857));
    line.quantity = Count::of(29);
    EXPECT_THAT(job.costs(), ElementsAre(39'044'785));
    // 28 and 1 are 29: 38.271... = 5,600 ÷ 0.98 × 9.50 ÷ 1,440 = 37.698413, and 200 ÷ 0.98 × 9.50 ÷ 1,440 = 1.346372.
    line.quantity = Count::of(28);
    job.squares(1);
    EXPECT_THAT(job.costs(), ElementsAre(37'698'413, 1'346'372));
}

// Six squares on a sheet of backing. 30 take five sheets of 1.18, 31 six at 1.00, whichever lines they are on: 5 and 7
// pieces take one and two sheets.
TEST(OrderPrices, countWholeSheetsLineByLine) {
    Bought job;
    job.sell("Backing", 118, 1, {{6, 100}});
    auto& line = job.squares(30, "Backing");
    EXPECT_THAT(job.costs(), ElementsAre(5'900'000));
    line.quantity = Count::of(31);
    EXPECT_THAT(job.costs(), ElementsAre(6'000'000));
    line.quantity = Count::of(17); // 3 sheets
    job.squares(5, "Backing");
    auto& third = job.squares(1, "Backing");
    EXPECT_THAT(job.costs(), ElementsAre(3'540'000, 1'180'000, 1'180'000));
    third.quantity = Count::of(7);
    EXPECT_THAT(job.costs(), ElementsAre(3'000'000, 1'000'000, 2'000'000));
    // By position each piece pays a sixth of a sheet, of sheets that are bought whole.
    job.book.materials[idOf("Backing")].material.sheet.basis = catalogue::ShareBasis::ByPosition;
    EXPECT_THAT(job.costs(), ElementsAre(2'833'333, 833'333, 1'166'667));
}

// A piece of tape lifts twice, six lie on a sheet: 24 pieces take 12, two sheets.
TEST(OrderPrices, countTapeAndRolls) {
    Bought job;
    job.book.shop.usualTape = idOf("Tape");
    job.sell("Tape", 145, 1, {{2, 120}});
    auto& tape = job.book.materials[idOf("Tape")].material.sheet;
    tape.basis = catalogue::ShareBasis::WholeSheets;
    auto& line = job.squares(12);
    EXPECT_THAT(job.costs(), ElementsAre(1'450'000));
    line.quantity = Count::of(24);
    EXPECT_THAT(job.costs(), ElementsAre(2'400'000));
    // On a roll of 9 1/2 × 40 in lie two beside each other, ten long: 20 pieces a roll. 40 pieces need one roll and pay
    // all of it, 44 need a second and pay 44 of its inches.
    tape.form = catalogue::SheetForm::Roll;
    tape.height = inches(40);
    line.quantity = Count::of(40);
    EXPECT_THAT(job.costs(), ElementsAre(1'450'000));
    line.quantity = Count::of(44);
    EXPECT_THAT(job.costs(), ElementsAre(1'320'000)); // 44 in ÷ 40 in × 1.20
}

// A set of two colours is one sheet. Two lines that share it pay the 8.00 of one sheet, two sets cost 6.00 each.
TEST(OrderPrices, countASharedSetOnce) {
    Bought job;
    job.book.shop.usualTemplate = idOf("Template");
    job.sell("Template", 800, 1, {{2, 600}});
    for (const auto pieces : {30, 10}) job.squares(pieces).first().design = idOf("Square");
    EXPECT_THAT(job.costs(), ElementsAre(6'000'000, 2'000'000));
    job.order.lines[1].first().design = idOf("Other");
    EXPECT_THAT(job.costs(), ElementsAre(6'000'000, 6'000'000));
    job.order.lines[1].first().templatesOnWall = true;
    EXPECT_THAT(job.costs(), ElementsAre(8'000'000, 0));
}

// Bags of 100 at 6.20, from three 5.00; a box with the order at 2.00, from 4 at 1.00, as many as the line that names
// most.
TEST(OrderPrices, countPackingOfPiecesAndOfTheOrder) {
    Bought job;
    job.sell("Bag", 620, 100, {{3, 500}});
    job.sell("Box", 200, 1, {{4, 100}});
    job.book.shop.packing = {{idOf("Bag"), Count::of(2)}, {idOf("Box"), Count::of(3), PackingPer::Order}};
    job.squares(100);
    EXPECT_THAT(job.costs(), ElementsAre(12'400'000 + 6'000'000));
    auto& more = job.squares(1);
    EXPECT_EQ(job.costs()[0] + job.costs()[1], 2 * 5'050'000 + 6'000'000); // 202 bags in three packs
    more.packing = {{idOf("Box"), Count::of(4), PackingPer::Order}};
    EXPECT_EQ(job.costs()[0] + job.costs()[1], 12'400'000 + 4'000'000);
}

TEST(OrderPrices, standOnTheCostSheetWithTheirNeed) {
    Bought job;
    job.sell("Hoodie", 1390, 1, {{24, 1279}});
    job.sell("Jet", 650, 1440, {});
    job.squares(20);
    job.squares(4);
    const auto sheet = job.sheet(1);
    EXPECT_EQ(sample::amountOf(sheet, Part::BasePrice), cents(4 * 1279));
    ASSERT_TRUE(sheet.needs);
    EXPECT_EQ(sheet.needs->at(idOf("Hoodie")),
              (needs::PackedNeed{24, 24, units::UnitPrice{cents(1279), Count::of(1)}}));
    EXPECT_EQ(sheet.needs->at(idOf("Jet")), // also what costs the same whatever is bought
              (needs::PackedNeed{2'400, 2, units::UnitPrice{cents(650), Count::of(1440)}}));
}

// Freight is on the goods as they cost: 24 × 12.79 × 10 %.
TEST(OrderPrices, areWhatFreightIsReckonedFrom) {
    Bought job;
    job.sell("Hoodie", 1390, 1, {{24, 1279}});
    job.book.materials[idOf("Hoodie")].freight = {catalogue::FreightKind::Share, units::Rate::fromPercent(10), {}, {}};
    job.squares(24);
    EXPECT_THAT(job.costs(), ElementsAre(306'960'000 + 30'696'000));
}

} // namespace sp::pricing
