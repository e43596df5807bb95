// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/list_page.h"
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
class SuppliesPage : public desk::ListPage {
    Q_OBJECT

  public:
    SuppliesPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void open(const base::Id& thing) { m_presenter.open(thing); }
    /// Of the supplier that is open.
    void readPriceList();

  private:
    QPushButton* buildNew();
    void focusName();
    std::vector<desk::StoneListRow> rows(const QString& wanted, const base::Id& kept) override;
    base::Id openOne() const override { return m_presenter.currentId(); }
    void openAnother(const base::Id& thing) override { m_presenter.open(thing); }
    void load() override;
    void removed();
    QString detailOf(const catalogue::Material& material);

    SuppliesPresenter m_presenter;
    desk::Formatter m_formatter;
    QWidget* m_empty = nullptr;
    QWidget* m_content = nullptr;
    QPushButton* m_remove = nullptr;
    desk::TextLabel* m_heading = nullptr;
    MaterialCard* m_material = nullptr;
    SupplierCard* m_supplier = nullptr;
    KitCard* m_kit = nullptr;
};

} // namespace sp::supplies
