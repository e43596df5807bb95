// SPDX-License-Identifier: MIT
// Records grow older than the program. A lamp is made here in three versions, each as the program of its time had it,
// and what an earlier program wrote is read by the later ones.
#include "db/records/json.h"
#include "db/records/record.h"
#include "tests/support/described.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using sp::base::Code;
using sp::db::records::Json;
using sp::units::Money;

/// Version 1.
struct Bulb1 {
    std::int64_t watts = 0;

    friend bool operator==(const Bulb1&, const Bulb1&) = default;
};
struct Lamp1 {
    std::string name;
    Money price;
    std::vector<Bulb1> bulbs;
};
/// Version 2: a field came new, one in a row of a list too.
struct Bulb2 {
    std::int64_t watts = 0;
    bool dims = false;

    friend bool operator==(const Bulb2&, const Bulb2&) = default;
};
struct Lamp2 {
    std::string name;
    Money price;
    Money hanger;
    std::vector<Bulb2> bulbs;

    friend bool operator==(const Lamp2&, const Lamp2&) = default;
};
/// Version 3: the name was split, the price has another key.
struct Lamp3 {
    std::string maker;
    std::string model;
    Money asked;
    Money hanger;
    std::vector<Bulb2> bulbs;

    friend bool operator==(const Lamp3&, const Lamp3&) = default;
};

void splitName(Json& value) {
    const auto name = sp::db::records::takeOut(value, "name").get<std::string>();
    const auto space = name.find(' ');
    value["maker"] = name.substr(0, space);
    value["model"] = space == std::string::npos ? "" : name.substr(space + 1);
    value["asked_micros"] = sp::db::records::takeOut(value, "price_micros");
}

} // namespace

