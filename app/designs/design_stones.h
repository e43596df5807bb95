// SPDX-License-Identifier: MIT
#pragma once

#include "app/designs/designs_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"

namespace sp::designs {

/// The stones of the open design: a row for each colour with its count, and a last one that finds a further colour.
class DesignStones : public desk::RowsPanel {
    Q_OBJECT

  public:
    DesignStones(DesignsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Shows the open design. Rows stay when its colours are those already shown, so that a field keeps the focus.
    void load();

  private:
    void rebuild(const catalogue::Design& design);
    void addRow(int row, const catalogue::StoneCount& stone);

    DesignsPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::ChoiceField* m_add = nullptr;
    base::Id m_design;
    std::vector<base::Id> m_colours;
    std::vector<desk::CountField*> m_counts;
};

} // namespace sp::designs
