// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "core/catalogue/bench_week.h"

#include <vector>

namespace sp::shop {

/// The days on which the bench is closed, a row for each span. A row with a bad entry keeps all of them from being
/// saved; it stays as typed, with its sentence. Rows are handed on by their first day.
class ClosedRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    ClosedRows(const desk::Formatter& formatter, units::Date today, QWidget* parent = nullptr);

    /// Leaves a field alone that a person is at.
    void setRows(const std::vector<catalogue::ClosedDays>& rows);
    const std::vector<catalogue::ClosedDays>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::DateField* from;
        desk::DateField* to;
        desk::WordField* why;
    };

    void rebuild();
    void addLine(std::size_t at);
    void addRow();
    void committed();

    const desk::Formatter& m_formatter;
    units::Date m_today;
    std::vector<catalogue::ClosedDays> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::shop
