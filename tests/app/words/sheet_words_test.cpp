// SPDX-License-Identifier: MIT
#include "app/words/sheet_words.h"

#include "tests/support/sales.h"

#include <gmock/gmock.h>

namespace sp::words {

// The sentences below are the product's own; the figures are those of the sales (tests/support/sales.h).

TEST(SheetWords, sayWhatTheCounterPictureSays) {
    const auto sheet = test::studioSale().sheet(SheetWords());
    EXPECT_EQ(sheet.language, "en");
    EXPECT_EQ(sheet.title, "Quote 2026-0042");
    EXPECT_EQ(sheet.demo, "Demo: invented names and prices");
    EXPECT_THAT(sheet.facts, testing::ElementsAre(quoting::SheetFact{"Quoted", "25 Nov 2026"},
                                                  quoting::SheetFact{"Valid until", "25 Dec 2026"},
                                                  quoting::SheetFact{"Wanted by", "Fri 11 Dec 2026"}));
    EXPECT_EQ(sheet.lines.at(0).note, "Templates on the wall: no set-up charged");
    EXPECT_EQ(sheet.lines.at(1).extras.at(0).label, "2 at 2XL, + 2.75");
    EXPECT_EQ(sheet.adjustments.at(0).label, "Rush, wanted by Fri 11 Dec 2026 (10 %)");
    EXPECT_EQ(quoting::taxLabel(sheet, sheet), "Sales tax, exempt (certificate 14-2201, Ohio)");
    EXPECT_EQ(quoting::taxNote(sheet, sheet), "Issued 3 Jan 2026, good until 31 Dec 2027");
    EXPECT_EQ(sheet.ladderNote, "Each, before size surcharges, rush, discount");
}

TEST(SheetWords, sayHowTaxIsCharged) {
    auto sale = test::studioSale();
    sale.book.customer->certificate->expiresOn = *units::Date::parse("2026-11-24");
    const auto charged = sale.sheet(SheetWords());
    EXPECT_EQ(quoting::taxLabel(charged, charged), "Sales tax 8.875 %");
    EXPECT_EQ(quoting::taxNote(charged, charged), "Charged: no exemption certificate in force is on file");
    sale.book.shop.rules.tax.rounding = catalogue::TaxRounding::PerLine;
    const auto byLine = sale.sheet(SheetWords());
    EXPECT_EQ(quoting::taxNote(byLine, byLine),
              "Charged: no exemption certificate in force is on file. Rounded line by line");
    sale = test::shortSale();
    sale.book.shop.rules.tax = {"VAT", units::Rate::fromPercent(20), true, catalogue::TaxRounding::PerInvoice};
    EXPECT_EQ(sale.sheet(SheetWords()).taxIncluded, "VAT 20 % is in the price: 27.80");
}

TEST(SheetWords, sayWhatADraftAndItsDiscountAre) {
    auto sale = test::shortSale();
    sale.order.discount.share = units::Rate::fromPercent(10);
    sale.order.lines[0].taxable = false;
    sale.book.shop.rules.minimumOrder = test::cents(20'000);
    const auto sheet = sale.sheet(SheetWords(), "");
    EXPECT_EQ(sheet.title, "Draft");
    EXPECT_EQ(sheet.adjustments.at(0).label, "Discount (10 %)");
    EXPECT_EQ(sheet.adjustments.at(1).label, "Up to our smallest order, 200.00");
    EXPECT_EQ(sheet.lines.at(0).note, "Templates on the wall: no set-up charged · No Sales tax");
    EXPECT_EQ(SheetWords().discount(""), "Discount");
    EXPECT_EQ(SheetWords().certificate("7", ""), "certificate 7");
    EXPECT_EQ(SheetWords().certificateDates("3 Jan 2026", ""), "Issued 3 Jan 2026");
}

TEST(SheetWords, offerMorePieces) {
    EXPECT_EQ(words::SheetWords().moreForLess("24", "170.40", "172.50"),
              "24 would cost you less: 170.40 instead of 172.50");
}

TEST(SheetWords, ladderNoteNamesWhatIsLeftOut) {
    const SheetWords words;
    using enum quoting::Surcharges;
    EXPECT_EQ(words.ladderNote(None, false, false), "Each, before rush, discount");
    EXPECT_EQ(words.ladderNote(None, true, false), "Each, before set-up, rush, discount");
    EXPECT_EQ(words.ladderNote(OfSizes, true, true), "Each, before size surcharges, set-up, rush, discount and tax");
    EXPECT_EQ(words.ladderNote(OfPlacesToo, false, true), "Each, before surcharges, rush, discount and tax");
    EXPECT_EQ(words.ladderNote(OfPlacesToo, true, false), "Each, before surcharges, set-up, rush, discount");
}

TEST(SheetWords, showADayAsItIsHandedOver) {
    const SheetWords words(
        {}, [](units::Date) { return std::string("a day"); }, [](units::Date) { return std::string("a weekday"); });
    const auto sheet = test::studioSale().sheet(words);
    EXPECT_EQ(sheet.facts.at(0).value, "a day");
    EXPECT_EQ(sheet.adjustments.at(0).label, "Rush, wanted by a weekday (10 %)");
}

} // namespace sp::words
