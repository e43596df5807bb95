// SPDX-License-Identifier: MIT
#include "core/artwork/colour.h"

#include "core/artwork/scanner.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace sp::artwork {

namespace {

struct Named {
    std::string_view name;
    std::uint32_t rgb;
};

// CSS Color Module Level 4, section 6.1, sorted by name.
constexpr Named kNamed[] = {
    {"aliceblue", 0xf0f8ff},
    {"antiquewhite", 0xfaebd7},
    {"aqua", 0x00ffff},
    {"aquamarine", 0x7fffd4},
    {"azure", 0xf0ffff},
    {"beige", 0xf5f5dc},
    {"bisque", 0xffe4c4},
    {"black", 0x000000},
    {"blanchedalmond", 0xffebcd},
    {"blue", 0x0000ff},
    {"blueviolet", 0x8a2be2},
    {"brown", 0xa52a2a},
    {"burlywood", 0xdeb887},
    {"cadetblue", 0x5f9ea0},
    {"chartreuse", 0x7fff00},
    {"chocolate", 0xd2691e},
    {"coral", 0xff7f50},
    {"cornflowerblue", 0x6495ed},
    {"cornsilk", 0xfff8dc},
    {"crimson", 0xdc143c},
    {"cyan", 0x00ffff},
    {"darkblue", 0x00008b},
    {"darkcyan", 0x008b8b},
    {"darkgoldenrod", 0xb8860b},
    {"darkgray", 0xa9a9a9},
    {"darkgreen", 0x006400},
    {"darkgrey", 0xa9a9a9},
    {"darkkhaki", 0xbdb76b},
    {"darkmagenta", 0x8b008b},
    {"darkolivegreen", 0x556b2f},
    {"darkorange", 0xff8c00},
    {"darkorchid", 0x9932cc},
    {"darkred", 0x8b0000},
    {"darksalmon", 0xe9967a},
    {"darkseagreen", 0x8fbc8f},
    {"darkslateblue", 0x483d8b},
    {"darkslategray", 0x2f4f4f},
    {"darkslategrey", 0x2f4f4f},
    {"darkturquoise", 0x00ced1},
    {"darkviolet", 0x9400d3},
    {"deeppink", 0xff1493},
    {"deepskyblue", 0x00bfff},
    {"dimgray", 0x696969},
    {"dimgrey", 0x696969},
    {"dodgerblue", 0x1e90ff},
    {"firebrick", 0xb22222},
    {"floralwhite", 0xfffaf0},
    {"forestgreen", 0x228b22},
    {"fuchsia", 0xff00ff},
    {"gainsboro", 0xdcdcdc},
    {"ghostwhite", 0xf8f8ff},
    {"gold", 0xffd700},
    {"goldenrod", 0xdaa520},
    {"gray", 0x808080},
    {"green", 0x008000},
    {"greenyellow", 0xadff2f},
    {"grey", 0x808080},
    {"honeydew", 0xf0fff0},
    {"hotpink", 0xff69b4},
    {"indianred", 0xcd5c5c},
    {"indigo", 0x4b0082},
    {"ivory", 0xfffff0},
    {"khaki", 0xf0e68c},
    {"lavender", 0xe6e6fa},
    {"lavenderblush", 0xfff0f5},
    {"lawngreen", 0x7cfc00},
    {"lemonchiffon", 0xfffacd},
    {"lightblue", 0xadd8e6},
    {"lightcoral", 0xf08080},
    {"lightcyan", 0xe0ffff},
    {"lightgoldenrodyellow", 0xfafad2},
    {"lightgray", 0xd3d3d3},
    {"lightgreen", 0x90ee90},
    {"lightgrey", 0xd3d3d3},
    {"lightpink", 0xffb6c1},
    {"lightsalmon", 0xffa07a},
    {"lightseagreen", 0x20b2aa},
    {"lightskyblue", 0x87cefa},
    {"lightslategray", 0x778899},
    {"lightslategrey", 0x778899},
    {"lightsteelblue", 0xb0c4de},
    {"lightyellow", 0xffffe0},
    {"lime", 0x00ff00},
    {"limegreen", 0x32cd32},
    {"linen", 0xfaf0e6},
    {"magenta", 0xff00ff},
    {"maroon", 0x800000},
    {"mediumaquamarine", 0x66cdaa},
    {"mediumblue", 0x0000cd},
    {"mediumorchid", 0xba55d3},
    {"mediumpurple", 0x9370db},
    {"mediumseagreen", 0x3cb371},
    {"mediumslateblue", 0x7b68ee},
    {"mediumspringgreen", 0x00fa9a},
    {"mediumturquoise", 0x48d1cc},
    {"mediumvioletred", 0xc71585},
    {"midnightblue", 0x191970},
    {"mintcream", 0xf5fffa},
    {"mistyrose", 0xffe4e1},
    {"moccasin", 0xffe4b5},
    {"navajowhite", 0xffdead},
    {"navy", 0x000080},
    {"oldlace", 0xfdf5e6},
    {"olive", 0x808000},
    {"olivedrab", 0x6b8e23},
    {"orange", 0xffa500},
    {"orangered", 0xff4500},
    {"orchid", 0xda70d6},
    {"palegoldenrod", 0xeee8aa},
    {"palegreen", 0x98fb98},
    {"paleturquoise", 0xafeeee},
    {"palevioletred", 0xdb7093},
    {"papayawhip", 0xffefd5},
    {"peachpuff", 0xffdab9},
    {"peru", 0xcd853f},
    {"pink", 0xffc0cb},
    {"plum", 0xdda0dd},
    {"powderblue", 0xb0e0e6},
    {"purple", 0x800080},
    {"rebeccapurple", 0x663399},
    {"red", 0xff0000},
    {"rosybrown", 0xbc8f8f},
    {"royalblue", 0x4169e1},
    {"saddlebrown", 0x8b4513},
    {"salmon", 0xfa8072},
    {"sandybrown", 0xf4a460},
    {"seagreen", 0x2e8b57},
    {"seashell", 0xfff5ee},
    {"sienna", 0xa0522d},
    {"silver", 0xc0c0c0},
    {"skyblue", 0x87ceeb},
    {"slateblue", 0x6a5acd},
    {"slategray", 0x708090},
    {"slategrey", 0x708090},
    {"snow", 0xfffafa},
    {"springgreen", 0x00ff7f},
    {"steelblue", 0x4682b4},
    {"tan", 0xd2b48c},
    {"teal", 0x008080},
    {"thistle", 0xd8bfd8},
    {"tomato", 0xff6347},
    {"turquoise", 0x40e0d0},
    {"violet", 0xee82ee},
    {"wheat", 0xf5deb3},
    {"white", 0xffffff},
    {"whitesmoke", 0xf5f5f5},
    {"yellow", 0xffff00},
    {"yellowgreen", 0x9acd32},
};

std::optional<std::uint32_t> fromHex(std::string_view digits) {
    if (digits.size() != 3 && digits.size() != 4 && digits.size() != 6 && digits.size() != 8) return std::nullopt;
    std::array<std::uint32_t, 8> values{};
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const char c = lower(digits[i]);
        if (isDigit(c))
            values[i] = static_cast<std::uint32_t>(c - '0');
        else if (c >= 'a' && c <= 'f')
            values[i] = static_cast<std::uint32_t>(c - 'a' + 10);
        else
            return std::nullopt;
    }
    if (digits.size() < 6) return values[0] * 0x110000 + values[1] * 0x1100 + values[2] * 0x11;
    return values[0] << 20 | values[1] << 16 | values[2] << 12 | values[3] << 8 | values[4] << 4 | values[5];
}

