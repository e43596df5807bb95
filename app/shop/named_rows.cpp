// SPDX-License-Identifier: MIT
#include "app/shop/tax_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

#include <algorithm>

namespace sp::shop {

using catalogue::TaxRate;
using catalogue::TaxRule;
using catalogue::fields::fieldOf;

TaxRows::TaxRows(const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter) {
    auto* add = addButton(tr("+ tax rate"), QStringLiteral("taxRateAdd"));
    connect(add, &QPushButton::clicked, this, &TaxRows::addRow);
    desk::standsFor(*this, fieldOf<&TaxRule::others>());
    rebuild();
}

void TaxRows::addRow() {
    const auto isTaken = [this](const QString& name) {
        return std::ranges::any_of(m_rows, [&](const TaxRate& row) { return row.name == name.toStdString(); });
    };
    auto name = tr("Other rate");
    for (int n = 2; isTaken(name); ++n) name = tr("Other rate %1").arg(n);
    m_rows.push_back({name.toStdString(), {}});
    rebuild();
    Q_EMIT edited();
    m_lines.back().name->setFocus(Qt::OtherFocusReason);
    m_lines.back().name->selectAll();
}

void TaxRows::setRows(const std::vector<TaxRate>& rows) {
    const bool same = rows.size() == m_lines.size();
    m_rows = rows;
    if (!same) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!m_lines[i].name->isDirty()) m_lines[i].name->setRaw(QString::fromStdString(rows[i].name));
        if (!m_lines[i].rate->isDirty()) m_lines[i].rate->setValue(rows[i].rate);
    }
}

void TaxRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 2);
    grid()->cells()->setColumnStretch(3, 3);
    if (!m_rows.empty()) grid()->addHeads({tr("a line may name another rate"), tr("rate")});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        addLine(i);
        fields.insert(fields.end(), {m_lines[i].name, m_lines[i].rate});
    }
    problem()->watch(fields);
    grid()->finish();
}

void TaxRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new desk::WordField(m_formatter, tr("Give the rate a name, as it is printed."), body),
                    new desk::RateField(m_formatter, body)};
    line.name->setObjectName(QStringLiteral("otherTaxName%1").arg(row));
    line.name->setAccessibleName(tr("name of further rate %1").arg(row + 1));
    line.name->setRaw(QString::fromStdString(m_rows[at].name));
    line.rate->setObjectName(QStringLiteral("otherTaxRate%1").arg(row));
    line.rate->setAccessibleName(tr("further rate %1").arg(row + 1));
    line.rate->setUnitText(QStringLiteral("%"));
    line.rate->setMaximumWidth(desk::scaled(120));
    desk::standsFor(*line.name, fieldOf<&TaxRate::name>());
    desk::standsFor(*line.rate, fieldOf<&TaxRate::rate>());
    line.rate->setValue(m_rows[at].rate);
    grid()->cells()->addWidget(line.name, row + 1, 0);
    grid()->cells()->addWidget(line.rate, row + 1, 1);
    auto* remove = grid()->addRemove(row + 1, 2, tr("Take further rate %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, row] {
        m_rows.erase(m_rows.begin() + row);
        rebuild();
        Q_EMIT edited();
    });
    connect(line.name, &desk::TypedField::committed, this, &TaxRows::committed);
    connect(line.rate, &desk::TypedField::committed, this, &TaxRows::committed);
    m_lines.push_back(line);
}

void TaxRows::committed() {
    std::vector<TaxRate> rows;
    for (const auto& line : m_lines) {
        const auto rate = line.rate->value();
        if (!rate || !line.name->problem().isEmpty()) return; // they stay as typed, with their sentence
        rows.push_back({line.name->words(), *rate});
    }
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::shop
