// SPDX-License-Identifier: MIT
#include "core/layout/bar_limits.h"

#include "core/layout/linear_maximum.h"
#include "core/units/int128.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace sp::layout {

using std::int64_t;
using units::Int128;

namespace {

Int128 sumOf(const CountLimit& limit, const std::vector<int64_t>& counts) {
    Int128 sum = 0;
    for (std::size_t k = 0; k < counts.size(); ++k) sum += Int128{limit.weights[k]} * counts[k];
    return sum;
}

/// One way to lay a kind.
struct Lying {
    std::size_t kind;
    int64_t width;
    int64_t height;
};

/// The most worth of sides on a line, each as often as wanted.
template<class Worth>
class Line {
  public:
    Line(const std::vector<int64_t>& sides, const std::vector<Worth>& worth, int64_t length, int64_t& steps)
        : m_sides(sides)
        , m_worth(worth)
        , m_steps(steps)
        , m_now(sides.size(), 0)
        , m_best(sides.size(), 0) {
        m_order.resize(sides.size());
        std::iota(m_order.begin(), m_order.end(), std::size_t{0});
        const auto perLength = [&](std::size_t j) {
            return static_cast<double>(worth[j]) / static_cast<double>(sides[j]);
        };
        std::stable_sort(m_order.begin(), m_order.end(),
                         [&](std::size_t a, std::size_t b) { return perLength(a) > perLength(b); });
        while (!m_order.empty() && worth[m_order.back()] <= 0) m_order.pop_back();
        fill(0, length, 0);
    }
    Worth most() const { return m_most; }
    const std::vector<int64_t>& counts() const { return m_best; }
    bool isSure() const { return m_steps > 0; }

  private:
    void fill(std::size_t at, int64_t left, Worth sum) {
        if (--m_steps <= 0) return;
        if (sum > m_most) {
            m_most = sum;
            m_best = m_now;
        }
        if (at == m_order.size()) return;
        const std::size_t j = m_order[at];
        const double rest =
            static_cast<double>(m_worth[j]) / static_cast<double>(m_sides[j]) * static_cast<double>(left);
        if (static_cast<double>(sum) + rest * (1 + 1e-12) < static_cast<double>(m_most)) return;
        for (int64_t n = left / m_sides[j]; n >= 0; --n) {
            m_now[j] = n;
            fill(at + 1, left - n * m_sides[j], sum + static_cast<Worth>(n) * m_worth[j]);
            if (m_steps <= 0) break;
        }
        m_now[j] = 0;
    }

    const std::vector<int64_t>& m_sides;
    const std::vector<Worth>& m_worth;
    int64_t& m_steps;
    std::vector<std::size_t> m_order;
    std::vector<int64_t> m_now;
    std::vector<int64_t> m_best;
    Worth m_most = 0;
};

/// The linear programme: prices of the ways along and across, what the kinds are worth by them, and what a line each
/// way may pass; its rows are the lines.
class Bars {
  public:
    Bars(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn, int64_t& steps)
        : m_kinds(kinds.size())
        , m_width(width)
        , m_height(height)
        , m_steps(steps) {
        for (std::size_t k = 0; k < kinds.size(); ++k)
            for (const bool turn : {false, true}) {
                const int64_t w = turn ? kinds[k].height : kinds[k].width;
                const int64_t h = turn ? kinds[k].width : kinds[k].height;
                if ((turn && (!mayTurn || w == h)) || w > width || h > height) continue;
                m_ways.push_back({k, w, h});
                m_across.push_back(w);
                m_along.push_back(h);
            }
    }

    std::optional<CountLimit> strained(const std::vector<int64_t>& counts) {
        begin();
        std::vector<double> aim(columns(), 0);
        for (std::size_t k = 0; k < m_kinds; ++k) aim[2 * ways() + k] = static_cast<double>(counts[k]);
        constexpr int kMaxRounds = 60;
        for (int round = 0; round < kMaxRounds; ++round) {
            m_steps -= static_cast<int64_t>(m_rows.size() * columns()) / 2;
            m_values = linearMaximum(aim, m_rows).values;
            const bool across = addLine(m_across, 0, columns() - 2);
            const bool along = addLine(m_along, ways(), columns() - 1);
            if (m_steps <= 0) return {};
            if (!across && !along) break;
        }
        return rounded();
    }

  private:
    std::size_t ways() const { return m_ways.size(); }
    std::size_t columns() const { return 2 * ways() + m_kinds + 2; }

