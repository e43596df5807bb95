// SPDX-License-Identifier: MIT
#include "app/supplies/supplier_card.h"

#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "core/catalogue/fields/tables.h"

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>

namespace sp::supplies {

SupplierCard::SupplierCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_name(new desk::WordField(formatter, tr("Give the supplier a name."), this))
    , m_leadDays(new desk::CountField(formatter, this))
    , m_shipping(new desk::MoneyField(formatter, this))
    , m_freeFrom(new desk::MoneyField(formatter, this))
    , m_minimum(new desk::MoneyField(formatter, this))
    , m_freight(new QComboBox(this))
    , m_share(new desk::RateField(formatter, this))
    , m_usual(new desk::MoneyField(formatter, this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(12);
    desk::place(*grid, 0, 0, 2, tr("N&ame"), m_name, "supplierName");
    desk::place(*grid, 0, 2, 1, tr("&Days until it is here"), m_leadDays, "leadDays");
    desk::place(*grid, 1, 0, 1, tr("&Shipping"), m_shipping, "shipping");
    desk::place(*grid, 1, 1, 1, tr("Fr&ee from"), m_freeFrom, "freeFrom", tr("goods for so much; empty: never"));
    desk::place(*grid, 1, 2, 1, tr("S&mallest order"), m_minimum, "supplierMinimum");
    auto* list = new QPushButton(tr("Read a price &list…"), this);
    list->setObjectName(QStringLiteral("readPriceList"));
    connect(list, &QPushButton::clicked, this, &SupplierCard::priceListWanted);
    grid->addWidget(list, 3, 0, Qt::AlignLeft);
    for (const auto& word : {tr("none of it"), tr("a share of the goods"), tr("spread over a usual order")})
        m_freight->addItem(word);
    m_share->setUnitText(QStringLiteral("%"));
    desk::place(*grid, 2, 0, 1, tr("Shipping in the c&ost"), m_freight, "freight");
    desk::place(*grid, 2, 1, 1, tr("S&hare of the goods"), m_share, "freightShare");
    desk::place(*grid, 2, 2, 1, tr("&Usual order"), m_usual, "usualOrder", tr("goods for so much"));
    for (int i = 0; i < 3; ++i) grid->setColumnStretch(i, 1);
    m_freeFrom->setEmptyAllowed(true);
    using catalogue::Supplier;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_name, fieldOf<&Supplier::name>());
    desk::standsFor(*m_leadDays, fieldOf<&Supplier::leadDays>());
    desk::standsFor(*m_shipping, fieldOf<&Supplier::shipping>());
    desk::standsFor(*m_freeFrom, fieldOf<&Supplier::freeFrom>());
    desk::standsFor(*m_minimum, fieldOf<&Supplier::minimum>());
    desk::standsFor(*m_freight, fieldOf<&Supplier::freight>());
    desk::standsFor(*m_share, fieldOf<&Supplier::freightShare>());
    desk::standsFor(*m_usual, fieldOf<&Supplier::usualOrder>());
    connect(m_freight, &QComboBox::activated, this, [this](int chosen) {
        m_presenter.editSupplier(
            [&](catalogue::Supplier& s) { s.freight = static_cast<catalogue::FreightKind>(chosen); });
    });
    const auto saveWith = [this](desk::TypedField* field, auto put) {
        desk::saveWhenGood(*field, [this, put] { return m_presenter.editSupplier(put); });
    };
    saveWith(m_name, [this](catalogue::Supplier& s) { s.name = m_name->words(); });
    saveWith(m_leadDays, [this](catalogue::Supplier& s) { s.leadDays = m_leadDays->value()->value(); });
    saveWith(m_shipping, [this](catalogue::Supplier& s) { s.shipping = *m_shipping->value(); });
    saveWith(m_freeFrom, [this](catalogue::Supplier& s) { s.freeFrom = *m_freeFrom->optionalValue(); });
    saveWith(m_share, [this](catalogue::Supplier& s) { s.freightShare = *m_share->value(); });
    saveWith(m_usual, [this](catalogue::Supplier& s) { s.usualOrder = *m_usual->value(); });
    saveWith(m_minimum, [this](catalogue::Supplier& s) { s.minimum = *m_minimum->value(); });
}

void SupplierCard::load() {
    const auto* supplier = m_presenter.supplier();
    if (!supplier) return;
    if (m_shown != supplier->id) {
        m_shown = supplier->id;
        desk::discardAllEdits(*this);
    }
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(supplier->name));
    if (!m_leadDays->isDirty()) m_leadDays->setValue(units::Count::of(supplier->leadDays));
    if (!m_shipping->isDirty()) m_shipping->setValue(supplier->shipping);
    if (!m_freeFrom->isDirty()) m_freeFrom->setOptionalValue(supplier->freeFrom);
    if (!m_minimum->isDirty()) m_minimum->setValue(supplier->minimum);
    m_freight->setCurrentIndex(static_cast<int>(supplier->freight));
    if (!m_share->isDirty()) m_share->setValue(supplier->freightShare);
    if (!m_usual->isDirty()) m_usual->setValue(supplier->usualOrder);
    m_share->setEnabled(supplier->freight == catalogue::FreightKind::Share);
    m_usual->setEnabled(supplier->freight == catalogue::FreightKind::Spread);
}

} // namespace sp::supplies

#include "moc_supplier_card.cpp"
