// SPDX-License-Identifier: MIT
#include "db/records/record.h"
#include "tests/support/samples.h"

#include <functional>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using namespace sp;
using base::Code;
using nlohmann::json;
using units::Money;

base::Id key(std::uint64_t n) { return base::Id::fromTime(n, std::array<std::uint8_t, 10>{}); }

catalogue::Material stone() {
    auto material = test::sampleStone();
    material.id = key(1);
    return material;
}

template<class T>
void expectSame(const T& value) {
    const auto read = db::records::read<T>(db::records::write(value));
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(*read, value);
}

TEST(Record, readsBackEveryValue) {
    expectSame(stone());
    auto blank = test::sampleBlank();
    blank.id = key(2);
    expectSame(blank);
    auto tape = test::sampleTape();
    tape.id = key(3);
    expectSame(tape);
    auto supplier = test::sampleSupplier();
    supplier.id = key(4);
    expectSame(supplier);
    auto pack = test::samplePack(key(1), key(4));
    pack.id = key(5);
    expectSame(pack);
    auto kit = test::sampleKit(key(1), key(4), key(6));
    kit.id = key(8);
    expectSame(kit);
    expectSame(test::samplePriceListColumns(key(4)));
    expectSame(catalogue::ColourMaterial{key(9), 0x4FC3CF, "SS10", key(1)});
    expectSame(db::records::ArtworkRecord{key(6), "lantern.svg", catalogue::ArtworkFormat::Svg, std::string(64, 'a'),
                                          std::string(64, 'b'), units::Length::fromNanometres(1'000'000),
                                          catalogue::ScaleOrigin::Typed, "mm", units::Length::fromNanometres(1), "[]"});
    auto design = test::sampleDesign(key(1), key(2));
    design.id = key(6);
    expectSame(design);
    auto customer = test::sampleCustomer();
    customer.id = key(7);
    expectSame(customer);
    expectSame(test::sampleShop(key(3)));
    expectSame(test::sampleBench());
    expectSame(test::sampleOrder(key(7), design));
    expectSame(catalogue::Order{});
    expectSame(catalogue::PricedMaterial{
        stone(),
        units::UnitPrice{Money::fromMicros(6'940'000), units::Count::of(1'440)},
        {catalogue::PriceOrigin::Kind::Pack, true, "Harbour Lane Beads", "bag of 10 gross",
         *units::Date::parse("2026-10-12")},
        {catalogue::FreightKind::Spread, units::Rate::fromPpm(1), Money::fromMicros(2), Money::fromMicros(3)},
        {{units::Count::of(4), Money::fromMicros(6'500'000)}, {units::Count::of(12), Money::fromMicros(6'100'000)}}});
    expectSame(catalogue::PricedMaterial{stone(), std::nullopt, {}});
}

catalogue::Order twoLines() {
    auto design = test::sampleDesign(key(1), key(2));
    design.id = key(6);
    return test::sampleOrder(key(7), design);
}

/// A record as JSON, changed by hand.
template<class T>
base::Result<T> readChanged(const T& value, const std::function<void(json&)>& change) {
    auto record = json::parse(db::records::write(value));
    change(record["value"]);
    return db::records::read<T>(record.dump());
}

// What version 1 said in English of a price, word for word as that program wrote it.
TEST(Record, readsWhereAPriceComesFromOutOfTheSentenceOfBefore) {
    using Kind = catalogue::PriceOrigin::Kind;
    const auto readWith = [](const char* sentence) {
        auto record = json::parse(db::records::write(catalogue::PricedMaterial{stone(), std::nullopt, {}}));
        record["format"] = 1;
        record["value"].erase("origin");
        record["value"].erase("freight");
        record["value"].erase("breaks");
        record["value"]["material"].erase("meant_as_nothing");
        record["value"]["price_from"] = sentence;
        const auto read = db::records::read<catalogue::PricedMaterial>(record.dump());
        EXPECT_TRUE(read) << sentence << ": " << (read ? "" : describe(read.error()));
        return read ? read->origin : catalogue::PriceOrigin{};
    };
    const auto kind = [](Kind of, bool isShelfBare = false) {
        return catalogue::PriceOrigin{of, isShelfBare, {}, {}, std::nullopt};
    };
    EXPECT_EQ(readWith(""), kind(Kind::Unsaid));
    EXPECT_EQ(readWith("fixed price"), kind(Kind::Fixed));
    EXPECT_EQ(readWith("its fixed price is not set"), kind(Kind::NotFixed));
    EXPECT_EQ(readWith("average of the shelf"), kind(Kind::ShelfAverage));
    EXPECT_EQ(readWith("no pack of it is known"), kind(Kind::NoPack));
    EXPECT_EQ(readWith("nothing with a cost is on the shelf; no pack of it is known"), kind(Kind::NoPack, true));
    EXPECT_EQ(readWith("nothing with a cost is on the shelf; Kestrel Row Stones, bag of 10 gross, 12 Oct 2026"),
              (catalogue::PriceOrigin{Kind::Pack, true, {}, "Kestrel Row Stones, bag of 10 gross, 12 Oct 2026", {}}));
}

// What an order will hold has its place in the file before the program works with it.
TEST(Record, keepsAnOrderInTheShapeOfTheFile) {
    const auto order = json::parse(db::records::write(twoLines()));
    EXPECT_EQ(order["format"], 4);
    const auto& choice = order["value"]["choices"].at(0);
    EXPECT_EQ(choice["discount"]["share_ppm"], 50'000);
    const auto& line = choice["lines"].at(0);
    EXPECT_EQ(line["kind"], "piece");
    EXPECT_EQ(line["quantity"], 24);
    EXPECT_EQ(line["tax_rate"], "VAT, reduced");
    const auto& place = line["places"].at(0);
    EXPECT_EQ(place["templates"], "wall");
    EXPECT_EQ(place["stones"].at(0)["count"], 217);
    EXPECT_EQ(place["entries"], json::array());
    EXPECT_FALSE(line.contains("stones"));
    const auto shop = json::parse(db::records::write(test::sampleShop(key(3))));
    EXPECT_EQ(shop["value"]["packing"].at(0), (json{{"amount", 1}, {"material", key(3).text()}, {"per", "piece"}}));
    EXPECT_EQ(shop["value"]["rules"]["tax"]["rates"],
              (json{{{"name", "VAT"}, {"rate_ppm", 88'750}}, {{"name", "VAT, reduced"}, {"rate_ppm", 50'000}}}));
}

TEST(Record, keepsDesignsAtSeveralPlacesAndCharges) {
    auto order = twoLines();
    auto& places = order.lines[0].places;
    places.push_back(places[0]);
    places[0].place = "Front";
    places[1].place = "Back";
    places[1].title = "Studio crest";
    places[1].templatesOnWall = !places[0].templatesOnWall;
    order.lines[1].places.clear();
    order.lines[1].title = "Postage";
    const auto text = db::records::write(order);
    const auto read = db::records::read<catalogue::Order>(text);
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(*read, order);
    const auto lines = json::parse(text)["value"]["choices"].at(0)["lines"];
    EXPECT_EQ(lines.at(0)["kind"], "piece");
    EXPECT_EQ(lines.at(0)["places"].at(1)["title"], "Studio crest");
    EXPECT_EQ(lines.at(1)["kind"], "charge");
    EXPECT_EQ(lines.at(1)["places"], json::array());
}

TEST(Record, keepsTheChoicesOfAnOrderInTheirPlaces) {
    auto order = twoLines();
    catalogue::addChoice(order);
    order.title = "Thirty-six of them";
    order.lines[0].quantity = units::Count::of(36);
    catalogue::addChoice(order);
    order.discount = {};
    order.lines.pop_back();
    catalogue::lookAtChoice(order, 1);
    const auto text = db::records::write(order);
    const auto value = json::parse(text)["value"];
    EXPECT_EQ(value["choice"], 1);
    ASSERT_EQ(value["choices"].size(), 3U);
    EXPECT_EQ(value["choices"][0]["lines"][0]["quantity"], 24);
    EXPECT_EQ(value["choices"][1]["title"], "Thirty-six of them");
    EXPECT_EQ(value["choices"][1]["lines"][0]["quantity"], 36);
    EXPECT_EQ(value["choices"][2]["lines"].size(), 1U);
    EXPECT_FALSE(value.contains("others"));
    const auto read = db::records::read<catalogue::Order>(text);
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(*read, order);
}

// As the program before this wrote it.
TEST(Record, readsAnOrderOfBeforeChoicesAsOne) {
    auto saved = json::parse(db::records::write(twoLines()));
    saved["format"] = 3;
    saved["value"].erase("choice");
    const auto read = db::records::read<catalogue::Order>(saved.dump());
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(*read, twoLines());
    saved["value"]["choices"].push_back(saved["value"]["choices"][0]);
    EXPECT_EQ(db::records::read<catalogue::Order>(saved.dump()).error().code, Code::Damaged) << "no version 3 had two";
}

TEST(Record, refusesALineWhosePlacesAreNotOfItsKind) {
    const auto first = [](json& order) -> json& { return order["choices"][0]["lines"][0]; };
    const std::vector<std::function<void(json&)>> wrong{
        [&](json& order) { first(order)["kind"] = "charge"; },
        [&](json& order) { first(order)["places"] = json::array(); },
        [&](json& order) { first(order)["places"] = json::array_t(9, first(order)["places"][0]); },
    };
    for (const auto& change : wrong) EXPECT_EQ(readChanged(twoLines(), change).error().code, Code::Damaged);
}

TEST(Record, leavesWhatOnlyALaterProgramKnowsToIt) {
    const auto first = [](json& order) -> json& { return order["choices"][0]["lines"][0]; };
    const std::vector<std::function<void(json&)>> later{
        [&](json& order) {
            first(order)["places"][0]["entries"].push_back({{"name", "Odette"}});
        },
        [&](json& order) {
            first(order)["places"][0]["position"] = {{"down_nm", 1}};
        },
    };
    for (const auto& change : later) EXPECT_EQ(readChanged(twoLines(), change).error().code, Code::TooNew);
    const std::vector<std::function<void(json&)>> damaged{
        [](json& order) { order.erase("choices"); },
        [](json& order) { order["choices"][0]["colour"] = 1; },
        [](json& order) { order["choices"][0].erase("lines"); },
        [](json& order) { order["choices"] = json::array(); },
        [](json& order) { order["choices"] = json::array_t(5, order["choices"][0]); },
        [](json& order) { order["choice"] = 1; },
        [](json& order) { order["choice"] = -1; },
        [](json& order) { order.erase("choice"); },
        [](json& order) { order["choices"][0]["lines"] = 1; },
        [&](json& order) { first(order)["places"][0]["templates"] = "lost"; },
        [&](json& order) { first(order)["places"][0]["colour"] = 1; },
        [&](json& order) { first(order)["places"] = "front"; },
        [&](json& order) { first(order)["stones"] = json::array(); },
    };
    for (const auto& change : damaged) EXPECT_EQ(readChanged(twoLines(), change).error().code, Code::Damaged);
}

TEST(Record, keepsTemperaturesOfBothScalesExactly) {
    for (const std::int64_t milli : {-40'000, 0, 157'222, 160'000, 315'000, 320'001}) {
        auto bench = test::sampleBench();
        bench.press.temperature = units::Temperature::fromMillifahrenheit(milli);
        expectSame(bench);
        bench.press.temperature = units::Temperature::fromMillicelsius(milli);
        expectSame(bench);
    }
}

TEST(Record, keepsWholeNumbersWhole) {
    auto material = stone();
    material.fixedPrice = Money::fromMicros(999'999'999'999'999); // not exact as a float of 32 or a text in e-notation
    const auto text = db::records::write(material);
    EXPECT_NE(text.find("\"fixed_price_micros\":999999999999999"), std::string::npos) << text;
    expectSame(material);
}

TEST(Record, writesTheSameBytesForTheSameValue) {
    EXPECT_EQ(db::records::write(stone()), db::records::write(stone()));
    EXPECT_TRUE(db::records::write(stone()).starts_with(R"({"format":2,"kind":"material","value":{"basis":)"));
}

// What must not be read, made from a good record.
struct Spoilt {
    const char* name;
    void (*spoil)(json& record);
    Code code = Code::Damaged;
};

void PrintTo(const Spoilt& row, std::ostream* out) { *out << row.name; }

class SpoiltRecord : public testing::TestWithParam<Spoilt> {};

TEST_P(SpoiltRecord, isRefused) {
    auto record = json::parse(db::records::write(stone()));
    GetParam().spoil(record);
    const auto read = db::records::read<catalogue::Material>(record.dump());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, GetParam().code) << describe(read.error());
}

INSTANTIATE_TEST_SUITE_P(
    Record, SpoiltRecord,
    testing::Values(Spoilt{"missingKey",
                           [](json& r) {
                               r["value"].erase("rgb");
                               r["value"]["stone"].erase("rgb");
                           }},
                    Spoilt{"unknownKey", [](json& r) { r["value"]["stone"]["shape"] = "round"; }},
                    Spoilt{"unknownKeyOutside", [](json& r) { r["more"] = 1; }},
                    Spoilt{"laterFormat", [](json& r) { r["format"] = 99; }, Code::TooNew},
                    Spoilt{"formatZero", [](json& r) { r["format"] = 0; }},
                    Spoilt{"noFormat", [](json& r) { r.erase("format"); }},
                    Spoilt{"formatAsText", [](json& r) { r["format"] = "1"; }},
                    Spoilt{"otherKind", [](json& r) { r["kind"] = "design"; }},
                    Spoilt{"floatForWhole", [](json& r) { r["value"]["fixed_price_micros"] = 1.0; }},
                    Spoilt{"textForWhole", [](json& r) { r["value"]["fixed_price_micros"] = "1"; }},
                    Spoilt{"tooLargeForSixtyFour", [](json& r) { r["value"]["fixed_price_micros"] = UINT64_MAX; }},
                    Spoilt{"outOfRange", [](json& r) { r["value"]["stone"]["loss_ppm"] = 1'000'000; }},
                    Spoilt{"negative", [](json& r) { r["value"]["sheet"]["width_nm"] = -1; }},
                    Spoilt{"wholeForYesNo", [](json& r) { r["value"]["sheet"]["one_way"] = 1; }},
                    Spoilt{"unknownWord", [](json& r) { r["value"]["kind"] = "glitter"; }},
                    Spoilt{"noKey", [](json& r) { r["value"]["id"] = nullptr; }},
                    Spoilt{"notAKey", [](json& r) { r["value"]["id"] = "017f22e2"; }},
                    Spoilt{"nullName", [](json& r) { r["value"]["name"] = nullptr; }},
                    Spoilt{"listForObject", [](json& r) { r["value"]["stone"] = json::array(); }},
                    Spoilt{"objectForList", [](json& r) { r["value"]["sizes"] = json::object(); }},
                    Spoilt{"nulInText", [](json& r) { r["value"]["name"] = std::string("a\0b", 3); }},
                    Spoilt{"valueMissing", [](json& r) { r.erase("value"); }},
                    Spoilt{"valueNull", [](json& r) { r["value"] = nullptr; }}),
    [](const auto& row) { return row.param.name; });

TEST(Record, refusesTextThatIsNoRecord) {
    for (const std::string text : {"", "null", "[]", "{", "{}", "1", "\xFF", R"({"format":1,"format":1})"})
        EXPECT_EQ(db::records::read<catalogue::Material>(text).error().code, Code::Damaged) << text;
    const auto whole = db::records::write(stone());
    for (std::size_t length = 0; length < whole.size(); ++length)
        EXPECT_FALSE(db::records::read<catalogue::Material>(whole.substr(0, length))) << length;
    EXPECT_FALSE(db::records::read<catalogue::Material>(std::string(200'000, '[')));
}

TEST(Record, refusesAKeyThatStandsTwice) {
    auto text = db::records::write(stone());
    const std::string field = R"("lifts":1,)";
    const auto place = text.find(field);
    ASSERT_NE(place, std::string::npos);
    text.insert(place, field);
    EXPECT_EQ(db::records::read<catalogue::Material>(text).error().code, Code::Damaged);
}

TEST(Record, readsAShopOfBeforeAsOneThatMeansNoneOfItsZeros) {
    auto shop = test::sampleShop(key(3));
    auto saved = json::parse(db::records::write(shop));
    saved["value"].erase("meant_as_nothing");
    saved["value"].erase("offers_more_on_sheet");
    saved["value"].erase("counts_design_over_lines");
    saved["value"].erase("pays_off_work");
    saved["value"].erase("being_set_up");
    saved["value"].erase("bench_week");
    saved["value"].erase("closed_days");
    saved["value"].erase("smallest_coin_micros");
    saved["value"].erase("ways_to_pay");
    saved["value"].erase("used_when");
    saved["value"].erase("paper_language");
    saved["value"]["rates"].erase("spares");
    saved["value"]["rules"]["tax"].erase("on_gifts");
    saved["value"]["rules"].erase("places");
    saved["value"]["rules"].erase("days_to_pay");
    EXPECT_EQ(db::records::read<catalogue::Shop>(saved.dump()).error().code, Code::Damaged);
    saved["format"] = 2;
    shop.meantAsNothing = {};
    shop.offersMoreOnSheet = false;
    shop.countsDesignOverLines = true;
    shop.paysOffWork = false;
    shop.isBeingSetUp = false;
    shop.rules.tax.onGifts = catalogue::TaxOnGifts::None;
    shop.rules.places = {};
    shop.rules.daysToPay = 14;
    shop.smallestCoin = {};
    shop.waysToPay = {};
    shop.usedWhen = catalogue::UsedWhen::ByHand;
    shop.paperLanguage = {};
    EXPECT_EQ(db::records::read<catalogue::Shop>(saved.dump()).value(), shop);
}

TEST(Record, noTwoWaysToPayHaveOneName) {
    auto shop = test::sampleShop(key(3));
    shop.waysToPay.push_back({"Voucher", true});
    EXPECT_EQ(describe(catalogue::fields::check(shop).error().message()), "WayToPayTwice(TheField(WaysToPay))");
}

TEST(Record, keepsWhenTheBenchIsWorkedAt) {
    auto shop = test::sampleShop(key(3));
    EXPECT_FALSE(shop.benchWeek.isKnown());
    shop.benchWeek.monday = units::Duration::fromMinutes(150);
    shop.benchWeek.sunday = units::Duration::fromMinutes(60);
    shop.closedDays = {{*units::Date::parse("2026-12-24"), *units::Date::parse("2027-01-02"), "holidays"},
                       {*units::Date::parse("2026-12-31"), *units::Date::parse("2026-12-31"), ""}};
    expectSame(shop);
    shop.closedDays[0].to = shop.closedDays[0].from.plusDays(-1);
    EXPECT_EQ(describe(catalogue::fields::check(shop).error().message()), "EndsBeforeItBegins(TheField(ClosedTo))");
}

TEST(Record, readsAMaterialOfBeforeAsOneWhoseNothingIsNotMeant) {
    auto material = stone();
    material.meantAsNothing = true;
    expectSame(material);
    auto saved = json::parse(db::records::write(material));
    saved["format"] = 1;
    saved["value"].erase("meant_as_nothing");
    material.meantAsNothing = false;
    EXPECT_EQ(db::records::read<catalogue::Material>(saved.dump()).value(), material);
}

TEST(Record, refusesWhatIsNoDayOrCurrency) {
    auto order = json::parse(db::records::write(catalogue::Order{}));
    order["value"]["quoted_on"] = "2026-02-30";
    EXPECT_FALSE(db::records::read<catalogue::Order>(order.dump()));
    auto shop = json::parse(db::records::write(test::sampleShop({})));
    shop["value"]["currency"] = "eur";
    EXPECT_FALSE(db::records::read<catalogue::Shop>(shop.dump()));
    auto bench = json::parse(db::records::write(test::sampleBench()));
    bench["value"]["steps"]["glue"] = bench["value"]["steps"]["art"];
    EXPECT_FALSE(db::records::read<catalogue::BenchStandards>(bench.dump()));
    bench = json::parse(db::records::write(test::sampleBench()));
    bench["value"]["press"]["temperature"]["milli"] = INT64_MAX;
    EXPECT_FALSE(db::records::read<catalogue::BenchStandards>(bench.dump()));
}

} // namespace
