// SPDX-License-Identifier: MIT
#include "core/figures/span_days.h"

#include <gtest/gtest.h>

namespace sp::figures {

TEST(SpanAround, isWholeMonthsOfTheCalendar) {
    const auto day = [](const char* iso) { return units::Date::parse(iso).value(); };
    // A leap year's February; quarters begin in January, April, July and October.
    EXPECT_EQ(spanAround(day("2028-02-11"), Span::Month), (SpanDays{day("2028-02-01"), day("2028-02-29")}));
    EXPECT_EQ(spanAround(day("2026-12-31"), Span::Month), (SpanDays{day("2026-12-01"), day("2026-12-31")}));
    EXPECT_EQ(spanAround(day("2026-11-25"), Span::Quarter), (SpanDays{day("2026-10-01"), day("2026-12-31")}));
    EXPECT_EQ(spanAround(day("2026-04-01"), Span::Quarter), (SpanDays{day("2026-04-01"), day("2026-06-30")}));
    EXPECT_EQ(spanAround(day("2026-07-04"), Span::Year), (SpanDays{day("2026-01-01"), day("2026-12-31")}));
    EXPECT_EQ(spanAfter(day("2026-03-31"), Span::Month, -1), (SpanDays{day("2026-02-01"), day("2026-02-28")}));
    EXPECT_EQ(spanAfter(day("2026-11-25"), Span::Quarter, 1), (SpanDays{day("2027-01-01"), day("2027-03-31")}));
    EXPECT_EQ(spanAfter(day("2026-07-04"), Span::Year, -2), (SpanDays{day("2024-01-01"), day("2024-12-31")}));
}

} // namespace sp::figures
