// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/buying_presenter.h"
#include "app/buying/cost_curve_panel.h"
#include "app/buying/shopping_list.h"
#include "app/buying/strategy_column.h"
#include "app/desk/choice_field.h"
#include "app/desk/message_bar.h"
#include "app/desk/prompter.h"
#include "app/desk/value_fields.h"

#include <QBoxLayout>
#include <QCheckBox>

#include <array>

namespace sp::buying {

/// The Buying place: for what, three ways to buy it side by side, and the costCurve below.
class BuyingPage : public QWidget {
    Q_OBJECT

  public:
    BuyingPage(session::BookSession& session, BuyingPresenter::OrderReader order, const desk::Formatter& formatter,
               desk::Prompter& prompter, QWidget* parent = nullptr);

    /// Buys for so many of a design, or for the order at the Counter.
    void showDesign(const base::Id& design, std::int64_t pieces);
    void showOrder();
    void focusStart();
    BuyingPresenter& presenter() { return m_presenter; }

  Q_SIGNALS:
    void designsAsked();                       ///< there is none yet
    void priceAsked(const base::Id& material); ///< the owner wants to see where its packs get a price

  protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void buildHead(QVBoxLayout* column);
    void buildStrategies(QVBoxLayout* column);
    void connectAll();
    void loadFields();
    void refresh();
    void saveCsv();
    void takeIn(supply::Strategy strategy);
    void showList();
    void showCostCurve();
    BuyingPaper aboutPaper();
    /// As they will be printed, to print or save.
    void showPages(paper::Document pages, const QString& name);
    void tellSaved(const base::Done& done, const QString& path);

    BuyingPresenter m_presenter;
    desk::Formatter m_formatter;
    desk::Prompter& m_prompter;
    desk::MessageBar* m_messages = nullptr;
    QWidget* m_content = nullptr;
    QWidget* m_empty = nullptr;
    desk::ChoiceField* m_design = nullptr;
    desk::CountField* m_pieces = nullptr;
    QCheckBox* m_order = nullptr;
    QCheckBox* m_shelf = nullptr;
    QCheckBox* m_cuts = nullptr;
    desk::TextLabel* m_unpriced = nullptr;
    QPushButton* m_list = nullptr;
    QPushButton* m_csv = nullptr;
    QBoxLayout* m_head = nullptr;
    QBoxLayout* m_row = nullptr;
    QBoxLayout* m_lower = nullptr;
    std::array<StrategyColumn*, 3> m_strategies{};
};

} // namespace sp::buying
