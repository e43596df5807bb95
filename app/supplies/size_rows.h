// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <vector>

namespace sp::supplies {

/// The sizes of the open blank, a row each: its name, what it costs the shop more and what the customer pays more. A
/// row with a bad entry keeps all of them from being saved; it stays as typed, with its sentence.
class SizeRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    SizeRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load(); ///< leaves a field alone that a person is at

  private:
    struct Row {
        desk::WordField* name;
        desk::MoneyField* extraCost;
        desk::MoneyField* surcharge;
    };

    std::vector<catalogue::BlankSize> kept() const;
    void rebuild(const std::vector<catalogue::BlankSize>& sizes);
    void addRow(int at);
    void addSize();
    void committed();
    void save(const std::vector<catalogue::BlankSize>& sizes);

    SuppliesPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    std::vector<Row> m_rows;
    base::Id m_of; ///< the blank whose sizes they are
};

} // namespace sp::supplies
