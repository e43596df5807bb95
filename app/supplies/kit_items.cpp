// SPDX-License-Identifier: MIT
#include "app/supplies/kit_items.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_binding.h"
#include "app/desk/stone_painter.h"
#include "core/catalogue/fields/tables.h"

#include <QVBoxLayout>

namespace sp::supplies {

KitItems::KitItems(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(desk::sectionTitle(tr("In the kit"), this));
    m_grid = new desk::RowGrid(8, this);
    column->addWidget(m_grid);
    m_problem = new desk::ProblemNote(this);
    m_problem->setObjectName(QStringLiteral("kitItemProblem"));
    column->addWidget(m_problem);
    m_add = new QPushButton(tr("+ ma&terial"), this);
    m_add->setObjectName(QStringLiteral("addKitItem"));
    desk::makeQuiet(*m_add);
    column->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, [this] { m_problem->setRefusal(m_presenter.addKitItem()); });
}

void KitItems::load() {
    const auto* kit = m_presenter.kit();
    if (!kit) return;
    if (m_kit != kit->id || m_rows.size() != kit->items.size()) rebuild(kit->items.size());
    m_kit = kit->id;
    std::vector<desk::Choice> materials;
    for (const auto& material : m_presenter.session().materials()) {
        desk::Choice choice{QVariant::fromValue(material.id), QString::fromStdString(material.name), {}, {}};
        if (material.kind == catalogue::MaterialKind::Stone)
            choice.stones.push_back(desk::stoneColour(material.stone.rgb));
        materials.push_back(std::move(choice));
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto& row = m_rows[i];
        row.material->setChoices(materials);
        if (!row.material->isHeld()) row.material->setCurrent(QVariant::fromValue(kit->items[i].material));
        if (!row.count->isHeld()) row.count->setValue(kit->items[i].count);
    }
}

void KitItems::rebuild(std::size_t rows) {
    m_rows.clear();
    m_grid->restart();
    m_grid->cells()->setColumnStretch(0, 5);
    m_grid->cells()->setColumnStretch(1, 2);
    if (rows > 0) m_grid->addHeads({tr("material"), tr("stones, sheets or pieces")});
    for (std::size_t i = 0; i < rows; ++i) addRow(i);
    std::vector<desk::TypedField*> fields;
    for (const auto& row : m_rows) fields.insert(fields.end(), {row.material, row.count});
    m_problem->watch(fields);
    m_grid->finish();
}

void KitItems::addRow(std::size_t at) {
    const Row row{new desk::ChoiceField(m_formatter, m_grid->body()),
                  new desk::CountField(m_formatter, m_grid->body())};
    const auto line = static_cast<int>(at);
    row.material->setObjectName(QStringLiteral("kitMaterial%1").arg(line));
    row.material->setAccessibleName(tr("material %1 of the kit").arg(line + 1));
    row.count->setObjectName(QStringLiteral("kitCount%1").arg(line));
    row.count->setAccessibleName(tr("number of material %1 of the kit").arg(line + 1));
    desk::standsFor(*row.material, catalogue::fields::fieldOf<&catalogue::KitItem::material>());
    desk::standsFor(*row.count, catalogue::fields::fieldOf<&catalogue::KitItem::count>());
    m_grid->cells()->addWidget(row.material, line + 1, 0);
    m_grid->cells()->addWidget(row.count, line + 1, 1);
    auto* remove = m_grid->addRemove(line + 1, 2, tr("Take material %1 out of the kit").arg(line + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] {
        m_problem->setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items.erase(kit.items.begin() + static_cast<std::ptrdiff_t>(at));
        }));
    });
    connect(row.material, &desk::ChoiceField::chosen, this, [this, at](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto material = chosen.value<base::Id>();
        m_problem->setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items[at].material = material;
        }));
    });
    connect(row.count, &desk::TypedField::committed, this, [this, at, count = row.count] {
        const auto value = count->value();
        if (!value) return;
        m_problem->setRefusal(m_presenter.editKit([&](catalogue::Kit& kit) {
            if (at < kit.items.size()) kit.items[at].count = *value;
        }));
    });
    m_rows.push_back(row);
}

} // namespace sp::supplies
