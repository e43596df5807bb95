// SPDX-License-Identifier: MIT
#include "app/supplies/colour_words.h"

#include "app/format/likeness.h"
#include "app/words/names.h"
#include "core/catalogue/stone_colour.h"

namespace sp::supplies {

std::optional<std::uint32_t> colourCalled(const QString& words) {
    for (const auto& drawn : catalogue::stoneColours())
        if (desk::folded(words::nameOf(drawn.colour)) == desk::folded(words)) return drawn.rgb;
    return std::nullopt;
}

std::uint32_t drawnAs(const QString& words) {
    const auto spaced = [](const QString& text) { return QStringLiteral(" %1 ").arg(desk::folded(text).simplified()); };
    const auto wanted = spaced(words);
    std::uint32_t rgb = 0;
    qsizetype longest = 0;
    for (const auto& drawn : catalogue::stoneColours()) {
        const auto name = spaced(words::nameOf(drawn.colour));
        if (drawn.colour == catalogue::StoneColour::Silver && longest == 0) rgb = drawn.rgb;
        if (name.size() <= longest || !wanted.contains(name)) continue;
        longest = name.size();
        rgb = drawn.rgb;
    }
    return rgb;
}

} // namespace sp::supplies
