// SPDX-License-Identifier: MIT
#include "core/artwork/plt_pens.h"

#include "core/artwork/colour.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace sp::artwork {

namespace {

constexpr int kPenNumbers = 32'768;
constexpr std::uint32_t kColours[] = {0xffffff, 0x000000, 0xff0000, 0x00ff00, 0xffff00, 0x0000ff, 0xff00ff, 0x00ffff};

int wholeOf(double number) { return static_cast<int>(std::clamp(number, 0.0, kPenNumbers - 1.0)); }

} // namespace

void PltPens::setColour(std::span<const double> numbers) {
    if (numbers.empty()) return m_colours.clear();
    const int pen = wholeOf(numbers[0]);
    if (numbers.size() < 4) {
        m_colours.erase(pen);
        return;
    }
    std::uint32_t rgb = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const double black = m_range[2 * i];
        const double share = std::clamp((numbers[i + 1] - black) / (m_range[2 * i + 1] - black), 0.0, 1.0);
        rgb = rgb << 8U | static_cast<std::uint32_t>(std::lround(255 * share));
    }
    m_colours[pen] = rgb;
}

void PltPens::setRange(std::span<const double> numbers) {
    m_range = {0, 255, 0, 255, 0, 255};
    if (numbers.size() < m_range.size()) return;
    for (std::size_t i = 0; i < m_range.size(); i += 2)
        if (numbers[i] == numbers[i + 1]) return;
    std::copy_n(numbers.begin(), m_range.size(), m_range.begin());
}

void PltPens::setCount(std::span<const double> numbers) {
    m_count = 0;
    if (numbers.empty() || numbers[0] < 2) return;
    m_count = 2;
    while (m_count < numbers[0] && m_count < kPenNumbers) m_count *= 2; // the next power of two
}

int PltPens::penFor(double number) const {
    const int pen = wholeOf(number);
    return m_count == 0 || pen < m_count ? pen : (pen - 1) % (m_count - 1) + 1;
}

std::string PltPens::colourOf(int pen) const {
    const auto said = m_colours.find(pen);
    if (said != m_colours.end()) return colourText(said->second);
    return colourText(pen < static_cast<int>(std::size(kColours)) ? kColours[pen] : 0);
}

} // namespace sp::artwork
