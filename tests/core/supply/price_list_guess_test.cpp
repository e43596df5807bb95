// SPDX-License-Identifier: MIT
// Heads and cells as suppliers write them: common practice, no source.
#include "core/catalogue/fields/names.h"
#include "core/supply/price_list_csv.h"
#include "core/supply/price_list_guess.h"
#include "tests/support/amounts.h"

#include <gtest/gtest.h>

namespace {

using namespace sp;
using support::idOf;

base::CsvTable tableOf(const std::string& list) {
    return supply::fromHeadings(supply::readPriceTable(list, "list.csv")->table);
}

/// "material: Description; price: Price", in the order of the list's columns; the comma at the end: decimal.
std::string guess(const std::string& list) {
    std::vector<catalogue::Material> materials(1);
    materials[0].name = "Moonglow";
    materials[0].stone.colour = "Volcano";
    const auto table = tableOf(list);
    const auto columns = supply::guessColumns(table, idOf(10), materials);
    EXPECT_EQ(columns.supplier, idOf(10));
    EXPECT_TRUE(supply::hasColumns(table, columns));
    std::string text;
    for (const auto& heading : supply::headingsOf(table))
        for (const auto& column : columns.columns)
            if (column.heading == heading)
                text +=
                    (text.empty() ? "" : "; ") + std::string(catalogue::fields::wordOf(column.column)) + ": " + heading;
    return text + (columns.decimalComma ? " ," : "");
}

TEST(PriceListGuess, knowsUsualHeads) {
    EXPECT_EQ(guess("Item No;Description;Size;Colour;Pack;Price\n1001;Hot-fix stone;SS10;Jet;10 gross;6.95\n"),
              "item: Item No; material: Description; size: Size; colour: Colour; pack: Pack; price: Price");
    EXPECT_EQ(guess("SKU,Product name,Color,SS,Qty,RRP,Net price\nA-1,Hot-fix,Rose,10,1440,9.95,6.95\n"),
              "item: SKU; material: Product name; colour: Color; size: SS; amount: Qty; price: Net price");
    EXPECT_EQ(guess("Art. no.\tName\tUnit\tFrom\tPrice per pack, USD\nX9\tFlock tape\troll\t1\t12.00\n"),
              "item: Art. no.; material: Name; pack: Unit; from-packs: From; price: Price per pack, USD");
    EXPECT_EQ(guess("Item #,Item,Pack size,Unit price\n7,Jet SS10,bag of 10 gross,6.95\n"),
              "item: Item #; material: Item; pack: Pack size; price: Unit price");
}

TEST(PriceListGuess, goesByWhatStandsInTheColumns) {
    EXPECT_EQ(guess("a,b,c,d\nVolcano,ss6,10 gross,$6.95\nJet AB,16 SS,1 gross,$1.20\n"),
              "colour: a; size: b; pack: c; price: d");
    EXPECT_EQ(guess("item,holds,price\nMoonglow,12,4.00\n"), "material: item; amount: holds; price: price");
    EXPECT_EQ(guess("item,name,price\nKR-12,Moonglow,4.00\nKR-13,Sunglow,4.50\n"),
              "item: item; material: name; price: price");
    EXPECT_EQ(guess("name;price\nJet SS10;6,95\nRose SS10;1.005,50\n"), "material: name; price: price ,");
    EXPECT_EQ(guess("name,price\nJet SS10,on request\nRose SS10,ask\n"), "material: name") << "no price stands there";
}

TEST(PriceListGuess, findsTheHeadings) {
    EXPECT_EQ(guess("Kestrel Row Stones\nPrices from May\n\nDescription,Price\nJet SS10,6.95\n"),
              "material: Description; price: Price");
    const auto bare = tableOf("Jet SS10,1440,6.95\nRose SS10,1440,7.95\n");
    EXPECT_EQ(bare.rows.size(), 3U) << "its first row is a price too";
    EXPECT_EQ(supply::headingsOf(bare), (std::vector<std::string>{"#1", "#2", "#3"}));
    EXPECT_EQ(supply::headingsOf(tableOf("name,,price,price\nJet,x,1.00,2.00\n")),
              (std::vector<std::string>{"name", "#2", "price", "price #4"}));
    EXPECT_EQ(supply::headingsOf(tableOf("name,price\nJet,1.00,more\n")).size(), 3U) << "a row longer than the first";
    EXPECT_TRUE(supply::headingsOf(tableOf("")).empty());
    EXPECT_EQ(guess("name,price,price\nJet SS10,1.00,2.00\n"), "material: name; price: price") << "the first of two";
}

TEST(PriceListGuess, givesColumnsThatCanBeKept) {
    const std::string headings = "\"Net\nprice\"," + std::string(300, 'n') + ",name";
    EXPECT_EQ(supply::headingsOf(tableOf(headings + "\n1.00,x,Jet SS10\n")),
              (std::vector<std::string>{"Net price", "#2", "name"}));
}

} // namespace
