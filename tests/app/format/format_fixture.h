// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"

#include <gtest/gtest.h>

namespace sp::desk::test {

inline Formatter formatterOf(const char* locale, units::LengthUnit unit = units::LengthUnit::Inch) {
    catalogue::Shop shop;
    shop.lengthUnit = unit;
    return {QLocale(QString::fromLatin1(locale)), shop};
}

/// Wednesday, as any calendar of 2026 says.
inline units::Date someWednesday() { return *units::Date::parse("2026-11-25"); }

inline QString qs(const char* text) { return QString::fromUtf8(text); }

} // namespace sp::desk::test
