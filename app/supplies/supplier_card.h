// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <QComboBox>
#include <QWidget>

namespace sp::supplies {

/// The fields of a supplier.
class SupplierCard : public QWidget {
    Q_OBJECT

  public:
    SupplierCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  Q_SIGNALS:
    void priceListWanted(); ///< a price list of the open supplier is to be read

  private:
    SuppliesPresenter& m_presenter;
    base::Id m_shown; ///< what the fields speak of
    desk::WordField* m_name;
    desk::CountField* m_leadDays;
    desk::MoneyField* m_shipping;
    desk::MoneyField* m_freeFrom;
    desk::MoneyField* m_minimum;
    QComboBox* m_freight;
    desk::RateField* m_share;
    desk::MoneyField* m_usual;
};

} // namespace sp::supplies
