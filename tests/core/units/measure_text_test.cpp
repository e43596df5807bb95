// SPDX-License-Identifier: MIT
// Rates, times and temperatures as text; and that none of it asks the process locale.
#include "text_cases.h"

#include <clocale>
#include <locale>

using namespace sp::units;
using namespace text_cases;

namespace {

class RateReads : public testing::TestWithParam<ReadCase> {};

TEST_P(RateReads, toTheMillionth) {
    const auto rate = parseRate(GetParam().text, GetParam().style);
    ASSERT_TRUE(rate.has_value()) << describe(rate.error());
    EXPECT_EQ(rate->ppm(), GetParam().value);
}

INSTANTIATE_TEST_SUITE_P(Shares, RateReads,
                         testing::Values(ReadCase{"8.875", 88'750}, ReadCase{"8.875 %", 88'750},
                                         ReadCase{"8 7/8 %", 88'750}, ReadCase{"8⅞%", 88'750}, ReadCase{"1/3", 3'333},
                                         ReadCase{"-5 percent", -50'000}, ReadCase{"8,875", 88'750, kGerman},
                                         ReadCase{"8,5", 85'000}, ReadCase{"0,875", 8'750},
                                         ReadCase{"10000", 100'000'000}, ReadCase{"0.00025", 2}, ReadCase{"0.00035", 4},
                                         ReadCase{"5 % + 3", 80'000}));

class TimeReads : public testing::TestWithParam<ReadCase> {};

TEST_P(TimeReads, toTheMillisecond) {
    const auto time = parseDuration(GetParam().text, GetParam().style);
    ASSERT_TRUE(time.has_value()) << describe(time.error());
    EXPECT_EQ(time->milliseconds(), GetParam().value);
}

INSTANTIATE_TEST_SUITE_P(Spans, TimeReads,
                         testing::Values(ReadCase{"10 s", 10'000}, ReadCase{"1 min 30 s", 90'000},
                                         ReadCase{"1:30", 90'000}, ReadCase{"1:30:00", 5'400'000},
                                         ReadCase{"0:05.5", 5'500}, ReadCase{"0:05,5", 5'500, kGerman},
                                         ReadCase{"2*1:30", 180'000}, ReadCase{"2.5 min", 150'000},
                                         ReadCase{"3 h 20 min", 12'000'000}, ReadCase{"12", 720'000},
                                         ReadCase{"1 1/2 h", 5'400'000}, ReadCase{"250 ms", 250},
                                         ReadCase{"1 hour 5 seconds", 3'605'000}, ReadCase{"90:00", 5'400'000},
                                         ReadCase{"10000 h", 36'000'000'000}, ReadCase{"10 sec.", 10'000}));

class HeatReads : public testing::TestWithParam<ReadCase> {};

TEST_P(HeatReads, toAThousandthOfADegreeFahrenheit) {
    const auto heat = parseTemperature(GetParam().text, TemperatureUnit::Fahrenheit, GetParam().style);
    ASSERT_TRUE(heat.has_value()) << describe(heat.error());
    EXPECT_EQ(heat->millifahrenheit(), GetParam().value);
}

// OpenStax Contemporary Mathematics, module m00073: 200 °C is 392 °F, 20 °C is 68 °F.
INSTANTIATE_TEST_SUITE_P(Heats, HeatReads,
                         testing::Values(ReadCase{"320 F", 320'000}, ReadCase{"320 °F", 320'000},
                                         ReadCase{"320°", 320'000}, ReadCase{"320", 320'000}, ReadCase{"320f", 320'000},
                                         ReadCase{"320 º F", 320'000}, ReadCase{"200 C", 392'000},
                                         ReadCase{"20 ℃", 68'000}, ReadCase{"300+20 F", 320'000},
                                         ReadCase{"(300+20) F", 320'000}, ReadCase{"320.5 Fahrenheit", 320'500},
                                         ReadCase{"320,5", 320'500, kGerman}, ReadCase{"−50 °C", -58'000},
                                         ReadCase{"500 C", 932'000}));

struct MeasureRefusal {
    Refusal row;
    char what; ///< r rate, t time, h heat
};

void PrintTo(const MeasureRefusal& row, std::ostream* out) { *out << row.what << ' ' << row.row.text; }

class MeasureRefuses : public testing::TestWithParam<MeasureRefusal> {};

TEST_P(MeasureRefuses, inOneSentence) {
    const auto& [row, what] = GetParam();
    sp::base::Error error;
    const auto keep = [&](const auto& result) {
        ASSERT_FALSE(result.has_value());
        error = result.error();
    };
    if (what == 'r') keep(parseRate(row.text, row.style));
    if (what == 't') keep(parseDuration(row.text, row.style));
    if (what == 'h') keep(parseTemperature(row.text, TemperatureUnit::Fahrenheit, row.style));
    ASSERT_FALSE(describe(error).empty());
    expectRefusal(row, error);
}

INSTANTIATE_TEST_SUITE_P(
    Measures, MeasureRefuses,
    testing::Values(
        MeasureRefusal{{"10001", Code::OutOfRange, "BeyondRange(“10001”, ARate, RateRange)"}, 'r'},
        MeasureRefusal{{"1,234", Code::Ambiguous, "AmbiguousNumber(“1,234”, 1.234, 1234)"}, 'r'},
        MeasureRefusal{{"5%*3%", Code::Invalid, "MultipliesMeasures(“5%*3%”, ARate)"}, 'r'},
        MeasureRefusal{{"8-7/8 %", Code::Ambiguous, "MixedOrDifference(“8-7/8 %”, 8, 7/8)"}, 'r'},
        MeasureRefusal{{"5 %%", Code::Invalid, "UnitTooMany(“5 %%”, “%”)"}, 'r'},
        MeasureRefusal{{"$5", Code::Invalid, "NoNumberHere(“$5”, “$”, ARate, RateExample)"}, 'r'},
        MeasureRefusal{{"1:90", Code::Invalid, "NotAClockTime(“1:90”)"}, 't'},
        MeasureRefusal{{"1:3", Code::Invalid, "NotAClockTime(“1:3”)"}, 't'},
        MeasureRefusal{{"1:30 h", Code::Invalid, "NotAClockTime(“1:30 h”)"}, 't'},
        MeasureRefusal{{"1:30:00:00", Code::Invalid, "NotAClockTime(“1:30:00:00”)"}, 't'},
        MeasureRefusal{{"1/2:30", Code::Invalid, "NotReadHere(“1/2:30”, “:”)"}, 't'},
        MeasureRefusal{{"10-12 s", Code::Ambiguous, "CouldBeRange(“10-12 s”)"}, 't'},
        MeasureRefusal{{"10–12", Code::OutOfRange, "BeyondRange(“10–12”, ATime, TimeRange)"}, 't'},
        MeasureRefusal{{"10001 h", Code::OutOfRange, "BeyondRange(“10001 h”, ATime, TimeRange)"}, 't'},
        MeasureRefusal{{"30 s 1 min", Code::Invalid, "SignMissing(“30 s 1 min”, “1”)"}, 't'},
        MeasureRefusal{{"3 days", Code::Invalid, "UnknownUnit(“3 days”, “days”, TimeUnits)"}, 't'},
        MeasureRefusal{{"-51 C", Code::OutOfRange, "BeyondRange(“-51 C”, ATemperature, CelsiusRange)"}, 'h'},
        MeasureRefusal{{"933", Code::OutOfRange, "BeyondRange(“933”, ATemperature, FahrenheitRange)"}, 'h'},
        MeasureRefusal{{"320 F + 5", Code::Invalid, "UnknownUnit(“320 F + 5”, “F”, TemperatureUnits)"}, 'h'},
        MeasureRefusal{{"320 F F", Code::Invalid, "UnknownUnit(“320 F F”, “F”, TemperatureUnits)"}, 'h'},
        MeasureRefusal{{"320 K", Code::Invalid, "UnknownUnit(“320 K”, “K”, TemperatureUnits)"}, 'h'},
        MeasureRefusal{{"inf", Code::Invalid, "NotANumber(“inf”, ATemperature, TemperatureExample)"}, 'h'},
        MeasureRefusal{{"F", Code::Invalid, "EndsWithoutNumber(“F”, ATemperature, TemperatureExample)"}, 'h'},
        MeasureRefusal{{"", Code::Invalid, "NothingTyped(ATemperature, TemperatureExample)"}, 'h'}));

TEST(RateText, dropsIdleZeros) {
    EXPECT_EQ(formatRate(Rate::fromPpm(88'750)), "8.875");
    EXPECT_EQ(formatRate(Rate::fromPpm(88'750), kGerman), "8,875");
    EXPECT_EQ(formatRate(Rate::fromPercent(-5)), "-5");
    EXPECT_EQ(formatRate(Rate::fromPpm(1)), "0.0001");
}

TEST(DurationText, namesWhatIsThere) {
    EXPECT_EQ(formatDuration(Duration::fromMinutes(200)), "3 h 20 min");
    EXPECT_EQ(formatDuration(Duration::fromSeconds(90)), "1 min 30 s");
    EXPECT_EQ(formatDuration(Duration::fromSeconds(10)), "10 s");
    EXPECT_EQ(formatDuration(Duration::fromSeconds(3605)), "1 h 5 s");
    EXPECT_EQ(formatDuration(Duration::fromMilliseconds(2'050), kGerman), "2,05 s");
    EXPECT_EQ(formatDuration(Duration()), "0 s");
}

TEST(TemperatureText, goesToATenth) {
    EXPECT_EQ(formatTemperature(Temperature::fromMillifahrenheit(320'000), TemperatureUnit::Fahrenheit), "320");
    EXPECT_EQ(formatTemperature(Temperature::fromMillifahrenheit(315'000), TemperatureUnit::Celsius), "157.2");
    EXPECT_EQ(formatTemperature(Temperature::fromMillicelsius(-5'550), TemperatureUnit::Celsius, kGerman), "-5,6");
    EXPECT_EQ(formatTemperature(Temperature::fromMillicelsius(-40), TemperatureUnit::Celsius), "0");
}

void expectMeasuresReadBack(int rounds) {
    std::mt19937_64 random(sp::test::printedSeed());
    for (int i = 0; i < rounds; ++i)
        for (const auto& style : kStyles) {
            const Rate rate = Rate::fromPpm(anySize(random, 200'000'000) - 100'000'000);
            ASSERT_EQ(parseRate(formatRate(rate, style), style).value(), rate) << formatRate(rate, style);
            const Duration time = Duration::fromMilliseconds(anySize(random, 36'000'000'000));
            ASSERT_EQ(parseDuration(formatDuration(time, style), style).value(), time) << formatDuration(time, style);
            const auto fahrenheit = Temperature::fromMillifahrenheit((anySize(random, 9'900) - 580) * 100);
            ASSERT_EQ(parseTemperature(formatTemperature(fahrenheit, TemperatureUnit::Fahrenheit, style),
                                       TemperatureUnit::Fahrenheit, style)
                          .value(),
                      fahrenheit);
            const auto celsius = Temperature::fromMillicelsius((anySize(random, 5'500) - 500) * 100);
            ASSERT_EQ(parseTemperature(formatTemperature(celsius, TemperatureUnit::Celsius, style),
                                       TemperatureUnit::Celsius, style)
                          .value(),
                      celsius);
        }
}

TEST(MeasureText, readsBackWhatItWrites) { expectMeasuresReadBack(4000); }

/// A locale whose decimal mark is a comma, whether or not the system has one installed.
class CommaLocale {
  public:
    CommaLocale()
        : m_before(std::locale::global(std::locale(std::locale::classic(), new Marks))) {
        std::setlocale(LC_ALL, "de_DE.UTF-8"); // absent on many systems; the C++ locale stands in any case
    }
    ~CommaLocale() {
        std::locale::global(m_before);
        std::setlocale(LC_ALL, "C");
    }
    CommaLocale(const CommaLocale&) = delete;
    CommaLocale& operator=(const CommaLocale&) = delete;

  private:
    struct Marks : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    std::locale m_before;
};

TEST(MeasureText, neverAsksTheProcessLocale) {
    const CommaLocale locale;
    EXPECT_EQ(parseLength("88.9 mm", LengthUnit::Inch)->nanometres(), 88'900'000);
    EXPECT_EQ(formatLength(Length::fromNanometres(88'900'000), LengthUnit::Millimetre), "88.9");
    EXPECT_EQ(formatMoney(Money::fromMicros(1'234'500'000), Currency()), "1,234.50");
    EXPECT_EQ(formatExact(Money::fromMicros(1'234'500'000), Currency()), "1234.50");
    EXPECT_EQ(formatCount(Count::of(1440), kPlain), "1440");
    EXPECT_EQ(describe(parseMoney("2000000000", Currency()).error().message()),
              "BeyondRange(“2000000000”, AnAmount, AmountRange)");
    expectMeasuresReadBack(50);
}

} // namespace
