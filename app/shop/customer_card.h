// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/long_text.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/shop/shop_presenter.h"

#include <QWidget>

#include <functional>

namespace sp::shop {

/// Customers and their exemption certificates: one is found by name, its fields save themselves when they are left.
/// A certificate is on file once its number, place and day of issue are all there.
class CustomerCard : public QWidget {
    Q_OBJECT

  public:
    CustomerCard(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();
    void focusFind();

  private:
    void save(desk::TypedField* field, const std::function<void(catalogue::Customer&)>& put);
    void merge(const base::Id& into);
    void saveCertificate(desk::TypedField* field);
    void show(const base::Id& customer);

    ShopPresenter& m_presenter;
    base::Id m_current;
    desk::ChoiceField* m_find;
    desk::WordField* m_name;
    desk::WordField* m_telephone;
    desk::WordField* m_mail;
    desk::ChoiceField* m_same;
    desk::LongText* m_contact;
    desk::WordField* m_number;
    desk::WordField* m_place;
    desk::DateField* m_issued;
    desk::DateField* m_expires;
};

} // namespace sp::shop
