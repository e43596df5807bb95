// SPDX-License-Identifier: MIT
#include "core/figures/span_days.h"

#include <chrono>

namespace sp::figures {

namespace {

int monthsOf(Span span) {
    switch (span) {
    case Span::Month: return 1;
    case Span::Quarter: return 3;
    case Span::Year: return 12;
    }
    return 1;
}

/// The first day of the month so many after that of `day`.
units::Date monthAfter(units::Date day, int months) {
    const std::chrono::year_month_day parts(day.days());
    const auto month = std::chrono::year_month(parts.year(), parts.month()) + std::chrono::months(months);
    return units::Date::fromDays(std::chrono::sys_days(month / 1));
}

} // namespace

SpanDays spanAround(units::Date day, Span span) {
    const int months = monthsOf(span);
    const std::chrono::year_month_day parts(day.days());
    const int into = (static_cast<int>(static_cast<unsigned>(parts.month())) - 1) % months;
    const auto from = monthAfter(day, -into);
    return {from, monthAfter(from, months).plusDays(-1)};
}

SpanDays spanAfter(units::Date day, Span span, int by) {
    return spanAround(monthAfter(spanAround(day, span).from, by * monthsOf(span)), span);
}

} // namespace sp::figures
