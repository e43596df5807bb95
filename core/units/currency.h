// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace sp::units {

/// A currency by its ISO 4217 code, with the number of decimals its minor unit has (0 to 4). A book has one.
class Currency {
  public:
    /// US dollar, as a book starts out before anyone chose.
    Currency() = default;
    /// Reads an ISO 4217 alphabetic code. Codes not in our table of exceptions get two decimals.
    /// Errors: Invalid when it is not three capital letters.
    static base::Result<Currency> parse(std::string_view code);

    const std::string& code() const { return m_code; }
    int decimals() const { return m_decimals; }
    /// Micro-units in one minor unit: 10,000 for two decimals, 1,000,000 for none.
    std::int64_t microsPerMinor() const;

    friend bool operator==(const Currency&, const Currency&) = default;

  private:
    std::string m_code = "USD";
    int m_decimals = 2;
};

} // namespace sp::units
