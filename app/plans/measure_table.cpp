// SPDX-License-Identifier: MIT
#include "app/plans/measure_table.h"

#include "app/paper/cut_grid.h"

namespace sp::plans {

namespace {

constexpr std::size_t kMaxRows = 200; ///< the rest is on paper

} // namespace

MeasureTable::MeasureTable(const planning::CutPlan& plan, const paper::PlanWords& words, QWidget* parent)
    : FiguresTable(tr("Measures on %1").arg(words.material(plan.list.material)),
                   {{tr("Sheet"), false, false},
                    {tr("Piece")},
                    {tr("Size"), true, false},
                    {tr("From the left"), true, false},
                    {tr("From the top"), true, false},
                    {tr("Across"), true, false},
                    {tr("Down"), true, false}},
                   parent) {
    setObjectName(QStringLiteral("planMeasureTable"));
    std::vector<QStringList> rows;
    std::int64_t first = 1;
    for (const auto& sheet : plan.sheets) {
        const auto grids = paper::cutGrids(plan, sheet);
        m_isWhole = rows.size() + grids.size() <= kMaxRows;
        if (!m_isWhole) break;
        const auto numbers = words.sheetNumbers(plan, sheet, first);
        for (const auto& grid : grids)
            rows.push_back({numbers, paper::pieceOf(grid, plan.list), paper::sizeOf(grid, words),
                            words.length(grid.left), words.length(grid.top),
                            paper::stepsOf(grid.across, grid.everyAcross, words),
                            paper::stepsOf(grid.down, grid.everyDown, words)});
        first += sheet.count;
    }
    setRows(rows);
    showAllRows();
}

} // namespace sp::plans

#include "moc_measure_table.cpp"
