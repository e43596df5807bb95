// SPDX-License-Identifier: MIT
#include "core/layout/bin_counts.h"

#include "core/units/int128.h"

#include <algorithm>
#include <limits>

namespace sp::layout {

using std::int64_t;
using units::Int128;

bool reaches(const BoxCounts& counts, const BoxCounts& other) {
    return std::equal(counts.begin(), counts.end(), other.begin(), [](int64_t a, int64_t b) { return a >= b; });
}

bool BinCounts::allows(const BoxCounts& counts) const {
    return reaches(m_most, counts) &&
           std::all_of(m_limits.begin(), m_limits.end(), [&](const CountLimit& l) { return l.allows(counts); }) &&
           std::none_of(m_excluded.begin(), m_excluded.end(), [&](const BoxCounts& no) { return reaches(counts, no); });
}

/// Kind after kind, from the most of it down, as long as the limits leave room for more worth than the best.
class BinCounts::Search {
  public:
    Search(const BinCounts& may, const std::vector<double>& prices, int64_t& steps)
        : m_may(may)
        , m_prices(prices)
        , m_steps(steps)
        , m_now(prices.size(), 0) {
        for (const CountLimit& limit : may.m_limits) m_left.push_back(limit.most);
        m_best.worth = -1;
        tryKind(0, 0);
    }
    const Worth& best() const { return m_best; }

  private:
    static constexpr double kMore = 1e-9; ///< that worth is another

    void tryKind(std::size_t k, double worth) {
        m_steps -= static_cast<int64_t>(m_left.size() + m_may.m_excluded.size()) / 4 + 1;
        if (m_steps <= 0) return;
        if (k == m_prices.size()) {
            if (worth > m_best.worth + kMore) m_best = {m_now, worth};
            return;
        }
        const int64_t most = m_prices[k] > 0 ? mostOf(k) : std::min<int64_t>(0, mostOf(k)); // none for nothing
        const bool isLast = k + 1 == m_prices.size();
        for (int64_t n = most; n >= 0 && m_steps > 0; --n) {
            m_now[k] = n;
            take(k, n);
            const double now = worth + m_prices[k] * static_cast<double>(n);
            if (now + reach(k + 1) > m_best.worth + kMore) tryKind(k + 1, now);
            take(k, -n);
            if (isLast) break; // fewer are worth no more
        }
        m_now[k] = 0;
    }

    void take(std::size_t k, int64_t n) {
        for (std::size_t i = 0; i < m_left.size(); ++i) m_left[i] -= m_may.m_limits[i].weights[k] * n;
    }

    /// Of kind k, with none of the later ones.
    int64_t mostOf(std::size_t k) const {
        int64_t most = m_may.m_most[k];
        for (std::size_t i = 0; i < m_left.size(); ++i)
            if (const int64_t weight = m_may.m_limits[i].weights[k]; weight > 0)
                most = std::min(most, m_left[i] / weight);
        for (const BoxCounts& counts : m_may.m_excluded) {
            bool isReached = true;
            for (std::size_t i = 0; i < counts.size() && isReached; ++i)
                isReached = i == k || (i < k ? m_now[i] : 0) >= counts[i];
            if (isReached) most = std::min(most, counts[k] - 1);
        }
        return most;
    }

    /// No more worth of kinds from k on.
    double reach(std::size_t k) const {
        if (k == m_prices.size()) return 0;
        double least = 0;
        for (std::size_t j = k; j < m_prices.size(); ++j) least += m_prices[j] * static_cast<double>(m_may.m_most[j]);
        for (std::size_t i = 0; i < m_left.size(); ++i) {
            double rate = 0;
            bool isLimited = true;
            for (std::size_t j = k; j < m_prices.size() && isLimited; ++j) {
                const auto weight = static_cast<double>(m_may.m_limits[i].weights[j]);
                if (weight > 0) rate = std::max(rate, m_prices[j] / weight);
                isLimited = weight > 0 || m_prices[j] <= 0;
            }
            if (isLimited) least = std::min(least, rate * static_cast<double>(m_left[i]) * (1 + 1e-12));
        }
        return least;
    }

    const BinCounts& m_may;
    const std::vector<double>& m_prices;
    int64_t& m_steps;
    BoxCounts m_now;
    std::vector<int64_t> m_left; ///< by limit
    Worth m_best;
};

std::optional<BinCounts::Worth> BinCounts::worthiest(const std::vector<double>& prices, int64_t& steps) const {
    const Search search(*this, prices, steps);
    if (steps <= 0) return {};
    return search.best();
}

} // namespace sp::layout
