// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <chrono>
#include <cstdint>
#include <string>
#include <string_view>

namespace sp::units {

/// A day of the proleptic Gregorian calendar, years 1 to 9999.
class Date {
  public:
    /// 1970-01-01.
    constexpr Date() = default;
    static constexpr Date fromDays(std::chrono::sys_days days) { return Date(days); }
    /// Reads YYYY-MM-DD (ISO 8601). Errors: Invalid for another form or a day that does not exist.
    static base::Result<Date> parse(std::string_view text);

    constexpr std::chrono::sys_days days() const { return m_days; }
    std::string iso() const;
    constexpr Date plusDays(std::int64_t n) const { return Date(m_days + std::chrono::days(n)); }
    /// Whole days from this date to `later`; negative when it lies before.
    constexpr std::int64_t daysUntil(Date later) const { return (later.m_days - m_days).count(); }

    friend constexpr auto operator<=>(const Date&, const Date&) = default;

  private:
    constexpr explicit Date(std::chrono::sys_days days)
        : m_days(days) {}

    std::chrono::sys_days m_days{};
};

} // namespace sp::units
