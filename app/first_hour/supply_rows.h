// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/rows_panel.h"
#include "app/desk/value_fields.h"
#include "app/first_hour/first_hour_presenter.h"

namespace sp::first_hour {

/// The usual supplies of a group, a row each, to be priced: the price of a pack is typed, Enter goes on to the next,
/// and beside it stands what one is by that. What has no price is left out. Over the rows stands where they are bought.
class SupplyRows : public desk::RowsPanel {
    Q_OBJECT

  public:
    SupplyRows(FirstHourPresenter& presenter, SupplyGroup group, const desk::Formatter& formatter,
               QWidget* parent = nullptr);

    void load();
    /// The first price that is not there yet; null where all are.
    QWidget* firstOpen() const;

  private:
    struct Row {
        UsualSupply supply;
        desk::MoneyField* price;
        desk::TextLabel* whichIs;
    };

    void addSupplier();
    void addRow(int row, const UsualSupply& supply);
    QString whichIs(const Row& row) const;

    FirstHourPresenter& m_presenter;
    SupplyGroup m_group;
    const desk::Formatter& m_formatter;
    desk::ChoiceField* m_supplier = nullptr;
    std::vector<Row> m_rows;
};

} // namespace sp::first_hour
