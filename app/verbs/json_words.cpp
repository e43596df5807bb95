// SPDX-License-Identifier: MIT
#include "app/verbs/json_words.h"

#include <fmt/format.h>

namespace sp::verbs {

std::string decimal(std::int64_t count, int decimals) {
    std::uint64_t one = 1;
    for (int i = 0; i < decimals; ++i) one *= 10;
    const bool negative = count < 0;
    const auto size = negative ? 0 - static_cast<std::uint64_t>(count) : static_cast<std::uint64_t>(count);
    std::string text = fmt::format("{}{}.{:0{}}", negative ? "-" : "", size / one, size % one, decimals);
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string decimal(units::Rate rate) { return decimal(rate.ppm(), 6); }

std::string decimal(units::Length length, units::LengthUnit unit) {
    switch (unit) {
    case units::LengthUnit::Millimetre: return decimal(length.nanometres(), 6);
    case units::LengthUnit::Centimetre: return decimal(length.nanometres(), 7);
    case units::LengthUnit::Inch: break;
    }
    // Nine decimals of an inch are 0.0254 nm: nothing of a whole nanometre is lost.
    return decimal(units::Fraction::ratio(static_cast<units::Int128>(length.nanometres()) * 1'000'000'000,
                                          units::kNanometresPerInch)
                       .roundedHalfEven(),
                   9);
}

Json orNull(const std::optional<units::Rate>& rate) { return rate ? Json(decimal(*rate)) : Json(nullptr); }

} // namespace sp::verbs
