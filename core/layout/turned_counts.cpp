// SPDX-License-Identifier: MIT
#include "core/layout/turned_counts.h"

#include "core/units/int128.h"

#include <algorithm>

namespace sp::layout {

using std::int64_t;
using units::Int128;

namespace {

constexpr std::size_t kMaxLimits = 60;

} // namespace

TurnedCounts::TurnedCounts(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn)
    : m_width(width)
    , m_height(height) {
    for (const BoxKind& kind : kinds)
        for (const bool turn : {false, true}) {
            const BoxKind way = turn ? BoxKind{kind.height, kind.width, kind.count} : kind;
            m_ways.push_back(way);
            m_fits.push_back(way.width <= width && way.height <= height &&
                             !(turn && (!mayTurn || kind.width == kind.height)));
        }
    m_now.assign(m_ways.size(), 0);
}

bool TurnedCounts::isRuledOut(const std::vector<int64_t>& counts, int64_t& steps) {
    while (split(counts, 0, steps)) {
        if (steps <= 0 || m_limits.size() >= kMaxLimits) return false;
        auto limit = barLimit(m_ways, m_width, m_height, false, m_now, steps);
        if (!limit || limit->allows(m_now)) return false;
        m_limits.push_back(*std::move(limit));
    }
    return steps > 0;
}

/// Deals the counts of kind k on to ways that no limit forbids.
bool TurnedCounts::split(const std::vector<int64_t>& counts, std::size_t k, int64_t& steps) {
    steps -= static_cast<int64_t>(m_limits.size()) / 4 + 1;
    if (k == counts.size()) return true;
    for (int64_t turned = 0; turned <= counts[k] && steps > 0; ++turned) {
        if ((turned > 0 && m_fits[2 * k + 1] == 0) || (turned < counts[k] && m_fits[2 * k] == 0)) continue;
        m_now[2 * k] = counts[k] - turned;
        m_now[2 * k + 1] = turned;
        if (allows(2 * k + 2) && split(counts, k + 1, steps)) return true;
    }
    return false;
}

/// Of the first `known` ways.
bool TurnedCounts::allows(std::size_t known) const {
    return std::all_of(m_limits.begin(), m_limits.end(), [&](const CountLimit& limit) {
        Int128 sum = 0;
        for (std::size_t j = 0; j < known; ++j) sum += Int128{limit.weights[j]} * m_now[j];
        return sum <= limit.most;
    });
}

} // namespace sp::layout
