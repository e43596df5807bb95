// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/desk/message_bar.h"
#include "app/desk/stone_list_model.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/supplies/supplies_presenter.h"

#include <QListView>
#include <QVBoxLayout>
#include <QWidget>

namespace sp::supplies {

class KitCard;
class MaterialCard;
class SupplierCard;

/// The Supplies place: materials, kits and suppliers at the left, the one that is open at the right.
class SuppliesPage : public QWidget {
    Q_OBJECT

  public:
    SuppliesPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusStart();

  private:
    void buildList(QVBoxLayout* column);
    void fillList();
    void load();
    void removed();
    void readPriceList();
    QString detailOf(const catalogue::Material& material);

    SuppliesPresenter m_presenter;
    desk::Formatter m_formatter;
    desk::StoneListModel m_model;
    desk::MessageBar* m_messages = nullptr;
    desk::WordField* m_find = nullptr;
    QListView* m_list = nullptr;
    desk::TextLabel* m_heading = nullptr;
    MaterialCard* m_material = nullptr;
    SupplierCard* m_supplier = nullptr;
    KitCard* m_kit = nullptr;
};

} // namespace sp::supplies
