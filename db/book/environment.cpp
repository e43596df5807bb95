// SPDX-License-Identifier: MIT
#include "db/book/book.h"

#include <ctime>
#include <pwd.h>
#include <unistd.h>

namespace sp::db {

Environment systemEnvironment() {
    const auto today = [] {
        const std::time_t now = std::time(nullptr);
        std::tm local{};
        localtime_r(&now, &local);
        const std::chrono::year_month_day day{std::chrono::year(local.tm_year + 1900),
                                              std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                              std::chrono::day(static_cast<unsigned>(local.tm_mday))};
        return units::Date::fromDays(std::chrono::sys_days(day));
    };
    const auto* user = getpwuid(getuid());
    return {.now = [] { return std::chrono::system_clock::now(); },
            .today = today,
            .actor = user == nullptr ? std::string("unknown") : std::string(user->pw_name)};
}

} // namespace sp::db
