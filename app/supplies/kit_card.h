// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <QGridLayout>
#include <QWidget>

namespace sp::supplies {

class KitItems;

/// The fields of a kit, what is in it, and what it makes of its design.
class KitCard : public QWidget {
    Q_OBJECT

  public:
    KitCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    void build(QGridLayout* grid);
    void connectFields();
    void showYield();

    SuppliesPresenter& m_presenter;
    base::Id m_shown; ///< what the fields speak of
    const desk::Formatter& m_formatter;
    desk::WordField* m_name;
    desk::ChoiceField* m_supplier;
    desk::MoneyField* m_price;
    desk::MoneyField* m_withTemplates;
    desk::ChoiceField* m_design;
    desk::RateField* m_shortCount;
    desk::WordField* m_tools;
    KitItems* m_items;
    desk::TextLabel* m_makes;
    desk::TextLabel* m_more;
};

} // namespace sp::supplies
