// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/card.h"
#include "app/desk/row_grid.h"
#include "app/first_hour/first_hour_presenter.h"
#include "app/format/formatter.h"

namespace sp::first_hour {

/// What a price is made of so far, tried on some pieces, and what is not in it.
class PriceToday : public desk::Card {
    Q_OBJECT

  public:
    PriceToday(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();
    /// What a piece comes to; empty while nothing can be priced.
    const QString& each() const { return m_each; }

  Q_SIGNALS:
    void mendAsked(const sp::pricing::LeftOut& leftOut); ///< to the field that mends it

  private:
    void showTrial(const quoting::Trial& trial);
    void showLeftOut(const quoting::Trial& trial);
    void add(const QString& what, const QString& figure, desk::Weight weight);

    FirstHourPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_on;
    desk::RowGrid* m_parts;
    desk::TextLabel* m_missingHead;
    desk::TextLabel* m_missing;
    desk::TextLabel* m_warning;
    std::vector<pricing::LeftOut> m_leftOut;
    QString m_each;
    int m_row = 0;
};

} // namespace sp::first_hour
