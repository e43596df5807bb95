// SPDX-License-Identifier: MIT
#include "app/desk/value_fields.h"

#include "app/format/parse_day.h"
#include "app/words/words.h"

#include <algorithm>

namespace sp::desk {

namespace {

QString said(const base::Error& error) { return words::sentence(error); }

std::string utf8(const QString& text) { return text.toUtf8().toStdString(); }

/// Digits, marks, spaces and a fraction: nothing was reckoned and no unit named.
bool isBareNumber(const QString& text) {
    return std::all_of(text.begin(), text.end(), [](QChar c) {
        return c.isDigit() || c.isSpace() || c == QLatin1Char('.') || c == QLatin1Char(',') || c == QLatin1Char('\'') ||
               c == QLatin1Char('/') || c == QLatin1Char('-') || c == QChar(0x2019) ||
               c.category() == QChar::Number_Other;
    });
}

QString squeezed(QString text) { return text.remove(QLatin1Char(' ')).toCaseFolded(); }

} // namespace

template<class T>
base::Result<T> ValueField<T>::parseInRange(const QString& text) const {
    auto value = parse(utf8(text));
    if (!value) return value;
    if (m_least && m_most && (*value < *m_least || *m_most < *value))
        return words::fail(base::Code::OutOfRange, {},
                           TypedField::tr("This must be from %1 to %2.").arg(named(*m_least), named(*m_most)));
    if (m_least && *value < *m_least)
        return words::fail(base::Code::OutOfRange, {},
                           TypedField::tr("This must be at least %1.").arg(named(*m_least)));
    if (m_most && *m_most < *value)
        return words::fail(base::Code::OutOfRange, {}, TypedField::tr("This can be at most %1.").arg(named(*m_most)));
    return value;
}

template<class T>
base::Result<T> ValueField<T>::value() const {
    if (isBlank()) return words::fail(base::Code::Missing, {}, blankProblem());
    return parseInRange(text());
}

template<class T>
base::Result<std::optional<T>> ValueField<T>::optionalValue() const {
    if (isBlank()) return std::optional<T>();
    return value().map([](const T& v) { return std::optional<T>(v); });
}

template<class T>
void ValueField<T>::setValue(const T& value) {
    const auto now = this->value();
    if (now && *now == value) return;
    setRaw(written(value));
}

template<class T>
void ValueField<T>::setOptionalValue(const std::optional<T>& value) {
    if (value)
        setValue(*value);
    else
        setRaw({});
}

template<class T>
void ValueField<T>::setRange(const T& least, const T& most) {
    m_least = least;
    m_most = most;
    readAgain();
}

template<class T>
bool ValueField<T>::isPlain(const QString& text, const T& value) const {
    const QString bare = squeezed(text);
    return isBareNumber(text) || bare == squeezed(named(value)) || bare == squeezed(written(value));
}

template<class T>
TypedField::Parsed ValueField<T>::read(const QString& text) const {
    const auto value = parseInRange(text);
    if (!value) return {said(value.error()), {}};
    if (isPlain(text, *value)) return {};
    return {{}, QStringLiteral("= ") + named(*value)};
}

template class ValueField<units::Length>;
template class ValueField<units::Money>;
template class ValueField<units::Count>;
template class ValueField<units::Rate>;
template class ValueField<units::Duration>;
template class ValueField<units::Temperature>;
template class ValueField<units::Date>;

LengthField::LengthField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {
    setUnitText(formatter.lengthUnitName());
}
base::Result<units::Length> LengthField::parse(const std::string& text) const {
    return units::parseLength(text, formatter().lengthUnit(), formatter().style());
}
QString LengthField::written(const units::Length& value) const { return formatter().lengthNumber(value); }
QString LengthField::named(const units::Length& value) const { return formatter().length(value); }

MoneyField::MoneyField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {}
base::Result<units::Money> MoneyField::parse(const std::string& text) const {
    return units::parseMoney(text, formatter().currency(), formatter().style());
}
QString MoneyField::written(const units::Money& value) const { return formatter().moneyExact(value); }
QString MoneyField::named(const units::Money& value) const { return formatter().moneyExact(value); }

CountField::CountField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {}
base::Result<units::Count> CountField::parse(const std::string& text) const {
    return units::parseCount(text, formatter().style());
}
QString CountField::written(const units::Count& value) const { return formatter().count(value); }
QString CountField::named(const units::Count& value) const { return formatter().count(value); }

RateField::RateField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {
    setUnitText(QStringLiteral("%"));
}
base::Result<units::Rate> RateField::parse(const std::string& text) const {
    return units::parseRate(text, formatter().style());
}
QString RateField::written(const units::Rate& value) const { return formatter().rateNumber(value); }
QString RateField::named(const units::Rate& value) const {
    return formatter().rateNumber(value) + QStringLiteral(" %");
}

DurationField::DurationField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {}
base::Result<units::Duration> DurationField::parse(const std::string& text) const {
    return units::parseDuration(text, formatter().style());
}
QString DurationField::written(const units::Duration& value) const { return formatter().duration(value); }
QString DurationField::named(const units::Duration& value) const { return formatter().duration(value); }
bool DurationField::isPlain(const QString& text, const units::Duration& value) const {
    return squeezed(text) == squeezed(written(value));
}

TemperatureField::TemperatureField(const Formatter& formatter, QWidget* parent)
    : ValueField(formatter, parent) {
    setUnitText(formatter.temperatureUnitName());
}
base::Result<units::Temperature> TemperatureField::parse(const std::string& text) const {
    return units::parseTemperature(text, formatter().temperatureUnit(), formatter().style());
}
QString TemperatureField::written(const units::Temperature& value) const {
    return formatter().temperatureNumber(value);
}
QString TemperatureField::named(const units::Temperature& value) const { return formatter().temperature(value); }

DateField::DateField(const Formatter& formatter, units::Date today, QWidget* parent)
    : ValueField(formatter, parent)
    , m_today(today) {}
void DateField::setToday(units::Date today) {
    m_today = today;
    readAgain();
}
base::Result<units::Date> DateField::parse(const std::string& text) const {
    return parseDay(QString::fromStdString(text), formatter().locale(), m_today);
}
QString DateField::written(const units::Date& value) const { return formatter().dateWithDay(value); }
QString DateField::named(const units::Date& value) const { return formatter().dateWithDay(value); }
bool DateField::isPlain(const QString& text, const units::Date& value) const { return text == written(value); }

} // namespace sp::desk

#include "moc_value_fields.cpp"
