// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/field_binding.h"
#include "app/desk/figures.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"

#include <array>
#include <vector>

namespace sp::shop {

struct StepRow {
    std::int64_t from = 0;
    units::Rate rate;

    friend bool operator==(const StepRow&, const StepRow&) = default;
};

/// Rows of a number and a rate: the mark-up ladder, with the margin each mark-up means, and the rush table. A row
/// with a bad entry keeps all of them from being saved; rows are handed on sorted by their number.
class StepRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    /// `from` and `rate`: the rows of the table that its two columns stand for.
    StepRows(const desk::Formatter& formatter, const std::array<QString, 3>& heads, const QString& name,
             const catalogue::fields::Field& from, const catalogue::fields::Field& rate, bool showsMargin,
             QWidget* parent = nullptr);

    /// Leaves the fields alone when they already say so.
    void setRows(const std::vector<StepRow>& rows);
    const std::vector<StepRow>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::CountField* from;
        desk::RateField* rate;
        desk::TextLabel* margin;
    };

    void rebuild();
    void addLine(int row);
    void committed();
    QString marginOf(units::Rate markUp) const;

    const desk::Formatter& m_formatter;
    std::array<QString, 3> m_heads;
    QString m_name;
    const catalogue::fields::Field& m_from;
    const catalogue::fields::Field& m_rate;
    bool m_showsMargin;
    std::vector<StepRow> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::shop
