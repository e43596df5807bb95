// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/buying_presenter.h"
#include "app/buying/cost_curve_picture.h"
#include "app/desk/card.h"

#include "app/desk/figures_table.h"

#include <QPushButton>
#include <QStackedWidget>

namespace sp::buying {

/// The costCurve with its sentences, and the same as a table behind it.
class CostCurvePanel : public desk::Card {
    Q_OBJECT

  public:
    CostCurvePanel(BuyingPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

  Q_SIGNALS:
    void printAsked();

  private:
    void refresh();
    void fillTable();
    QString said(const supply::CostCurve& curve) const;
    void showMarked();

    BuyingPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    CostCurvePicture* m_picture = nullptr;
    desk::FiguresTable* m_table = nullptr;
    QStackedWidget* m_sides = nullptr;
    QPushButton* m_turn = nullptr;
    QPushButton* m_print = nullptr;
    desk::TextLabel* m_point = nullptr;
    desk::TextLabel* m_words = nullptr;
};

} // namespace sp::buying
