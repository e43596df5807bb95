// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/length.h"
#include "core/units/money.h"
#include "core/units/rate.h"
#include "core/units/text.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace sp::verbs {

using Json = nlohmann::ordered_json;

// How the verbs write figures: decimal strings with a point, exact, the same on every machine.

/// A share as a fraction of one, at most six decimals: 8.875 % is "0.08875".
std::string decimal(units::Rate rate);
/// `count` parts of 10^decimals, trailing zeros dropped: (250000, 6) is "0.25".
std::string decimal(std::int64_t count, int decimals);
/// A length in inches or millimetres, at most nine decimals.
std::string decimal(units::Length length, units::LengthUnit unit);

Json orNull(const std::optional<units::Rate>& rate);

} // namespace sp::verbs
