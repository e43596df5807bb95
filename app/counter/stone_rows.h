// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/row_grid.h"
#include "app/desk/value_fields.h"

#include <QHBoxLayout>
#include <QWidget>

#include <vector>

namespace sp::counter {

/// The stones of a line, a row for each colour: how many a piece takes (typed), how many to brush with their loss,
/// how many are on the shelf. The last row adds a colour by its name.
class StoneRows : public QWidget {
    Q_OBJECT

  public:
    StoneRows(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Rebuilds the rows for the current line.
    void load();
    /// Updates the calculated figures only.
    void refresh();
    /// What adds something else stands beside the field that adds a colour.
    void addBesideAdding(QWidget* widget) { m_adding->addWidget(widget, 1, Qt::AlignTop); }

  private:
    struct Row {
        base::Id material;
        desk::CountField* perPiece = nullptr;
        desk::FigureLabel* toBrush = nullptr;
        desk::FigureLabel* onShelf = nullptr;
    };

    void addHead();
    void addRow(int row, const catalogue::StoneCount& stone);
    void offerColours();
    void typed(int row);

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::RowGrid* m_grid = nullptr;
    desk::ChoiceField* m_add = nullptr;
    desk::FieldBox* m_addBox = nullptr;
    QHBoxLayout* m_adding = nullptr;
    std::vector<Row> m_rows;
};

} // namespace sp::counter
