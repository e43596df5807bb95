// SPDX-License-Identifier: MIT
#include "core/layout/guillotine.h"

#include <algorithm>
#include <set>

namespace sp::layout {

using std::int64_t;

namespace {

/// 0, the sums of sides no longer than `whole`, and the whole.
std::vector<int64_t> sumsOf(const std::vector<BoxKind>& kinds, int64_t whole, bool mayTurn) {
    std::set<int64_t> sides;
    for (const BoxKind& kind : kinds) {
        if (kind.width <= whole) sides.insert(kind.width);
        if (mayTurn && kind.height <= whole) sides.insert(kind.height);
    }
    std::set<int64_t> sums{0};
    // Rising, so that what is added is looked at as well.
    for (auto at = sums.begin(); at != sums.end() && sums.size() < 20 * Guillotine::kMaxSums; ++at)
        for (const int64_t side : sides)
            if (*at + side <= whole) sums.insert(*at + side);
    sums.insert(whole);
    std::vector<int64_t> kept(sums.begin(), sums.end());
    if (kept.size() > Guillotine::kMaxSums) {
        // Those made of few sides tell most; they are the small ones, and what they leave of the whole.
        std::set<int64_t> few{0, whole};
        for (std::size_t i = 0; few.size() < Guillotine::kMaxSums && i < kept.size(); ++i) {
            few.insert(kept[i]);
            const auto rest = std::upper_bound(kept.begin(), kept.end(), whole - kept[i]);
            if (rest != kept.begin()) few.insert(*std::prev(rest));
        }
        kept.assign(few.begin(), few.end());
    }
    return kept;
}

std::vector<std::vector<int>> restsOf(const std::vector<int64_t>& sums) {
    std::vector<std::vector<int>> rests(sums.size());
    for (std::size_t i = 0; i < sums.size(); ++i) {
        rests[i].assign(i + 1, 0);
        std::size_t rest = i;
        for (std::size_t cut = 0; cut <= i; ++cut) {
            while (rest > 0 && sums[rest] > sums[i] - sums[cut]) --rest;
            rests[i][cut] = static_cast<int>(rest);
        }
    }
    return rests;
}

} // namespace

Guillotine::Guillotine(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn)
    : m_kinds(kinds)
    , m_mayTurn(mayTurn)
    , m_xs(sumsOf(kinds, width, mayTurn)) {
    std::vector<BoxKind> exchanged;
    for (const BoxKind& kind : kinds) exchanged.push_back({kind.height, kind.width, kind.count});
    m_ys = sumsOf(exchanged, height, mayTurn);
    m_restX = restsOf(m_xs);
    m_restY = restsOf(m_ys);
}

std::vector<Laid> Guillotine::best(const std::vector<double>& worth, int64_t& steps) {
    m_cells.assign(m_xs.size() * m_ys.size(), {});
    int64_t looks = 0;
    for (std::size_t i = 1; i < m_xs.size(); ++i)
        for (std::size_t j = 1; j < m_ys.size(); ++j) {
            Cell& now = cell(i, j);
            for (std::size_t k = 0; k < m_kinds.size(); ++k)
                for (const bool turn : {false, true}) {
                    if (turn && !m_mayTurn) break;
                    const int64_t w = turn ? m_kinds[k].height : m_kinds[k].width;
                    const int64_t h = turn ? m_kinds[k].width : m_kinds[k].height;
                    if (w <= m_xs[i] && h <= m_ys[j] && worth[k] > now.worth)
                        now = {worth[k], static_cast<int>(k), turn, false, -1};
                }
            for (std::size_t cut = 1; cut < i && 2 * m_xs[cut] <= m_xs[i]; ++cut) {
                const double both = cell(cut, j).worth + cell(static_cast<std::size_t>(m_restX[i][cut]), j).worth;
                if (both > now.worth) now = {both, -1, false, true, static_cast<int>(cut)};
            }
            for (std::size_t cut = 1; cut < j && 2 * m_ys[cut] <= m_ys[j]; ++cut) {
                const double both = cell(i, cut).worth + cell(i, static_cast<std::size_t>(m_restY[j][cut])).worth;
                if (both > now.worth) now = {both, -1, false, false, static_cast<int>(cut)};
            }
            looks += static_cast<int64_t>(i / 4 + j / 4 + m_kinds.size());
        }
    steps -= looks / 3 + 1; // a look is quicker than a step
    std::vector<Laid> laid;
    lay(m_xs.size() - 1, m_ys.size() - 1, 0, 0, laid);
    return laid;
}

void Guillotine::lay(std::size_t i, std::size_t j, int64_t x, int64_t y, std::vector<Laid>& laid) const {
    const Cell& now = cell(i, j);
    if (now.kind >= 0) {
        laid.push_back({static_cast<std::size_t>(now.kind), x, y, now.turned});
    } else if (now.cut >= 0) {
        const auto cut = static_cast<std::size_t>(now.cut);
        if (now.across) {
            lay(cut, j, x, y, laid);
            lay(static_cast<std::size_t>(m_restX[i][cut]), j, x + m_xs[cut], y, laid);
        } else {
            lay(i, cut, x, y, laid);
            lay(i, static_cast<std::size_t>(m_restY[j][cut]), x, y + m_ys[cut], laid);
        }
    }
}

} // namespace sp::layout
