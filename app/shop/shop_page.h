// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/shop/shop_presenter.h"

#include <QComboBox>
#include <QGridLayout>
#include <QVBoxLayout>
#include <QWidget>

#include <functional>
#include <vector>

namespace sp::shop {

class CustomerCard;

/// The Shop place: what the owner decides once, card under card. Every field saves itself when it is left.
class ShopPage : public QWidget {
    Q_OBJECT

  public:
    ShopPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusStart();
    void focusFind(); ///< the search for a customer

  private:
    using Shop = catalogue::Shop;
    using Bench = catalogue::BenchStandards;

    /// A card with a heading; returns the grid its fields go into.
    QGridLayout* card(const QString& title, const QString& remark = {});
    void put(QGridLayout* grid, QWidget* field, const QString& label, const char* name, const QString& remark = {},
             int span = 1);

    // Each binds a field to a member of the shop or the bench, reached by `member`: loaded when something changed and
    // it has not the focus, saved when it is left with a good entry.
    template<class Field, class Member>
    Field* shopField(QGridLayout* grid, const QString& label, const char* name, Member member,
                     const QString& remark = {});
    template<class Field, class Member>
    Field* benchField(QGridLayout* grid, const QString& label, const char* name, Member member);
    template<class Member>
    desk::CountField* shopNumber(QGridLayout* grid, const QString& label, const char* name, Member member,
                                 std::int64_t least, std::int64_t most, const QString& remark = {});
    template<class Member>
    void benchNumber(QGridLayout* grid, const QString& label, const char* name, Member member);
    template<class Member>
    void shopWords(QGridLayout* grid, const QString& label, const char* name, Member member, int span);
    template<class Member>
    void shopText(QGridLayout* grid, const QString& label, const char* name, Member member);
    template<class Enum, class Member>
    void shopChoice(QGridLayout* grid, const QString& label, const char* name,
                    std::vector<std::pair<QString, Enum>> choices, Member member);
    template<class Member>
    void shopTick(QGridLayout* grid, const QString& label, const char* name, Member member);
    template<class Member>
    void shopMaterial(QGridLayout* grid, const QString& label, const char* name, catalogue::MaterialKind kind,
                      Member member);

    void buildLetterhead();
    void buildMoney();
    void buildRates();
    void buildLadder();
    desk::MoneyField* roundingStep(QGridLayout* grid); ///< kept in coins, shown as money
    void buildPrices();
    void buildTax();
    void buildCustomers();
    void buildSupplies();
    void buildBench();
    void buildMachines();
    void loadAll();

    ShopPresenter m_presenter;
    desk::Formatter m_formatter;
    QVBoxLayout* m_column = nullptr;
    desk::WordField* m_first = nullptr;
    CustomerCard* m_customers = nullptr;
    int m_placed = 0;
    std::vector<std::function<void()>> m_loads;
};

} // namespace sp::shop
