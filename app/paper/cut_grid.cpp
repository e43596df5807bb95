// SPDX-License-Identifier: MIT
#include "app/paper/cut_grid.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace sp::paper {

namespace {

/// What must be equal for pieces to be in one grid.
using Kind = std::pair<std::size_t, bool>;

/// The pieces not yet in a grid, by rows and by columns; lengths in nanometres.
class Loose {
  public:
    void add(Kind kind, std::int64_t left, std::int64_t top) {
        m_rows.emplace(kind, top, left);
        m_columns.emplace(kind, left, top);
    }
    void take(Kind kind, std::int64_t left, std::int64_t top) {
        m_rows.erase({kind, top, left});
        m_columns.erase({kind, left, top});
    }
    bool has(Kind kind, std::int64_t left, std::int64_t top) const { return m_rows.count({kind, top, left}) > 0; }
    /// How far the next piece of its row (column) is; 0: there is none.
    std::int64_t nextAcross(Kind kind, std::int64_t left, std::int64_t top) const {
        const auto next = m_rows.upper_bound({kind, top, left});
        if (next == m_rows.end() || std::get<0>(*next) != kind || std::get<1>(*next) != top) return 0;
        return std::get<2>(*next) - left;
    }
    std::int64_t nextDown(Kind kind, std::int64_t left, std::int64_t top) const {
        const auto next = m_columns.upper_bound({kind, left, top});
        if (next == m_columns.end() || std::get<0>(*next) != kind || std::get<1>(*next) != left) return 0;
        return std::get<2>(*next) - top;
    }

  private:
    using Key = std::tuple<Kind, std::int64_t, std::int64_t>;
    std::set<Key> m_rows;
    std::set<Key> m_columns;
};

struct Span {
    std::int64_t across = 1, down = 1, everyAcross = 0, everyDown = 0;
    std::int64_t pieces() const { return across * down; }
};

/// The grid that begins at a piece, grown along one direction as far as it goes, then along the other.
Span grown(const Loose& loose, Kind kind, std::int64_t left, std::int64_t top, bool rowsFirst) {
    Span span;
    const auto isFull = [&](std::int64_t row, std::int64_t column) {
        return loose.has(kind, left + column * span.everyAcross, top + row * span.everyDown);
    };
    const auto growAcross = [&] {
        span.everyAcross = loose.nextAcross(kind, left, top);
        const auto hasColumn = [&] {
            for (std::int64_t row = 0; row < span.down; ++row)
                if (!isFull(row, span.across)) return false;
            return true;
        };
        while (span.everyAcross > 0 && hasColumn()) ++span.across;
        if (span.across == 1) span.everyAcross = 0;
    };
    const auto growDown = [&] {
        span.everyDown = loose.nextDown(kind, left, top);
        const auto hasRow = [&] {
            for (std::int64_t column = 0; column < span.across; ++column)
                if (!isFull(span.down, column)) return false;
            return true;
        };
        while (span.everyDown > 0 && hasRow()) ++span.down;
        if (span.down == 1) span.everyDown = 0;
    };
    if (rowsFirst) growAcross();
    growDown();
    if (!rowsFirst) growAcross();
    return span;
}

} // namespace

std::vector<CutGrid> cutGrids(const planning::CutPlan& plan, const planning::CutSheet& sheet) {
    auto places = drawnPlaces(plan, sheet);
    std::stable_sort(places.begin(), places.end(), [](const DrawnPlace& a, const DrawnPlace& b) {
        return std::pair(a.top, a.left) < std::pair(b.top, b.left);
    });
    Loose loose;
    for (const auto& place : places)
        loose.add({place.piece, place.turned}, place.left.nanometres(), place.top.nanometres());
    std::vector<CutGrid> grids;
    for (const auto& place : places) {
        const Kind kind{place.piece, place.turned};
        const auto left = place.left.nanometres();
        const auto top = place.top.nanometres();
        if (!loose.has(kind, left, top)) continue;
        auto span = grown(loose, kind, left, top, true);
        if (const auto other = grown(loose, kind, left, top, false); other.pieces() > span.pieces()) span = other;
        for (std::int64_t row = 0; row < span.down; ++row)
            for (std::int64_t column = 0; column < span.across; ++column)
                loose.take(kind, left + column * span.everyAcross, top + row * span.everyDown);
        grids.push_back({place.piece, place.turned, place.left, place.top, place.size, span.across, span.down,
                         units::Length::fromNanometres(span.everyAcross),
                         units::Length::fromNanometres(span.everyDown)});
    }
    return grids;
}

QString pieceOf(const CutGrid& grid, const planning::CutList& list) {
    return QStringLiteral("%1 %2").arg(pieceMark(grid.piece), QString::fromStdString(list.pieces[grid.piece].name));
}

QString sizeOf(const CutGrid& grid, const PlanWords& words) {
    const QString size = words.size(grid.size);
    return grid.turned ? PlanWords::tr("%1, turned").arg(size) : size;
}

QString stepsOf(std::int64_t count, units::Length every, const PlanWords& words) {
    if (count == 1) return words.count(count);
    return PlanWords::tr("%1, every %2").arg(words.count(count), words.length(every));
}

QString inWords(const CutGrid& grid, const planning::CutList& list, const PlanWords& words) {
    QString said = PlanWords::tr("%1, %2: %3 from the left, %4 from the top")
                       .arg(pieceOf(grid, list), sizeOf(grid, words), words.length(grid.left), words.length(grid.top));
    if (grid.across > 1) said += PlanWords::tr("; across %1").arg(stepsOf(grid.across, grid.everyAcross, words));
    if (grid.down > 1) said += PlanWords::tr("; down %1").arg(stepsOf(grid.down, grid.everyDown, words));
    return said;
}

} // namespace sp::paper