    void begin() {
        m_rows.clear();
        for (std::size_t j = 0; j < ways(); ++j) { // a kind is worth what its cheaper way is
            LinearRow row{std::vector<double>(columns(), 0), 0};
            row.weights[2 * ways() + m_ways[j].kind] = 1;
            row.weights[j] = -static_cast<double>(m_ways[j].height) / static_cast<double>(m_height);
            row.weights[ways() + j] = -static_cast<double>(m_ways[j].width) / static_cast<double>(m_width);
            m_rows.push_back(std::move(row));
        }
        LinearRow whole{std::vector<double>(columns(), 0), 1};
        whole.weights[columns() - 2] = whole.weights[columns() - 1] = 1;
        m_rows.push_back(std::move(whole));
        for (std::size_t j = 0; j < ways(); ++j) {
            std::vector<int64_t> line(ways(), 0);
            line[j] = m_width / m_across[j];
            addRow(line, 0, columns() - 2);
            line[j] = m_height / m_along[j];
            addRow(line, ways(), columns() - 1);
        }
    }

    void addRow(const std::vector<int64_t>& line, std::size_t first, std::size_t most) {
        LinearRow row{std::vector<double>(columns(), 0), 0};
        for (std::size_t j = 0; j < ways(); ++j) row.weights[first + j] = static_cast<double>(line[j]);
        row.weights[most] = -1;
        m_rows.push_back(std::move(row));
    }

    bool addLine(const std::vector<int64_t>& sides, std::size_t first, std::size_t most) {
        std::vector<double> worth(m_values.begin() + static_cast<std::ptrdiff_t>(first),
                                  m_values.begin() + static_cast<std::ptrdiff_t>(first + ways()));
        const Line<double> line(sides, worth, first == 0 ? m_width : m_height, m_steps);
        if (line.most() <= m_values[most] + 1e-9) return false;
        addRow(line.counts(), first, most);
        return true;
    }

    /// Prices in whole numbers, and what a line passes of them counted again.
    std::optional<CountLimit> rounded() {
        const int64_t longest = std::max(m_width, m_height);
        // A sum of two products of a side and what a line passes stays below 2^60.
        const double unit = std::min(1e9, 0x1p57 / static_cast<double>(longest));
        // Kept small enough that prices times sides are exact; a line passes 1 at most of what was asked for.
        std::vector<int64_t> across, along;
        for (std::size_t j = 0; j < ways(); ++j) {
            across.push_back(static_cast<int64_t>(m_values[j] * unit / static_cast<double>(m_height) *
                                                  static_cast<double>(longest)));
            along.push_back(static_cast<int64_t>(m_values[ways() + j] * unit / static_cast<double>(m_width) *
                                                 static_cast<double>(longest)));
        }
        const Line<int64_t> one(m_across, across, m_width, m_steps);
        const Line<int64_t> other(m_along, along, m_height, m_steps);
        if (!one.isSure() || !other.isSure()) return {};
        const Int128 most = Int128{m_height} * one.most() + Int128{m_width} * other.most();
        if (most <= 0 || most >= Int128{1} << 60) return {};
        CountLimit limit{std::vector<int64_t>(m_kinds, std::numeric_limits<int64_t>::max()),
                         static_cast<int64_t>(most)};
        for (std::size_t j = 0; j < ways(); ++j) {
            const Int128 weight = Int128{m_ways[j].height} * across[j] + Int128{m_ways[j].width} * along[j];
            if (weight < limit.weights[m_ways[j].kind]) limit.weights[m_ways[j].kind] = static_cast<int64_t>(weight);
        }
        return limit;
    }

    std::size_t m_kinds;
    int64_t m_width;
    int64_t m_height;
    int64_t& m_steps;
    std::vector<Lying> m_ways;
    std::vector<int64_t> m_across; ///< by way: its width
    std::vector<int64_t> m_along;  ///< its height
    std::vector<LinearRow> m_rows;
    std::vector<double> m_values;
};

} // namespace

double CountLimit::share(const std::vector<int64_t>& counts) const {
    return static_cast<double>(sumOf(*this, counts)) / static_cast<double>(most);
}

bool CountLimit::allows(const std::vector<int64_t>& counts) const { return sumOf(*this, counts) <= most; }

int64_t CountLimit::bins(const std::vector<int64_t>& counts) const {
    return static_cast<int64_t>((sumOf(*this, counts) + most - 1) / most);
}

std::optional<CountLimit> barLimit(const std::vector<BoxKind>& kinds, int64_t width, int64_t height, bool mayTurn,
                                   const std::vector<int64_t>& counts, int64_t& steps) {
    return Bars(kinds, width, height, mayTurn, steps).strained(counts);
}

} // namespace sp::layout
