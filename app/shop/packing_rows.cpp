// SPDX-License-Identifier: MIT
#include "app/shop/packing_rows.h"

#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

#include <algorithm>

namespace sp::shop {

PackingRows::PackingRows(const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter) {
    auto* add = addButton(tr("+ packing"), QStringLiteral("packingAdd"));
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
        if (!m_lines[i]->isDirty()) m_lines[i]->setCurrent(QVariant::fromValue(rows[i]));
    }
}

void PackingRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 1);
    grid()->cells()->setColumnStretch(2, 1);
    grid()->addHeads({tr("packing, one with every piece")});
    for (std::size_t i = 0; i < m_rows.size(); ++i) addLine(i);
    problem()->watch({m_lines.begin(), m_lines.end()});
    grid()->finish();
}

void PackingRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* field = new desk::ChoiceField(m_formatter, grid()->body());
    field->setObjectName(QStringLiteral("packing%1").arg(row));
    field->setAccessibleName(tr("packing %1").arg(row + 1));
    field->setChoices(m_materials);
    field->setCurrent(QVariant::fromValue(m_rows[at]));
    grid()->cells()->addWidget(field, row + 1, 0);
    auto* remove = grid()->addRemove(row + 1, 1, tr("Take packing %1 out").arg(row + 1));
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

} // namespace sp::shop
