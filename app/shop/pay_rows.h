// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/word_field.h"
#include "core/catalogue/shop.h"

#include <QCheckBox>
#include <vector>

namespace sp::shop {

/// What the shop calls the ways in which it is paid, a row for each, with a box for what is cash.
class PayRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    explicit PayRows(const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// A name that is being typed stays.
    void setRows(const std::vector<catalogue::WayToPay>& rows);
    const std::vector<catalogue::WayToPay>& rows() const { return m_rows; }

  Q_SIGNALS:
    void edited();

  private:
    struct Line {
        desk::WordField* name;
        QCheckBox* cash;
    };

    void rebuild();
    void addLine(std::size_t at);
    void addRow();
    void committed();

    const desk::Formatter& m_formatter;
    std::vector<catalogue::WayToPay> m_rows;
    std::vector<Line> m_lines;
};

} // namespace sp::shop
