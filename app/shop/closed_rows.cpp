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
    rebuild({});
}

std::optional<ClosedDays> ClosedRows::Line::typed() const {
    const auto first = from->value();
    const auto last = to->value();
    if (!first || !last || !why->problem().isEmpty()) return std::nullopt;
    return ClosedDays{*first, *last, why->words()};
}

std::vector<ClosedDays> ClosedRows::rows() const {
    std::vector<ClosedDays> rows;
    for (const auto& line : m_lines)
        if (const auto span = line.typed() ? line.typed() : line.kept) rows.push_back(*span);
    return rows;
}

void ClosedRows::setRows(const std::vector<ClosedDays>& rows) {
    if (m_kept != rows) take(rows);
    for (const auto& line : m_lines)
        if (line.kept && line.typed() == line.kept) show(line, *line.kept); // anything else stays as typed
}

void ClosedRows::show(const Line& line, const ClosedDays& span) {
    if (!line.from->isDirty()) line.from->setValue(span.from);
    if (!line.to->isDirty()) line.to->setValue(span.to);
    if (!line.why->isDirty()) line.why->setRaw(QString::fromStdString(span.why));
}

void ClosedRows::take(const std::vector<ClosedDays>& rows) {
    auto shown = rows;
    if (!m_kept) std::ranges::stable_sort(shown, {}, &ClosedDays::from);
    m_kept = rows;
    setRefusal({});
    if (shown.size() != m_lines.size()) {
        std::vector<Entry> anew;
        for (const auto& span : shown) anew.push_back(entryOf(span));
        return rebuild(anew);
    }
    for (std::size_t i = 0; i < shown.size(); ++i) {
        m_lines[i].kept = shown[i];
        if (m_lines[i].typed()) show(m_lines[i], shown[i]); // a bad one stays as typed, with its sentence
    }
}

ClosedRows::Entry ClosedRows::entryOf(const ClosedDays& span) const {
    return {m_formatter.dateWithDay(span.from), m_formatter.dateWithDay(span.to), QString::fromStdString(span.why),
            span};
}

std::vector<ClosedRows::Entry> ClosedRows::entries() const {
    std::vector<Entry> entries;
    for (const auto& line : m_lines)
        entries.push_back({line.from->text(), line.to->text(), line.why->text(), line.kept});
    return entries;
}

void ClosedRows::addRow() {
    auto more = entries();
    more.push_back(entryOf({m_today, m_today, {}}));
    more.back().kept.reset();
    rebuild(more);
    Q_EMIT edited();
    m_lines.back().from->setFocus(Qt::OtherFocusReason);
    m_lines.back().from->selectAll();
}

void ClosedRows::takeOut(std::size_t at) {
    auto left = entries();
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(at));
    rebuild(left);
    Q_EMIT edited();
}

void ClosedRows::rebuild(const std::vector<Entry>& entries) {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(2, 2);
    grid()->cells()->setColumnStretch(4, 2);
    if (!entries.empty()) grid()->addHeads({tr("closed from"), tr("to"), tr("why")});
    std::vector<desk::TypedField*> fields;
    for (const auto& entry : entries) {
        addLine(entry);
        fields.insert(fields.end(), {m_lines.back().from, m_lines.back().to, m_lines.back().why});
    }
    problem()->watch(fields);
    grid()->finish();
}

void ClosedRows::addLine(const Entry& entry) {
    const auto at = m_lines.size();
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new desk::DateField(m_formatter, m_today, body), new desk::DateField(m_formatter, m_today, body),
                    new desk::WordField(m_formatter, {}, body), entry.kept};
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
    line.from->setRaw(entry.from);
    line.to->setRaw(entry.to);
    line.why->setRaw(entry.why);
    int column = 0;
    for (desk::TypedField* field : {static_cast<desk::TypedField*>(line.from), static_cast<desk::TypedField*>(line.to),
                                    static_cast<desk::TypedField*>(line.why)}) {
        if (field != line.why) field->setMaximumWidth(desk::scaled(150));
        if (!field->problem().isEmpty()) field->showError();
        connect(field, &desk::TypedField::committed, this, [this, at] {
            if (m_lines[at].typed()) Q_EMIT edited(); // a bad one stays as typed, with its sentence
        });
        grid()->cells()->addWidget(field, row + 1, column++);
    }
    auto* remove = grid()->addRemove(row + 1, column, tr("Take the closed days %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] { takeOut(at); });
    m_lines.push_back(line);
}

} // namespace sp::shop

#include "moc_closed_rows.cpp"
