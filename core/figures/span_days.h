// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/date.h"

namespace sp::figures {

/// How long a time is looked at.
enum class Span { Month, Quarter, Year };

/// Its first and last day, both counted.
struct SpanDays {
    units::Date from;
    units::Date to;

    friend bool operator==(const SpanDays&, const SpanDays&) = default;
};

/// The month, quarter or year of the calendar that a day is in.
SpanDays spanAround(units::Date day, Span span);
/// The one so many after that, or before it where `by` is negative.
SpanDays spanAfter(units::Date day, Span span, int by);

} // namespace sp::figures
