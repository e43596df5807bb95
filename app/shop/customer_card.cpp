// SPDX-License-Identifier: MIT
#include "app/shop/customer_card.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"

#include <QGridLayout>

namespace sp::shop {

CustomerCard::CustomerCard(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_find(new desk::ChoiceField(formatter, this))
    , m_name(new desk::WordField(formatter, tr("Give the customer a name."), this))
    , m_telephone(new desk::WordField(formatter, {}, this))
    , m_mail(new desk::WordField(formatter, {}, this))
    , m_same(new desk::ChoiceField(formatter, this))
    , m_contact(new desk::LongText(this))
    , m_number(new desk::WordField(formatter, {}, this))
    , m_place(new desk::WordField(formatter, {}, this))
    , m_issued(new desk::DateField(formatter, presenter.session().today(), this))
    , m_expires(new desk::DateField(formatter, presenter.session().today(), this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    for (int i = 0; i < 4; ++i) grid->setColumnStretch(i, 1);
    m_find->setNewWording(tr("Add “%1” as a customer"));
    for (desk::TypedField* field :
         {static_cast<desk::TypedField*>(m_find), static_cast<desk::TypedField*>(m_telephone),
          static_cast<desk::TypedField*>(m_mail), static_cast<desk::TypedField*>(m_same),
          static_cast<desk::TypedField*>(m_number), static_cast<desk::TypedField*>(m_place),
          static_cast<desk::TypedField*>(m_issued), static_cast<desk::TypedField*>(m_expires)})
        field->setEmptyAllowed(true);
    using catalogue::Certificate;
    using catalogue::Customer;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_name, fieldOf<&Customer::name>());
    desk::standsFor(*m_contact, fieldOf<&Customer::contact>());
    desk::standsFor(*m_telephone, fieldOf<&Customer::telephone>());
    desk::standsFor(*m_mail, fieldOf<&Customer::mail>());
    desk::standsFor(*m_number, fieldOf<&Certificate::number>());
    desk::standsFor(*m_place, fieldOf<&Certificate::place>());
    desk::standsFor(*m_issued, fieldOf<&Certificate::issuedOn>());
    desk::standsFor(*m_expires, fieldOf<&Certificate::expiresOn>());
    desk::place(*grid, 0, 0, 2, tr("Find a customer"), m_find, "findCustomer");
    desk::place(*grid, 0, 2, 2, tr("Name"), m_name, "customerName");
    m_contact->setObjectName(QStringLiteral("customerContact"));
    desk::place(*grid, 1, 0, 1, tr("Telephone"), m_telephone, "customerTelephone");
    desk::place(*grid, 1, 1, 1, tr("Mail"), m_mail, "customerMail");
    desk::place(*grid, 1, 2, 2, tr("The same person as"), m_same, "sameCustomer",
                tr("makes the two one; quotes given stay as they are"));
    grid->addWidget(new desk::FieldBox(tr("Address"), m_contact, this), 2, 0, 2, 2, Qt::AlignTop);
    desk::place(*grid, 2, 2, 1, tr("Exemption certificate, number"), m_number, "certificateNumber");
    desk::place(*grid, 2, 3, 1, tr("Good for (state or country)"), m_place, "certificatePlace");
    desk::place(*grid, 3, 2, 1, tr("Issued on"), m_issued, "certificateIssued");
    desk::place(*grid, 3, 3, 1, tr("Expires on, if it does"), m_expires, "certificateExpires");
    desk::saveWhenGood(*m_telephone, [this] {
        save(m_telephone, [this](catalogue::Customer& c) { c.telephone = m_telephone->words(); });
        return m_telephone->problem();
    });
    desk::saveWhenGood(*m_mail, [this] {
        save(m_mail, [this](catalogue::Customer& c) { c.mail = m_mail->words(); });
        return m_mail->problem();
    });
    connect(m_same, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        if (chosen.isValid()) merge(chosen.value<base::Id>());
    });
    connect(m_find, &desk::ChoiceField::chosen, this,
            [this](const QVariant& chosen) { show(chosen.isValid() ? chosen.value<base::Id>() : base::Id{}); });
    // Another name is being typed: the card of the customer shown before must not stay open for editing under it.
    connect(m_find, &desk::TypedField::edited, this, [this] {
        if (!m_find->current().isValid() && !m_current.isNone()) show({});
    });
    connect(m_find, &desk::ChoiceField::typedNew, this, [this](const QString& name) {
        catalogue::Customer customer;
        customer.name = name.trimmed().toStdString();
        const auto saved = m_presenter.session().change([&](db::Book& book) { return book.save(customer); });
        if (saved) show(*saved);
    });
    connect(m_name, &desk::TypedField::committed, this, [this] {
        if (m_name->problem().isEmpty()) save(m_name, [this](catalogue::Customer& c) { c.name = m_name->words(); });
    });
    connect(m_contact, &desk::LongText::committed, this, [this] {
        save(m_name, [this](catalogue::Customer& c) { c.contact = m_contact->toPlainText().trimmed().toStdString(); });
    });
    for (desk::TypedField* field :
         {static_cast<desk::TypedField*>(m_number), static_cast<desk::TypedField*>(m_place),
          static_cast<desk::TypedField*>(m_issued), static_cast<desk::TypedField*>(m_expires)})
        connect(field, &desk::TypedField::committed, this, [this, field] { saveCertificate(field); });
}

void CustomerCard::focusFind() { m_find->setFocus(Qt::ShortcutFocusReason); }

void CustomerCard::save(desk::TypedField* field, const std::function<void(catalogue::Customer&)>& put) {
    const auto* known = m_presenter.session().customer(m_current);
    if (!known) return;
    auto edited = *known;
    put(edited);
    if (edited == *known) return;
    const auto saved = m_presenter.session().attempt([&](db::Book& book) { return book.save(edited); });
    field->setOuterProblem(saved ? QString() : words::sentence(saved.error()));
}

void CustomerCard::merge(const base::Id& into) {
    const auto from = m_current;
    m_same->setCurrent({});
    const auto merged = m_presenter.session().change([&](db::Book& book) { return book.mergeCustomers(from, into); });
    if (merged) show(into);
}

void CustomerCard::saveCertificate(desk::TypedField* field) {
    const auto issued = m_issued->optionalValue();
    const auto expires = m_expires->optionalValue();
    if (!issued || !expires) return; // a day that cannot be read stays, with its sentence
    const bool whole = !m_number->isBlank() && !m_place->isBlank() && *issued;
    const bool none = m_number->isBlank() && m_place->isBlank() && !*issued && !*expires;
    if (!whole && !none) return; // half a certificate is none yet
    save(field, [&](catalogue::Customer& customer) {
        customer.certificate.reset();
        if (whole)
            customer.certificate = catalogue::Certificate{m_number->words(), m_place->words(), **issued, *expires};
    });
}

void CustomerCard::show(const base::Id& customer) {
    m_current = customer;
    desk::discardAllEdits(*this);
    load();
}

void CustomerCard::load() {
    std::vector<desk::Choice> choices;
    for (const auto& customer : m_presenter.session().customers()) choices.push_back(desk::choiceOf(customer));
    m_find->setChoices(choices);
    std::erase_if(choices, [this](const desk::Choice& one) { return one.id == QVariant::fromValue(m_current); });
    m_same->setChoices(std::move(choices));
    const auto* customer = m_presenter.session().customer(m_current);
    for (QWidget* field :
         {static_cast<QWidget*>(m_name), static_cast<QWidget*>(m_telephone), static_cast<QWidget*>(m_mail),
          static_cast<QWidget*>(m_same), static_cast<QWidget*>(m_contact), static_cast<QWidget*>(m_number),
          static_cast<QWidget*>(m_place), static_cast<QWidget*>(m_issued), static_cast<QWidget*>(m_expires)})
        field->setEnabled(customer != nullptr);
    if (!m_find->isDirty()) m_find->setCurrent(customer ? QVariant::fromValue(m_current) : QVariant());
    const auto shown = customer ? *customer : catalogue::Customer{};
    const auto& certificate = shown.certificate;
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(shown.name));
    if (!m_telephone->isDirty()) m_telephone->setRaw(QString::fromStdString(shown.telephone));
    if (!m_mail->isDirty()) m_mail->setRaw(QString::fromStdString(shown.mail));
    if (!m_contact->hasFocus()) m_contact->setText(QString::fromStdString(shown.contact));
    // While a certificate is half typed nothing is on file yet, and what is typed stays.
    const bool typing = m_number->hasFocus() || m_place->hasFocus() || m_issued->hasFocus() || m_expires->hasFocus();
    if (typing) return;
    m_number->setRaw(certificate ? QString::fromStdString(certificate->number) : QString());
    m_place->setRaw(certificate ? QString::fromStdString(certificate->place) : QString());
    m_issued->setOptionalValue(certificate ? std::optional(certificate->issuedOn) : std::nullopt);
    m_expires->setOptionalValue(certificate ? certificate->expiresOn : std::nullopt);
}

} // namespace sp::shop

#include "moc_customer_card.cpp"
