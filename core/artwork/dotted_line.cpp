// SPDX-License-Identifier: MIT
#include "core/artwork/dotted_line.h"

#include "core/artwork/scanner.h"
#include "core/artwork/subpath.h"
#include "core/artwork/svg_values.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sp::artwork {

namespace {

constexpr double kHardly = 0.1;      ///< of the width, which a dash adds to at both ends
constexpr double kNearEnough = 1e-3; ///< of the pattern, within which a dot is at the end of a line

} // namespace

std::vector<double> dashesFrom(std::string_view text, double whole) {
    std::vector<double> dashes;
    for (text = trimmed(text); !text.empty();) {
        const auto end = std::find_if(text.begin(), text.end(), [](char c) { return isSpace(c) || c == ','; });
        const auto length = parseSvgLength(text.substr(0, static_cast<std::size_t>(end - text.begin())));
        if (!length || !(length->value >= 0)) return {};
        dashes.push_back(length->pixels(whole));
        text.remove_prefix(static_cast<std::size_t>(end - text.begin()));
        while (!text.empty() && (isSpace(text.front()) || text.front() == ',')) text.remove_prefix(1);
    }
    if (dashes.size() % 2 != 0) dashes.insert(dashes.end(), dashes.begin(), dashes.end()); // a round is two then
    return dashes;
}

bool areDots(std::span<const double> dashes, double lineWidth) {
    double gaps = 0;
    for (std::size_t i = 0; i < dashes.size(); ++i) {
        if (i % 2 != 0)
            gaps += dashes[i];
        else if (dashes[i] > kHardly * lineWidth)
            return false;
    }
    return gaps > 0;
}

std::optional<DottedLine> DottedLine::from(std::span<const double> dashes, double offset, double lineWidth,
                                           const Matrix& matrix, std::uint32_t ink) {
    const HalfAxes axes = halfAxes(matrix, 1, 1);
    if (axes.large - axes.small > kRoundness * (axes.large + axes.small)) return std::nullopt;
    const double scale = 0.5 * (axes.large + axes.small);
    DottedLine line;
    line.m_radius = 0.5 * lineWidth * scale;
    line.m_offset = offset * scale;
    line.m_ink = ink;
    for (std::size_t i = 0; i < dashes.size(); ++i) {
        if (i % 2 == 0) line.m_dots.push_back({line.m_period, dashes[i] * scale});
        line.m_period += dashes[i] * scale;
    }
    for (std::size_t i = 0; i < line.m_dots.size(); ++i) {
        const bool isLast = i + 1 == line.m_dots.size();
        const double next = isLast ? line.m_dots.front().middle() + line.m_period : line.m_dots[i + 1].middle();
        if (next - line.m_dots[i].middle() < 2 * line.m_radius) return std::nullopt;
    }
    return line;
}

void DottedLine::addTo(DrawingBuilder& builder, std::span<const Point> corners, bool isClosed) const {
    if (corners.empty()) return;
    const auto cornerAt = [&](std::size_t i) { return corners[i % corners.size()]; };
    const std::size_t sides = isClosed ? corners.size() : corners.size() - 1;
    double total = 0;
    for (std::size_t i = 0; i < sides; ++i) total += distance(cornerAt(i), cornerAt(i + 1));
    const bool meets = isClosed || distance(corners.front(), corners.back()) < kNearEnough * m_period;
    const double last = meets ? total - kNearEnough * m_period : total + kNearEnough * m_period;
    std::size_t side = 0;
    double before = 0; // length of the sides behind us
    for (double round = std::floor(m_offset / m_period);; ++round)
        for (const Dot& dot : m_dots) {
            const double start = dot.start + round * m_period - m_offset;
            if (start + dot.length < -kNearEnough * m_period) continue;
            if (start > last || builder.isFull()) return;
            const double at = std::clamp(start + 0.5 * dot.length, 0.0, total); // as far as it is on the line
            while (side + 1 < sides && at > before + distance(cornerAt(side), cornerAt(side + 1))) {
                before += distance(cornerAt(side), cornerAt(side + 1));
                ++side;
            }
            const Point from = cornerAt(side);
            const Point to = cornerAt(side + 1);
            const double length = distance(from, to);
            const double share = length > 0 ? std::clamp((at - before) / length, 0.0, 1.0) : 0;
            builder.add(Disc{from + share * (to - from), m_radius, m_ink, builder.nextShape()});
        }
}

} // namespace sp::artwork
