// SPDX-License-Identifier: MIT
#include "app/shop/packing_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

#include <QVBoxLayout>

#include <algorithm>

namespace sp::shop {

PackingRows::PackingRows(const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    m_grid = new desk::RowGrid(12, this);
    column->addWidget(m_grid);
    m_problem = new desk::ProblemNote(this);
    column->addWidget(m_problem);
    auto* add = new QPushButton(tr("+ packing"), this);
    add->setObjectName(QStringLiteral("packingAdd"));
    desk::makeQuiet(*add);
    column->addWidget(add, 0, Qt::AlignLeft);
    connect(add, &QPushButton::clicked, this, &PackingRows::addRow);
    desk::standsFor(*this, catalogue::fields::fieldOf<&catalogue::Shop::packing>());
    rebuild();
}

void PackingRows::addRow() {
    const auto isNew = [this](const desk::Choice& choice) {
        return std::find(m_rows.begin(), m_rows.end(), choice.id.value<base::Id>()) == m_rows.end();
    };
    const auto next = std::find_if(m_materials.begin(), m_materials.end(), isNew);
    if (next == m_materials.end())
        return setRefusal(m_materials.empty() ? tr("There is no packing yet; add some in Supplies.")
                                              : tr("All the packing there is goes along; add more in Supplies."));
    m_rows.push_back(next->id.value<base::Id>());
    rebuild();
    Q_EMIT edited();
    m_lines.back()->setFocus(Qt::OtherFocusReason);
}

void PackingRows::setRows(const std::vector<desk::Choice>& materials, const std::vector<base::Id>& rows) {
    const bool same = rows.size() == m_lines.size();
    m_materials = materials;
    m_rows = rows;
    if (!same) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        m_lines[i]->setChoices(m_materials);
        if (!m_lines[i]->isHeld()) m_lines[i]->setCurrent(QVariant::fromValue(rows[i]));
    }
}

void PackingRows::rebuild() {
    m_lines.clear();
    m_grid->restart();
    m_grid->cells()->setColumnStretch(0, 1);
    m_grid->cells()->setColumnStretch(2, 1);
    m_grid->addHeads({tr("packing, one with every piece")});
    for (std::size_t i = 0; i < m_rows.size(); ++i) addLine(i);
    m_problem->watch({m_lines.begin(), m_lines.end()});
    m_grid->finish();
}

void PackingRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* field = new desk::ChoiceField(m_formatter, m_grid->body());
    field->setObjectName(QStringLiteral("packing%1").arg(row));
    field->setAccessibleName(tr("packing %1").arg(row + 1));
    field->setChoices(m_materials);
    field->setCurrent(QVariant::fromValue(m_rows[at]));
    m_grid->cells()->addWidget(field, row + 1, 0);
    auto* remove = m_grid->addRemove(row + 1, 1, tr("Take packing %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] {
        m_rows.erase(m_rows.begin() + static_cast<std::ptrdiff_t>(at));
        rebuild();
        Q_EMIT edited();
    });
    connect(field, &desk::ChoiceField::chosen, this, [this, at](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        m_rows[at] = chosen.value<base::Id>();
        Q_EMIT edited();
    });
    m_lines.push_back(field);
}

void PackingRows::setRefusal(const QString& sentence) { m_problem->setRefusal(sentence); }

} // namespace sp::shop
