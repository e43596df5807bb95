// SPDX-License-Identifier: MIT
#include "core/quoting/sheet_maker.h"

#include "tests/support/plain_words.h"
#include "tests/support/sales.h"
#include "tests/support/sample_shop.h"
#include "tests/support/seed.h"

#include <gmock/gmock.h>

namespace sp::quoting {

namespace {

using test::cents;
using units::Money;
using units::Rate;

/// The printed amount as somebody who adds up the column reads it.
Money readBack(std::string text, const units::Currency& currency, const units::NumberStyle& style) {
    bool isNegative = false;
    constexpr std::string_view kMinus = "\u2212";
    if (text.starts_with(kMinus)) {
        text.erase(0, kMinus.size());
        isNegative = true;
    }
    const auto amount = units::parseMoney(text, currency, style);
    EXPECT_TRUE(amount) << text;
    if (!amount) return {};
    return isNegative ? -*amount : *amount;
}

struct Column {
    const units::Currency& currency;
    const units::NumberStyle& style;
    Money sum;

    void add(const SheetAmount& amount) { sum += readBack(amount.text, currency, style); }
    void expect(const SheetAmount& total, const char* what) const {
        EXPECT_EQ(sum.micros(), readBack(total.text, currency, style).micros()) << what;
    }
};

std::vector<std::string> labelsOf(const std::vector<SheetRow>& rows) {
    std::vector<std::string> labels;
    for (const auto& row : rows) labels.push_back(row.label);
    return labels;
}

} // namespace

TEST(SheetContent, printedColumnsAddUpToTheirPrintedTotals) {
    std::mt19937_64 random(test::printedSeed());
    for (int round = 0; round < 1'000; ++round) {
        const auto sale = test::anySale(random);
        const auto priced = sale.priced();
        const auto style = round % 2 == 1 ? units::NumberStyle{U',', U'.'} : units::NumberStyle{};
        const auto sheet = contentOf({"", sale.order, sale.book, priced, {}, {}, test::PlainWords(style)});
        Column column{sale.book.shop.currency, style, {}};
        for (const auto& line : sheet.lines) {
            column.add(line.amount);
            column.expect(line.running, "running total after a line");
            for (const auto& extra : line.extras) {
                column.add(extra.amount);
                column.expect(extra.running, "running total after an extra");
            }
        }
        for (const auto& row : sheet.adjustments) {
            column.add(row.amount);
            column.expect(row.running, "running total after an adjustment");
        }
        column.expect(sheet.together, "together");
        if (sheet.tax) column.add(sheet.tax->amount);
        column.expect(sheet.toPay, "to pay");
        if (!sheet.deposit) continue;
        Column payments{sale.book.shop.currency, style, {}};
        payments.add(*sheet.deposit);
        payments.add(sheet.balance);
        payments.expect(sheet.toPay, "deposit and balance");
    }
}

// A length is read with a ruler: a cut file's 89 mm are no 3.503937 in to a customer.
TEST(SheetContent, saysLengthsAsARulerHasThem) {
    auto sale = test::studioSale();
    auto& place = sale.order.lines[0].first();
    place.width = units::Length::fromMicrometres(89'000);
    place.height = units::Length::fromMicrometres(69'850);
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].detail,
              "Clear decal backing, 3.5 × 2 3/4 in · Aquamarine SS10, Jet SS10");
    sale.book.shop.lengthUnit = units::LengthUnit::Millimetre;
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].detail,
              "Clear decal backing, 89 × 69.9 mm · Aquamarine SS10, Jet SS10");
}

