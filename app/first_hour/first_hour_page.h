// SPDX-License-Identifier: MIT
#pragma once

#include "app/first_hour/first_hour_presenter.h"
#include "app/shop/record_fields.h"
#include "app/shop/shop_presenter.h"

#include <map>

class QVBoxLayout;

namespace sp::desk {
class FoldingColumns;
}

namespace sp::first_hour {

class FirstDesign;
class PriceToday;
class StepList;
class SupplyRows;

/// The first hour of a new shop: the steps at the left, the one that is worked at in the middle, and at the right what
/// a price is made of so far. Steps can be left open and come back to; every field saves itself when it is left.
class FirstHourPage : public QWidget {
    Q_OBJECT

  public:
    FirstHourPage(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// On the first thing to be typed in this step.
    void focusStart();
    /// Keeps what is typed and goes to the next step; from the last one to the Counter.
    void goOn();

  Q_SIGNALS:
    void mendAsked(const sp::pricing::LeftOut& leftOut);
    void cutFileAsked();
    void priceListAsked();
    void orderAsked(const sp::base::Id& design); ///< at the Counter
    void putAway();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    using Step = quoting::FirstStep;

    QWidget* makeSteps();
    QWidget* makeMiddle();
    shop::FieldCard* addStep(Step step, const QString& remark);
    void addLetterhead();
    void addMoney();
    void addHour();
    void addEveryLine();
    void addStones();
    void addDesign();
    void addQuote();
    void load();
    void showStep();
    QString noteOf(Step step);
    QString wordsOf(Step next) const;
    static const char* startOf(Step step);

    FirstHourPresenter& m_presenter;
    desk::Formatter m_formatter;
    shop::ShopPresenter m_shopPresenter;
    shop::RecordFields<catalogue::Shop> m_shop;
    desk::FoldingColumns* m_columns;
    StepList* m_steps = nullptr;
    desk::TextLabel* m_soFar = nullptr;
    QVBoxLayout* m_middle = nullptr;
    std::map<Step, QWidget*> m_cards;
    QPushButton* m_next = nullptr;
    SupplyRows* m_sheets = nullptr;
    SupplyRows* m_stones = nullptr;
    FirstDesign* m_design = nullptr;
    PriceToday* m_price = nullptr;
    std::optional<Step> m_shown;
};

} // namespace sp::first_hour
