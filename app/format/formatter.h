// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/shop.h"
#include "core/units/date.h"
#include "core/units/text.h"

#include <QDate>
#include <QLocale>
#include <QString>
#include <QTime>

namespace sp::desk {

/// Writes every figure and day a person sees. The one place that knows the user's locale: it gives the marks and the
/// order of dates; the shop gives currency and units. A value: copy it, make a new one when the shop or locale changes.
class Formatter {
  public:
    Formatter(const QLocale& locale, const catalogue::Shop& shop);

    QString money(units::Money amount) const;         ///< "1,234.50", the currency's decimals, no sign
    QString moneyExact(units::Money amount) const;    ///< all decimals there are, with the locale's mark: "0.004861"
    QString moneyNamed(units::Money amount) const;    ///< "1,234.50 USD"
    QString length(units::Length length) const;       ///< "3 1/2 in", as a ruler has it (units/measured.h)
    QString lengthNumber(units::Length length) const; ///< "3 1/2", exactly, for a field
    QString size(units::Length width, units::Length height) const;   ///< "3 1/2 × 2 3/4 in"
    QString count(units::Count count) const;                         ///< "1,440"
    QString rate(units::Rate rate) const;                            ///< "81.5 %", always one decimal
    QString rateNumber(units::Rate rate) const;                      ///< "8.875", as many decimals as there are
    QString duration(units::Duration duration) const;                ///< "3 h 20 min"
    QString temperature(units::Temperature temperature) const;       ///< "320 °F"
    QString temperatureNumber(units::Temperature temperature) const; ///< "320"
    QString date(units::Date date) const;                            ///< "25 Nov 2026", "Nov 25, 2026"
    QString dateWithDay(units::Date date) const;                     ///< "Fri 11 Dec 2026"
    QString clock(QTime time) const;                                 ///< "14:02", "2:02 PM"

    QString lengthUnitName() const;      ///< "in"
    QString temperatureUnitName() const; ///< "°F"

    const units::NumberStyle& style() const { return m_style; }
    const units::Currency& currency() const { return m_currency; }
    units::LengthUnit lengthUnit() const { return m_lengthUnit; }
    units::TemperatureUnit temperatureUnit() const { return m_temperatureUnit; }
    const QLocale& locale() const { return m_locale; }

  private:
    QString measured(units::Length length) const;
    QString withOrder(units::Date date, const char* dayFirst, const char* monthFirst, const char* yearFirst) const;

    QLocale m_locale;
    units::NumberStyle m_style;
    units::Currency m_currency;
    units::LengthUnit m_lengthUnit;
    units::TemperatureUnit m_temperatureUnit;
};

QDate toQDate(units::Date date);
units::Date fromQDate(QDate date);

} // namespace sp::desk
