// SPDX-License-Identifier: MIT
#include "app/format/parse_day.h"
#include "app/words/words.h"
#include "tests/app/format/format_fixture.h"

namespace sp::desk::test {

struct DayRow {
    const char* name;
    const char* locale;
    const char* typed;
    const char* iso; ///< empty: refused
};
void PrintTo(const DayRow& row, std::ostream* out) { *out << row.name; }

class ParseDay : public testing::TestWithParam<DayRow> {};

// Today is Wednesday 25 November 2026. Weekdays and leap years as the Gregorian calendar has them (2028 is the next
// leap year); the order of day and month in a locale is CLDR's, as Qt carries it.
TEST_P(ParseDay, readsWhatPeopleWrite) {
    const DayRow& row = GetParam();
    const auto day = parseDay(qs(row.typed), QLocale(qs(row.locale)), someWednesday());
    EXPECT_EQ(day ? day->iso() : std::string(), row.iso);
    if (!day) {
        EXPECT_EQ(day.error().code, base::Code::Invalid);
        EXPECT_FALSE(words::text(day.error()).empty());
    }
}
INSTANTIATE_TEST_SUITE_P(
    Rows, ParseDay,
    testing::Values(
        DayRow{"iso", "en_US", "2026-12-11", "2026-12-11"}, DayRow{"usShort", "en_US", "12/11/2026", "2026-12-11"},
        DayRow{"usTwoDigits", "en_US", "12/11/26", "2026-12-11"}, DayRow{"usNoYear", "en_US", "12/11", "2026-12-11"},
        DayRow{"usNoYearPassed", "en_US", "2/11", "2027-02-11"}, DayRow{"gbShort", "en_GB", "11/12/2026", "2026-12-11"},
        DayRow{"deShort", "de_DE", "11.12.2026", "2026-12-11"},
        DayRow{"deTwoDigits", "de_DE", "11.12.26", "2026-12-11"}, DayRow{"named", "en_US", "11 Dec", "2026-12-11"},
        DayRow{"namedUs", "en_US", "Dec 11", "2026-12-11"}, DayRow{"namedYear", "en_US", "Dec 11, 2026", "2026-12-11"},
        DayRow{"ourOwn", "en_US", "Fri, Dec 11, 2026", "2026-12-11"},
        DayRow{"ourOwnGb", "en_GB", "Fri 11 Dec 2026", "2026-12-11"},
        DayRow{"ourOwnEs", "es_US", "vie 11 dic 2026", "2026-12-11"},
        DayRow{"ourOwnDe", "de_DE", "Fr. 11 Dez. 2026", "2026-12-11"}, DayRow{"weekday", "en_US", "fri", "2026-11-27"},
        DayRow{"weekdayLong", "en_US", "Friday", "2026-11-27"}, DayRow{"weekdayToday", "en_US", "wed", "2026-12-02"},
        DayRow{"weekdayDe", "de_DE", "freitag", "2026-11-27"}, DayRow{"today", "en_US", "today", "2026-11-25"},
        DayRow{"plus", "en_US", "+10", "2026-12-05"}, DayRow{"days", "en_US", "10 days", "2026-12-05"},
        DayRow{"weeks", "en_US", "2 weeks", "2026-12-09"}, DayRow{"leapDay", "en_US", "29 Feb", "2028-02-29"},
        DayRow{"bareNumber", "en_US", "11", ""}, DayRow{"noSuchDay", "en_US", "2026-02-30", ""},
        DayRow{"wrongWeekday", "en_US", "Mon 11 Dec 2026", ""}, DayRow{"nonsense", "en_US", "soon", ""},
        DayRow{"tooFar", "en_US", "+99999", ""}),
    [](const auto& row) { return std::string(row.param.name); });

} // namespace sp::desk::test
