// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/base/result.h"
#include "core/catalogue/material.h"

#include <QString>

#include <vector>

namespace sp::supplies {

/// The sizes of a blank in one line of text: "S; M; 2XL: 2.10, 2.75" is 2XL with 2.10 extra cost and a surcharge of
/// 2.75. Where the locale's decimal mark is a comma, the two amounts are parted by a slash instead.
/// Errors: what parseMoney refuses; Invalid for a size named twice or without a name.
base::Result<std::vector<catalogue::BlankSize>> parseSizes(const QString& text, const desk::Formatter& formatter);
QString writeSizes(const std::vector<catalogue::BlankSize>& sizes, const desk::Formatter& formatter);

} // namespace sp::supplies
