// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/planner.h"
#include "app/counter/cost_tree_model.h"
#include "app/counter/counter_presenter.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/rule_tree.h"
#include "app/desk/share_bar.h"
#include "app/desk/value_fields.h"
#include "core/pricing/left_out.h"

#include <QPushButton>
#include <QTreeView>
#include <QWidget>

namespace sp::counter {

/// The back of the slip, for the owner: what the current line costs node by node, mark-up and margin, what it earns
/// after all that came off the order or on it, the ladder, and the price to ask instead.
class SlipBack : public QWidget {
    Q_OBJECT

  public:
    SlipBack(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

  Q_SIGNALS:
    void buyingAsked();
    void mendAsked(const pricing::LeftOut& leftOut); ///< to the field that mends it

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void build();
    QLayout* buildHead();
    void refresh();
    void refreshFigures(const pricing::PricedLine& line);
    void refreshOrder();
    void refreshTree();
    void refreshLeftOut();
    void followLink(const QString& number);
    void planBuying();
    std::optional<buying::KitQuestion> askedKits();
    void askTyped();
    void showPlan();
    void loadAsk();

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QPushButton* m_plan = nullptr;
    buying::Planner m_planner;
    QPushButton* m_buy = nullptr;
    desk::TextLabel* m_kits = nullptr;
    desk::TextLabel* m_what = nullptr;
    desk::FigureLabel* m_cost = nullptr;
    desk::FigureLabel* m_markUp = nullptr;
    desk::FigureLabel* m_margin = nullptr;
    desk::FigureLabel* m_perHour = nullptr;
    desk::ShareBar* m_shares = nullptr;
    desk::RuleTree* m_tree = nullptr;
    CostTreeModel* m_model = nullptr;
    desk::MoneyField* m_ask = nullptr;
    desk::FieldBox* m_askBox = nullptr;
    desk::TextLabel* m_leaves = nullptr;
    desk::TextLabel* m_coverage = nullptr;
    desk::TextLabel* m_cardFee = nullptr;
    desk::TextLabel* m_ownTax = nullptr;
    desk::TextLabel* m_leftOutWords = nullptr;
    std::vector<pricing::LeftOut> m_leftOut;
    desk::TextLabel* m_ladder = nullptr;
    desk::TextLabel* m_moreForLess = nullptr;
    desk::TextLabel* m_order = nullptr;
    desk::TextLabel* m_orderCoverage = nullptr;
};

} // namespace sp::counter
