// SPDX-License-Identifier: MIT
#include "core/layout/grid.h"

#include <algorithm>

namespace sp::layout {

std::vector<Tick> sumsUpTo(Tick limit, Tick sideA, Tick sideB, std::size_t most) {
    std::vector<Tick> sums;
    // sideA coprime to sideB: fewer than sideA of sideB gives every sum once.
    for (Tick b = 0; b < sideA && b <= limit / sideB; ++b) {
        for (Tick sum = b * sideB; sum <= limit; sum += sideA) {
            if (sums.size() == most) return {};
            sums.push_back(sum);
        }
    }
    std::sort(sums.begin(), sums.end());
    return sums;
}

Grid::Grid(const Problem& problem, int most)
    : m_problem(problem)
    , m_sums(sumsUpTo(std::max(problem.width, problem.height), problem.sideA, problem.sideB,
                      static_cast<std::size_t>(most))) {
    m_fits = !m_sums.empty();
    if (!m_fits) return;
    const std::size_t count = m_sums.size();
    m_rests.resize(count * (count + 1) / 2);
    m_cuts.resize(count);
    for (std::size_t whole = 0; whole < count; ++whole) {
        const auto row = m_rests.begin() + static_cast<std::ptrdiff_t>(whole * (whole + 1) / 2);
        std::size_t rest = whole;
        for (std::size_t part = 0; part <= whole; ++part) {
            while (m_sums[rest] > m_sums[whole] - m_sums[part]) --rest;
            row[static_cast<std::ptrdiff_t>(part)] = static_cast<std::uint16_t>(rest);
        }
        for (std::size_t part = 1; part < whole; ++part) {
            const auto other = row[static_cast<std::ptrdiff_t>(part)];
            if (other > 0 && row[other] == part) m_cuts[whole].push_back(static_cast<int>(part));
        }
    }
}

int Grid::below(Tick length) const {
    return static_cast<int>(std::upper_bound(m_sums.begin(), m_sums.end(), length) - m_sums.begin()) - 1;
}

} // namespace sp::layout
