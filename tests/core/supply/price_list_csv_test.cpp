// SPDX-License-Identifier: MIT
#include "core/supply/messages.h"
#include "core/supply/price_list_csv.h"
#include "core/units/text.h"
#include "tests/support/amounts.h"
#include "tests/support/seed.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using catalogue::ListColumn;
using catalogue::PriceBreak;
using support::idOf;
using units::Count;
using units::Money;

using sp::support::cents;

/// A book with two stones: Jet has two packs of the supplier and one of another, Rose none.
class PriceList : public testing::Test {
  protected:
    PriceList() {
        for (const auto& [n, name] : {std::pair{1U, "Jet SS10"}, std::pair{2U, "Rose SS10"}}) {
            catalogue::Material material;
            material.id = idOf(n);
            material.name = name;
            materials.push_back(material);
        }
        packs = {pack(11, 10, "bag of 10 gross", 1440, {{Count::of(1), cents(650)}, {Count::of(5), cents(585)}}),
                 pack(12, 10, "bag of 1 gross", 144, {{Count::of(1), cents(91)}}),
                 pack(13, 20, "bag of 10 gross", 1440, {{Count::of(1), cents(700)}})};
        columns.supplier = idOf(10);
        columns.columns = {{ListColumn::Material, "item"}, {ListColumn::Amount, "holds"}, {ListColumn::Price, "price"}};
    }
    static catalogue::Pack pack(std::uint64_t id, std::uint64_t supplier, const char* name, std::int64_t amount,
                                std::vector<PriceBreak> prices) {
        return {idOf(id), idOf(1), idOf(supplier), name, Count::of(amount), std::move(prices), id == 11, std::nullopt};
    }
    base::Result<supply::PriceListReading> tryRead(const std::string& list) {
        const auto table = supply::readPriceTable(list, "list.csv");
        return supply::readPriceList(
            table->table, columns,
            {.materials = materials,
             .packs = packs,
             .currency = *units::Currency::parse("USD"),
             .seenOn = day,
             .packCalled = [](Count contents) { return "pack of " + units::formatCount(contents); },
             .matched = matched,
             .makesMissing = makesMissing,
             .drawnAs = [](std::string_view colour) { return static_cast<std::uint32_t>(colour.size()); },
             .goesOn = goesOn});
    }
    supply::PriceListReading read(const std::string& list) {
        const auto reading = tryRead(list);
        EXPECT_TRUE(reading) << (reading ? "" : describe(reading.error()));
        return reading.value_or(supply::PriceListReading{});
    }
    std::string troubleOf(const std::string& row) {
        const auto reading = read("item,holds,price\n" + row);
        EXPECT_EQ(reading.changes.size(), 0U);
        if (reading.troubles.size() != 1) return "not one trouble";
        EXPECT_EQ(reading.troubles[0].line, 2U);
        return describe(reading.troubles[0].reason);
    }

    std::vector<catalogue::Material> materials;
    std::vector<catalogue::Pack> packs;
    catalogue::PriceListColumns columns;
    units::Date day = *units::Date::parse("2026-11-25");
    std::map<std::size_t, base::Id> matched;
    bool makesMissing = false;
    std::function<bool(std::size_t)> goesOn;
};

TEST(PriceTable, refusesWhatItCannotReadInOneSentence) {
    using enum supply::Fault;
    const auto errorOf = [](const std::string& bytes) { return supply::readPriceTable(bytes, "list.csv").error(); };
    EXPECT_EQ(errorOf("a,b\n\"c,d"), base::makeError(QuoteNotClosed, "list.csv", 2, "list.csv"));
    EXPECT_EQ(errorOf("a,b\n\"c\"d,e"), base::makeError(TextAfterQuote, "list.csv", 2, "list.csv"));
    EXPECT_EQ(errorOf(std::string(base::kMaxCsvCellLength + 1, 'a')),
              base::makeError(CellTooLarge, "list.csv", 1, "list.csv"));
    EXPECT_EQ(errorOf(std::string(base::kMaxCsvCells, ',')),
              base::makeError(TooManyColumns, "list.csv", 1, "list.csv"));
    std::string rows;
    for (std::size_t i = 0; i <= base::kMaxCsvRows; ++i) rows += "a\n";
    EXPECT_EQ(errorOf(rows).fault, idOf(TooManyRows));
    EXPECT_EQ(errorOf(std::string("a,b\0c", 5)), base::makeError(ListIsNoText, "list.csv", "list.csv"));
    EXPECT_EQ(errorOf("PK\x03\x04\xE9"), base::makeError(ListIsNoText, "list.csv", "list.csv"));
    EXPECT_EQ(errorOf(std::string(supply::kMaxPriceList + 1, 'a')),
              base::makeError(PriceListTooLarge, "list.csv", "list.csv"));
}

