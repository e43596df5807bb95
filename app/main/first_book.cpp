// SPDX-License-Identifier: MIT
#include "app/main/first_book.h"

#include "app/paper/care_notes.h"
#include "app/words/words.h"

#include <algorithm>
#include <array>

namespace sp::program {

namespace {

using catalogue::Step;
using units::Count;
using units::Duration;
using units::Length;
using units::Rate;

/// Countries that print on Letter (Unicode CLDR, paper size by territory; the list is from memory).
bool printsOnLetter(QLocale::Country country) {
    constexpr std::array letter{QLocale::UnitedStates, QLocale::Canada,    QLocale::Mexico,    QLocale::Philippines,
                                QLocale::Chile,        QLocale::Colombia,  QLocale::CostaRica, QLocale::Guatemala,
                                QLocale::Panama,       QLocale::Venezuela, QLocale::PuertoRico};
    return std::find(letter.begin(), letter.end(), country) != letter.end();
}

void setShop(catalogue::Shop& shop, const QLocale& locale) {
    const auto code = locale.currencySymbol(QLocale::CurrencyIsoCode).toStdString();
    if (const auto currency = units::Currency::parse(code)) shop.currency = *currency;
    const bool imperial = locale.measurementSystem() != QLocale::MetricSystem || locale.language() == QLocale::C;
    shop.lengthUnit = imperial ? units::LengthUnit::Inch : units::LengthUnit::Millimetre;
    shop.temperatureUnit = imperial ? units::TemperatureUnit::Fahrenheit : units::TemperatureUnit::Celsius;
    shop.paper = printsOnLetter(locale.country()) || locale.language() == QLocale::C ? catalogue::Paper::Letter
                                                                                     : catalogue::Paper::A4;
    shop.isBeingSetUp = true;
    shop.letterhead.care = paper::careNotes().toStdString();
    auto& rules = shop.rules;
    rules.ladder = {{Count::of(1), Rate::fromPercent(100)},
                    {Count::of(12), Rate::fromPercent(80)},
                    {Count::of(48), Rate::fromPercent(60)}};
    rules.depositRate = Rate::fromPercent(50);
    shop.rates.productivePerMonth = Duration::fromMinutes(120 * 60);
    shop.rates.spoilage = Rate::fromPercent(3);
    shop.ladderQuantities = {Count::of(12), Count::of(24), Count::of(48), Count::of(96)};
}

void setBench(catalogue::BenchStandards& bench) {
    bench.of(Step::Art) = {Duration::fromMinutes(15), {}, {}, {}};
    bench.of(Step::Cut) = {Duration::fromMinutes(2), Duration::fromMinutes(1), {}, Duration::fromSeconds(60)};
    bench.of(Step::Weed) = {{}, Duration::fromMinutes(1), {}, Duration::fromSeconds(45)};
    bench.of(Step::SetUp) = {Duration::fromMinutes(4), Duration::fromMinutes(1), {}, {}};
    bench.of(Step::Brush) = {Duration::fromMinutes(2), Duration::fromSeconds(30), {}, Duration::fromSeconds(30)};
    bench.of(Step::Lift) = {{}, Duration::fromSeconds(20), {}, {}};
    bench.of(Step::Press) = {{}, {}, Duration::fromSeconds(45), {}};
    bench.of(Step::Trim) = {{}, {}, Duration::fromSeconds(30), {}};
    bench.of(Step::Pack) = {{}, {}, Duration::fromSeconds(30), {}};
    bench.press.platenWidth = Length::fromInch64ths(16 * 64);
    bench.press.platenHeight = Length::fromInch64ths(20 * 64);
    bench.press.dwell = Duration::fromSeconds(10);
    bench.press.handling = Duration::fromSeconds(20);
    bench.press.warmUp = Duration::fromMinutes(12);
    bench.press.temperature = units::Temperature::fromMillifahrenheit(318'000);
    bench.press.secondDwell = Duration::fromSeconds(5);
    bench.press.secondPressShare = Rate::fromPercent(10);
}

} // namespace

base::Result<std::unique_ptr<db::Book>> createFirstBook(const QString& file, const QLocale& locale,
                                                        db::Environment environment) {
    auto book = db::Book::create(file.toStdString(), std::move(environment));
    if (!book) return book;
    const auto filled = (*book)->batch(words::say(QT_TRANSLATE_NOOP("App", "the first settings")), [&]() -> base::Done {
        auto shop = (*book)->shop();
        if (!shop) return base::fail(shop.error());
        setShop(*shop, locale);
        if (auto ok = (*book)->save(*shop); !ok) return ok;
        auto bench = (*book)->bench();
        if (!bench) return base::fail(bench.error());
        setBench(*bench);
        return (*book)->save(*bench);
    });
    if (!filled) return base::fail(filled.error());
    return book;
}

} // namespace sp::program