namespace sp::catalogue::fields {

template<>
const Object& objectOf<Bulb1>() {
    static const Object object{"Bulb", {field<&Bulb1::watts>("watts", Term::Amount, kCounts)}};
    return object;
}
template<>
const Object& objectOf<Bulb2>() {
    static const Object object{
        "Bulb",
        {field<&Bulb2::watts>("watts", Term::Amount, kCounts),
         field<&Bulb2::dims>("dims", Term::Kind).cameWith({{"lamp", 2}}).standingFor(true, "true")}};
    return object;
}
template<>
const Object& objectOf<Lamp1>() {
    using T = Lamp1;
    static const Object object{"Lamp",
                               {field<&T::name>("name", Term::Name, kName),
                                field<&T::price>("price_micros", Term::Price, kAmount),
                                field<&T::bulbs>("bulbs", Term::Contents, Length{10})}};
    return object;
}
template<>
const Object& objectOf<Lamp2>() {
    using T = Lamp2;
    static const Object object{"Lamp",
                               {field<&T::name>("name", Term::Name, kName),
                                field<&T::price>("price_micros", Term::Price, kAmount),
                                field<&T::hanger>("hanger_micros", Term::Cost, kAmount)
                                    .cameWith({{"lamp", 2}})
                                    .standingFor(Money::fromMicros(250'000), "250000"),
                                field<&T::bulbs>("bulbs", Term::Contents, Length{10})}};
    return object;
}
template<>
const Object& objectOf<Lamp3>() {
    using T = Lamp3;
    static const Object object{"Lamp",
                               {field<&T::maker>("maker", Term::Supplier, kLine).cameWith({{"lamp", 3}}),
                                field<&T::model>("model", Term::Name, kLine).cameWith({{"lamp", 3}}),
                                field<&T::asked>("asked_micros", Term::Price, kAmount).cameWith({{"lamp", 3}}),
                                field<&T::hanger>("hanger_micros", Term::Cost, kAmount)
                                    .cameWith({{"lamp", 2}})
                                    .standingFor(Money::fromMicros(250'000), "250000"),
                                field<&T::bulbs>("bulbs", Term::Contents, Length{10})}};
    return object;
}

} // namespace sp::catalogue::fields

namespace sp::db::records {

template<>
const Kind& kindOf<Lamp1>() {
    static const Kind kind = makeKind<Lamp1>("lamp");
    return kind;
}
template<>
const Kind& kindOf<Lamp2>() {
    static const Kind kind = makeKind<Lamp2>("lamp");
    return kind;
}
template<>
const Kind& kindOf<Lamp3>() {
    static const Kind kind = makeKind<Lamp3>("lamp", {nullptr, &splitName});
    return kind;
}

} // namespace sp::db::records

namespace {

namespace records = sp::db::records;

Lamp1 lantern() { return {"Ferngate Lantern", Money::fromMicros(12'500'000), {{40}, {60}}}; }

TEST(RecordAge, theLatestFieldOrUpgradeMakesTheVersionOfAKind) {
    EXPECT_EQ(records::kindOf<Lamp1>().version, 1);
    EXPECT_EQ(records::kindOf<Lamp2>().version, 2); // no upgrade, one field of the lamp and one of its bulbs
    EXPECT_EQ(records::kindOf<Lamp3>().version, 3);
    EXPECT_EQ(records::newestVersion("lamp", sp::catalogue::fields::objectOf<Bulb2>(), {}), 2);
    EXPECT_EQ(records::newestVersion("torch", sp::catalogue::fields::objectOf<Bulb2>(), {}), 1); // not of this kind
    EXPECT_EQ(records::newestVersion("lamp", sp::catalogue::fields::objectOf<Lamp2>(), {nullptr, nullptr, &splitName}),
              4);
}

TEST(RecordAge, aFieldThatCameNewStandsForWhatItStoodForBefore) {
    const auto read = records::read<Lamp2>(records::write(lantern()));
    ASSERT_TRUE(read) << describe(read.error());
    EXPECT_EQ(
        *read,
        (Lamp2{
            "Ferngate Lantern", Money::fromMicros(12'500'000), Money::fromMicros(250'000), {{40, true}, {60, true}}}));
}

TEST(RecordAge, aRecordGoesThroughEveryVersionThereWas) {
    const Lamp3 expected{
        "Ferngate", "Lantern", Money::fromMicros(12'500'000), Money::fromMicros(250'000), {{40, true}, {60, true}}};
    const auto fromFirst = records::read<Lamp3>(records::write(lantern()));
    ASSERT_TRUE(fromFirst) << describe(fromFirst.error());
    EXPECT_EQ(*fromFirst, expected);
    const auto second = records::read<Lamp2>(records::write(lantern())).value();
    EXPECT_EQ(records::read<Lamp3>(records::write(second)), expected);
}

TEST(RecordAge, theNewestVersionIsWritten) {
    const auto lamp = records::read<Lamp3>(records::write(lantern())).value();
    const auto text = records::write(lamp);
    EXPECT_TRUE(text.starts_with(R"({"format":3,"kind":"lamp","value":{"asked_micros":12500000,)")) << text;
    EXPECT_EQ(records::read<Lamp3>(text), lamp);
    EXPECT_EQ(records::kindOf<Lamp3>().renewed(records::write(lantern())), text);
}

TEST(RecordAge, recordsOfTwoVersionsCanSayTheSame) {
    const auto old = records::write(lantern());
    const auto& kind = records::kindOf<Lamp3>();
    auto lamp = records::read<Lamp3>(old).value();
    EXPECT_EQ(records::saySame(kind, old, records::write(lamp)), true);
    lamp.hanger += Money::fromMicros(1);
    EXPECT_EQ(records::saySame(kind, old, records::write(lamp)), false);
    EXPECT_FALSE(records::saySame(kind, old, "{}"));
}

TEST(RecordAge, aLaterVersionIsRefusedByName) {
    const auto text = records::write(records::read<Lamp3>(records::write(lantern())).value());
    const auto read = records::read<Lamp2>(text);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, Code::TooNew);
    EXPECT_EQ(sp::test::described(read.error()), "RecordTooNew(lamp, 3)");
}

struct SpoiltOfOldAge {
    const char* name;
    void (*spoil)(Json& record);

    friend void PrintTo(const SpoiltOfOldAge& row, std::ostream* out) { *out << row.name; }
};

class SpoiltOldRecord : public testing::TestWithParam<SpoiltOfOldAge> {};

TEST_P(SpoiltOldRecord, isRefusedInOneSentence) {
    auto record = Json::parse(records::write(lantern()));
    GetParam().spoil(record);
    for (const auto& error :
         {records::read<Lamp2>(record.dump()).error(), records::read<Lamp3>(record.dump()).error()}) {
        EXPECT_EQ(error.code, Code::Damaged) << describe(error);
        EXPECT_TRUE(sp::test::described(error).starts_with("Record")) << describe(error);
    }
}

INSTANTIATE_TEST_SUITE_P(
    RecordAge, SpoiltOldRecord,
    testing::Values(SpoiltOfOldAge{"aKeyOfThatVersionIsMissing", [](Json& r) { r["value"].erase("price_micros"); }},
                    SpoiltOfOldAge{"theKeyThatIsSplitIsMissing", [](Json& r) { r["value"].erase("name"); }},
                    SpoiltOfOldAge{"theKeyThatIsSplitIsANumber", [](Json& r) { r["value"]["name"] = 7; }},
                    SpoiltOfOldAge{"aKeyOfALaterVersion", [](Json& r) { r["value"]["hanger_micros"] = 1; }},
                    SpoiltOfOldAge{"aKeyOfALaterVersionInARow", [](Json& r) { r["value"]["bulbs"][0]["dims"] = true; }},
                    SpoiltOfOldAge{"aKeyOfNoVersion", [](Json& r) { r["value"]["shade"] = "green"; }},
                    SpoiltOfOldAge{"theValueIsAList", [](Json& r) { r["value"] = Json::array(); }},
                    SpoiltOfOldAge{"theVersionIsNone", [](Json& r) { r["format"] = 0; }},
                    SpoiltOfOldAge{"theVersionIsAText", [](Json& r) { r["format"] = "1"; }}),
    [](const auto& row) { return row.param.name; });

TEST(RecordAge, aFieldWithoutAValueBeforeHasToComeFromAnUpgrade) {
    auto record = Json::parse(records::write(records::read<Lamp2>(records::write(lantern())).value()));
    record["value"].erase("hanger_micros"); // version 2 had it
    EXPECT_EQ(records::read<Lamp2>(record.dump()).error().code, Code::Damaged);
    EXPECT_EQ(records::read<Lamp3>(record.dump()).error().code, Code::Damaged);
}

// The table of the program itself.

TEST(RecordAge, everyFieldCameWithAVersionThatItsKindHas) {
    for (const auto* kind : records::allKinds()) {
        EXPECT_GE(kind->version, 1) << kind->name;
        EXPECT_LT(static_cast<int>(kind->upgrades.size()), kind->version) << kind->name;
        sp::catalogue::fields::forEachField(kind->object(), [&](const auto& field) {
            const int since = field.sinceIn(kind->name);
            EXPECT_GE(since, 1) << kind->name << ' ' << field.key;
            EXPECT_LE(since, kind->version) << kind->name << ' ' << field.key;
            const auto upgrade = static_cast<std::size_t>(since) - 2;
            EXPECT_TRUE(since == 1 || field.before ||
                        (upgrade < kind->upgrades.size() && kind->upgrades[upgrade] != nullptr))
                << kind->name << ' ' << field.key << " came later, and nothing says what it stood for before";
            EXPECT_TRUE(field.since.empty() || std::any_of(field.since.begin(), field.since.end(),
                                                           [&](const auto& row) { return row.kind == kind->name; }))
                << field.key << " says nothing about when it came into " << kind->name;
        });
    }
}

} // namespace
