// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/rows_panel.h"
#include "core/base/id.h"

#include <vector>

namespace sp::shop {

/// The packing that goes with every piece, a row each.
class PackingRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    explicit PackingRows(const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// What there is to choose from, and what is chosen. Leaves a row alone that a person is at.
    void setRows(const std::vector<desk::Choice>& materials, const std::vector<base::Id>& rows);
    const std::vector<base::Id>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    void rebuild();
    void addLine(std::size_t at);
    void addRow();

    const desk::Formatter& m_formatter;
    std::vector<desk::Choice> m_materials;
    std::vector<base::Id> m_rows;
    std::vector<desk::ChoiceField*> m_lines;
};

} // namespace sp::shop
