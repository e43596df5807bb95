// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <span>
#include <string>

namespace sp::artwork {

/// The colours of a plotter's pens: white, black, red, green, yellow, blue, magenta and cyan as of HP-GL/2, black from
/// 8 on, and what the file says of them.
class PltPens {
  public:
    void setColour(std::span<const double> numbers); ///< PC: a pen and its red, green and blue
    void setRange(std::span<const double> numbers);  ///< CR: what black and white are, for each of the three
    void setCount(std::span<const double> numbers);  ///< NP: a larger pen begins again at the first
    void reset() { *this = {}; }

    /// The pen that SP selects; 0 is none.
    int penFor(double number) const;
    /// "#ff0000".
    std::string colourOf(int pen) const;

  private:
    std::map<int, std::uint32_t> m_colours; ///< 0xRRGGBB
    std::array<double, 6> m_range{0, 255, 0, 255, 0, 255};
    int m_count = 0; ///< 0: not said
};

} // namespace sp::artwork
