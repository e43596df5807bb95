// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/catalogue/material.h"

#include <QString>

#include <optional>
#include <vector>

namespace sp::supplies {

/// Prices by number of packs in one line of text: "9.99; from 5 packs 8.90".
QString writePrices(const std::vector<catalogue::PriceBreak>& prices, const desk::Formatter& formatter);
/// From how many packs on one costs more than it did for fewer; none where more packs are never dearer.
std::optional<units::Count> risesFrom(const std::vector<catalogue::PriceBreak>& prices);

} // namespace sp::supplies