TEST(SheetContent, saysWhatTheCounterPictureSays) {
    const auto sheet = test::studioSale().sheet(test::PlainWords());
    EXPECT_EQ(sheet.language, "en");
    EXPECT_EQ(sheet.title, "quote(2026-0042)");
    EXPECT_EQ(sheet.demo, "demo");
    EXPECT_EQ(sheet.customer.name, "Larkspur Lane Dance Studio");
    ASSERT_EQ(sheet.lines.size(), 3u);
    EXPECT_EQ(sheet.lines[0].pieces, "24");
    EXPECT_EQ(sheet.lines[0].each, "6.95");
    EXPECT_EQ(sheet.lines[0].detail, "Clear decal backing, 3 1/2 × 2 3/4 in · Aquamarine SS10, Jet SS10");
    EXPECT_EQ(sheet.lines[0].note, "templatesOnWall");
    EXPECT_EQ(sheet.lines[0].amount.text, "166.80");
    ASSERT_EQ(sheet.lines[1].extras.size(), 1u);
    EXPECT_EQ(sheet.lines[1].extras[0].label, "surcharge(2, 2XL, 2.75)");
    EXPECT_EQ(sheet.lines[1].extras[0].amount.text, "5.50");
    EXPECT_THAT(labelsOf(sheet.adjustments), testing::ElementsAre("rush(2026-12-11, 10 %)"));
    EXPECT_EQ(sheet.adjustments[0].amount.text, "37.03");
    EXPECT_EQ(sheet.together.text, "407.33");
    ASSERT_TRUE(sheet.tax);
    EXPECT_EQ(taxLabel(sheet, sheet), "taxExempt(Sales tax) (certificate(14-2201, Ohio))");
    EXPECT_EQ(taxNote(sheet, sheet), "certificateDates(2026-01-03, 2027-12-31)");
    EXPECT_EQ(sheet.tax->amount.text, "0.00");
    EXPECT_EQ(sheet.toPay.text, "407.33");
    EXPECT_EQ(sheet.deposit->text, "205.00");
    EXPECT_EQ(sheet.balance.text, "202.33");
}

TEST(SheetContent, isStillASheetWhenTheCustomerIsErasedFromIt) {
    auto sheet = test::studioSale().sheet(test::PlainWords());
    sheet.customer = {};
    EXPECT_EQ(taxLabel(sheet, sheet), "taxExempt(Sales tax)");
    EXPECT_EQ(taxNote(sheet, sheet), "");
}

TEST(SheetContent, namesNeitherTaxNorNoteWhereThereIsNone) {
    auto sale = test::shortSale();
    sale.book.shop.rules.tax.rate = {};
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_FALSE(sheet.tax);
    EXPECT_EQ(taxLabel(sheet, sheet), "");
    EXPECT_EQ(taxNote(sheet, sheet), "");
    EXPECT_EQ(sheet.taxIncluded, "");
    EXPECT_FALSE(sheet.showsTogether);
}

/// The care notes that come with the program say it; the shop's own words about tax stay.
TEST(SheetContent, cautionsOfTaxOnlyWhereTaxIsCharged) {
    auto sale = test::shortSale();
    sale.book.shop.letterhead.care = "Cool first.\ntaxCaution\nOur tax is simple.";
    const auto care = [&] { return sale.sheet(test::PlainWords()).care; };
    const std::vector<std::string> with{"Cool first.", "taxCaution", "Our tax is simple."};
    const std::vector<std::string> without{"Cool first.", "Our tax is simple."};
    EXPECT_EQ(care(), with);
    auto& tax = sale.book.shop.rules.tax;
    tax.inclusive = true;
    EXPECT_EQ(care(), with);
    tax.rate = {};
    EXPECT_EQ(care(), without);
    auto exempt = test::studioSale();
    exempt.book.shop.letterhead.care = sale.book.shop.letterhead.care;
    const auto sheet = exempt.sheet(test::PlainWords());
    EXPECT_EQ(sheet.care, without);
    EXPECT_THAT(sheet.ladderNote, testing::EndsWith(", false)"));
}

TEST(SheetContent, isADraftUntilItHasANumber) {
    EXPECT_EQ(test::shortSale().sheet(test::PlainWords(), "").title, "draft");
}

TEST(SheetContent, chargesTaxWhereNoCertificateIsInForce) {
    auto sale = test::studioSale();
    sale.book.customer->certificate->expiresOn = *units::Date::parse("2026-11-24");
    const auto sheet = sale.sheet(test::PlainWords());
    ASSERT_TRUE(sheet.tax);
    EXPECT_EQ(taxLabel(sheet, sheet), "tax(Sales tax, 8.875 %)");
    EXPECT_EQ(taxNote(sheet, sheet), "certificateMissing");
    // 407.33 × 8.875 % = 36.150…, by hand.
    EXPECT_EQ(sheet.tax->amount.text, "36.15");
    EXPECT_EQ(sheet.toPay.text, "443.48");
}

TEST(SheetContent, namesTheCertificateThatIsInForceOnTheDay) {
    auto sale = test::studioSale();
    sale.book.customer->certificate->expiresOn = *units::Date::parse("2026-11-24");
    sale.book.customer->otherCertificates = {{"15-0007", "Vermont", *units::Date::parse("2026-11-25"), {}}};
    const auto sheet = sale.sheet(test::PlainWords());
    ASSERT_TRUE(sheet.tax);
    EXPECT_EQ(taxLabel(sheet, sheet), "taxExempt(Sales tax) (certificate(15-0007, Vermont))");
    EXPECT_EQ(taxNote(sheet, sheet), "certificateDates(2026-11-25, )");
    sale.book.customer->certificate->expiresOn.reset();
    const auto both = sale.sheet(test::PlainWords()); // of which place the order is, nothing says
    EXPECT_EQ(both.customer.exemption, "certificate(14-2201, Ohio); certificate(15-0007, Vermont)");
}