TEST_F(PriceList, changesAPackKnownByWhatItHolds) {
    const auto reading = read("item,holds,price\njet ss10,1440,7.20\nJET SS10,1 gross,0.91\n");
    ASSERT_EQ(reading.changes.size(), 1U);
    const auto& change = reading.changes[0];
    EXPECT_EQ(change.line, 2U);
    EXPECT_EQ(change.before, packs[0]);
    auto after = packs[0];
    after.prices[0].each = cents(720); // what the list does not speak of stays: the further break, the usual mark
    after.pricedOn = day;
    EXPECT_EQ(change.pack, after);
    ASSERT_EQ(reading.confirmed.size(), 1U);
    EXPECT_EQ(reading.confirmed[0].id, packs[1].id);
    EXPECT_EQ(reading.confirmed[0].pricedOn, day);
    EXPECT_TRUE(reading.troubles.empty());
}

TEST_F(PriceList, addsPacksOfKnownMaterials) {
    const auto reading = read("item,holds,price\nRose SS10,10 gross,10.40\n");
    ASSERT_EQ(reading.changes.size(), 1U);
    EXPECT_EQ(reading.changes[0].before, std::nullopt);
    EXPECT_EQ(reading.changes[0].material, "Rose SS10");
    EXPECT_EQ(reading.changes[0].pack,
              (catalogue::Pack{
                  {}, idOf(2), idOf(10), "pack of 1,440", Count::of(1440), {{Count::of(1), cents(1040)}}, false, day}));
}

