// SPDX-License-Identifier: MIT
#include "core/layout/free_places.h"

#include <algorithm>

namespace sp::layout {

std::int64_t FreePlaces::take(const Place& used) {
    m_kept.clear();
    m_cut.clear();
    for (const auto& place : m_places) {
        if (!place.touches(used)) {
            m_kept.push_back(place);
            continue;
        }
        if (used.left > place.left) m_cut.push_back({place.left, place.low, used.left, place.high});
        if (used.right < place.right) m_cut.push_back({used.right, place.low, place.right, place.high});
        if (used.low > place.low) m_cut.push_back({place.left, place.low, place.right, used.low});
        if (used.high < place.high) m_cut.push_back({place.left, used.high, place.right, place.high});
    }
    const auto work = static_cast<std::int64_t>(m_cut.size() * (m_kept.size() + m_cut.size()));
    for (std::size_t i = 0; i < m_cut.size(); ++i) {
        const auto holds = [&](const Place& other) { return other.holds(m_cut[i]); };
        const auto later = m_cut.begin() + static_cast<std::ptrdiff_t>(i) + 1;
        if (!std::any_of(m_kept.begin(), m_kept.end(), holds) && !std::any_of(later, m_cut.end(), holds))
            m_kept.push_back(m_cut[i]);
    }
    m_places.swap(m_kept);
    return work;
}

} // namespace sp::layout