TEST(SheetContent, namesATaxThatThePricesHoldWithoutAddingIt) {
    auto sale = test::shortSale();
    sale.book.shop.rules.tax = {"VAT", Rate::fromPercent(20), true, catalogue::TaxRounding::PerInvoice};
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_FALSE(sheet.tax);
    EXPECT_FALSE(sheet.showsTogether);
    EXPECT_EQ(sheet.toPay.text, "166.80");
    // 166.80 × 20 / 120 = 27.80, by hand.
    EXPECT_EQ(sheet.taxIncluded, "taxIncluded(VAT, 20 %, 27.80)");
}

// Two lines of 166.80: 20 % of one are 33.36, 5 % of the other 8.34; inside 166.80 ÷ 6 = 27.80 and 166.80 ÷ 21 =
// 7.942…
TEST(SheetContent, saysTheTaxByRateWhereThereAreSeveral) {
    auto sale = test::shortSale();
    sale.order.lines.push_back(sale.order.lines[0]);
    for (auto& line : sale.order.lines) line.overrideEach = units::Money::fromMicros(6'950'000);
    sale.order.lines[1].taxRate = "Reduced";
    auto& tax = sale.book.shop.rules.tax;
    tax = {
        "VAT", Rate::fromPercent(20), false, catalogue::TaxRounding::PerInvoice, {{"Reduced", Rate::fromPercent(5)}}};
    auto sheet = sale.sheet(test::PlainWords());
    ASSERT_TRUE(sheet.tax);
    EXPECT_EQ(taxLabel(sheet, sheet), "taxOn(VAT, 20 %, 166.80)");
    EXPECT_EQ(sheet.tax->amount.text, "33.36");
    ASSERT_EQ(sheet.moreTaxes.size(), 1U);
    EXPECT_EQ(sheet.moreTaxes[0].label, "taxOn(Reduced, 5 %, 166.80)");
    EXPECT_EQ(sheet.moreTaxes[0].amount.text, "8.34");
    EXPECT_EQ(sheet.toPay.text, "375.30");
    EXPECT_EQ(sheet.lines[0].note, "templatesOnWall");
    EXPECT_EQ(sheet.lines[1].note, "templatesOnWall · tax(Reduced, 5 %)");
    tax.inclusive = true;
    sheet = sale.sheet(test::PlainWords());
    EXPECT_EQ(sheet.taxIncluded, "taxIncluded(VAT, 20 %, 27.80). taxIncluded(Reduced, 5 %, 7.94)");
    EXPECT_EQ(sheet.toPay.text, "333.60");
    sale.order.lines[0].taxRate = "Reduced"; // one rate, and its name alone
    tax.inclusive = false;
    sheet = sale.sheet(test::PlainWords());
    EXPECT_EQ(taxLabel(sheet, sheet), "tax(Reduced, 5 %)");
    EXPECT_TRUE(sheet.moreTaxes.empty());
}

TEST(SheetContent, saysWhatIsGivenAway) {
    auto sale = test::shortSale();
    sale.order.lines[0].atNoCharge = true;
    sale.order.lines[0].taxable = false;
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_EQ(sheet.lines[0].note, "templatesOnWall · atNoCharge");
    EXPECT_EQ(sheet.lines[0].amount.text, "0.00");
    EXPECT_EQ(sheet.toPay.text, "0.00");
    EXPECT_TRUE(sheet.ladders.empty());
}

TEST(SheetContent, saysThatTaxIsRoundedByLine) {
    auto sale = test::shortSale();
    sale.book.shop.rules.tax.rounding = catalogue::TaxRounding::PerLine;
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_EQ(taxNote(sheet, sheet), "roundedByLine");
}

TEST(SheetContent, marksTheLinesThatAreNotTaxed) {
    auto sale = test::shortSale();
    sale.order.lines[0].taxable = false;
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].note, "templatesOnWall · untaxed(Sales tax)");
}

TEST(SheetContent, saysThatTheGarmentIsTheCustomersOwn) {
    auto sale = test::shortSale();
    sale.order.lines[0].customersGarment = true;
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].detail,
              "ownGarment, 3 1/2 × 2 3/4 in · Aquamarine SS10, Jet SS10");
}

