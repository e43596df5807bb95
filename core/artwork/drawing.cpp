// SPDX-License-Identifier: MIT
#include "core/artwork/drawing.h"

#include "core/artwork/scanner.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace sp::artwork {

bool InOrderOfNotes::operator()(const base::Message& a, const base::Message& b) const {
    if (a.id != b.id) return a.id.number < b.id.number;
    return base::describe(a) < base::describe(b);
}

DrawingBuilder::DrawingBuilder(std::string_view fileName, const Limits& limits, catalogue::ArtworkFormat format)
    : m_fileName(cleanText(fileName))
    , m_limits(limits) {
    m_drawing.format = format;
}

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

void DrawingBuilder::markArc(const ArcPart& part) {
    if (!isFull() && !m_drawing.outlines.empty()) m_arcs.emplace_back(m_drawing.outlines.size() - 1, part);
}

namespace {

/// Whether the arcs leave no more than a sliver of the circle open.
bool goRound(std::vector<ArcPart> parts) {
    constexpr double kSliver = 0.06; // radians in all
    constexpr double kWhole = 2 * std::numbers::pi;
    std::sort(parts.begin(), parts.end(), [](const ArcPart& a, const ArcPart& b) { return a.from < b.from; });
    double open = 0;
    double end = parts.front().from;
    for (const ArcPart& part : parts) {
        open += std::max(0.0, part.from - end);
        end = std::max(end, part.from + part.sweep);
    }
    return open + std::max(0.0, parts.front().from + kWhole - end) <= kSliver;
}

} // namespace

void DrawingBuilder::joinArcs() {
    constexpr double kAlike = 0.02; // of the radius
    // Arcs of like circles lie in one cell or in neighbouring ones.
    using Cell = std::array<std::int64_t, 4>; // ink, radius, x, y
    const auto cellOf = [this](std::size_t arc) {
        const ArcPart& part = m_arcs[arc].second;
        const auto step = std::llround(std::log(part.radius) / std::log1p(2 * kAlike));
        const double width = 4 * kAlike * std::exp(static_cast<double>(step) * std::log1p(2 * kAlike));
        return Cell{m_drawing.outlines[m_arcs[arc].first].ink, step, std::llround(part.centre.x / width),
                    std::llround(part.centre.y / width)};
    };
    std::map<Cell, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < m_arcs.size(); ++i) {
        const ArcPart& part = m_arcs[i].second;
        if (!(part.radius > 0) || !(std::abs(part.centre.x) + std::abs(part.centre.y) < 1e6 * part.radius)) continue;
        const Cell own = cellOf(i);
        std::vector<std::size_t>* group = nullptr;
        for (std::int64_t n = 0; n < 27 && group == nullptr; ++n) {
            const auto found = groups.find({own[0], own[1] + n / 9 - 1, own[2] + n / 3 % 3 - 1, own[3] + n % 3 - 1});
            if (found == groups.end()) continue;
            const ArcPart& first = m_arcs[found->second.front()].second;
            if (distance(first.centre, part.centre) <= kAlike * part.radius &&
                std::abs(first.radius - part.radius) <= kAlike * part.radius)
                group = &found->second;
        }
        if (group == nullptr) group = &groups[own];
        group->push_back(i);
    }
    std::vector<char> isJoined(m_drawing.outlines.size(), 0);
    for (const auto& [cell, arcs] : groups) {
        std::vector<ArcPart> parts;
        for (const std::size_t arc : arcs) parts.push_back(m_arcs[arc].second);
        if (parts.size() < 2 || !goRound(parts)) continue;
        const Outline& outline = m_drawing.outlines[m_arcs[arcs.front()].first];
        m_drawing.discs.push_back({parts.front().centre, parts.front().radius, outline.ink, outline.shape});
        for (const std::size_t arc : arcs) isJoined[m_arcs[arc].first] = 1;
    }
    std::size_t i = 0;
    std::erase_if(m_drawing.outlines, [&](const Outline&) { return isJoined[i++] != 0; });
    m_arcs.clear();
}

base::Result<Drawing> DrawingBuilder::finish() {
    if (isFull()) return base::fail(std::move(*m_trouble));
    if (!m_arcs.empty()) joinArcs();
    return std::move(m_drawing);
}

} // namespace sp::artwork
