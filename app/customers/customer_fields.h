// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/certificate_rows.h"
#include "app/customers/customers_presenter.h"
#include "app/desk/choice_field.h"
#include "app/desk/language_box.h"
#include "app/desk/long_text.h"
#include "app/desk/problem_note.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"

#include <QWidget>

#include <map>
#include <string>

namespace sp::customers {

/// Who the open customer is and the exemption certificates; the fields save themselves when they are left. A
/// certificate is on file once its number, place and day of issue are all there.
class CustomerFields : public QWidget {
    Q_OBJECT

  public:
    CustomerFields(CustomersPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();
    void focusName();

  private:
    void sayWhatStandsWhere();
    void placeFields();
    void saveWhenLeft();
    void saveLines(desk::LongText* text, std::string catalogue::Customer::*part);
    void sayRefusals();
    void saveCertificate(desk::TypedField* field);
    void loadCertificate(const std::optional<catalogue::Certificate>& certificate);

    CustomersPresenter& m_presenter;
    base::Id m_shown; ///< the customer the fields speak of
    desk::WordField* m_name;
    desk::WordField* m_telephone;
    desk::WordField* m_mail;
    desk::LanguageBox* m_language;
    desk::ChoiceField* m_same;
    desk::LongText* m_contact;
    desk::LongText* m_note;
    desk::ProblemNote* m_refused; ///< why the lines of one of the two are not kept
    std::map<const desk::LongText*, QString> m_refusals;
    desk::WordField* m_number;
    desk::WordField* m_place;
    desk::DateField* m_issued;
    desk::DateField* m_expires;
    CertificateRows* m_others;
};

} // namespace sp::customers
