// SPDX-License-Identifier: MIT
#include "app/desk/packing_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

#include <algorithm>

namespace sp::desk {

using catalogue::PackingPer;
using catalogue::PackingUse;
using catalogue::fields::fieldOf;

PackingRows::PackingRows(const Formatter& formatter, const QString& name, const catalogue::fields::Field& list,
                         QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter)
    , m_name(name) {
    auto* add = addButton(tr("+ packing"), m_name + QStringLiteral("Add"));
    connect(add, &QPushButton::clicked, this, &PackingRows::addRow);
    standsFor(*this, list);
    rebuild();
}

void PackingRows::addRow() {
    const auto isNew = [this](const Choice& choice) {
        return std::ranges::none_of(m_rows,
                                    [&](const PackingUse& use) { return use.material == choice.id.value<base::Id>(); });
    };
    const auto next = std::find_if(m_materials.begin(), m_materials.end(), isNew);
    if (next == m_materials.end())
        return setRefusal(m_materials.empty() ? tr("There is no packing yet; add some in Supplies.")
                                              : tr("All the packing there is goes along; add more in Supplies."));
    m_rows.push_back({next->id.value<base::Id>()});
    rebuild();
    Q_EMIT edited();
    m_lines.back().material->setFocus(Qt::OtherFocusReason);
}

void PackingRows::takeOut(std::size_t at) {
    m_rows.erase(m_rows.begin() + static_cast<std::ptrdiff_t>(at));
    rebuild();
    Q_EMIT edited();
}

void PackingRows::setRows(const std::vector<Choice>& materials, const std::vector<PackingUse>& rows) {
    const bool same = rows.size() == m_lines.size();
    m_materials = materials;
    m_rows = rows;
    if (!same) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& line = m_lines[i];
        line.material->setChoices(m_materials);
        if (!line.material->isDirty()) line.material->setCurrent(QVariant::fromValue(rows[i].material));
        if (!line.amount->isDirty()) line.amount->setValue(rows[i].amount);
        line.per->setCurrentIndex(static_cast<int>(rows[i].per));
    }
}

void PackingRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 2);
    grid()->cells()->setColumnStretch(4, 1);
    if (!m_rows.empty()) grid()->addHeads({tr("packing"), tr("so many"), tr("go with")});
    std::vector<TypedField*> fields;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        addLine(i);
        fields.insert(fields.end(), {m_lines[i].material, m_lines[i].amount});
    }
    problem()->watch(fields);
    grid()->finish();
}

void PackingRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new ChoiceField(m_formatter, body), new CountField(m_formatter, body), new QComboBox(body)};
    line.material->setObjectName(m_name + QString::number(row));
    line.material->setAccessibleName(tr("packing %1").arg(row + 1));
    line.material->setChoices(m_materials);
    line.material->setCurrent(QVariant::fromValue(m_rows[at].material));
    line.amount->setObjectName(m_name + QStringLiteral("Amount%1").arg(row));
    line.amount->setAccessibleName(tr("how many of packing %1").arg(row + 1));
    line.amount->setMaximumWidth(scaled(110));
    line.amount->setAlignment(Qt::AlignRight);
    line.per->setObjectName(m_name + QStringLiteral("Per%1").arg(row));
    line.per->setAccessibleDescription(tr("what packing %1 goes with").arg(row + 1));
    line.per->addItem(tr("each piece"));
    line.per->addItem(tr("each order"));
    standsFor(*line.material, fieldOf<&PackingUse::material>());
    standsFor(*line.amount, fieldOf<&PackingUse::amount>());
    standsFor(*line.per, fieldOf<&PackingUse::per>());
    line.amount->setValue(m_rows[at].amount);
    line.per->setCurrentIndex(static_cast<int>(m_rows[at].per));
    grid()->cells()->addWidget(line.material, row + 1, 0);
    grid()->cells()->addWidget(line.amount, row + 1, 1);
    grid()->cells()->addWidget(line.per, row + 1, 2);
    auto* remove = grid()->addRemove(row + 1, 3, tr("Take packing %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] { takeOut(at); });
    m_lines.push_back(line);
    connectLine(at);
}

void PackingRows::connectLine(std::size_t at) {
    const auto line = m_lines[at];
    connect(line.material, &ChoiceField::chosen, this, [this, at](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        m_rows[at].material = chosen.value<base::Id>();
        Q_EMIT edited();
    });
    connect(line.amount, &TypedField::committed, this, [this, at, line] {
        const auto amount = line.amount->value();
        if (!amount) return; // it stays as typed, with its sentence
        m_rows[at].amount = *amount;
        Q_EMIT edited();
    });
    connect(line.per, &QComboBox::activated, this, [this, at](int chosen) {
        m_rows[at].per = static_cast<PackingPer>(chosen);
        Q_EMIT edited();
    });
}

} // namespace sp::desk

#include "moc_packing_rows.cpp"
