// SPDX-License-Identifier: MIT
#include "core/units/measured.h"
#include "text_cases.h"

using namespace sp::units;
using namespace text_cases;

namespace {

constexpr std::int64_t kMm = 1'000'000;  // nanometres
constexpr std::int64_t kIn = 25'400'000; // international yard and pound agreement of 1959: 1 in = 25.4 mm

class LengthReads : public testing::TestWithParam<ReadCase> {};

TEST_P(LengthReads, toTheNanometre) {
    const auto& row = GetParam();
    const auto length = parseLength(row.text, LengthUnit::Inch, row.style);
    ASSERT_TRUE(length.has_value()) << describe(length.error());
    EXPECT_EQ(length->nanometres(), row.value);
}

INSTANTIATE_TEST_SUITE_P(
    Inches, LengthReads,
    testing::Values(ReadCase{"3 1/2 in", kIn * 7 / 2}, ReadCase{"3-1/2 in", kIn * 7 / 2},
                    ReadCase{"3-1/2\"", kIn * 7 / 2}, ReadCase{"3–1/2 in", kIn * 7 / 2}, ReadCase{"3½\"", kIn * 7 / 2},
                    ReadCase{"3 ½ in", kIn * 7 / 2}, ReadCase{"½", kIn / 2}, ReadCase{"3.5\"", kIn * 7 / 2},
                    ReadCase{"3½″", kIn * 7 / 2}, ReadCase{"3½”", kIn * 7 / 2}, ReadCase{"3.5''", kIn * 7 / 2},
                    ReadCase{"1/2 in", kIn / 2}, ReadCase{"1 / 2 in", kIn / 2}, ReadCase{"1⁄2 in", kIn / 2},
                    ReadCase{"7/2 in", kIn * 7 / 2}, ReadCase{"8.5/2 in", kIn * 17 / 4}, ReadCase{"3 inches", 3 * kIn},
                    ReadCase{"1 INCH", kIn}, ReadCase{"3 in.", 3 * kIn}, ReadCase{".5 in", kIn / 2},
                    ReadCase{"5.", 5 * kIn}, ReadCase{"\u00A03\u00A01/2\u2009in\t", kIn * 7 / 2},
                    ReadCase{"63/64", kIn * 63 / 64}, ReadCase{"6 in / 1 1/2", 4 * kIn},
                    ReadCase{"4 - 1/2 in", kIn * 7 / 2}, ReadCase{"2 in − 1/2 in", kIn * 3 / 2},
                    ReadCase{"+3", 3 * kIn}, ReadCase{"0", 0}, ReadCase{"-0", 0}));

INSTANTIATE_TEST_SUITE_P(OtherUnits, LengthReads,
                         testing::Values(ReadCase{"88.9 mm", kIn * 7 / 2}, ReadCase{"8.89cm", kIn * 7 / 2},
                                         ReadCase{"0.0889 m", kIn * 7 / 2}, ReadCase{"250 µm", kMm / 4},
                                         ReadCase{"250 μm", kMm / 4}, ReadCase{"250um", kMm / 4},
                                         ReadCase{"1 ft 2 in", 14 * kIn}, ReadCase{"1'2\"", 14 * kIn},
                                         ReadCase{"1’ 2 1/2”", kIn * 29 / 2}, ReadCase{"1′2″", 14 * kIn},
                                         ReadCase{"1/2 ft 3 in", 9 * kIn}, ReadCase{"2 yd", 72 * kIn},
                                         ReadCase{"1 yd 1 ft 1 in", 49 * kIn}, ReadCase{"1 foot", 12 * kIn},
                                         ReadCase{"1 m 5 cm", 1050 * kMm}, ReadCase{"1000 m", 1'000'000 * kMm}));

INSTANTIATE_TEST_SUITE_P(Arithmetic, LengthReads,
                         testing::Values(ReadCase{"2*40mm + 8.9 mm", 88'900'000}, ReadCase{"(1+2.5)", kIn * 7 / 2},
                                         ReadCase{"(1+2.5) in", kIn * 7 / 2}, ReadCase{"2*(1 ft 2 in)", 28 * kIn},
                                         ReadCase{"2*1 ft 2 in", 28 * kIn}, ReadCase{"1 ft 2 in / 2", 7 * kIn},
                                         ReadCase{"24/2/3", 4 * kIn}, ReadCase{"6/1/2", 3 * kIn},
                                         ReadCase{"1 + 40mm", kIn + 40 * kMm}, ReadCase{"10-4-3", 3 * kIn},
                                         ReadCase{"2+3*4", 14 * kIn}, ReadCase{"-2+3", kIn}, ReadCase{"2*-3 + 7", kIn},
                                         ReadCase{"80mm / 40mm * 3", 6 * kIn}, ReadCase{"80mm/40mm*3in", 6 * kIn},
                                         ReadCase{"40mm-8.9mm", 31'100'000}, ReadCase{"1/3 in", 8'466'667},
                                         ReadCase{"1/3*3", kIn}, ReadCase{"12÷4", 3 * kIn}));

INSTANTIATE_TEST_SUITE_P(
    Marks, LengthReads,
    testing::Values(ReadCase{"0,35 m", 350 * kMm, kGerman}, ReadCase{"3.5", kIn * 7 / 2, kGerman},
                    ReadCase{"3,5", kIn * 7 / 2}, ReadCase{"3,50 mm", kMm * 7 / 2}, ReadCase{"1,2345 m", 1'234'500'000},
                    ReadCase{"0,350 m", 350 * kMm}, ReadCase{"0.350 m", 350 * kMm, kGerman},
                    ReadCase{"1.234,5 mm", 1'234'500'000}, ReadCase{"1.234,5 mm", 1'234'500'000, kGerman},
                    ReadCase{"1,234 mm", 1'234'000, kGerman}, ReadCase{"1.234 mm", 1'234'000},
                    ReadCase{"1,234.5 mm", 1'234'500'000, kGerman}, ReadCase{"12 345 mm", 12'345 * kMm, kFrench},
                    ReadCase{"12\u202F345 mm", 12'345 * kMm}, ReadCase{"1’234 mm", 1234 * kMm, kSwiss},
                    ReadCase{"1'2\"", 14 * kIn, kSwiss}, ReadCase{"3 1/2", kIn * 7 / 2, kFrench}));

class LengthRefuses : public testing::TestWithParam<Refusal> {};

TEST_P(LengthRefuses, inOneSentence) {
    const auto& row = GetParam();
    const auto length = parseLength(row.text, LengthUnit::Inch, row.style);
    ASSERT_FALSE(length.has_value()) << length->nanometres();
    expectRefusal(row, length.error());
}

INSTANTIATE_TEST_SUITE_P(
    Nonsense, LengthRefuses,
    testing::Values(Refusal{"", Code::Invalid, "NothingTyped(ALength, LengthExample)"},
                    Refusal{" \u00A0", Code::Invalid, "NothingTyped(ALength, LengthExample)"},
                    Refusal{"+", Code::Invalid, "EndsWithoutNumber(“+”, ALength, LengthExample)"},
                    Refusal{"3 *", Code::Invalid, "EndsWithoutNumber(“3 *”, ALength, LengthExample)"},
                    Refusal{"* 3", Code::Invalid, "NoNumberHere(“* 3”, “*”, ALength, LengthExample)"},
                    Refusal{"nan", Code::Invalid, "NotANumber(“nan”, ALength, LengthExample)"},
                    Refusal{"inf", Code::Invalid, "NotANumber(“inf”, ALength, LengthExample)"},
                    Refusal{"in", Code::Invalid, "NotANumber(“in”, ALength, LengthExample)"},
                    Refusal{"--3", Code::Invalid, "NoNumberHere(“--3”, “-”, ALength, LengthExample)"},
                    Refusal{"3 in in", Code::Invalid, "UnitTooMany(“3 in in”, “in”)"},
                    Refusal{"(3 in) mm", Code::Invalid, "UnitTooMany(“(3 in) mm”, “mm”)"},
                    Refusal{"3 furlongs", Code::Invalid, "UnknownUnit(“3 furlongs”, “furlongs”, LengthUnits)"},
                    Refusal{"3 mm²", Code::Invalid, "UnknownUnit(“3 mm²”, “mm²”, LengthUnits)"},
                    Refusal{"3 дюйма", Code::Invalid, "UnknownUnit(“3 дюйма”, “дюйма”, LengthUnits)"},
                    Refusal{"3 in #4", Code::Invalid, "NotReadHere(“3 in #4”, “#”)"},
                    Refusal{"3x4", Code::Ambiguous, "CouldBeSize(“3x4”)"},
                    Refusal{"3 in 5 in", Code::Invalid, "SignMissing(“3 in 5 in”, “5”)"},
                    Refusal{"1'2", Code::Invalid, "SignMissing(“1'2”, “2”)"},
                    Refusal{"2 in 1 ft", Code::Invalid, "SignMissing(“2 in 1 ft”, “1”)"},
                    Refusal{"3 4", Code::Invalid, "SignMissing(“3 4”, “4”)"},
                    Refusal{"2(3)", Code::Invalid, "SignMissing(“2(3)”, “(”)"},
                    Refusal{"3½½", Code::Invalid, "SignMissing(“3½½”, “½”)"},
                    Refusal{"(1+2", Code::Invalid, "BracketNotClosed(“(1+2”)"},
                    Refusal{"1+2)", Code::Invalid, "BracketTooMany(“1+2)”)"},
                    Refusal{"()", Code::Invalid, "NoNumberHere(“()”, “)”, ALength, LengthExample)"},
                    Refusal{"1..2", Code::Invalid, "NotReadHere(“1..2”, “.”)"},
                    Refusal{"0xFF", Code::Invalid, "UnknownUnit(“0xFF”, “xFF”, LengthUnits)"},
                    Refusal{"1.2.3", Code::Invalid, "OddMarks(“1.2.3”)"},
                    Refusal{"1,23,456 mm", Code::Invalid, "HoldsOddMarks(“1,23,456 mm”, “1,23,456”)"},
                    Refusal{"1,234,56", Code::Invalid, "OddMarks(“1,234,56”)"},
                    Refusal{std::string("3\0in", 4), Code::Invalid, "NotReadHere(“3 in”, “ ”)"}));

INSTANTIATE_TEST_SUITE_P(
    Arithmetic, LengthRefuses,
    testing::Values(Refusal{"3mm*2mm", Code::Invalid, "MultipliesMeasures(“3mm*2mm”, ALength)"},
                    Refusal{"6 in / 2 in", Code::Invalid, "DividesByItsKind(“6 in / 2 in”, ALength)"},
                    Refusal{"6/(2 in)", Code::Invalid, "DividesByMeasure(“6/(2 in)”, ALength)"},
                    Refusal{"6in/2in + 1mm", Code::Invalid, "AddsPlainNumber(“6in/2in + 1mm”, ALength)"},
                    Refusal{"1/0", Code::Invalid, "DividesByNothing(“1/0”)"},
                    Refusal{"1/(2-2)", Code::Invalid, "DividesByNothing(“1/(2-2)”)"},
                    Refusal{"1 in/0 mm", Code::Invalid, "DividesByNothing(“1 in/0 mm”)"},
                    Refusal{"1e3", Code::Invalid, "PowerOfTen(“1e3”)"},
                    Refusal{"1e999", Code::Invalid, "PowerOfTen(“1e999”)"},
                    Refusal{"2.5E-3 m", Code::Invalid, "PowerOfTen(“2.5E-3 m”)"},
                    Refusal{std::string(51, '(') + "1" + std::string(51, ')'), Code::Invalid,
                            "BracketsTooDeep(“((((((((((((((((((((((((((((((…”)"},
                    Refusal{std::string(200, '('), Code::Invalid, "BracketsTooDeep(“((((((((((((((((((((((((((((((…”)"},
                    Refusal{std::string(201, '1'), Code::Invalid, "TextTooLong(ALength)"}));

INSTANTIATE_TEST_SUITE_P(
    Doubtful, LengthRefuses,
    testing::Values(
        Refusal{"1,234 mm", Code::Ambiguous, "HoldsAmbiguousNumber(“1,234 mm”, “1,234”, 1.234, 1234)"},
        Refusal{"1.234 mm", Code::Ambiguous, "HoldsAmbiguousNumber(“1.234 mm”, “1.234”, 1,234, 1234)", kGerman},
        Refusal{"1.234 mm", Code::Ambiguous, "HoldsAmbiguousNumber(“1.234 mm”, “1.234”, 1,234, 1234)", kFrench},
        Refusal{"1 200/400", Code::Ambiguous, "HoldsAmbiguousNumber(“1 200/400”, “1 200”, 1 + 200/400, 1200/400)",
                kFrench},
        Refusal{"9 × 12 in", Code::Ambiguous, "CouldBeSize(“9 × 12 in”)"},
        Refusal{"5-1/3", Code::Ambiguous, "MixedOrDifference(“5-1/3”, 5, 1/3)"},
        Refusal{"2*3-1/2", Code::Ambiguous, "MixedOrDifference(“2*3-1/2”, 3, 1/2)"},
        Refusal{"1'-2\"", Code::Ambiguous, "FeetAndInches(“1'-2\"”)"},
        Refusal{"1 ft -2 in", Code::Ambiguous, "FeetAndInches(“1 ft -2 in”)"},
        Refusal{"9.5 x 12 in", Code::Ambiguous, "CouldBeSize(“9.5 x 12 in”)"},
        Refusal{"10-12 mm", Code::Ambiguous, "CouldBeRange(“10-12 mm”)"},
        Refusal{"2 in + 1,234 in", Code::Ambiguous, "HoldsAmbiguousNumber(“2 in + 1,234 in”, “1,234”, 1.234, 1234)"}));

INSTANTIATE_TEST_SUITE_P(
    OutOfRange, LengthRefuses,
    testing::Values(Refusal{"-3 in", Code::OutOfRange, "BeyondRange(“-3 in”, ALength, LengthRange)"},
                    Refusal{"−1", Code::OutOfRange, "BeyondRange(“−1”, ALength, LengthRange)"},
                    Refusal{"-0.0000001 mm", Code::OutOfRange, "BeyondRange(“-0.0000001 mm”, ALength, LengthRange)"},
                    Refusal{"1000.000000001 m", Code::OutOfRange,
                            "BeyondRange(“1000.000000001 m”, ALength, LengthRange)"},
                    Refusal{"1100 yd", Code::OutOfRange, "BeyondRange(“1100 yd”, ALength, LengthRange)"},
                    Refusal{std::string(40, '9'), Code::OutOfRange, "TooManyDigits(“999999999999999999999999999999…”)"},
                    Refusal{std::string(30, '9') + "*" + std::string(30, '9'), Code::OutOfRange,
                            "TooLargeOrTooFine(“999999999999999999999999999999…”)"}));

// RFC 3629, section 3: overlong forms, surrogates and cut sequences are not UTF-8.
TEST(LengthText, refusesDamagedCharacters) {
    for (const std::string text : {"3\xC0\xAF", "\xED\xA0\x80", "3\xE2\x80", "\xFF", "3 in\xF4\x90\x80\x80", "\x80"}) {
        const auto length = parseLength(text, LengthUnit::Inch);
        ASSERT_FALSE(length.has_value());
        expectRefusal({text, Code::Invalid, "TextDamaged(ALength)"}, length.error());
    }
}

TEST(LengthText, takesFiftyBracketsAndTwoHundredBytes) {
    EXPECT_TRUE(parseLength(std::string(50, '(') + "1" + std::string(50, ')'), LengthUnit::Inch).has_value());
    EXPECT_TRUE(parseLength("1" + std::string(199, ' '), LengthUnit::Inch).has_value());
}

TEST(LengthText, countsABareNumberInTheFieldsUnit) {
    EXPECT_EQ(parseLength("3", LengthUnit::Millimetre)->nanometres(), 3 * kMm);
    EXPECT_EQ(parseLength("3", LengthUnit::Centimetre)->nanometres(), 30 * kMm);
    EXPECT_EQ(parseLength("3 + 1 in", LengthUnit::Millimetre)->nanometres(), 3 * kMm + kIn);
}

TEST(LengthText, writesInchesAsARulerHasThem) {
    EXPECT_EQ(formatLength(Length::fromInch64ths(224), LengthUnit::Inch), "3 1/2");
    EXPECT_EQ(formatLength(Length::fromInch64ths(63), LengthUnit::Inch), "63/64");
    EXPECT_EQ(formatLength(Length::fromInch64ths(640), LengthUnit::Inch), "10");
    EXPECT_EQ(formatLength(Length(), LengthUnit::Inch), "0");
    EXPECT_EQ(formatLength(Length::fromNanometres(kIn / 10), LengthUnit::Inch), "0.1");
    EXPECT_EQ(formatLength(Length::fromNanometres(kIn / 10), LengthUnit::Inch, kGerman), "0,1");
    // 254.9990675 in lies halfway between two nanometres, and half to even would read the other one.
    EXPECT_EQ(formatLength(Length::fromNanometres(6'476'976'315), LengthUnit::Inch), "254.99906751");
}

TEST(LengthText, writesMillimetresWithoutIdleZeros) {
    EXPECT_EQ(formatLength(Length::fromInch64ths(224), LengthUnit::Millimetre), "88.9");
    EXPECT_EQ(formatLength(Length::fromInch64ths(224), LengthUnit::Centimetre, kGerman), "8,89");
    EXPECT_EQ(formatLength(Length::fromMicrometres(1'234'567), LengthUnit::Millimetre), "1234.567");
    EXPECT_EQ(formatLength(kMaxLength, LengthUnit::Millimetre), "1000000");
    EXPECT_EQ(parseLength(formatLength(kMaxLength, LengthUnit::Inch), LengthUnit::Inch).value(), kMaxLength);
    EXPECT_EQ(nameOf(LengthUnit::Centimetre), "cm");
}

// 8.9 cm is 3.50394 in and 0.1 mm is 0.0039 in, by 25.4 mm to the inch (international yard and pound agreement, 1959).
TEST(LengthText, isMeasuredWithTheRulerThereIs) {
    struct Case {
        Length length;
        const char* inches;
        const char* millimetres;
        const char* centimetres;
    };
    const Case cases[] = {
        {Length::fromInch64ths(224), "3 1/2", "88.9", "8.89"},
        {Length::fromInch64ths(4), "1/16", "1.6", "0.16"},
        {Length::fromInch64ths(63), "0.98", "25", "2.5"},
        {Length::fromMicrometres(89'000), "3.5", "89", "8.9"},
        {Length::fromMicrometres(88'000), "3.46", "88", "8.8"},
        {Length::fromMicrometres(50), "0", "0.1", "0.01"},
        {Length(), "0", "0", "0"},
    };
    for (const auto& [length, inches, millimetres, centimetres] : cases) {
        EXPECT_EQ(measuredLength(length, LengthUnit::Inch), inches);
        EXPECT_EQ(measuredLength(length, LengthUnit::Millimetre), millimetres);
        EXPECT_EQ(measuredLength(length, LengthUnit::Centimetre), centimetres);
    }
    EXPECT_EQ(measuredLength(Length::fromMicrometres(-88'000), LengthUnit::Inch, kGerman), "-3,46");
}

TEST(LengthText, readsBackWhatItWrites) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < 4000; ++i) {
        const Length length = i % 2 == 0 ? Length::fromNanometres(anySize(random, kMaxLength.nanometres()))
                                         : Length::fromInch64ths(anySize(random, 2'000'000));
        for (const auto& style : kStyles)
            for (const auto unit : {LengthUnit::Inch, LengthUnit::Millimetre, LengthUnit::Centimetre}) {
                const std::string text = formatLength(length, unit, style);
                const auto again = parseLength(text, unit, style);
                ASSERT_TRUE(again.has_value()) << text << ": " << describe(again.error());
                ASSERT_EQ(again->nanometres(), length.nanometres()) << text;
            }
    }
}

} // namespace
