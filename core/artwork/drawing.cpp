// SPDX-License-Identifier: MIT
#include "core/artwork/drawing.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

bool InOrderOfNotes::operator()(const base::Message& a, const base::Message& b) const {
    if (a.id != b.id) return a.id.number < b.id.number;
    return base::describe(a) < base::describe(b);
}

DrawingBuilder::DrawingBuilder(std::string_view fileName, const Limits& limits)
    : m_fileName(cleanText(fileName))
    , m_limits(limits) {}

std::uint32_t DrawingBuilder::inkOf(std::string_view colour, std::string_view layer, bool filled) {
    layer = layer.substr(0, 200);
    if (m_lastInk < m_drawing.inks.size()) {
        const Ink& last = m_drawing.inks[m_lastInk];
        if (last.filled == filled && last.colour == colour && last.layer == layer) return m_lastInk;
    }
    std::string key;
    key.reserve(colour.size() + layer.size() + 2);
    key.append(colour).append(filled ? "\1" : "\2").append(layer);
    const auto [found, isNew] = m_inkIndex.try_emplace(std::move(key), m_drawing.inks.size());
    if (isNew) m_drawing.inks.push_back({std::string(colour), cleanText(layer), filled});
    return m_lastInk = found->second;
}

bool DrawingBuilder::hasRoom() {
    if (isFull()) return false;
    if (m_drawing.discs.size() + m_drawing.outlines.size() < m_limits.outlines) return true;
    refuse(base::makeError(Fault::TooManyOutlines, m_fileName, m_fileName, m_limits.outlines));
    return false;
}

void DrawingBuilder::add(const Disc& disc) {
    const bool isNear = std::abs(disc.centre.x) < kMaxCoordinate && std::abs(disc.centre.y) < kMaxCoordinate;
    if (disc.radius == 0) return; // scaled down to nothing
    if (!isNear || !(disc.radius < kMaxCoordinate)) return reject(Note::BeyondAllMeasure);
    if (hasRoom()) m_drawing.discs.push_back(disc);
}

void DrawingBuilder::add(std::span<const Point> points, bool closed, bool evenOdd, std::uint32_t ink,
                         std::uint32_t shape) {
    for (const Point p : points)
        if (!(std::abs(p.x) < kMaxCoordinate && std::abs(p.y) < kMaxCoordinate)) return reject(Note::BeyondAllMeasure);
    if (!hasRoom()) return;
    if (m_drawing.points.size() + points.size() > m_limits.points) {
        refuse(base::makeError(Fault::TooManyCorners, m_fileName, m_fileName, m_limits.points));
        return;
    }
    m_drawing.outlines.push_back({static_cast<std::uint32_t>(m_drawing.points.size()),
                                  static_cast<std::uint32_t>(points.size()), ink, shape, closed, evenOdd});
    m_drawing.points.insert(m_drawing.points.end(), points.begin(), points.end());
}

void DrawingBuilder::reject(const base::Message& reason, std::size_t count) { m_drawing.leftOut[reason] += count; }

void DrawingBuilder::warn(base::Message warning) {
    auto& warnings = m_drawing.warnings;
    if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end()) warnings.push_back(std::move(warning));
}

void DrawingBuilder::setUnit(std::optional<double> millimetres, std::string_view name) {
    m_drawing.millimetresPerUnit = millimetres;
    m_drawing.unitName = name;
}

void DrawingBuilder::visit() {
    if (++m_visits > m_limits.visits) refuseRepeats();
}

void DrawingBuilder::spend(std::size_t bytes) {
    m_work += bytes;
    if (m_work > m_limits.work) refuseRepeats();
}

void DrawingBuilder::refuseRepeats() { refuse(base::makeError(Fault::TooManyRepeats, m_fileName, m_fileName)); }

void DrawingBuilder::refuseSegments() { refuse(base::makeError(Fault::TooManySegments, m_fileName, m_fileName)); }

void DrawingBuilder::refuse(base::Error error) {
    if (!isFull()) m_trouble = std::move(error);
}

base::Result<Drawing> DrawingBuilder::finish() {
    if (isFull()) return base::fail(std::move(*m_trouble));
    return std::move(m_drawing);
}

} // namespace sp::artwork
