// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/count.h"
#include "core/units/text.h"

#include <optional>
#include <string>
#include <string_view>

// What stands in the cells of suppliers' price lists, as the trade writes it. Common practice, no source.
namespace sp::supply {

/// A to Z as a to z, and white space at the ends gone.
std::string lowerTrimmed(std::string_view text);

/// A cell as one line of text: what ends a line in it, and tabs, are spaces, and those at the ends are gone.
std::string oneLine(std::string_view cell);

/// How many are in a pack that a list names so: "10 gross", "bag of 1,440", "pkt 100", "12 x 144 pcs", "dozen", "each",
/// "bag (1440)". What is said twice ("10 gross = 1440") must agree. Nothing where it cannot be told.
std::optional<units::Count> packAmount(std::string_view words, const units::NumberStyle& style);

/// A stone size somewhere in a text, and the text without it.
struct SizeInText {
    std::string_view size; ///< its name in the table of sizes: "SS10"
    std::string rest;      ///< "Aquamarine" of "Aquamarine - ss 10"
};
/// "SS10", "ss 10", "ss-10" or "10ss" as words of their own. Nothing without one that is in the table of sizes.
std::optional<SizeInText> sizeInText(std::string_view text);

/// The size that a cell of a column of sizes names; a bare number is one too.
std::optional<std::string_view> listedSize(std::string_view cell);

} // namespace sp::supply
