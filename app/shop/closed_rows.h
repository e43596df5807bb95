// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "core/catalogue/bench_week.h"

#include <optional>
#include <vector>

namespace sp::shop {

/// The days on which the bench is closed, a row for each span, by their first day when they are first shown; after that
/// they stay where they stand. A row with a bad entry stays as typed, with its sentence, and as the book has it; the
/// others are handed on.
class ClosedRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    ClosedRows(const desk::Formatter& formatter, units::Date today, QWidget* parent = nullptr);

    /// What the book has. Leaves alone what is typed and not in it: a row that a person is at or that cannot be read,
    /// and all of them while the book has refused them and is as it was.
    void setRows(const std::vector<catalogue::ClosedDays>& rows);
    /// What is to be kept, in the order in which it is shown.
    std::vector<catalogue::ClosedDays> rows() const;

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::DateField* from;
        desk::DateField* to;
        desk::WordField* why;
        std::optional<catalogue::ClosedDays> kept; ///< as the book has it; none: it has not been there

        /// None while an entry is bad.
        std::optional<catalogue::ClosedDays> typed() const;
    };
    /// What stands in a row, good or bad.
    struct Entry {
        QString from;
        QString to;
        QString why;
        std::optional<catalogue::ClosedDays> kept;
    };

    void take(const std::vector<catalogue::ClosedDays>& rows);
    static void show(const Line& line, const catalogue::ClosedDays& span);
    std::vector<Entry> entries() const;
    Entry entryOf(const catalogue::ClosedDays& span) const;
    void rebuild(const std::vector<Entry>& entries);
    void addLine(const Entry& entry);
    void addRow();
    void takeOut(std::size_t at);

    const desk::Formatter& m_formatter;
    units::Date m_today;
    std::optional<std::vector<catalogue::ClosedDays>> m_kept; ///< in the book; none before it was read
    std::vector<Line> m_lines;
};

} // namespace sp::shop
