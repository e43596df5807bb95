// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"
#include "app/desk/card.h"
#include "app/desk/rule_tree.h"
#include "app/format/formatter.h"

class QPushButton;
class QStandardItemModel;

namespace sp::buying {

/// One way of buying as a card: what it costs, whether that is proven, and the figures it opens to.
class StrategyColumn : public desk::Card {
    Q_OBJECT

  public:
    StrategyColumn(supply::Strategy strategy, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Null: no answer; then `remark` says why ("Working…").
    void show(const Answer* answer, const QString& remark);
    void focusFigures();

  Q_SIGNALS:
    void takeInAsked(); ///< this is what was bought

  private:
    void showPlan(const Answer& answer);
    void showNone(const QString& remark);

    supply::Strategy m_strategy;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_mark = nullptr;
    desk::FigureLabel* m_cost = nullptr;
    desk::TextLabel* m_each = nullptr;
    desk::TextLabel* m_proof = nullptr;
    desk::RuleTree* m_tree = nullptr;
    QStandardItemModel* m_model = nullptr;
    QPushButton* m_takeIn = nullptr;
    QStringList m_opened;
};

} // namespace sp::buying
