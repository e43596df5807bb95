// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "core/catalogue/shop.h"

#include <vector>

namespace sp::shop {

/// The rates of tax besides the usual one, a row each: its name and the rate.
class TaxRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    explicit TaxRows(const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Leaves a field alone that a person is at.
    void setRows(const std::vector<catalogue::TaxRate>& rows);
    const std::vector<catalogue::TaxRate>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::WordField* name;
        desk::RateField* rate;
    };

    void rebuild();
    void addLine(std::size_t at);
    void addRow();
    void committed();

    const desk::Formatter& m_formatter;
    std::vector<catalogue::TaxRate> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::shop
