// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/length.h"
#include "core/units/money.h"

#include <array>
#include <cmath>
#include <cstdint>

/// Short ways to write an amount, or an id, in a test.
namespace sp::support {

inline units::Length nm(std::int64_t n) { return units::Length::fromNanometres(n); }
inline units::Length mm(std::int64_t n) { return nm(n * units::kNanometresPerMillimetre); }
/// Rounded to a nanometre.
inline units::Length decimalMm(double n) { return nm(std::llround(n * 1e6)); }
inline units::Length inches(std::int64_t n) { return units::Length::fromInch64ths(n * 64); }
/// Rounded to a millionth of the currency's unit.
inline units::Money money(double amount) { return units::Money::fromMicros(std::llround(amount * 1e6)); }

inline units::Money cents(std::int64_t amount) { return units::Money::fromMicros(amount * 10'000); }

/// The n-th of ids that sort as they are numbered.
inline base::Id idOf(std::uint64_t n) { return base::Id::fromTime(n, std::array<std::uint8_t, 10>{}); }

} // namespace sp::support
