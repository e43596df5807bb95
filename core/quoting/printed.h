// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/currency.h"
#include "core/units/money.h"
#include "core/units/text.h"

#include <string>
#include <string_view>
#include <vector>

namespace sp::quoting {

/// An amount as papers print it: with a typographic minus, because a hyphen is too short beside figures.
std::string printedMoney(units::Money amount, const units::Currency& currency, const units::NumberStyle& numbers);

/// The lines of a text as a letterhead prints them, without empty ones and spaces at their ends.
std::vector<std::string> printedLines(std::string_view text);

} // namespace sp::quoting
