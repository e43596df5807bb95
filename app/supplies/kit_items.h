// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/supplies/supplies_presenter.h"

namespace sp::supplies {

/// What the open kit holds, a row each: the material and how many stones, sheets or pieces of it.
class KitItems : public desk::RowsPanel {
    Q_OBJECT

  public:
    KitItems(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    struct Row {
        desk::ChoiceField* material;
        desk::CountField* count;
    };

    void rebuild(std::size_t rows);
    void addRow(std::size_t at);

    SuppliesPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    base::Id m_kit; ///< whose rows stand here
    std::vector<Row> m_rows;
};

} // namespace sp::supplies
