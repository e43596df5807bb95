// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace sp::artwork {

/// Walks through what the instruction PE encodes (HP PCL 5 technical reference, part II, "PE, Polyline Encoded"):
/// numbers of base 64, or of base 32 after the flag 7, low digits first, the last one in a range of its own.
class PltEncoded {
  public:
    enum class Kind : std::uint8_t { Pen, Move };
    struct Step {
        Kind kind = Kind::Move;
        int pen = 0;
        double x = 0; ///< in the units that hold
        double y = 0;
        bool isUp = false;       ///< the pen is lifted on the way
        bool isAbsolute = false; ///< else from where the pen stands
    };

    explicit PltEncoded(std::string_view text)
        : m_text(text) {}

    /// Nothing at the end, or where the text encodes nothing (then `isGarbled`).
    std::optional<Step> next();
    bool isGarbled() const { return m_garbled; }

  private:
    std::optional<double> number();
    std::nullopt_t garbled();

    std::string_view m_text;
    std::size_t m_at = 0;
    int m_fractionBits = 0;
    bool m_isSevenBit = false;
    bool m_garbled = false;
};

} // namespace sp::artwork
