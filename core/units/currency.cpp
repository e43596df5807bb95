// SPDX-License-Identifier: MIT
#include "core/units/currency.h"

#include "core/units/messages.h"

#include <algorithm>
#include <array>

namespace sp::units {

namespace {

struct Exception {
    std::string_view code;
    int decimals;
};

/// Currencies whose minor unit is not 1/100 (ISO 4217, list one; the rows not in our published check values are
/// from memory).
constexpr std::array kExceptions{
    Exception{"BHD", 3}, Exception{"BIF", 0}, Exception{"CLF", 4}, Exception{"CLP", 0}, Exception{"DJF", 0},
    Exception{"GNF", 0}, Exception{"IQD", 3}, Exception{"ISK", 0}, Exception{"JOD", 3}, Exception{"JPY", 0},
    Exception{"KMF", 0}, Exception{"KRW", 0}, Exception{"KWD", 3}, Exception{"LYD", 3}, Exception{"OMR", 3},
    Exception{"PYG", 0}, Exception{"RWF", 0}, Exception{"TND", 3}, Exception{"UGX", 0}, Exception{"UYI", 0},
    Exception{"VND", 0}, Exception{"VUV", 0}, Exception{"XAF", 0}, Exception{"XOF", 0}, Exception{"XPF", 0},
};

} // namespace

base::Result<Currency> Currency::parse(std::string_view code) {
    const bool letters = std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (code.size() != 3 || !letters) return base::fail(Fault::NotACurrency, std::string(code));
    Currency currency;
    currency.m_code = std::string(code);
    const auto found =
        std::find_if(kExceptions.begin(), kExceptions.end(), [&](const Exception& row) { return row.code == code; });
    currency.m_decimals = found == kExceptions.end() ? 2 : found->decimals;
    return currency;
}

std::int64_t Currency::microsPerMinor() const {
    std::int64_t micros = 1'000'000;
    for (int i = 0; i < m_decimals; ++i) micros /= 10;
    return micros;
}

} // namespace sp::units