TEST(SheetContent, showsDiscountAndSmallestOrder) {
    auto sale = test::shortSale();
    sale.order.discount.share = Rate::fromPercent(10);
    sale.book.shop.rules.minimumOrder = cents(20'000);
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_THAT(labelsOf(sheet.adjustments), testing::ElementsAre("discount(10 %)", "topUp(200.00)"));
    // A tenth of 166.80 is 16.68; 166.80 − 16.68 = 150.12, and 200 − 150.12 = 49.88, by hand.
    EXPECT_EQ(sheet.adjustments[0].amount.text, "\u221216.68");
    EXPECT_EQ(sheet.adjustments[0].running.text, "150.12");
    EXPECT_EQ(sheet.adjustments[1].amount.text, "49.88");
    EXPECT_EQ(sheet.adjustments[1].running.text, "200.00");
}

TEST(SheetContent, writesTheDecimalsOfTheCurrency) {
    // ISO 4217: the yen has no minor unit, the Kuwaiti dinar has three decimals.
    auto sale = test::shortSale();
    sale.order.lines[0].overrideEach = Money::fromMicros(695'000'000);
    sale.book.shop.currency = *units::Currency::parse("JPY");
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].amount.text, "16,680");
    sale.book.shop.currency = *units::Currency::parse("KWD");
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].amount.text, "16,680.000");
}

TEST(SheetContent, leavesTheLadderOffWhereTheShopSaysSo) {
    auto sale = test::shortSale();
    const auto sheet = sale.sheet(test::PlainWords());
    ASSERT_EQ(sheet.ladders.size(), 1u);
    EXPECT_EQ(sheet.ladders[0].steps.size(), 4u);
    EXPECT_EQ(sheet.ladderNote, "ladderNote(none, false, true)");
    sale.book.shop.ladderOnSheet = false;
    EXPECT_TRUE(sale.sheet(test::PlainWords()).ladders.empty());
}

// 23 at a mark-up of 100 % and 24 at 50 %: by hand 23 × 2.00 is 46.00, 24 × 1.50 is 36.00.
TEST(SheetContent, saysWhereMoreCostLessIfTheShopWantsIt) {
    const sample::PlainJob job(23, sample::cents(100));
    test::Sale sale{job.book, sample::orderOf({job.line, job.line})};
    sale.order.lines[1].quantity = units::Count::of(24);
    sale.book.shop.rules.ladder = {{units::Count::of(1), units::Rate::fromPercent(100)},
                                   {units::Count::of(24), units::Rate::fromPercent(50)}};
    EXPECT_EQ(sale.sheet(test::PlainWords()).lines[0].note, "");
    sale.book.shop.offersMoreOnSheet = true;
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_EQ(sheet.lines[0].note, "moreForLess(24, 36.00, 46.00)");
    EXPECT_EQ(sheet.lines[1].note, "");
}

// 24 sleeves at 1.50.
TEST(SheetContent, namesThePlacesThatCostMore) {
    auto sale = test::shortSale();
    sale.book.shop.rules.places = {{"Sleeve", cents(150)}};
    sale.order.lines[0].quantity = units::Count::of(24);
    sale.order.lines[0].first().place = "sleeve";
    const auto sheet = sale.sheet(test::PlainWords());
    ASSERT_THAT(labelsOf(sheet.lines[0].extras), testing::ElementsAre("surcharge(24, Sleeve, 1.50)"));
    EXPECT_EQ(sheet.lines[0].extras[0].amount.text, "36.00");
    EXPECT_EQ(sheet.ladderNote, "ladderNote(of places too, false, true)");
}

TEST(SheetContent, showsSetUpInAColumnOfItsOwn) {
    auto sale = test::shortSale();
    sale.book.shop.rules.setUp = catalogue::SetUpCharge::OwnLine;
    sale.order.lines[0].first().templatesOnWall = false;
    const auto sheet = sale.sheet(test::PlainWords());
    EXPECT_THAT(labelsOf(sheet.lines[0].extras), testing::ElementsAre("setUp"));
    EXPECT_EQ(sheet.lines[0].note, "");
    EXPECT_EQ(sheet.ladderNote, "ladderNote(none, true, true)");
    // 20 minutes at 24.00 an hour and 120 % mark-up, by hand.
    EXPECT_EQ(sheet.lines[0].extras[0].amount.text, "17.60");
}

} // namespace sp::quoting
