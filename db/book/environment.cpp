// SPDX-License-Identifier: MIT
#include "db/book/book.h"

#include <ctime>
#include <pwd.h>
#include <unistd.h>

namespace sp::db {

Environment systemEnvironment() {
    const auto dayOf = [](std::chrono::system_clock::time_point moment) {
        const std::time_t seconds = std::chrono::system_clock::to_time_t(moment);
        std::tm local{};
        localtime_r(&seconds, &local);
        const std::chrono::year_month_day day{std::chrono::year(local.tm_year + 1900),
                                              std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                              std::chrono::day(static_cast<unsigned>(local.tm_mday))};
        return units::Date::fromDays(std::chrono::sys_days(day));
    };
    const auto* user = getpwuid(getuid());
    return {.now = [] { return std::chrono::system_clock::now(); },
            .today = [dayOf] { return dayOf(std::chrono::system_clock::now()); },
            .actor = user == nullptr ? std::string("unknown") : std::string(user->pw_name),
            .dayOf = dayOf};
}

} // namespace sp::db
