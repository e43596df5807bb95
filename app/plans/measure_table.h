// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures_table.h"
#include "app/paper/plan_shape.h"

namespace sp::plans {

/// Where the pieces of a cutting plan lie, from the left and the upper edge of each sheet; even rows of equal pieces
/// are one line.
class MeasureTable : public desk::FiguresTable {
    Q_OBJECT

  public:
    MeasureTable(const planning::CutPlan& plan, const paper::PlanWords& words, QWidget* parent = nullptr);

    /// Every sheet is in it; a very long plan is whole only on paper.
    bool isWhole() const { return m_isWhole; }

  private:
    bool m_isWhole = true;
};

} // namespace sp::plans
