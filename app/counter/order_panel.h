// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QCheckBox>
#include <QWidget>

namespace sp::counter {

class OrderList;
class OrderListModel;

/// The left of the Counter: who orders, by when, what, and the place where a design is typed.
class OrderPanel : public QWidget {
    Q_OBJECT

  public:
    OrderPanel(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Where a fresh order begins.
    void focusDesign();
    void setSaveNote(const QString& note, bool trouble);

  Q_SIGNALS:
    void lineEntered(); ///< the person goes on to the fields of the line

  private:
    void build();
    QWidget* buildTop();
    void connectAll();
    void loadOrder();
    void loadChoices();
    void refresh();
    base::Result<catalogue::Discount> readDiscount(); ///< and shows what is wrong with it
    void discountTyped();

    CounterPresenter& m_presenter;
    desk::Formatter m_formatter;
    desk::ChoiceField* m_customer = nullptr;
    desk::DateField* m_wantedBy = nullptr;
    desk::FieldBox* m_wantedBox = nullptr;
    desk::WordField* m_discount = nullptr;
    QCheckBox* m_exempt = nullptr;
    OrderList* m_list = nullptr;
    OrderListModel* m_model = nullptr;
    desk::ChoiceField* m_design = nullptr;
    desk::TextLabel* m_saved = nullptr;
};

} // namespace sp::counter
