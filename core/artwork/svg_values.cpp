// SPDX-License-Identifier: MIT
#include "core/artwork/svg_values.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <numbers>

namespace sp::artwork {

namespace {

struct SvgUnit {
    std::string_view name;
    double pixels;
    bool physical;
};

// CSS Values and Units Level 3, section 5.2; em and ex of a 16 px font.
constexpr SvgUnit kSvgUnits[] = {
    {"px", 1, false}, {"mm", 96 / 25.4, true}, {"cm", 96 / 2.54, true}, {"in", 96, true}, {"pt", 96.0 / 72, true},
    {"pc", 16, true}, {"q", 24 / 25.4, true},  {"em", 16, false},       {"ex", 8, false}, {"%", 0, false},
};

const SvgUnit* unitOf(std::string_view name) {
    for (const SvgUnit& unit : kSvgUnits)
        if (equalsIgnoringCase(name, unit.name)) return &unit;
    return nullptr;
}

std::optional<Matrix> makeTransform(std::string_view name, const std::array<double, 6>& v, std::size_t count) {
    if (name == "matrix" && count == 6) return Matrix{v[0], v[1], v[2], v[3], v[4], v[5]};
    if (name == "translate" && (count == 1 || count == 2)) return Matrix::translation(v[0], v[1]);
    if (name == "scale" && (count == 1 || count == 2)) return Matrix::scaling(v[0], count == 1 ? v[0] : v[1]);
    if (name == "rotate" && count == 1) return Matrix::rotation(v[0]);
    if (name == "rotate" && count == 3)
        return Matrix::translation(v[1], v[2]) * Matrix::rotation(v[0]) * Matrix::translation(-v[1], -v[2]);
    if (name == "skewX" && count == 1) return Matrix{1, 0, std::tan(v[0] * kRadian), 1, 0, 0};
    if (name == "skewY" && count == 1) return Matrix{1, std::tan(v[0] * kRadian), 0, 1, 0, 0};
    return std::nullopt;
}

} // namespace

bool SvgLength::isPhysical() const {
    const SvgUnit* known = unitOf(unit);
    return known != nullptr && known->physical;
}

double SvgLength::pixels(double whole) const {
    if (unit.empty()) return value;
    if (unit == "%") return value / 100 * whole;
    const SvgUnit* known = unitOf(unit);
    return known == nullptr ? value : value * known->pixels;
}

std::optional<SvgLength> parseSvgLength(std::string_view text) {
    Scanner scanner(trimmed(text));
    const auto value = scanner.number();
    if (!value) return std::nullopt;
    if (scanner.isDone()) return SvgLength{*value, ""};
    const SvgUnit* unit = unitOf(scanner.rest());
    if (unit == nullptr) return std::nullopt;
    return SvgLength{*value, unit->name};
}

std::optional<ViewBox> parseViewBox(std::string_view text) {
    Scanner scanner(text);
    std::array<double, 4> v{};
    for (auto& value : v) {
        const auto number = scanner.number();
        if (!number) return std::nullopt;
        value = *number;
    }
    if (!(v[2] > 0) || !(v[3] > 0)) return std::nullopt;
    return ViewBox{v[0], v[1], v[2], v[3]};
}

AspectRatio parseAspectRatio(std::string_view text) {
    AspectRatio ratio;
    const auto share = [](std::string_view word) { return word == "Min" ? 0.0 : word == "Max" ? 1.0 : 0.5; };
    Scanner scanner(text);
    for (scanner.skipSpace(); !scanner.isDone(); scanner.skipSpace()) {
        const auto word = scanner.word();
        if (word.empty()) break;
        if (word == "none") ratio.stretch = true;
        if (word == "slice") ratio.slice = true;
        if (word.size() == 8 && word[0] == 'x' && word[4] == 'Y') {
            ratio.alignX = share(word.substr(1, 3));
            ratio.alignY = share(word.substr(5, 3));
        }
    }
    return ratio;
}

Matrix fitViewBox(const ViewBox& box, double width, double height, const AspectRatio& ratio) {
    const double sx = width / box.width;
    const double sy = height / box.height;
    if (ratio.stretch) return Matrix::scaling(sx, sy) * Matrix::translation(-box.x, -box.y);
    const double s = ratio.slice ? std::max(sx, sy) : std::min(sx, sy);
    return Matrix::translation(ratio.alignX * (width - s * box.width), ratio.alignY * (height - s * box.height)) *
           Matrix::scaling(s, s) * Matrix::translation(-box.x, -box.y);
}

namespace {

/// What a number with this unit is in px or degrees; 0 for a unit that is neither.
double factorOf(std::string_view unit) {
    if (unit.empty() || unit == "deg") return 1;
    if (unit == "rad") return 180 / std::numbers::pi;
    if (unit == "grad") return 0.9;
    if (unit == "turn") return 360;
    const SvgUnit* known = unitOf(unit);
    return known == nullptr || unit == "%" ? 0 : known->pixels;
}

/// The names of a style that have another of SVG 1.1 for them.
std::optional<Matrix> makeStyleTransform(std::string_view name, std::array<double, 6> values, std::size_t count) {
    if (count == 1 && (name == "translateX" || name == "translateY"))
        return name == "translateX" ? Matrix::translation(values[0], 0) : Matrix::translation(0, values[0]);
    if (count == 1 && (name == "scaleX" || name == "scaleY"))
        return name == "scaleX" ? Matrix::scaling(values[0], 1) : Matrix::scaling(1, values[0]);
    return makeTransform(name == "rotateZ" ? "rotate" : name, values, count);
}

std::optional<Matrix> transformFrom(std::string_view text, bool isStyle) {
    Matrix whole;
    Scanner scanner(text);
    for (scanner.skipSpace(); !scanner.isDone(); scanner.skipSeparator()) {
        const auto name = scanner.word();
        scanner.skipSpace();
        if (!scanner.take('(')) return name == "none" && scanner.isDone() ? std::optional(whole) : std::nullopt;
        std::array<double, 6> values{};
        std::size_t count = 0;
        scanner.skipSpace();
        while (!scanner.take(')')) {
            const auto number = count < values.size() ? scanner.number() : std::nullopt;
            if (!number) return std::nullopt;
            double factor = 1;
            if (isStyle) {
                const auto rest = scanner.rest();
                const bool hasUnit = !rest.empty() && std::isalpha(static_cast<unsigned char>(rest.front())) != 0;
                factor = hasUnit ? factorOf(scanner.word()) : 1;
                scanner.skipSeparator();
            }
            if (factor == 0) return std::nullopt;
            values[count++] = *number * factor;
        }
        const auto one = isStyle ? makeStyleTransform(name, values, count) : makeTransform(name, values, count);
        if (!one) return std::nullopt;
        whole = whole * *one;
    }
    return whole.isFinite() ? std::optional(whole) : std::nullopt;
}

} // namespace

std::optional<Matrix> parseTransform(std::string_view text) { return transformFrom(text, false); }

std::optional<Matrix> parseStyleTransform(std::string_view text) { return transformFrom(text, true); }

} // namespace sp::artwork
