// SPDX-License-Identifier: MIT
#include "core/layout/strips.h"

#include "core/layout/fit.h"

#include <algorithm>

namespace sp::layout {

namespace {

constexpr std::size_t kTileSums = 32;

/// The longest length up to `limit` that has at most `most` sums.
Tick lengthOfSums(Tick limit, const Problem& problem, std::size_t most) {
    Tick low = 0;
    Tick high = limit;
    while (low < high) {
        const Tick middle = low + (high - low + 1) / 2;
        if (sumsUpTo(middle, problem.sideA, problem.sideB, most).empty()) {
            high = middle - 1;
        } else {
            low = middle;
        }
    }
    return low;
}

} // namespace

Strips::Strips(const Problem& problem, Work& work)
    : m_problem(problem) {
    addRow(problem.sideA, problem.sideB);
    addRow(problem.sideB, problem.sideA);
    const bool whole =
        !sumsUpTo(problem.height, problem.sideA, problem.sideB, static_cast<std::size_t>(kMaxSums)).empty();
    const std::size_t most = whole ? static_cast<std::size_t>(kMaxSums) : kTileSums;
    Problem part = problem;
    part.width = lengthOfSums(problem.width, problem, most);
    part.height = whole ? problem.height : lengthOfSums(problem.height, problem, most);
    m_grid = std::make_unique<Grid>(part, static_cast<int>(most));
    if (!m_grid->fits()) return;
    m_five = std::make_unique<FiveBlock>(*m_grid, work);
    for (int length = 1; length < m_grid->size() && m_grid->at(length) <= part.width; ++length) {
        if (whole) {
            const int across = m_grid->below(part.height);
            add({.length = m_grid->at(length), .count = m_five->solve(length, across)}, {length, {}, {across}});
        } else {
            addTiled(length);
        }
    }
}

/// A strip of pieces side by side, each `along` the strip's length.
void Strips::addRow(Tick along, Tick across) {
    if (along <= m_problem.width) add({.length = along, .count = m_problem.height / across}, {});
}

void Strips::add(const Link& link, Strip strip) {
    if (link.count == 0) return;
    for (const Link& known : m_links) {
        if (known.length <= link.length && known.count >= link.count) return;
    }
    m_links.push_back(link);
    m_strips.push_back(std::move(strip));
}

void Strips::addTiled(int length) {
    std::vector<Link> links;
    std::vector<int> tiles;
    for (int tile = 1; tile < m_grid->size() && m_grid->at(tile) <= m_problem.height; ++tile) {
        const int count = m_five->solve(length, tile);
        if (count <= (links.empty() ? 0 : links.back().count)) continue;
        links.push_back({m_grid->at(tile), count});
        tiles.push_back(tile);
    }
    if (links.empty()) return;
    const auto strip = static_cast<units::Int128>(m_grid->at(length)) * m_problem.height;
    const auto piece = static_cast<units::Int128>(m_problem.sideA) * m_problem.sideB;
    const Chain chain(std::move(links), static_cast<std::int64_t>(strip / piece));
    const std::int64_t count = chain.mostWithin(m_problem.height);
    add({.length = m_grid->at(length), .count = count}, {length, chain.parts(count), std::move(tiles)});
}

void Strips::place(std::size_t link, Tick x, std::int64_t most, std::vector<Spot>& spots) {
    const Strip& strip = m_strips[link];
    const auto isFull = [&] { return static_cast<std::int64_t>(spots.size()) >= most; };
    if (strip.length == 0) { // a plain row
        const bool turned = m_links[link].length != m_problem.sideA;
        const Tick across = turned ? m_problem.sideA : m_problem.sideB;
        for (std::int64_t k = 0; k < m_links[link].count && !isFull(); ++k) spots.push_back({x, k * across, turned});
        return;
    }
    if (strip.parts.empty()) return m_five->place(strip.length, strip.tiles.front(), Frame{.x = x}, spots);
    Tick y = 0;
    for (const auto& [part, times] : strip.parts) {
        const int tile = strip.tiles[part];
        for (std::int64_t k = 0; k < times && !isFull(); ++k) {
            m_five->place(strip.length, tile, Frame{.x = x, .y = y}, spots);
            y += m_grid->at(tile);
        }
    }
}

void Strips::placeAll(const std::vector<std::pair<std::size_t, std::int64_t>>& parts, std::int64_t most,
                      std::vector<Spot>& spots) {
    Tick x = 0;
    for (const auto& [link, times] : parts) {
        for (std::int64_t k = 0; k < times && static_cast<std::int64_t>(spots.size()) < most; ++k) {
            place(link, x, most, spots);
            x += m_links[link].length;
        }
    }
}

} // namespace sp::layout
