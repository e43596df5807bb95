// SPDX-License-Identifier: MIT
#include "app/customers/customer_fields.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/desk/flow_grid.h"
#include "core/catalogue/fields/tables.h"

namespace sp::customers {

CustomerFields::CustomerFields(CustomersPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_name(new desk::WordField(formatter, tr("Give the customer a name."), this))
    , m_telephone(new desk::WordField(formatter, {}, this))
    , m_mail(new desk::WordField(formatter, {}, this))
    , m_language(new desk::LanguageBox(tr("as the shop"), this))
    , m_same(new desk::ChoiceField(formatter, this))
    , m_contact(new desk::LongText(this))
    , m_note(new desk::LongText(this))
    , m_refused(new desk::ProblemNote(this))
    , m_number(new desk::WordField(formatter, {}, this))
    , m_place(new desk::WordField(formatter, {}, this))
    , m_issued(new desk::DateField(formatter, presenter.session().today(), this))
    , m_expires(new desk::DateField(formatter, presenter.session().today(), this))
    , m_others(new CertificateRows(formatter, presenter.session().today(), this)) {
    sayWhatStandsWhere();
    placeFields();
    saveWhenLeft();
}

void CustomerFields::sayWhatStandsWhere() {
    for (desk::TypedField* field :
         std::initializer_list<desk::TypedField*>{m_telephone, m_mail, m_same, m_number, m_place, m_issued, m_expires})
        field->setEmptyAllowed(true);
    using catalogue::Certificate;
    using catalogue::Customer;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_name, fieldOf<&Customer::name>());
    desk::standsFor(*m_contact, fieldOf<&Customer::contact>());
    desk::standsFor(*m_note, fieldOf<&Customer::note>());
    desk::standsFor(*m_telephone, fieldOf<&Customer::telephone>());
    desk::standsFor(*m_mail, fieldOf<&Customer::mail>());
    desk::standsFor(*m_language, fieldOf<&Customer::language>());
    desk::standsFor(*m_number, fieldOf<&Certificate::number>());
    desk::standsFor(*m_place, fieldOf<&Certificate::place>());
    desk::standsFor(*m_issued, fieldOf<&Certificate::issuedOn>());
    desk::standsFor(*m_expires, fieldOf<&Certificate::expiresOn>());
}

void CustomerFields::placeFields() {
    auto* grid = new desk::FlowGrid(4);
    setLayout(grid);
    grid->setContentsMargins(0, 0, 0, 0);
    const auto add = [this, grid](const QString& label, QWidget* field, const char* name, int span = 1,
                                  const QString& remark = {}) {
        field->setObjectName(QLatin1String(name));
        auto* box = new desk::FieldBox(label, field, this);
        if (!remark.isEmpty()) box->setRemark(remark);
        grid->add(box, span);
    };
    add(tr("Name"), m_name, "customerName", 2);
    add(tr("Telephone"), m_telephone, "customerTelephone");
    add(tr("Mail"), m_mail, "customerMail");
    add(tr("Address"), m_contact, "customerContact", 2);
    add(tr("Note, for the shop alone"), m_note, "customerNote", 2);
    m_refused->setObjectName(QStringLiteral("customerLinesRefused"));
    grid->add(m_refused, 4);
    add(tr("Exemption certificate, number"), m_number, "certificateNumber");
    add(tr("Good for (state or country)"), m_place, "certificatePlace");
    add(tr("Issued on"), m_issued, "certificateIssued");
    add(tr("Expires on, if it does"), m_expires, "certificateExpires");
    grid->add(m_others, 4);
    add(tr("Language"), m_language, "customerLanguage", 2, tr("of quotes and bills for them"));
    add(tr("The same person as"), m_same, "sameCustomer", 2, tr("makes the two one; quotes given stay as they are"));
}

void CustomerFields::saveWhenLeft() {
    using catalogue::Customer;
    const auto saveWith = [this](desk::WordField* field, std::string Customer::*part) {
        desk::saveWhenGood(*field, [this, field, part] {
            return m_presenter.edit([field, part](Customer& customer) { customer.*part = field->words(); });
        });
    };
    saveWith(m_name, &Customer::name);
    saveWith(m_telephone, &Customer::telephone);
    saveWith(m_mail, &Customer::mail);
    connect(m_language, &QComboBox::activated, this, [this] {
        m_presenter.edit([this](Customer& customer) { customer.language = m_language->language().toStdString(); });
    });
    connect(m_contact, &desk::LongText::committed, this, [this] { saveLines(m_contact, &Customer::contact); });
    connect(m_note, &desk::LongText::committed, this, [this] { saveLines(m_note, &Customer::note); });
    connect(m_same, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto into = chosen.value<base::Id>(); // the field forgets it with what it shows
        m_same->setCurrent({});
        m_presenter.mergeInto(into);
    });
    for (desk::TypedField* field : std::initializer_list<desk::TypedField*>{m_number, m_place, m_issued, m_expires})
        connect(field, &desk::TypedField::committed, this, [this, field] { saveCertificate(field); });
    connect(m_others, &CertificateRows::edited, this, [this] {
        m_others->setRefusal(
            m_presenter.edit([this](catalogue::Customer& customer) { customer.otherCertificates = m_others->rows(); }));
    });
}

