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

Money cents(std::int64_t amount) { return Money::fromMicros(amount * 10'000); }

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
        return supply::readPriceList(table.value(), columns,
                                     {materials, packs, *units::Currency::parse("USD"), day,
                                      [](Count contents) { return "pack of " + units::formatCount(contents); }});
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
    EXPECT_EQ(errorOf("caf\xE9,1"), base::makeError(NotUtf8, "list.csv", "list.csv"));
    EXPECT_EQ(errorOf(std::string("a\0b", 3)), base::makeError(NotUtf8, "list.csv", "list.csv"));
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
    EXPECT_EQ(troubleOf("Topaz SS10,1440,7.20"), "NoSuchMaterial");
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
        const auto read = supply::readPriceTable(list, "list.csv")->rows.size() - 1; // without blank ones
        EXPECT_EQ(told, read) << list;
    }
}

} // namespace
