// SPDX-License-Identifier: MIT
#include "app/shop/closed_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/shop.h"

#include <algorithm>

namespace sp::shop {

using catalogue::ClosedDays;
using catalogue::fields::fieldOf;

ClosedRows::ClosedRows(const desk::Formatter& formatter, units::Date today, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter)
    , m_today(today) {
    auto* add = addButton(tr("+ closed days"), QStringLiteral("closedAdd"));
    connect(add, &QPushButton::clicked, this, &ClosedRows::addRow);
    desk::standsFor(*this, fieldOf<&catalogue::Shop::closedDays>());
    rebuild();
}

void ClosedRows::addRow() {
    m_rows.push_back({m_today, m_today, {}});
    rebuild();
    Q_EMIT edited();
    m_lines.back().from->setFocus(Qt::OtherFocusReason);
    m_lines.back().from->selectAll();
}

void ClosedRows::setRows(const std::vector<ClosedDays>& rows) {
    const bool isSame = rows.size() == m_lines.size();
    m_rows = rows;
    if (!isSame) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!m_lines[i].from->isDirty()) m_lines[i].from->setValue(rows[i].from);
        if (!m_lines[i].to->isDirty()) m_lines[i].to->setValue(rows[i].to);
        if (!m_lines[i].why->isDirty()) m_lines[i].why->setRaw(QString::fromStdString(rows[i].why));
    }
}

void ClosedRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(2, 2);
    grid()->cells()->setColumnStretch(4, 2);
    if (!m_rows.empty()) grid()->addHeads({tr("closed from"), tr("to"), tr("why")});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        addLine(i);
        fields.insert(fields.end(), {m_lines[i].from, m_lines[i].to, m_lines[i].why});
    }
    problem()->watch(fields);
    grid()->finish();
}

void ClosedRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new desk::DateField(m_formatter, m_today, body), new desk::DateField(m_formatter, m_today, body),
                    new desk::WordField(m_formatter, {}, body)};
    line.from->setObjectName(QStringLiteral("closedFrom%1").arg(row));
    line.from->setAccessibleName(tr("first of the closed days %1").arg(row + 1));
    line.to->setObjectName(QStringLiteral("closedTo%1").arg(row));
    line.to->setAccessibleName(tr("last of the closed days %1").arg(row + 1));
    line.why->setObjectName(QStringLiteral("closedWhy%1").arg(row));
    line.why->setAccessibleName(tr("why closed, days %1").arg(row + 1));
    line.why->setEmptyAllowed(true);
    desk::standsFor(*line.from, fieldOf<&ClosedDays::from>());
    desk::standsFor(*line.to, fieldOf<&ClosedDays::to>());
    desk::standsFor(*line.why, fieldOf<&ClosedDays::why>());
    line.from->setValue(m_rows[at].from);
    line.to->setValue(m_rows[at].to);
    line.why->setRaw(QString::fromStdString(m_rows[at].why));
    int column = 0;
    for (desk::TypedField* field : {static_cast<desk::TypedField*>(line.from), static_cast<desk::TypedField*>(line.to),
                                    static_cast<desk::TypedField*>(line.why)}) {
        if (field != line.why) field->setMaximumWidth(desk::scaled(150));
        connect(field, &desk::TypedField::committed, this, &ClosedRows::committed);
        grid()->cells()->addWidget(field, row + 1, column++);
    }
    auto* remove = grid()->addRemove(row + 1, column, tr("Take the closed days %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, row] {
        m_rows.erase(m_rows.begin() + row);
        rebuild();
        Q_EMIT edited();
    });
    m_lines.push_back(line);
}

void ClosedRows::committed() {
    std::vector<ClosedDays> rows;
    for (const auto& line : m_lines) {
        const auto from = line.from->value();
        const auto to = line.to->value();
        if (!from || !to) return; // they stay as typed, with their sentence
        rows.push_back({*from, *to, line.why->words()});
    }
    std::ranges::stable_sort(rows, {}, &ClosedDays::from);
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::shop

#include "moc_closed_rows.cpp"
