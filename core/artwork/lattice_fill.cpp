// SPDX-License-Identifier: MIT
#include "core/artwork/lattice_fill.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sp::artwork {

namespace {

constexpr double kEdgeMm = 0.001;
constexpr int kFineShifts = 16;
constexpr int kCoarseShifts = 4;
constexpr double kMaxCrossings = 4e6; ///< of one lattice, before the shifts become coarse

struct Interval {
    double from;
    double to;
};

/// One way to lay rows over the region, in a frame where the rows are level.
class Rows {
  public:
    Rows(const Rings& region, double pitch, bool staggered, double degrees)
        : m_pitch(pitch)
        , m_step(staggered ? pitch * std::sqrt(3.0) / 2 : pitch)
        , m_staggered(staggered)
        , m_turn(Matrix::rotation(degrees)) {
        const Matrix back = Matrix::rotation(-degrees);
        for (const auto& ring : region) {
            auto& turned = m_rings.emplace_back();
            for (const Point p : ring) m_box.add(turned.emplace_back(back(p)));
        }
    }

    /// Where to begin, as shares of a step down and of a pitch across: at either edge, and even parts from where a row
    /// or a column goes through the middle. Seen in a mirror they are the same, and so is what they find.
    std::vector<double> sharesDown(int parts) const { return shares(parts, (m_box.bottom - m_box.top) / m_step); }
    std::vector<double> sharesAcross(int parts) const { return shares(parts, (m_box.right - m_box.left) / m_pitch); }

    double crossings() const { return perimeterOf(m_rings) / m_step; }

    /// Lays the rows so that one of them is `share` of a step below the top.
    void layRows(double share) {
        m_top = m_box.top + share * m_step;
        const auto rows =
            static_cast<std::size_t>(std::max(0.0, std::floor((m_box.bottom + kEdgeMm - m_top) / m_step) + 1));
        m_crossings.assign(rows, {});
        // The outermost rows may lie on the edge itself; look just inside.
        const double least = m_box.top + kEdgeMm / 2;
        const double most = m_box.bottom - kEdgeMm / 2;
        for (const auto& ring : m_rings) {
            for (std::size_t i = 0; i < ring.size(); ++i) {
                Point a = ring[i];
                Point b = ring[(i + 1) % ring.size()];
                if (a.y > b.y) std::swap(a, b);
                auto row = static_cast<std::size_t>(std::max(0.0, std::floor((a.y - m_top) / m_step) - 1));
                for (; row < rows; ++row) {
                    const double y = std::clamp(rowAt(row), least, most);
                    if (y >= b.y) break;
                    if (y >= a.y) m_crossings[row].push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
                }
            }
        }
        for (auto& row : m_crossings) std::sort(row.begin(), row.end());
    }

    /// Calls `see(row, first, last)` with the numbers of the places of every stretch inside, columns `share`
    /// of a pitch from the left.
    template<class See>
    void eachStretch(double share, See see) const {
        for (std::size_t row = 0; row < m_crossings.size(); ++row) {
            const auto& xs = m_crossings[row];
            const double start = columnStart(row, share);
            double taken = -HUGE_VAL;
            for (std::size_t i = 0; i + 1 < xs.size(); i += 2) {
                const double first = std::max(std::ceil((xs[i] - kEdgeMm - start) / m_pitch), taken + 1);
                const double last = std::floor((xs[i + 1] + kEdgeMm - start) / m_pitch);
                if (last < first) continue;
                see(row, first, last);
                taken = last;
            }
        }
    }

    std::size_t count(double share) const {
        double total = 0;
        eachStretch(share, [&](std::size_t, double first, double last) { total += last - first + 1; });
        return static_cast<std::size_t>(total);
    }

    std::vector<Point> places(double share) const {
        std::vector<Point> centres;
        eachStretch(share, [&](std::size_t row, double first, double last) {
            for (double n = first; n <= last; ++n)
                centres.push_back(m_turn({columnStart(row, share) + n * m_pitch, rowAt(row)}));
        });
        return centres;
    }

  private:
    static std::vector<double> shares(int parts, double steps) {
        // Half a pitch on from an edge as well: that is where the other rows of a staggered lattice begin.
        std::vector<double> all{0, std::fmod(steps, 1), 0.5, std::fmod(steps + 0.5, 1)};
        for (int i = 0; i < parts; ++i) all.push_back(std::fmod(steps / 2 + static_cast<double>(i) / parts, 1));
        return all;
    }
    double rowAt(std::size_t row) const { return m_top + static_cast<double>(row) * m_step; }
    double columnStart(std::size_t row, double share) const {
        return m_box.left + (share + (m_staggered && row % 2 == 1 ? 0.5 : 0)) * m_pitch;
    }

    double m_pitch;
    double m_step;
    bool m_staggered;
    Matrix m_turn;
    Rings m_rings;
    Box m_box;
    double m_top = 0;
    std::vector<std::vector<double>> m_crossings;
};

} // namespace

LatticeFill fillWithLattice(const Rings& region, double pitch, std::size_t most) {
    LatticeFill best;
    if (region.empty()) return best;
    const double about = areaOf(region) / (pitch * pitch) + perimeterOf(region) / pitch + 1;
    if (about > 2 * static_cast<double>(most)) {
        best.plainGrid = static_cast<std::size_t>(std::min(about, 1e15));
        return best;
    }
    std::size_t corners = 0;
    for (const auto& ring : region) corners += ring.size();
    std::size_t bestCount = 0;
    // Quarter turns bring a square lattice back to itself, sixths a staggered one. But rows and columns of a staggered
    // one begin at different parts of a step, so that each way is tried with a quarter turn, too: a shape and its
    // quarter turn hold the same.
    const std::pair<bool, std::vector<int>> lattices[] = {{false, {0, 15, 30, 45, 60, 75}},
                                                          {true, {0, 90, 15, 105, 30, 120, 45, 135}}};
    for (const auto& [staggered, turns] : lattices) {
        for (const int degrees : turns) {
            Rows rows(region, pitch, staggered, degrees);
            const double work = (rows.crossings() + static_cast<double>(corners)) * kFineShifts;
            const int shifts = work > kMaxCrossings ? kCoarseShifts : kFineShifts;
            const auto across = rows.sharesAcross(shifts);
            for (const double down : rows.sharesDown(shifts)) {
                rows.layRows(down);
                for (const double share : across) {
                    const std::size_t count = rows.count(share);
                    if (!staggered && degrees == 0 && down == 0 && share == 0) best.plainGrid = count;
                    if (count <= bestCount) continue;
                    bestCount = count;
                    best.staggered = staggered;
                    best.degrees = degrees;
                    if (count <= most) best.centres = rows.places(share);
                }
            }
        }
    }
    if (bestCount > most) {
        best.centres.clear();
        best.plainGrid = bestCount;
    }
    return best;
}

} // namespace sp::artwork
