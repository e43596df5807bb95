// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/formatter.h"
#include "core/base/result.h"
#include "core/catalogue/material.h"

#include <QString>

#include <vector>

namespace sp::supplies {

/// Prices by number of packs in one line of text: "9.99; 5: 8.90" is 9.99 each, 8.90 each from five packs on.
/// Errors: what parseMoney and parseCount refuse; Invalid when a step does not come after the one before.
base::Result<std::vector<catalogue::PriceBreak>> parsePrices(const QString& text, const desk::Formatter& formatter);
QString writePrices(const std::vector<catalogue::PriceBreak>& prices, const desk::Formatter& formatter);

} // namespace sp::supplies
