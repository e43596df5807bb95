// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/units/date.h"

#include <QLocale>
#include <QString>

namespace sp::desk {

/// A day: "2026-12-11", the locale's short and long forms with or without the year, "today", "tomorrow" (in the
/// language of the window too), a weekday's name or its beginning ("fri": the next one after today), "+10" or "10 days"
/// from today. A form without a year means the next such day, today included. Errors: Invalid.
base::Result<units::Date> parseDay(const QString& text, const QLocale& locale, units::Date today);

} // namespace sp::desk