void CustomerFields::saveLines(desk::LongText* text, std::string catalogue::Customer::*part) {
    const auto refusal = m_presenter.edit(
        [text, part](catalogue::Customer& customer) { customer.*part = text->toPlainText().trimmed().toStdString(); });
    if (refusal.isEmpty())
        m_refusals.erase(text);
    else
        m_refusals[text] = refusal;
    sayRefusals();
}

void CustomerFields::sayRefusals() {
    m_refused->setRefusal(m_refusals.empty() ? QString() : m_refusals.begin()->second);
}

void CustomerFields::focusName() { m_name->setFocus(Qt::OtherFocusReason); }

void CustomerFields::saveCertificate(desk::TypedField* field) {
    const auto issued = m_issued->optionalValue();
    const auto expires = m_expires->optionalValue();
    if (!issued || !expires) return; // a day that cannot be read stays, with its sentence
    const bool whole = !m_number->isBlank() && !m_place->isBlank() && *issued;
    const bool none = m_number->isBlank() && m_place->isBlank() && !*issued && !*expires;
    if (!whole && !none) return; // half a certificate is none yet
    field->setOuterProblem(m_presenter.edit([&](catalogue::Customer& customer) {
        customer.certificate.reset();
        if (whole)
            customer.certificate = catalogue::Certificate{m_number->words(), m_place->words(), **issued, *expires};
    }));
}

void CustomerFields::load() {
    const auto* customer = m_presenter.current();
    if (!customer) return;
    if (m_shown != customer->id) {
        m_shown = customer->id;
        desk::discardAllEdits(*this);
        m_refusals.clear();
        sayRefusals();
        m_others->startAnew(customer->otherCertificates);
    } else {
        m_others->setRows(customer->otherCertificates);
    }
    std::vector<desk::Choice> choices;
    for (const auto& other : m_presenter.session().customers())
        if (other.id != customer->id) choices.push_back(desk::choiceOf(other));
    m_same->setChoices(std::move(choices));
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(customer->name));
    if (!m_telephone->isDirty()) m_telephone->setRaw(QString::fromStdString(customer->telephone));
    if (!m_mail->isDirty()) m_mail->setRaw(QString::fromStdString(customer->mail));
    m_language->setLanguage(QString::fromStdString(customer->language));
    const auto showLines = [this](desk::LongText* text, const std::string& lines) {
        // What was refused stays as it was typed.
        if (!text->hasFocus() && !m_refusals.contains(text)) text->setText(QString::fromStdString(lines));
    };
    showLines(m_contact, customer->contact);
    showLines(m_note, customer->note);
    loadCertificate(customer->certificate);
}

void CustomerFields::loadCertificate(const std::optional<catalogue::Certificate>& certificate) {
    // While a certificate is half typed nothing is on file yet, and what is typed stays.
    const bool typing = m_number->hasFocus() || m_place->hasFocus() || m_issued->hasFocus() || m_expires->hasFocus();
    if (typing) return;
    m_number->setRaw(certificate ? QString::fromStdString(certificate->number) : QString());
    m_place->setRaw(certificate ? QString::fromStdString(certificate->place) : QString());
    m_issued->setOptionalValue(certificate ? std::optional(certificate->issuedOn) : std::nullopt);
    m_expires->setOptionalValue(certificate ? certificate->expiresOn : std::nullopt);
}

} // namespace sp::customers

#include "moc_customer_fields.cpp"
