// SPDX-License-Identifier: MIT
#include "app/format/formatter.h"

#include "core/units/measured.h"

#include <cstdlib>
#include <string>

namespace sp::desk {

namespace {

char32_t firstMark(const QString& text, char32_t fallback) {
    const auto points = text.toUcs4();
    return points.isEmpty() ? fallback : static_cast<char32_t>(points.front());
}

QString fromUtf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

const QString& space() {
    static const QString one(QLatin1Char(' '));
    return one;
}

} // namespace

QDate toQDate(units::Date date) { return QDate(1970, 1, 1).addDays(units::Date().daysUntil(date)); }

units::Date fromQDate(QDate date) { return units::Date().plusDays(QDate(1970, 1, 1).daysTo(date)); }

Formatter::Formatter(const QLocale& locale, const catalogue::Shop& shop)
    : m_locale(locale)
    , m_style{firstMark(locale.decimalPoint(), U'.'), firstMark(locale.groupSeparator(), U',')}
    , m_currency(shop.currency)
    , m_lengthUnit(shop.lengthUnit)
    , m_temperatureUnit(shop.temperatureUnit) {}

QString Formatter::money(units::Money amount) const {
    return fromUtf8(units::formatMoney(amount, m_currency, m_style));
}

QString Formatter::moneyExact(units::Money amount) const {
    return fromUtf8(units::formatExact(amount, m_currency))
        .replace(QLatin1Char('.'), QString::fromUcs4(&m_style.decimalMark, 1));
}

QString Formatter::moneyNamed(units::Money amount) const {
    return money(amount) + space() + fromUtf8(m_currency.code());
}

QString Formatter::lengthNumber(units::Length length) const {
    return fromUtf8(units::formatLength(length, m_lengthUnit, m_style));
}

QString Formatter::measured(units::Length length) const {
    return fromUtf8(units::measuredLength(length, m_lengthUnit, m_style));
}

QString Formatter::length(units::Length length) const { return measured(length) + space() + lengthUnitName(); }

QString Formatter::size(units::Length width, units::Length height) const {
    return measured(width) + QStringLiteral(" × ") + length(height);
}

QString Formatter::count(units::Count count) const { return fromUtf8(units::formatCount(count, m_style)); }

QString Formatter::rate(units::Rate rate) const {
    constexpr std::int64_t kPpmPerTenth = 1'000;
    const std::int64_t ppm = rate.ppm();
    const std::int64_t tenths = (std::abs(ppm) + kPpmPerTenth / 2) / kPpmPerTenth;
    const QString sign = ppm < 0 && tenths > 0 ? QStringLiteral("-") : QString();
    return sign + count(units::Count::of(tenths / 10)) + QString::fromUcs4(&m_style.decimalMark, 1) +
           QString::number(tenths % 10) + QStringLiteral(" %");
}

QString Formatter::rateNumber(units::Rate rate) const { return fromUtf8(units::formatRate(rate, m_style)); }

QString Formatter::duration(units::Duration duration) const {
    return fromUtf8(units::formatDuration(duration, m_style));
}

QString Formatter::temperatureNumber(units::Temperature temperature) const {
    return fromUtf8(units::formatTemperature(temperature, m_temperatureUnit, m_style));
}

QString Formatter::temperature(units::Temperature temperature) const {
    return temperatureNumber(temperature) + space() + temperatureUnitName();
}

QString Formatter::withOrder(units::Date date, const char* dayFirst, const char* monthFirst,
                             const char* yearFirst) const {
    const QString order = m_locale.dateFormat(QLocale::ShortFormat);
    const auto day = order.indexOf(QLatin1Char('d'));
    const auto month = order.indexOf(QLatin1Char('M'));
    const auto year = order.indexOf(QLatin1Char('y'));
    const char* chosen = day < month ? dayFirst : year < month ? yearFirst : monthFirst;
    return m_locale.toString(toQDate(date), QString::fromUtf8(chosen));
}

QString Formatter::date(units::Date date) const { return withOrder(date, "d MMM yyyy", "MMM d, yyyy", "yyyy-MM-dd"); }

QString Formatter::dateWithDay(units::Date date) const {
    return withOrder(date, "ddd d MMM yyyy", "ddd, MMM d, yyyy", "ddd yyyy-MM-dd");
}

QString Formatter::clock(QTime time) const { return m_locale.toString(time, QLocale::ShortFormat); }

QString Formatter::lengthUnitName() const { return fromUtf8(units::nameOf(m_lengthUnit)); }

QString Formatter::temperatureUnitName() const {
    return m_temperatureUnit == units::TemperatureUnit::Celsius ? QStringLiteral("°C") : QStringLiteral("°F");
}

} // namespace sp::desk
