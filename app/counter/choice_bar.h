// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/field_box.h"
#include "app/desk/tab_row.h"
#include "app/desk/word_field.h"
#include "app/format/formatter.h"

#include <QPushButton>
#include <QWidget>

namespace sp::counter {

/// The choices that the customer weighs: one to look at, its name, and a button that makes another from it. While there
/// is only one, the button alone.
class ChoiceBar : public QWidget {
    Q_OBJECT

  public:
    ChoiceBar(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void loadOrder();

  private:
    void refresh();

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::TabRow* m_tabs = nullptr;
    desk::WordField* m_title = nullptr;
    desk::FieldBox* m_titleBox = nullptr;
    QPushButton* m_add = nullptr;
};

} // namespace sp::counter
