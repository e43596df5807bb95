// SPDX-License-Identifier: MIT
#include "app/shop/named_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace sp::shop {

using units::Money;
using units::Rate;

NamedRows::NamedRows(const desk::Formatter& formatter, Words words, const Fields& fields,
                     std::variant<Rate, Money> plain, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter)
    , m_words(std::move(words))
    , m_fields(fields)
    , m_plain(plain) {
    auto* add = addButton(m_words.add, QString::fromLatin1(m_fields.objects[0]));
    connect(add, &QPushButton::clicked, this, &NamedRows::addRow);
    desk::standsFor(*this, m_fields.list);
    rebuild();
}

void NamedRows::addRow() {
    const auto isTaken = [this](const QString& name) {
        return std::ranges::any_of(m_rows, [&](const NamedRow& row) { return row.name == name.toStdString(); });
    };
    auto name = m_words.newName;
    for (int n = 2; isTaken(name); ++n) name = m_words.nextName.arg(n);
    m_rows.push_back({name.toStdString(), m_plain});
    rebuild();
    Q_EMIT edited();
    m_lines.back().name->setFocus(Qt::OtherFocusReason);
    m_lines.back().name->selectAll();
}

void NamedRows::show(const Line& line, const NamedRow& row) const {
    if (!line.name->isDirty()) line.name->setRaw(QString::fromStdString(row.name));
    if (line.typed->isDirty()) return;
    if (const auto* rate = std::get_if<desk::RateField*>(&line.value))
        (*rate)->setValue(std::get<Rate>(row.value));
    else
        std::get<desk::MoneyField*>(line.value)->setValue(std::get<Money>(row.value));
}

void NamedRows::setRows(const std::vector<NamedRow>& rows) {
    if (isRefused()) return; // what was typed stays, with its sentence
    const bool same = rows.size() == m_lines.size();
    m_rows = rows;
    if (!same) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) show(m_lines[i], rows[i]);
}

void NamedRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 2);
    grid()->cells()->setColumnStretch(3, 3);
    if (!m_rows.empty()) grid()->addHeads({m_words.heads[0], m_words.heads[1]});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        addLine(i);
        fields.insert(fields.end(), {m_lines[i].name, m_lines[i].typed});
    }
    problem()->watch(fields);
    grid()->finish();
}

void NamedRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    Line line{new desk::WordField(m_formatter, m_words.noName, body), {}, nullptr};
    line.name->setObjectName(QString::fromLatin1(m_fields.objects[1]) + QString::number(row));
    line.name->setAccessibleName(m_words.nameOf.arg(row + 1));
    desk::standsFor(*line.name, m_fields.name);
    if (std::holds_alternative<Rate>(m_plain)) {
        auto* rate = new desk::RateField(m_formatter, body);
        rate->setUnitText(QStringLiteral("%"));
        line.value = rate;
        line.typed = rate;
        desk::standsFor(*rate, m_fields.value);
    } else {
        auto* money = new desk::MoneyField(m_formatter, body);
        line.value = money;
        line.typed = money;
        desk::standsFor(*money, m_fields.value);
    }
    line.typed->setObjectName(QString::fromLatin1(m_fields.objects[2]) + QString::number(row));
    line.typed->setAccessibleName(m_words.valueOf.arg(row + 1));
    line.typed->setMaximumWidth(desk::scaled(120));
    show(line, m_rows[at]);
    grid()->cells()->addWidget(line.name, row + 1, 0);
    grid()->cells()->addWidget(line.typed, row + 1, 1);
    auto* remove = grid()->addRemove(row + 1, 2, m_words.remove.arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, row] {
        m_rows.erase(m_rows.begin() + row);
        rebuild();
        Q_EMIT edited();
    });
    connect(line.name, &desk::TypedField::committed, this, &NamedRows::committed);
    connect(line.typed, &desk::TypedField::committed, this, &NamedRows::committed);
    m_lines.push_back(line);
}

void NamedRows::committed() {
    std::vector<NamedRow> rows;
    for (const auto& line : m_lines) {
        const auto value = std::visit(
            [](const auto* field) {
                const auto typed = field->value();
                return typed ? std::optional<std::variant<Rate, Money>>(*typed) : std::nullopt;
            },
            line.value);
        if (!value || !line.name->problem().isEmpty()) return; // they stay as typed, with their sentence
        rows.push_back({line.name->words(), *value});
    }
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::shop

#include "moc_named_rows.cpp"