std::uint32_t channel(double value) { return static_cast<std::uint32_t>(std::lround(std::clamp(value, 0.0, 255.0))); }

std::uint32_t fromHsl(double hue, double saturation, double lightness) {
    const double turn = hue / 30;
    const double reach = saturation * std::min(lightness, 1 - lightness);
    std::uint32_t rgb = 0;
    for (const double start : {0.0, 8.0, 4.0}) {
        double k = std::fmod(start + turn, 12);
        if (k < 0) k += 12;
        rgb = rgb << 8 | channel(255 * (lightness - reach * std::max(-1.0, std::min({k - 3, 9 - k, 1.0}))));
    }
    return rgb;
}

/// The three numbers in the brackets of rgb(…) or hsl(…), each with its percent sign or not.
std::optional<std::uint32_t> fromFunction(std::string_view name, std::string_view arguments) {
    Scanner scanner(arguments);
    std::array<double, 3> values{};
    std::array<bool, 3> percent{};
    for (std::size_t i = 0; i < 3; ++i) {
        const auto value = scanner.number();
        if (!value) return std::nullopt;
        values[i] = *value;
        percent[i] = scanner.take('%');
        scanner.skipSeparator();
        if (i == 0 && scanner.rest().starts_with("deg")) {
            scanner.word();
            scanner.skipSeparator();
        }
    }
    if (equalsIgnoringCase(name, "rgb") || equalsIgnoringCase(name, "rgba")) {
        std::uint32_t rgb = 0;
        for (std::size_t i = 0; i < 3; ++i) rgb = rgb << 8 | channel(percent[i] ? values[i] * 2.55 : values[i]);
        return rgb;
    }
    if (equalsIgnoringCase(name, "hsl") || equalsIgnoringCase(name, "hsla"))
        return fromHsl(values[0], std::clamp(values[1] / 100, 0.0, 1.0), std::clamp(values[2] / 100, 0.0, 1.0));
    return std::nullopt;
}

} // namespace

std::optional<std::uint32_t> parseColour(std::string_view text) {
    text = trimmed(text);
    if (text.starts_with('#')) return fromHex(text.substr(1));
    if (const auto bracket = text.find('('); bracket != std::string_view::npos)
        return fromFunction(text.substr(0, bracket), text.substr(bracket + 1));
    std::array<char, 24> name{};
    if (text.size() >= name.size()) return std::nullopt;
    std::transform(text.begin(), text.end(), name.begin(), lower);
    const std::string_view key(name.data(), text.size());
    const auto found = std::lower_bound(std::begin(kNamed), std::end(kNamed), key,
                                        [](const Named& entry, std::string_view k) { return entry.name < k; });
    if (found == std::end(kNamed) || found->name != key) return std::nullopt;
    return found->rgb;
}

std::string colourText(std::uint32_t rgb) { return fmt::format("#{:06x}", rgb); }

} // namespace sp::artwork
