// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace sp::artwork {

/// 0xRRGGBB from a colour of CSS (CSS Color Module Level 4, sections 4 to 7: #rgb, #rgba, #rrggbb, #rrggbbaa,
/// rgb(), rgba(), hsl(), hsla(), the 148 names in any case). How transparent it is does not matter to a
/// stone. Nothing when the text is none of these.
std::optional<std::uint32_t> parseColour(std::string_view text);

/// "#1f3a93".
std::string colourText(std::uint32_t rgb);

} // namespace sp::artwork
