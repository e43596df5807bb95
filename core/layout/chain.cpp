// SPDX-License-Identifier: MIT
#include "core/layout/chain.h"

#include "core/units/int128.h"

#include <algorithm>

namespace sp::layout {

using units::Int128;

Chain::Chain(std::vector<Link> links, std::int64_t mostCount)
    : m_links(std::move(links))
    , m_mostCount(mostCount) {
    for (std::size_t k = 1; k < m_links.size(); ++k) {
        const Link& best = m_links[m_densest];
        if (static_cast<Int128>(m_links[k].count) * best.length > static_cast<Int128>(best.count) * m_links[k].length) {
            m_densest = k;
        }
    }
    const auto table = static_cast<std::size_t>(std::min(mostCount, kTable)) + 1;
    m_shortest.assign(table, 0);
    m_last.assign(table, 0);
    for (std::size_t count = 1; count < table; ++count) {
        Tick best = -1;
        for (std::size_t k = 0; k < m_links.size(); ++k) {
            const auto here = static_cast<std::size_t>(m_links[k].count);
            const Tick length = m_links[k].length + m_shortest[here < count ? count - here : 0];
            if (best >= 0 && length >= best) continue;
            best = length;
            m_last[count] = static_cast<std::uint16_t>(k);
        }
        m_shortest[count] = best;
    }
}

std::int64_t Chain::repeats(std::int64_t count) const {
    if (count <= kTable) return 0;
    const std::int64_t each = m_links[m_densest].count;
    return (count - kTable + each - 1) / each;
}

Tick Chain::shortest(std::int64_t count) const {
    const std::int64_t times = repeats(count);
    const std::int64_t left = std::max<std::int64_t>(0, count - times * m_links[m_densest].count);
    return times * m_links[m_densest].length + m_shortest[static_cast<std::size_t>(left)];
}

std::int64_t Chain::mostWithin(Tick length) const {
    std::int64_t low = 0;
    std::int64_t high = m_mostCount;
    while (low < high) {
        const std::int64_t middle = low + (high - low + 1) / 2;
        if (shortest(middle) <= length) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    return low;
}

std::vector<std::pair<std::size_t, std::int64_t>> Chain::parts(std::int64_t count) const {
    std::vector<std::pair<std::size_t, std::int64_t>> parts;
    const auto add = [&parts](std::size_t link, std::int64_t times) {
        if (times == 0) return;
        if (!parts.empty() && parts.back().first == link) {
            parts.back().second += times;
        } else {
            parts.emplace_back(link, times);
        }
    };
    const std::int64_t times = repeats(count);
    add(m_densest, times);
    std::int64_t left = count - times * m_links[m_densest].count;
    while (left > 0) {
        const std::size_t link = m_last[static_cast<std::size_t>(left)];
        add(link, 1);
        left -= m_links[link].count;
    }
    return parts;
}

} // namespace sp::layout
