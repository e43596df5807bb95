// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"

#include <chrono>

namespace sp::test {

/// A clock that tests set: 2026-11-25, nine in the morning, until told otherwise. Outlives the books that go by it.
struct HeldClock {
    std::chrono::system_clock::time_point now =
        std::chrono::sys_days(std::chrono::year(2026) / 11 / 25) + std::chrono::hours(9);

    db::Environment environment() {
        return {.now = [this] { return now; },
                .today = [this] { return units::Date::fromDays(std::chrono::floor<std::chrono::days>(now)); },
                .actor = "tester"};
    }
};

} // namespace sp::test
