// SPDX-License-Identifier: MIT
#include "tests/support/samples.h"
#include "tests/support/amounts.h"

namespace sp::test {

using catalogue::BenchStandards;
using catalogue::Certificate;
using catalogue::Customer;
using catalogue::Design;
using catalogue::Material;
using catalogue::MaterialKind;
using catalogue::Order;
using catalogue::OrderLine;
using catalogue::Pack;
using catalogue::PriceBasis;
using catalogue::Shop;
using catalogue::Supplier;
using units::Count;
using units::Date;
using units::Duration;
using units::Length;
using units::Money;
using units::Rate;
using units::Temperature;

namespace {

using support::cents;
Length mm(std::int64_t length) { return Length::fromMicrometres(length * 1'000); }
Date day(const char* iso) { return Date::parse(iso).value(); }

} // namespace

Material sampleStone(std::string name) {
    Material m;
    m.name = std::move(name);
    m.kind = MaterialKind::Stone;
    m.basis = PriceBasis::Replacement;
    m.fixedPrice = Money::fromMicros(4'861);
    m.stone = {"Aquamarine", 0x33B5C4, "SS10", Rate::fromPpm(31'250)};
    return m;
}

Material sampleTape() {
    Material m;
    m.name = "Clear tape";
    m.kind = MaterialKind::Tape;
    m.basis = PriceBasis::ShelfAverage;
    m.sheet = {.form = catalogue::SheetForm::Roll,
               .width = Length::fromInch64ths(9 * 64 + 32),
               .height = mm(10'000),
               .margin = mm(3),
               .border = Length::fromNanometres(12'700'001),
               .gap = mm(2),
               .oneWay = true,
               .basis = catalogue::ShareBasis::ByPosition,
               .lifts = 3};
    return m;
}

Material sampleBlank() {
    Material m;
    m.name = "Plain tee";
    m.kind = MaterialKind::Blank;
    m.basis = PriceBasis::Fixed;
    m.fixedPrice = cents(425);
    m.sizes = {{"2XL", cents(150), cents(200)}, {"3XL", cents(225), cents(350)}};
    return m;
}

Supplier sampleSupplier(std::string name) {
    return {.id = {},
            .name = std::move(name),
            .leadDays = 7,
            .shipping = cents(895),
            .freeFrom = cents(15'000),
            .minimum = cents(2'500),
            .freight = catalogue::FreightKind::Spread,
            .freightShare = Rate::fromPpm(35'000),
            .usualOrder = cents(12'000)};
}

Pack samplePack(const base::Id& material, const base::Id& supplier) {
    return {.id = {},
            .material = material,
            .supplier = supplier,
            .name = "bag of 10 gross",
            .amount = Count::of(1'440),
            .prices = {{Count::of(1), cents(694)}, {Count::of(5), cents(649)}},
            .usual = true,
            .pricedOn = day("2026-10-12"),
            .item = "KR-1010"};
}

catalogue::Kit sampleKit(const base::Id& stone, const base::Id& supplier, const base::Id& design) {
    return {.id = {},
            .name = "Lantern kit",
            .supplier = supplier,
            .design = design,
            .price = cents(3'495),
            .priceWithTemplates = cents(4'195),
            .items = {{stone, Count::of(1'440)}},
            .tools = {"soft brush", "tweezers"},
            .shortCount = Rate::fromPpm(12'500),
            .pricedOn = day("2026-10-12")};
}

catalogue::PriceListColumns samplePriceListColumns(const base::Id& supplier) {
    using catalogue::ListColumn;
    return {supplier, true, {{ListColumn::Price, "Preis, netto"}, {ListColumn::Material, "Artikel"}}};
}

catalogue::DesignArtwork sampleArtwork(const base::Id& design) {
    using namespace std::string_literals;
    return {.design = design,
            .fileName = "lantern.dxf",
            .format = catalogue::ArtworkFormat::Dxf,
            .file = "0\nSECTION\n\0\xFF not text"s,
            .thumbnail = "\x89PNG\r\n"s,
            .unit = Length::fromNanometres(264'583),
            .scaleFrom = catalogue::ScaleOrigin::Proposed,
            .unitName = "96 dpi",
            .holeAllowance = Length::fromNanometres(150'001),
            .counts = R"({"SS10":212})"};
}

Design sampleDesign(const base::Id& stone, const base::Id& base, std::string name) {
    return {.id = {},
            .name = std::move(name),
            .width = Length::fromInch64ths(3 * 64 + 32),
            .height = Length::fromInch64ths(2 * 64 + 48),
            .stones = {{stone, Count::of(217)}},
            .templatesOnWall = true,
            .plannedPieces = Count::of(48),
            .usualBase = base,
            .artTime = Duration::fromMinutes(35),
            .packing = {{{stone, Count::of(2), catalogue::PackingPer::Order}}},
            .note = "Hinge the tape on the left.\nLargest colour first.",
            .setCost = catalogue::SetCost{units::Money::fromMicros(6'500'000), units::Money::fromMicros(1)}};
}

Customer sampleCustomer(std::string name) {
    return {{},         std::move(name),     "4 Mill Lane",
            "555 0101", "rowan@example.org", Certificate{"EX-1042", "Vermont", day("2026-01-02"), day("2027-01-01")},
            {}};
}

Shop sampleShop(const base::Id& goods) {
    Shop shop;
    shop.letterhead = {"The Stone Bench", "1 Quay Street\n555 0100", "Half now, half on collection.",
                       "Wash inside out."};
    shop.currency = units::Currency::parse("EUR").value();
    shop.paper = catalogue::Paper::A4;
    shop.lengthUnit = units::LengthUnit::Centimetre;
    shop.temperatureUnit = units::TemperatureUnit::Celsius;
    shop.rates.labourPerHour = cents(2'250);
    shop.rates.overheadPerMonth = cents(64'000);
    shop.rates.productivePerMonth = Duration::fromMinutes(80 * 60);
    shop.rates.spoilage = Rate::fromPpm(25'000);
    shop.rates.garmentAllowance = cents(1'800);
    shop.rules.ladder = {{Count::of(1), Rate::fromPercent(150)}, {Count::of(24), Rate::fromPercent(110)}};
    shop.rules.rush = {{2, Rate::fromPercent(25)}, {7, Rate::fromPercent(10)}};
    shop.rules.places = {{"Sleeve", cents(150)}, {"Hem", cents(75)}};
    shop.rules.rounding = {catalogue::RoundingKind::Ending, 25, 99};
    shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    shop.rules.minimumOrder = cents(2'000);
    shop.rules.tax = {"VAT",
                      Rate::fromPpm(88'750),
                      true,
                      catalogue::TaxRounding::PerLine,
                      {{"VAT, reduced", Rate::fromPercent(5)}},
                      catalogue::TaxOnGifts::OnCost};
    shop.rules.cardFee = {true, Rate::fromPpm(29'000), cents(30)};
    shop.rules.depositRate = Rate::fromPercent(50);
    shop.rules.depositStep = cents(500);
    shop.rules.validDays = 21;
    shop.rules.daysToPay = 10;
    shop.smallestCoin = cents(5);
    shop.waysToPay = {{"Till", true}, {"Voucher", false}};
    shop.usedWhen = catalogue::UsedWhen::Making;
    shop.paperLanguage = "es";
    shop.ladderQuantities = {Count::of(12), Count::of(24), Count::of(48)};
    shop.ladderOnSheet = false;
    shop.offersMoreOnSheet = true;
    shop.countsDesignOverLines = false;
    shop.paysOffWork = true;
    if (!goods.isNone()) shop.packing = {{goods}};
    shop.usualTape = goods;
    shop.usualTemplate = goods;
    shop.meantAsNothing = {true, false, true, false, true, false, true};
    shop.isDemo = true;
    return shop;
}

BenchStandards sampleBench() {
    BenchStandards bench;
    std::int64_t seconds = 1;
    for (auto& step : bench.steps) {
        step = {Duration::fromSeconds(seconds), Duration::fromSeconds(seconds + 1), Duration::fromSeconds(seconds + 2),
                Duration::fromMilliseconds(seconds * 1'500), Rate::fromPercent(100 - seconds)};
        seconds += 3;
    }
    bench.press = {.price = cents(89'900),
                   .salvage = cents(9'000),
                   .lifePresses = 80'000,
                   .platenWidth = mm(400),
                   .platenHeight = mm(500),
                   .dwell = Duration::fromSeconds(10),
                   .handling = Duration::fromSeconds(22),
                   .warmUp = Duration::fromMinutes(12),
                   .testPresses = 2,
                   .secondPressShare = Rate::fromPercent(15),
                   .secondDwell = Duration::fromSeconds(5),
                   .runningPerHour = cents(38),
                   .temperature = Temperature::fromMillifahrenheit(315'000)};
    bench.cutter = {cents(120'000), cents(15'000), 9'000'000};
    return bench;
}

OrderLine sampleLine(const Design& design) {
    return {.id = design.id,
            .title = design.name,
            .places = {placementOf(design)},
            .baseMaterial = design.usualBase,
            .customersGarment = true,
            .packing = std::vector<catalogue::PackingUse>{}, // without any
            .quantity = Count::of(24),
            .sizes = {{"2XL", Count::of(3)}},
            .overrideEach = cents(1'250),
            .taxable = false,
            .atNoCharge = true,
            .taxRate = "VAT, reduced"};
}

Order sampleOrder(const base::Id& customer, const Design& design) {
    Order order;
    order.customer = customer;
    order.quotedOn = day("2026-11-25");
    order.wantedBy = day("2026-12-11");
    order.discount.share = Rate::fromPercent(5);
    order.asksExemption = true;
    order.lines = {sampleLine(design), sampleLine(design)};
    order.lines[1].title = "Lantern, small";
    order.lines[1].first().design = {};
    order.lines[1].first().plannedPieces.reset();
    order.lines[1].first().artTime.reset();
    order.lines[1].overrideEach.reset();
    order.lines[1].sizes.clear();
    return order;
}

} // namespace sp::test
