// SPDX-License-Identifier: MIT
#include "core/layout/linear_maximum.h"

#include <algorithm>
#include <cmath>

namespace sp::layout {

namespace {

constexpr double kZero = 1e-9;
constexpr int kMaxPivots = 2'000;
constexpr int kMaxStanding = 40; ///< exchanges that bring nothing, before those are chosen that cannot go in a circle

/// A condensed tableau: a row a limit and a last one for the aim, a column a variable and a last one for what is left
/// of the limit.
class Tableau {
  public:
    Tableau(const std::vector<double>& aim, const std::vector<LinearRow>& rows)
        : m_rows(rows.size())
        , m_columns(aim.size())
        , m_cells((m_rows + 1) * (m_columns + 1), 0) {
        for (std::size_t r = 0; r < m_rows; ++r) {
            for (std::size_t k = 0; k < m_columns; ++k) cell(r, k) = rows[r].weights[k];
            cell(r, m_columns) = rows[r].limit;
            m_basic.push_back(m_columns + r); // its slack
        }
        for (std::size_t k = 0; k < m_columns; ++k) {
            cell(m_rows, k) = -aim[k];
            m_free.push_back(k);
        }
    }

    void solve() {
        int standing = 0;
        for (int n = 0; n < kMaxPivots; ++n) {
            const bool isFirst = standing > kMaxStanding; // R. Bland's rule (1977)
            std::size_t enters = m_columns;
            for (std::size_t k = 0; k < m_columns; ++k) {
                if (cell(m_rows, k) >= -kZero) continue;
                if (enters == m_columns ||
                    (isFirst ? m_free[k] < m_free[enters] : cell(m_rows, k) < cell(m_rows, enters)))
                    enters = k;
            }
            if (enters == m_columns) return;
            std::size_t leaves = m_rows;
            for (std::size_t r = 0; r < m_rows; ++r) {
                if (cell(r, enters) <= kZero) continue;
                if (leaves == m_rows) {
                    leaves = r;
                    continue;
                }
                const double now = cell(r, m_columns) / cell(r, enters);
                const double least = cell(leaves, m_columns) / cell(leaves, enters);
                if (now < least || (isFirst && now == least && m_basic[r] < m_basic[leaves])) leaves = r;
            }
            if (leaves == m_rows) { // nothing limits it
                for (std::size_t r = 0; r <= m_rows; ++r) cell(r, enters) = 0;
                continue;
            }
            standing = cell(leaves, m_columns) <= kZero ? standing + 1 : 0;
            pivot(leaves, enters);
        }
    }

    LinearMaximum read() const {
        LinearMaximum out{std::vector<double>(m_columns, 0), std::vector<double>(m_rows, 0)};
        for (std::size_t r = 0; r < m_rows; ++r)
            if (m_basic[r] < m_columns) out.values[m_basic[r]] = std::max(0.0, cell(r, m_columns));
        for (std::size_t k = 0; k < m_columns; ++k)
            if (m_free[k] >= m_columns) out.prices[m_free[k] - m_columns] = std::max(0.0, cell(m_rows, k));
        return out;
    }

  private:
    double& cell(std::size_t r, std::size_t k) { return m_cells[r * (m_columns + 1) + k]; }
    double cell(std::size_t r, std::size_t k) const { return m_cells[r * (m_columns + 1) + k]; }

    void pivot(std::size_t row, std::size_t column) {
        const double by = cell(row, column);
        for (std::size_t k = 0; k <= m_columns; ++k)
            if (k != column) cell(row, k) /= by;
        for (std::size_t r = 0; r <= m_rows; ++r) {
            if (r == row) continue;
            const double times = cell(r, column);
            if (std::abs(times) < 1e-13) {
                cell(r, column) = 0;
                continue;
            }
            for (std::size_t k = 0; k <= m_columns; ++k)
                if (k != column) cell(r, k) -= times * cell(row, k);
            cell(r, column) = -times / by;
        }
        cell(row, column) = 1 / by;
        std::swap(m_basic[row], m_free[column]);
    }

    std::size_t m_rows;
    std::size_t m_columns;
    std::vector<double> m_cells;
    std::vector<std::size_t> m_basic; ///< by row: a variable, or variables + a row's slack
    std::vector<std::size_t> m_free;  ///< by column
};

} // namespace

LinearMaximum linearMaximum(const std::vector<double>& aim, const std::vector<LinearRow>& rows) {
    Tableau tableau(aim, rows);
    tableau.solve();
    return tableau.read();
}

} // namespace sp::layout
