// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"

#include <chrono>

namespace sp::test {

/// A clock that tests set: 2026-11-25, nine in the morning, until told otherwise. Outlives the books that go by it.
struct HeldClock {
    std::chrono::system_clock::time_point now =
        std::chrono::sys_days(std::chrono::year(2026) / 11 / 25) + std::chrono::hours(9);
    std::chrono::hours zone{0}; ///< the shop's time is so far ahead of UTC

    db::Environment environment() {
        return {.now = [this] { return now; },
                .today = [this] { return dayOf(now); },
                .actor = "tester",
                .dayOf = [this](std::chrono::system_clock::time_point moment) { return dayOf(moment); }};
    }
    units::Date dayOf(std::chrono::system_clock::time_point moment) const {
        return units::Date::fromDays(std::chrono::floor<std::chrono::days>(moment + zone));
    }
};

} // namespace sp::test