TEST_F(PriceList, takesNamesBreaksSemicolonsAndDecimalCommas) {
    columns.decimalComma = true;
    columns.columns = {{ListColumn::Material, "Artikel"},
                       {ListColumn::Pack, "Gebinde"},
                       {ListColumn::FromPacks, "ab"},
                       {ListColumn::Price, "Preis, netto"}};
    const auto reading = read("Artikel;Gebinde;ab;\"Preis, netto\"\nJet SS10;Bag of 10 gross;5;1.005,50\n"
                              "Jet SS10;bag of 10 gross;;6,10\n");
    ASSERT_EQ(reading.changes.size(), 1U);
    EXPECT_EQ(reading.changes[0].pack.id, packs[0].id);
    EXPECT_EQ(reading.changes[0].pack.prices,
              (std::vector<PriceBreak>{{Count::of(1), cents(610)}, {Count::of(5), cents(100'550)}}));
}

TEST_F(PriceList, reportsRowsItCannotTakeByLineAndName) {
    EXPECT_EQ(troubleOf("Topaz SS10,1440,7.20"), "NoSuchStone(Topaz, SS10)");
    EXPECT_EQ(troubleOf("Topaz,1440,7.20"), "NoSuchMaterial");
    EXPECT_EQ(troubleOf("Jet SS10,1440,0"), "PriceNotAboveNothing");
    EXPECT_EQ(troubleOf("Rose SS10,,9"), "UnknownPack");
    EXPECT_EQ(troubleOf("Jet SS10,0,9"), "EmptyPack");
    EXPECT_NE(troubleOf("Jet SS10,1440,on request"), "not one trouble");
    EXPECT_NE(troubleOf("Jet SS10,1440"), "not one trouble");
    EXPECT_NE(troubleOf("Jet SS10,many,9"), "not one trouble");
    const auto reading =
        read("item,holds,price\nTopaz SS10,1,1\nJet SS10,1440,7.20\nJet SS10,1440,7.30\nRose SS10,9,x\n");
    EXPECT_TRUE(reading.changes.empty()) << "a pack that is told two ways is left alone";
    ASSERT_EQ(reading.troubles.size(), 4U);
    EXPECT_EQ(reading.troubles[0].name, "Topaz SS10");
    EXPECT_EQ(reading.troubles[1].line, 3U);
    EXPECT_EQ(reading.troubles[1].reason, base::say(supply::Note::OtherRowNotTaken));
    EXPECT_EQ(reading.troubles[2].line, 4U);
    EXPECT_EQ(reading.troubles[2].reason, base::say(supply::Note::SecondPrice));
    EXPECT_EQ(reading.troubles[3].line, 5U);
}

TEST_F(PriceList, saysWhichColumnIsMissing) {
    EXPECT_EQ(tryRead("item,price\n").error(), base::makeError(supply::Fault::NoSuchColumn, "holds", "holds"));
    columns.columns = {{ListColumn::Material, "item"}};
    EXPECT_EQ(tryRead("item,price\n").error().fault, idOf(supply::Fault::NoPriceColumn));
    columns.columns = {{ListColumn::Price, "price"}};
    EXPECT_EQ(tryRead("item,price\n").error().fault, idOf(supply::Fault::NoMaterialColumn));
}

// Whatever a list holds, every row is taken, confirmed or reported, and what comes out can be saved.
TEST_F(PriceList, accountsForEveryRow) {
    std::mt19937_64 random(test::printedSeed());
    columns.columns.push_back({ListColumn::FromPacks, "from"});
    const std::array<const char*, 5> names{"Jet SS10", "rose ss10", "Topaz", "", "\"Jet\nSS10\""};
    const std::array<const char*, 6> amounts{"1440", "1 gross", "0", "", "x", "144"};
    const std::array<const char*, 6> prices{"1.00", "-1", "2,50", "", "9e9", "6.50"};
    const std::array<const char*, 5> froms{"", "1", "5", "0", "y"};
    for (int round = 0; round < 3'000; ++round) {
        std::string list = "item,holds,price,from\n";
        const auto rows = random() % 8;
        for (std::size_t i = 0; i < rows; ++i)
            list += std::string(names[random() % names.size()]) + "," + amounts[random() % amounts.size()] + ",\"" +
                    prices[random() % prices.size()] + "\"," + froms[random() % froms.size()] + "\n";
        const auto reading = read(list);
        std::size_t told = reading.troubles.size();
        for (const auto& change : reading.changes) {
            told += change.pack.prices.size();
            EXPECT_EQ(change.pack.prices.front().from, Count::of(1));
            EXPECT_EQ(change.pack.supplier, columns.supplier);
            EXPECT_GE(change.pack.amount.value(), 1);
            for (std::size_t i = 1; i < change.pack.prices.size(); ++i)
                EXPECT_LT(change.pack.prices[i - 1].from, change.pack.prices[i].from);
        }
        for (const auto& pack : reading.confirmed) told += pack.prices.size();
        const auto read = supply::readPriceTable(list, "list.csv")->table.rows.size() - 1; // without blank ones
        EXPECT_EQ(told, read) << list;
    }
}

/// A list as suppliers write it: item number, description, size, colour, pack in words, price. Common practice, no
/// source.
class UsualList : public PriceList {
  protected:
    UsualList() {
        materials[0].stone = {"Jet", 0x23262D, "SS10", {}};
        materials[1].stone = {"Rose", 0xE58BA8, "SS10", {}};
        columns.columns = {{ListColumn::Item, "Item No"}, {ListColumn::Material, "Description"},
                           {ListColumn::Size, "Size"},    {ListColumn::Colour, "Colour"},
                           {ListColumn::Pack, "Pack"},    {ListColumn::Price, "Price"}};
    }
    supply::PriceListReading readRows(const std::string& rows) {
        return read("Item No;Description;Size;Colour;Pack;Price\n" + rows);
    }
    /// What became of the only row: the pack's name and what it holds, or the reason.
    std::string becomes(const std::string& row) {
        const auto reading = readRows(row);
        if (reading.troubles.size() == 1) return describe(reading.troubles[0].reason);
        if (reading.changes.size() != 1) return "not one change";
        const auto& change = reading.changes[0];
        return change.material + ": " + change.pack.name + ", " + std::to_string(change.pack.amount.value());
    }
};

TEST_F(UsualList, findsStonesByColourAndSize) {
    EXPECT_EQ(becomes("9;Hot-fix;SS10;JET;10 gross;7.20"), "Jet SS10: bag of 10 gross, 1440");
    EXPECT_EQ(becomes("9;Hot-fix;ss 10;Rose;10 gross;7.20"), "Rose SS10: 10 gross, 1440");
    EXPECT_EQ(becomes("9;Rose ss10;;;dozen;0.20"), "Rose SS10: dozen, 12") << "both in the name";
    EXPECT_EQ(becomes("9;Rose;SS10;;each;0.02"), "Rose SS10: each, 1") << "the colour in the name";
    EXPECT_EQ(becomes("9;Jet SS10;SS10;Rose;1 gross;0.95"), "Rose SS10: 1 gross, 144") << "its own columns go first";
    EXPECT_EQ(becomes("9;jet ss10;;;1 gross;0.95"), "Jet SS10: bag of 1 gross, 144") << "by name, as ever";
    EXPECT_EQ(becomes("9;Hot-fix;SS10;;1 gross;0.95"), "NoSuchStone(Hot-fix, SS10)");
    EXPECT_EQ(becomes("9;Hot-fix;PP24;Jet;1 gross;0.95"), "UnknownSizeInList(PP24)");
    EXPECT_EQ(becomes("9;Hot-fix;SS16;Jet;1 gross;0.95"), "NoSuchStone(Jet, SS16)");
    EXPECT_EQ(becomes("9;Hot-fix;SS10;Jet;handful;0.95"), "PackNotRead(handful)");
    EXPECT_EQ(becomes("9;Hot-fix;SS10;Jet;;0.95"), "UnknownPack") << "there are two of it";
}

TEST_F(UsualList, doesNotChooseBetweenStonesOfOneColourAndSize) {
    auto other = materials[0];
    other.id = idOf(3);
    other.name = "Jet SS10, cut glass";
    materials.push_back(other);
    EXPECT_EQ(becomes("9;Hot-fix;SS10;Jet;1 gross;0.95"), "SeveralStones");
    EXPECT_EQ(becomes("9;Jet SS10, cut glass;SS10;Jet;1 gross;0.95"), "Jet SS10, cut glass: 1 gross, 144");
}

TEST_F(UsualList, knowsRowsAgainByTheirItemNumber) {
    packs[1].item = "KR-7";
    EXPECT_EQ(becomes("kr-7;New words;;;1 gross;0.95"), "Jet SS10: bag of 1 gross, 144");
    EXPECT_EQ(becomes("KR-7;New words;;;200 pcs;1.25"), "Jet SS10: 200 pcs, 200") << "it holds more now";
    EXPECT_EQ(becomes("KR-8;New words;;;1 gross;0.95"), "NoSuchMaterial");
    auto reading = readRows("KR-7;New words;;;1 gross;0.95\nKR-7;New words;;;250;1.45\n");
    ASSERT_EQ(reading.changes.size(), 2U) << "one number, two packs of it";
    EXPECT_EQ(reading.changes[0].pack.id, packs[1].id);
    EXPECT_EQ(reading.changes[1].pack.name, "pack of 250");
    EXPECT_EQ(reading.changes[1].pack.item, "KR-7");
    packs[2].item = "KR-9"; // another supplier's
    EXPECT_EQ(becomes("KR-9;New words;;;1 gross;0.95"), "NoSuchMaterial");
}

TEST_F(UsualList, takesNoNumberThatStandsBesideDifferentThings) {
    packs[0].item = "88";
    const auto reading = readRows("88;Hot-fix;SS10;Jet;10 gross;7.20\n88;Hot-fix;SS10;Rose;10 gross;8.20\n");
    ASSERT_EQ(reading.changes.size(), 2U);
    EXPECT_EQ(reading.changes[1].material, "Rose SS10");
    EXPECT_EQ(reading.changes[1].pack.item, "");
}

TEST_F(UsualList, learnsItemNumbers) {
    const auto reading = readRows("KR-1;Hot-fix;SS10;Jet;10 gross;7.20\nKR-2;Hot-fix;SS10;Jet;1 gross;0.91\n");
    ASSERT_EQ(reading.changes.size(), 1U);
    EXPECT_EQ(reading.changes[0].pack.item, "KR-1");
    ASSERT_EQ(reading.confirmed.size(), 1U);
    EXPECT_EQ(reading.confirmed[0].item, "KR-2") << "also where the price is as it was";
}

TEST_F(UsualList, goesByWhatAPersonSaid) {
    matched[2] = idOf(2);
    EXPECT_EQ(becomes("9;Hot-fix;SS10;Jet;1 gross;0.95"), "Rose SS10: 1 gross, 144");
    matched[2] = idOf(99); // gone by now
    EXPECT_EQ(becomes("9;Hot-fix;SS10;Jet;1 gross;0.95"), "Jet SS10: bag of 1 gross, 144");
}

TEST_F(UsualList, remembersWhatAPersonSaidOfARowWithoutANumber) {
    const std::string row = ";Night black;small;;1 gross;0.95";
    EXPECT_EQ(becomes(row), "NoSuchMaterial");
    matched[2] = idOf(1);
    const auto reading = readRows(row);
    ASSERT_EQ(reading.changes.size(), 1U);
    EXPECT_EQ(reading.changes[0].pack.item, "small · Night black");
    packs[1] = reading.changes[0].pack;
    matched.clear();
    EXPECT_EQ(becomes(";NIGHT black;small;;1 gross;0.99"), "Jet SS10: bag of 1 gross, 144");
    EXPECT_EQ(becomes(";Night black;large;;1 gross;0.99"), "NoSuchMaterial");
}

TEST_F(UsualList, makesStonesThatAreMissingOnce) {
    const std::string rows = "1;Hot-fix;SS16;Jet;1 gross;1.95\n2;Hot-fix;ss 16;JET;10 gross;16.95\n"
                             "3;Hot-fix;SS6;Topaz;1 gross;on request\n4;Tool;;;each;9.00\n";
    EXPECT_EQ(readRows(rows).missing, 2U);
    EXPECT_TRUE(readRows(rows).made.empty());
    makesMissing = true;
    const auto reading = readRows(rows);
    ASSERT_EQ(reading.made.size(), 1U) << "none of which no price can be read";
    const auto& made = reading.made[0];
    EXPECT_TRUE(made.id.isNone());
    EXPECT_EQ(made.name, "Jet SS16");
    EXPECT_EQ(made.kind, catalogue::MaterialKind::Stone);
    // Two in a hundred are lost at the start: common practice, no source.
    EXPECT_EQ(made.stone, (catalogue::StoneTraits{"Jet", 3, "SS16", units::Rate::fromPercent(2)}))
        << "drawn as the colour says";
    ASSERT_EQ(reading.changes.size(), 2U);
    EXPECT_EQ(reading.changes[0].made, 0U);
    EXPECT_EQ(reading.changes[1].made, 0U);
    EXPECT_EQ(reading.changes[1].pack.amount, Count::of(1440));
    ASSERT_EQ(reading.troubles.size(), 2U);
    EXPECT_EQ(describe(reading.troubles[1].reason), "NoSuchMaterial");
    EXPECT_EQ(reading.troubles[1].name, "4 · Tool");
}

TEST_F(UsualList, tellsPacksOfOneContentApartByTheirNames) {
    const auto reading =
        readRows("1;Hot-fix;SS10;Rose;bag of 10 gross;9.95\n2;Hot-fix;SS10;Rose;box of 10 gross;10.45\n"
                 "3;Hot-fix;SS10;Jet;bag of 10 gross;6.95\n4;Hot-fix;SS10;Jet;box of 10 gross;7.45\n");
    ASSERT_EQ(reading.changes.size(), 4U);
    EXPECT_EQ(reading.changes[2].pack.id, packs[0].id);
    EXPECT_TRUE(reading.changes[3].pack.id.isNone()) << "a pack of its own";
    EXPECT_TRUE(reading.troubles.empty());
}

TEST_F(UsualList, canBeStopped) {
    std::string rows;
    for (int i = 0; i < 5'000; ++i) rows += std::to_string(i) + ";Hot-fix;SS16;Jet;1 gross;1.95\n";
    std::vector<std::size_t> told;
    goesOn = [&](std::size_t row) {
        told.push_back(row);
        return row < 1'000;
    };
    readRows(rows);
    ASSERT_GT(told.size(), 1U);
    EXPECT_LT(told.back(), 5'000U);
}

TEST_F(UsualList, needsAColumnByWhichThingsAreFound) {
    columns.columns = {{ListColumn::Colour, "Colour"}, {ListColumn::Price, "Price"}};
    EXPECT_EQ(tryRead("Colour;Size;Price\n").error().fault, idOf(supply::Fault::NoMaterialColumn));
    columns.columns.push_back({ListColumn::Size, "Size"});
    EXPECT_TRUE(tryRead("Colour;Size;Price\n"));
    columns.columns = {{ListColumn::Item, "No"}, {ListColumn::Price, "Price #3"}};
    EXPECT_TRUE(tryRead("No;Price;Price\n1;2;3\n")) << "a name that stands there twice";
}

} // namespace
