// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/split_page.h"
#include "app/desk/stone_list.h"
#include "app/desk/value_fields.h"
#include "app/supplies/supplies_presenter.h"

#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>

namespace sp::supplies {

class KitCard;
class MaterialCard;
class SupplierCard;

/// The Supplies place: materials, kits and suppliers at the left, the one that is open at the right.
class SuppliesPage : public desk::SplitPage {
    Q_OBJECT

  public:
    SuppliesPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusFind(); ///< the search above the list

  private:
    void buildList(QVBoxLayout* column);
    /// Whether what is open stays listed though the search does not find it: it does while it is worked on (a new
    /// name, a new thing), not when another search is typed.
    enum class Keeps { Nothing, Open };
    void fillList(Keeps keeps);
    /// The search changed: a card open for something no longer listed would be edited by mistake.
    void searched();
    void load();
    void removed();
    void readPriceList();
    QString detailOf(const catalogue::Material& material);

    SuppliesPresenter m_presenter;
    desk::Formatter m_formatter;
    desk::StoneList* m_list = nullptr;
    QPushButton* m_remove = nullptr;
    desk::TextLabel* m_heading = nullptr;
    MaterialCard* m_material = nullptr;
    SupplierCard* m_supplier = nullptr;
    KitCard* m_kit = nullptr;
};

} // namespace sp::supplies
