// SPDX-License-Identifier: MIT
#pragma once

#include "app/shop/record_fields.h"
#include "app/shop/shop_presenter.h"

class QVBoxLayout;

namespace sp::shop {

class BenchGrid;
class CardIndex;
class NamedRows;

/// The Shop place: what the owner decides once, card under card. Every field saves itself when it is left.
class ShopPage : public QWidget {
    Q_OBJECT

  public:
    ShopPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusFind(); ///< the first field

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    using Shop = catalogue::Shop;
    using Bench = catalogue::BenchStandards;

    FieldCard* addCard(const QString& title, const QString& remark = {});
    void explainMeant(QCheckBox* tick);
    void buildLetterhead();
    void showCareCards();
    void buildMoney();
    void buildRates();
    void buildLadder();
    template<class List>
    void bindRows(NamedRows* rows, List list);
    void buildPlaces();
    desk::MoneyField* roundingStep(FieldCard* card); ///< kept in coins, shown as money
    void buildPrices();
    void buildPayments();
    void buildTax();
    void buildSupplies();
    void buildHours();
    void buildBench();
    void buildMachines();
    void load();

    ShopPresenter m_presenter;
    desk::Formatter m_formatter;
    RecordFields<Shop> m_shop;
    RecordFields<Bench> m_bench;
    QVBoxLayout* m_column = nullptr;
    CardIndex* m_index = nullptr;
    QWidget* m_goTo = nullptr; ///< the index in a narrow window
    BenchGrid* m_steps = nullptr;
};

} // namespace sp::shop
