// SPDX-License-Identifier: MIT
#include "app/supplies/kit_items.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

namespace sp::supplies {

KitItems::KitItems(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(8, tr("In the kit"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    problem()->setObjectName(QStringLiteral("kitItemProblem"));
    auto* add = addButton(tr("+ ma&terial"), QStringLiteral("addKitItem"));
    connect(add, &QPushButton::clicked, this, [this] { setRefusal(m_presenter.addKitItem()); });
}

void KitItems::load() {
    const auto* kit = m_presenter.kit();
    if (!kit) return;
    if (m_kit != kit->id || m_rows.size() != kit->items.size()) rebuild(kit->items.size());
    m_kit = kit->id;
    const auto materials = desk::choicesOf(m_presenter.session().materials());
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto& row = m_rows[i];
        row.material->setChoices(materials);
        if (!row.material->isDirty()) row.material->setCurrent(QVariant::fromValue(kit->items[i].material));
        if (!row.count->isDirty()) row.count->setValue(kit->items[i].count);
    }
}

void KitItems::rebuild(std::size_t rows) {
    m_rows.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 5);
    grid()->cells()->setColumnStretch(1, 2);
    if (rows > 0) grid()->addHeads({tr("material"), tr("stones, sheets or pieces")});
    for (std::size_t i = 0; i < rows; ++i) addRow(i);
    std::vector<desk::TypedField*> fields;
    for (const auto& row : m_rows) fields.insert(fields.end(), {row.material, row.count});
    problem()->watch(fields);
    grid()->finish();
}

void KitItems::addRow(std::size_t at) {
    const Row row{new desk::ChoiceField(m_formatter, grid()->body()),
                  new desk::CountField(m_formatter, grid()->body())};
    const auto line = static_cast<int>(at);
    row.material->setObjectName(QStringLiteral("kitMaterial%1").arg(line));
    row.material->setAccessibleName(tr("material %1 of the kit").arg(line + 1));
    row.count->setObjectName(QStringLiteral("kitCount%1").arg(line));
    row.count->setAccessibleName(tr("number of material %1 of the kit").arg(line + 1));
    desk::standsFor(*row.material, catalogue::fields::fieldOf<&catalogue::KitItem::material>());
    desk::standsFor(*row.count, catalogue::fields::fieldOf<&catalogue::KitItem::count>());
    grid()->cells()->addWidget(row.material, line + 1, 0);
    grid()->cells()->addWidget(row.count, line + 1, 1);
    auto* remove = grid()->addRemove(line + 1, 2, tr("Take material %1 out of the kit").arg(line + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] {
        setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items.erase(kit.items.begin() + static_cast<std::ptrdiff_t>(at));
        }));
    });
    connect(row.material, &desk::ChoiceField::chosen, this, [this, at](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto material = chosen.value<base::Id>();
        setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items[at].material = material;
        }));
    });
    connect(row.count, &desk::TypedField::committed, this, [this, at, count = row.count] {
        const auto value = count->value();
        if (!value) return;
        setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items[at].count = *value;
        }));
    });
    m_rows.push_back(row);
}

} // namespace sp::supplies

#include "moc_kit_items.cpp"
