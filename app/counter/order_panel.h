// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/bench_promise.h"
#include "app/counter/counter_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QCheckBox>
#include <QPushButton>
#include <QWidget>

namespace sp::artwork {
class DesignPictures;
} // namespace sp::artwork

namespace sp::counter {

class ChoiceBar;
class OrderList;
class OrderListModel;

/// The left of the Counter: customer, day, lines of the order, and the field that adds a design.
class OrderPanel : public QWidget {
    Q_OBJECT

  public:
    OrderPanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
               QWidget* parent = nullptr);

    /// Focuses the field in which a new order is begun.
    void focusDesign();
    /// What is typed for the customer counts as entered.
    void finishCustomer();
    /// Why what is typed there is nobody; only while it is.
    QString whyNoCustomer() const;
    void setSaveNote(const QString& note, bool trouble);

  Q_SIGNALS:
    void lineEntered(); ///< Enter on a line: its fields get the focus
    void hoursAsked();  ///< the owner wants to type how long the bench is worked at

  private:
    void build();
    QWidget* buildTop();
    void connectAll();
    void loadOrder();
    void loadChoices();
    void showNew();
    void showPromise();
    void refresh();
    base::Result<catalogue::Discount> readDiscount(); ///< shows what is wrong with the entry
    void discountTyped();

    CounterPresenter& m_presenter;
    BenchPromise m_promise;
    artwork::DesignPictures& m_pictures;
    desk::Formatter m_formatter;
    desk::ChoiceField* m_customer = nullptr;
    desk::WordField* m_reach = nullptr;
    desk::TextLabel* m_isNew = nullptr;
    desk::DateField* m_wantedBy = nullptr;
    desk::FieldBox* m_wantedBox = nullptr;
    desk::TextLabel* m_promised = nullptr;
    desk::WordField* m_discount = nullptr;
    QCheckBox* m_atNoCharge = nullptr;
    QCheckBox* m_exempt = nullptr;
    OrderList* m_list = nullptr;
    OrderListModel* m_model = nullptr;
    desk::ChoiceField* m_design = nullptr;
    QPushButton* m_addCharge = nullptr;
    desk::TextLabel* m_saved = nullptr;
};

} // namespace sp::counter
