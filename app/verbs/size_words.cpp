// SPDX-License-Identifier: MIT
#include "app/verbs/size_words.h"

#include "app/words/words.h"

#include <optional>
#include <string>

namespace sp::verbs {

namespace {

/// The unit a side is written in, by its last letters; feet and yards count as inches, metres as millimetres.
std::optional<units::LengthUnit> unitOf(std::string_view side) {
    const auto holds = [&](std::string_view word) { return side.find(word) != std::string_view::npos; };
    if (holds("cm")) return units::LengthUnit::Centimetre;
    if (holds("in") || holds("\"") || holds("″") || holds("ft") || holds("yd") || holds("'"))
        return units::LengthUnit::Inch;
    if (holds("m")) return units::LengthUnit::Millimetre;
    return std::nullopt;
}

} // namespace

base::Result<Size> parseSize(std::string_view text) {
    const auto refuse = [&](const char* source) {
        return words::fail(base::Code::Invalid, std::string(text), source, text);
    };
    std::size_t cross = text.find_first_of("xX");
    std::size_t width = 1;
    if (cross == std::string_view::npos) {
        cross = text.find("×");
        width = std::string_view("×").size();
    }
    if (cross == std::string_view::npos)
        return refuse(QT_TRANSLATE_NOOP("App", "“%1” is not a width and a height; write it as 9x12in or 90x120mm."));
    const auto left = text.substr(0, cross);
    const auto right = text.substr(cross + width);
    const auto leftUnit = unitOf(left);
    const auto rightUnit = unitOf(right);
    if (!leftUnit && !rightUnit)
        return refuse(QT_TRANSLATE_NOOP("App", "“%1” says no unit; write it as 9x12in or 90x120mm."));
    const auto first = units::parseLength(left, leftUnit.value_or(rightUnit.value_or(units::LengthUnit::Inch)));
    if (!first) return base::fail(first.error());
    const auto second = units::parseLength(right, rightUnit.value_or(leftUnit.value_or(units::LengthUnit::Inch)));
    if (!second) return base::fail(second.error());
    return Size{*first, *second, rightUnit.value_or(leftUnit.value_or(units::LengthUnit::Inch))};
}

bool saysNoUnit(std::string_view length) {
    return length.find_first_not_of("0123456789.,+-*/() ") == std::string_view::npos &&
           length.find_first_of("123456789") != std::string_view::npos;
}

base::Result<units::Length> parseStatedLength(std::string_view text) {
    if (saysNoUnit(text))
        return words::fail(base::Code::Invalid, std::string(text),
                           QT_TRANSLATE_NOOP("App", "“%1” says no unit; write it as 0.25in or 6mm."), text);
    return units::parseLength(text, units::LengthUnit::Millimetre);
}

} // namespace sp::verbs
