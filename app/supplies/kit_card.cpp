// SPDX-License-Identifier: MIT
#include "app/supplies/kit_card.h"

#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/supplies/kit_items.h"
#include "app/supplies/kit_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"

#include <QVBoxLayout>

namespace sp::supplies {

using catalogue::Kit;

KitCard::KitCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_name(new desk::WordField(formatter, tr("Give the kit a name."), this))
    , m_supplier(new desk::ChoiceField(formatter, this))
    , m_price(new desk::MoneyField(formatter, this))
    , m_withTemplates(new desk::MoneyField(formatter, this))
    , m_design(new desk::ChoiceField(formatter, this))
    , m_shortCount(new desk::RateField(formatter, this))
    , m_tools(new desk::WordField(formatter, {}, this))
    , m_items(new KitItems(presenter, formatter, this))
    , m_makes(new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Strong, this))
    , m_more(new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    auto* grid = new QGridLayout;
    grid->setSpacing(12);
    build(grid);
    column->addLayout(grid);
    column->addWidget(m_items);
    column->addWidget(desk::sectionTitle(tr("What one kit makes"), this));
    for (auto* label : {m_makes, m_more}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    m_makes->setObjectName(QStringLiteral("kitMakes"));
    m_more->setObjectName(QStringLiteral("kitMore"));
    connectFields();
}

void KitCard::build(QGridLayout* grid) {
    const auto place = [&](int row, int column, int span, const QString& label, desk::TypedField* field,
                           const char* name, const QString& remark = {}) {
        desk::place(*grid, row, column, span, label, field, name, remark);
        grid->setColumnStretch(column, 1);
    };
    place(0, 0, 2, tr("N&ame"), m_name, "kitName");
    place(0, 2, 2, tr("&Supplier"), m_supplier, "kitSupplier");
    place(1, 0, 1, tr("&Price"), m_price, "kitPrice");
    place(1, 1, 1, tr("&With templates cut"), m_withTemplates, "kitWithTemplates", tr("empty: not to be had"));
    place(1, 2, 2, tr("For the &design"), m_design, "kitDesign");
    place(2, 0, 1, tr("Sh&ort count"), m_shortCount, "kitShortCount", tr("stones missing as a rule"));
    place(2, 1, 3, tr("Too&ls that come along"), m_tools, "kitTools", tr("with commas between; not used up"));
    m_shortCount->setUnitText(QStringLiteral("%"));
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_name, fieldOf<&Kit::name>());
    desk::standsFor(*m_supplier, fieldOf<&Kit::supplier>());
    desk::standsFor(*m_price, fieldOf<&Kit::price>());
    desk::standsFor(*m_withTemplates, fieldOf<&Kit::priceWithTemplates>());
    desk::standsFor(*m_design, fieldOf<&Kit::design>());
    desk::standsFor(*m_shortCount, fieldOf<&Kit::shortCount>());
    desk::standsFor(*m_tools, fieldOf<&Kit::tools>());
    for (desk::TypedField* field : {static_cast<desk::TypedField*>(m_withTemplates),
                                    static_cast<desk::TypedField*>(m_design), static_cast<desk::TypedField*>(m_tools)})
        field->setEmptyAllowed(true);
}

void KitCard::connectFields() {
    const auto saveWith = [this](desk::TypedField* field, auto put) {
        desk::saveWhenGood(*field, [this, put] { return m_presenter.editKit(put); });
    };
    saveWith(m_name, [this](Kit& kit) { kit.name = m_name->words(); });
    saveWith(m_price, [this](Kit& kit) { kit.price = *m_price->value(); });
    saveWith(m_withTemplates, [this](Kit& kit) { kit.priceWithTemplates = *m_withTemplates->optionalValue(); });
    saveWith(m_shortCount, [this](Kit& kit) { kit.shortCount = *m_shortCount->value(); });
    saveWith(m_tools, [this](Kit& kit) {
        kit.tools.clear();
        for (const auto& tool : m_tools->text().split(QLatin1Char(','), Qt::SkipEmptyParts))
            if (!tool.trimmed().isEmpty()) kit.tools.push_back(tool.trimmed().toStdString());
    });
    connect(m_supplier, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto supplier = chosen.value<base::Id>();
        m_supplier->setOuterProblem(m_presenter.editKit([&](Kit& kit) { kit.supplier = supplier; }));
    });
    connect(m_design, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        const auto design = chosen.isValid() ? chosen.value<base::Id>() : base::Id();
        m_design->setOuterProblem(m_presenter.editKit([&](Kit& kit) { kit.design = design; }));
    });
}

void KitCard::load() {
    const auto* kit = m_presenter.kit();
    if (!kit) return;
    if (m_shown != kit->id) {
        m_shown = kit->id;
        desk::discardAllEdits(*this);
    }
    m_supplier->setChoices(desk::choicesOf(m_presenter.session().suppliers()));
    m_design->setChoices(desk::choicesOf(m_presenter.session().designs()));
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(kit->name));
    if (!m_supplier->isDirty()) m_supplier->setCurrent(QVariant::fromValue(kit->supplier));
    if (!m_price->isDirty()) m_price->setValue(kit->price);
    if (!m_withTemplates->isDirty()) m_withTemplates->setOptionalValue(kit->priceWithTemplates);
    if (!m_design->isDirty())
        m_design->setCurrent(kit->design.isNone() ? QVariant() : QVariant::fromValue(kit->design));
    if (!m_shortCount->isDirty()) m_shortCount->setValue(kit->shortCount);
    if (!m_tools->isDirty()) {
        QStringList tools;
        for (const auto& tool : kit->tools) tools << QString::fromStdString(tool);
        m_tools->setRaw(tools.join(QStringLiteral(", ")));
    }
    m_items->load();
    showYield();
}

void KitCard::showYield() {
    const auto makes = m_presenter.kitMakes();
    auto sentences = makes ? yieldInWords(*makes, m_formatter) : QStringList{words::sentence(makes.error())};
    m_makes->setText(sentences.takeFirst());
    m_makes->setRole(makes ? desk::Role::Ink : desk::Role::Muted);
    m_more->setText(sentences.join(QLatin1Char('\n')));
    m_more->setVisible(!sentences.isEmpty());
}

} // namespace sp::supplies

#include "moc_kit_card.cpp"
