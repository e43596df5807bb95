// SPDX-License-Identifier: MIT
#include "text_cases.h"

using namespace sp::units;
using namespace text_cases;

namespace {

const Currency kDollar = Currency::parse("USD").value();
const Currency kEuro = Currency::parse("EUR").value();
const Currency kYen = Currency::parse("JPY").value();
const Currency kDinar = Currency::parse("KWD").value();

class MoneyReads : public testing::TestWithParam<ReadCase> {};

TEST_P(MoneyReads, toTheMillionth) {
    const auto& row = GetParam();
    const auto money = parseMoney(row.text, kDollar, row.style);
    ASSERT_TRUE(money.has_value()) << describe(money.error());
    EXPECT_EQ(money->micros(), row.value);
}

INSTANTIATE_TEST_SUITE_P(
    Amounts, MoneyReads,
    testing::Values(ReadCase{"6.95", 6'950'000}, ReadCase{"24*0.29", 6'960'000}, ReadCase{"24 × 0.29", 6'960'000},
                    ReadCase{"1,234.50", 1'234'500'000}, ReadCase{"1,234", 1'234'000'000}, ReadCase{"3,5", 3'500'000},
                    ReadCase{"-6.95", -6'950'000}, ReadCase{"−6.95", -6'950'000}, ReadCase{"(6.95)", 6'950'000},
                    ReadCase{"6.94/1440", 4'819}, ReadCase{"1,234,567", 1'234'567'000'000},
                    ReadCase{"1.234.567", 1'234'567'000'000}, ReadCase{"1.234,50", 1'234'500'000},
                    ReadCase{"1\u202F234.50", 1'234'500'000}, ReadCase{"1'234.50", 1'234'500'000},
                    ReadCase{"1000000000", 1'000'000'000'000'000}, ReadCase{"-1,000,000,000", -1'000'000'000'000'000}));

INSTANTIATE_TEST_SUITE_P(Signs, MoneyReads,
                         testing::Values(ReadCase{"$6.95", 6'950'000}, ReadCase{"6.95 $", 6'950'000},
                                         ReadCase{"USD 6.95", 6'950'000}, ReadCase{"6.95usd", 6'950'000},
                                         ReadCase{"-$5", -5'000'000}, ReadCase{"$-5", -5'000'000},
                                         ReadCase{"$5 USD", 5'000'000}, ReadCase{"24 * $0.29", 6'960'000},
                                         ReadCase{"$5 + $3", 8'000'000}, ReadCase{"$(5+3)/2", 4'000'000},
                                         ReadCase{"$5 + 3", 8'000'000}));

// The style names the marks of the person's own locale: what stands between thousands there is read as such.
INSTANTIATE_TEST_SUITE_P(
    Styles, MoneyReads,
    testing::Values(ReadCase{"1.234,50", 1'234'500'000, kGerman}, ReadCase{"1.234", 1'234'000'000, kGerman},
                    ReadCase{"1,234", 1'234'000, kGerman}, ReadCase{"0.250", 250'000, kGerman},
                    ReadCase{"1234.567", 1'234'567'000, kGerman}, ReadCase{"1.5", 1'500'000, kGerman},
                    ReadCase{"1 234,50", 1'234'500'000, kFrench}, ReadCase{"1\u00A0234,50", 1'234'500'000, kFrench},
                    ReadCase{"1 200/24", 50'000'000, kFrench}, ReadCase{"1200/1 000", 1'200'000, kFrench},
                    ReadCase{"1’234.50", 1'234'500'000, kSwiss}, ReadCase{"1'234'567.5", 1'234'567'500'000, kSwiss}));

// Halves to even, as the published pairs of fraction_test.cpp have them, moved six places down.
INSTANTIATE_TEST_SUITE_P(Rounding, MoneyReads,
                         testing::Values(ReadCase{"0.0000025", 2}, ReadCase{"0.0000035", 4}, ReadCase{"0.0000225", 22},
                                         ReadCase{"-0.0000045", -4}, ReadCase{"0.0000075", 8},
                                         ReadCase{"0.00000250000000000000000001", 3}));

class MoneyRefuses : public testing::TestWithParam<Refusal> {};

TEST_P(MoneyRefuses, inOneSentence) {
    const auto& row = GetParam();
    const auto money = parseMoney(row.text, kDollar, row.style);
    ASSERT_FALSE(money.has_value()) << money->micros();
    expectRefusal(row, money.error());
}

INSTANTIATE_TEST_SUITE_P(
    Amounts, MoneyRefuses,
    testing::Values(
        Refusal{"€5", Code::Invalid, "UnknownUnit(“€5”, “€”, AmountUnits(USD))"},
        Refusal{"5 EUR", Code::Invalid, "UnknownUnit(“5 EUR”, “EUR”, AmountUnits(USD))"},
        Refusal{"EUR 5", Code::Invalid, "UnknownUnit(“EUR 5”, “EUR”, AmountUnits(USD))"},
        Refusal{"$", Code::Invalid, "EndsWithoutNumber(“$”, AnAmount, AmountExample)"},
        Refusal{"$5*$3", Code::Invalid, "MultipliesMeasures(“$5*$3”, AnAmount)"},
        Refusal{"$6/$2", Code::Invalid, "DividesByItsKind(“$6/$2”, AnAmount)"},
        Refusal{"$5 $6", Code::Invalid, "SignMissing(“$5 $6”, “6”)"},
        Refusal{"5%", Code::Invalid, "UnknownUnit(“5%”, “%”, AmountUnits(USD))"},
        Refusal{"1,23,456", Code::Invalid, "OddMarks(“1,23,456”)"}, Refusal{"1e5", Code::Invalid, "PowerOfTen(“1e5”)"},
        Refusal{"1.234", Code::Ambiguous, "AmbiguousNumber(“1.234”, 1,234, 1234)", kFrench},
        Refusal{"1 200/400", Code::Ambiguous, "HoldsAmbiguousNumber(“1 200/400”, “1 200”, 1 + 200/400, 1200/400)",
                kFrench},
        Refusal{"1 234", Code::Invalid, "SignMissing(“1 234”, “234”)"},
        Refusal{"", Code::Invalid, "NothingTyped(AnAmount, AmountExample)"},
        Refusal{"1000000000.000001", Code::OutOfRange, "BeyondRange(“1000000000.000001”, AnAmount, AmountRange)"},
        Refusal{"-1000000000.0000001", Code::OutOfRange, "BeyondRange(“-1000000000.0000001”, AnAmount, AmountRange)"}));

TEST(MoneyText, takesTheSignOfItsOwnCurrencyOnly) {
    EXPECT_EQ(parseMoney("1.234,50 €", kEuro, kGerman)->micros(), 1'234'500'000);
    EXPECT_EQ(parseMoney("¥1,235", kYen)->micros(), 1'235'000'000);
    EXPECT_EQ(parseMoney("￥1,235", kYen)->micros(), 1'235'000'000);
    EXPECT_EQ(parseMoney("£5", Currency::parse("GBP").value())->micros(), 5'000'000);
    EXPECT_EQ(parseMoney("$5", Currency::parse("CAD").value())->micros(), 5'000'000);
    EXPECT_FALSE(parseMoney("$5", kEuro).has_value());
    EXPECT_FALSE(parseMoney("£5", kDinar).has_value());
}

// Digits as Qt's QLocale 6.4 writes 1234.5 for de_DE and ja_JP (measured); decimals by ISO 4217.
TEST(MoneyText, writesTheCurrencysDecimals) {
    const Money amount = Money::fromMicros(1'234'500'000);
    EXPECT_EQ(formatMoney(amount, kDollar), "1,234.50");
    EXPECT_EQ(formatMoney(amount, kEuro, kGerman), "1.234,50");
    EXPECT_EQ(formatMoney(amount, kEuro, kFrench), "1\u202F234,50");
    EXPECT_EQ(formatMoney(amount, kYen), "1,235");
    EXPECT_EQ(formatMoney(amount, kDinar), "1,234.500");
    EXPECT_EQ(formatMoney(amount, kDollar, kPlain), "1234.50");
    EXPECT_EQ(formatMoney(Money::fromMicros(-999'995'000), kDollar), "-1,000.00");
}

TEST(MoneyText, roundsHalvesAwayFromZeroWhenWriting) {
    EXPECT_EQ(formatMoney(Money::fromMicros(5'000), kDollar), "0.01");
    EXPECT_EQ(formatMoney(Money::fromMicros(4'999), kDollar), "0.00");
    EXPECT_EQ(formatMoney(Money::fromMicros(-5'000), kDollar), "-0.01");
    EXPECT_EQ(formatMoney(Money::fromMicros(-4'999), kDollar), "0.00");
    EXPECT_EQ(formatMoney(Money::fromMicros(500'000), kYen), "1");
}

TEST(MoneyText, writesTheExactAmountForMachines) {
    EXPECT_EQ(formatExact(Money::fromMicros(6'950'000), kDollar), "6.95");
    EXPECT_EQ(formatExact(Money::fromMicros(4'861), kDollar), "0.004861");
    EXPECT_EQ(formatExact(Money::fromMicros(5'000'000), kDollar), "5.00");
    EXPECT_EQ(formatExact(Money::fromMicros(5'000'000), kYen), "5");
    EXPECT_EQ(formatExact(Money::fromMicros(-1'234'567'100'000), kDinar), "-1234567.100");
    EXPECT_EQ(formatExact(Money::fromMicros(INT64_MIN), kYen), "-9223372036854.775808");
}

TEST(MoneyText, readsBackWhatItWrites) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < 4000; ++i) {
        const std::int64_t size = anySize(random, 999'999'999'000'000);
        const Money amount = Money::fromMicros(random() % 2 == 0 ? size : -size);
        ASSERT_EQ(parseMoney(formatExact(amount, kDollar), kDollar).value(), amount) << formatExact(amount, kDollar);
        for (const auto& currency : {kDollar, kYen, kDinar})
            for (const auto& style : kStyles) {
                const Money minor =
                    Money::fromMicros(amount.micros() / currency.microsPerMinor() * currency.microsPerMinor());
                const std::string text = formatMoney(minor, currency, style);
                const auto again = parseMoney(text, currency, style);
                ASSERT_TRUE(again.has_value()) << text << ": " << describe(again.error());
                ASSERT_EQ(*again, minor) << text;
            }
    }
}

} // namespace
