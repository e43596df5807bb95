// SPDX-License-Identifier: MIT
#include "core/units/date.h"

#include "core/units/messages.h"

#include <fmt/format.h>

#include <charconv>

namespace sp::units {

base::Result<Date> Date::parse(std::string_view text) {
    const auto refuse = [&] { return base::fail(Fault::NotADay, std::string(text), text); };
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return refuse();
    const auto number = [&](std::size_t from, std::size_t length) {
        int value = -1;
        const char* begin = text.data() + from;
        const auto [end, error] = std::from_chars(begin, begin + length, value);
        return error == std::errc{} && end == begin + length && *begin != '-' ? value : -1;
    };
    const int year = number(0, 4);
    const int month = number(5, 2);
    const int day = number(8, 2);
    if (year < 1 || month < 1 || day < 1) return refuse();
    const std::chrono::year_month_day ymd{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                          std::chrono::day(static_cast<unsigned>(day))};
    if (!ymd.ok()) return refuse();
    return Date(std::chrono::sys_days(ymd));
}

std::string Date::iso() const {
    const std::chrono::year_month_day ymd(m_days);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                       static_cast<unsigned>(ymd.day()));
}

} // namespace sp::units
