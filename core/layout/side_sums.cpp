// SPDX-License-Identifier: MIT
#include "core/layout/side_sums.h"

#include <algorithm>

namespace sp::layout {

using std::int64_t;

std::vector<int64_t> sideSums(const std::vector<BoxKind>& kinds, int64_t whole, bool mayTurn) {
    std::vector<int64_t> sums{0};
    for (const BoxKind& kind : kinds)
        for (int64_t n = 0; n < kind.count; ++n) {
            std::vector<int64_t> more = sums;
            for (const int64_t sum : sums) {
                if (sum + kind.width <= whole) more.push_back(sum + kind.width);
                if (mayTurn && sum + kind.height <= whole) more.push_back(sum + kind.height);
            }
            std::sort(more.begin(), more.end());
            more.erase(std::unique(more.begin(), more.end()), more.end());
            if (more.size() == sums.size()) break; // one more of them brings nothing new
            if (more.size() > kMaxSideSums) return {};
            sums = std::move(more);
        }
    return sums;
}

SideSums::SideSums(const std::vector<BoxKind>& kinds, int64_t whole)
    : m_kinds(kinds)
    , m_whole(whole)
    , m_known(kinds.size() > kMaxKinds ? 1 : std::size_t{1} << kinds.size()) {}

const std::vector<int64_t>& SideSums::of(const std::vector<int64_t>& left) {
    std::size_t key = 0;
    if (m_known.size() > 1)
        for (std::size_t k = 0; k < left.size(); ++k) key |= left[k] > 0 ? std::size_t{1} << k : 0;
    Known& known = m_known[key];
    if (!known.isMade) {
        std::vector<BoxKind> kinds;
        for (std::size_t k = 0; k < left.size(); ++k)
            if (m_known.size() == 1 || left[k] > 0) kinds.push_back(m_kinds[k]);
        known = {true, sideSums(kinds, m_whole, true)};
    }
    return known.sums;
}

int64_t SideSums::below(const std::vector<int64_t>& sums, int64_t length) {
    return sums.empty() ? length : *std::prev(std::upper_bound(sums.begin(), sums.end(), length));
}

} // namespace sp::layout
