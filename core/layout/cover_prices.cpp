// SPDX-License-Identifier: MIT
#include "core/layout/cover_prices.h"

#include <algorithm>
#include <cmath>

namespace sp::layout {

namespace {

constexpr double kZero = 1e-9;
constexpr int kMaxPivots = 2'000;

/// The dual, most demands x prices with no column above its cost, as a condensed tableau: a row a column of the cover
/// and a last one for the aim, a column a kind and a last one for what is left of the cost.
class Tableau {
  public:
    Tableau(const std::vector<CoverColumn>& columns, const std::vector<std::int64_t>& demands)
        : m_rows(columns.size())
        , m_kinds(demands.size())
        , m_cells((m_rows + 1) * (m_kinds + 1), 0) {
        for (std::size_t r = 0; r < m_rows; ++r) {
            for (std::size_t k = 0; k < m_kinds; ++k) cell(r, k) = static_cast<double>(columns[r].covers[k]);
            cell(r, m_kinds) = columns[r].cost;
            m_basic.push_back(m_kinds + r); // its slack
        }
        for (std::size_t k = 0; k < m_kinds; ++k) {
            cell(m_rows, k) = -static_cast<double>(demands[k]);
            m_free.push_back(k);
        }
    }

    void solve() {
        for (int n = 0; n < kMaxPivots; ++n) {
            std::size_t enters = m_kinds;
            for (std::size_t k = 0; k < m_kinds; ++k)
                if (cell(m_rows, k) < -kZero && (enters == m_kinds || cell(m_rows, k) < cell(m_rows, enters)))
                    enters = k;
            if (enters == m_kinds) return;
            std::size_t leaves = m_rows;
            for (std::size_t r = 0; r < m_rows; ++r) {
                if (cell(r, enters) <= kZero) continue;
                if (leaves == m_rows ||
                    cell(r, m_kinds) / cell(r, enters) < cell(leaves, m_kinds) / cell(leaves, enters))
                    leaves = r;
            }
            if (leaves == m_rows) { // nothing covers it
                for (std::size_t r = 0; r <= m_rows; ++r) cell(r, enters) = 0;
                continue;
            }
            pivot(leaves, enters);
        }
    }

    CoverPrices read() const {
        CoverPrices out{std::vector<double>(m_kinds, 0), std::vector<double>(m_rows, 0)};
        for (std::size_t r = 0; r < m_rows; ++r)
            if (m_basic[r] < m_kinds) out.prices[m_basic[r]] = std::max(0.0, cell(r, m_kinds));
        for (std::size_t k = 0; k < m_kinds; ++k)
            if (m_free[k] >= m_kinds) out.copies[m_free[k] - m_kinds] = std::max(0.0, cell(m_rows, k));
        return out;
    }

  private:
    double& cell(std::size_t r, std::size_t k) { return m_cells[r * (m_kinds + 1) + k]; }
    double cell(std::size_t r, std::size_t k) const { return m_cells[r * (m_kinds + 1) + k]; }

    void pivot(std::size_t row, std::size_t column) {
        const double by = cell(row, column);
        for (std::size_t k = 0; k <= m_kinds; ++k)
            if (k != column) cell(row, k) /= by;
        for (std::size_t r = 0; r <= m_rows; ++r) {
            if (r == row) continue;
            const double times = cell(r, column);
            if (std::abs(times) < 1e-13) {
                cell(r, column) = 0;
                continue;
            }
            for (std::size_t k = 0; k <= m_kinds; ++k)
                if (k != column) cell(r, k) -= times * cell(row, k);
            cell(r, column) = -times / by;
        }
        cell(row, column) = 1 / by;
        std::swap(m_basic[row], m_free[column]);
    }

    std::size_t m_rows;
    std::size_t m_kinds;
    std::vector<double> m_cells;
    std::vector<std::size_t> m_basic; ///< by row: a kind, or kinds + a column's slack
    std::vector<std::size_t> m_free;  ///< by column
};

} // namespace

CoverPrices coverPrices(const std::vector<CoverColumn>& columns, const std::vector<std::int64_t>& demands) {
    Tableau tableau(columns, demands);
    tableau.solve();
    return tableau.read();
}

} // namespace sp::layout
