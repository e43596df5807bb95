// SPDX-License-Identifier: MIT
#include "app/shop/pay_rows.h"

#include "app/desk/field_binding.h"
#include "app/words/payment_words.h"

#include <algorithm>

namespace sp::shop {

using catalogue::WayToPay;
using catalogue::fields::fieldOf;

PayRows::PayRows(const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter) {
    auto* add = addButton(tr("+ way to pay"), QStringLiteral("payAdd"));
    connect(add, &QPushButton::clicked, this, &PayRows::addRow);
    desk::standsFor(*this, fieldOf<&catalogue::Shop::waysToPay>());
    rebuild();
}

void PayRows::setRows(const std::vector<WayToPay>& rows) {
    if (isRefused()) return; // what was typed stays, with its sentence
    const bool isSame = rows.size() == m_lines.size();
    m_rows = rows;
    if (!isSame) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& line = m_lines[i];
        if (!line.name->isDirty()) line.name->setRaw(QString::fromStdString(rows[i].name));
        line.cash->setChecked(rows[i].isCash);
    }
}

/// The first row of one's own begins from those that the program knows, so that none of them is lost.
void PayRows::addRow() {
    if (m_rows.empty()) m_rows = words::waysToPay({});
    const auto isTaken = [this](const QString& name) {
        return std::ranges::any_of(m_rows, [&](const WayToPay& way) { return way.name == name.toStdString(); });
    };
    auto name = tr("Another way");
    for (int n = 2; isTaken(name); ++n) name = tr("Another way %1").arg(n);
    m_rows.push_back({name.toStdString(), false});
    rebuild();
    Q_EMIT edited();
    m_lines.back().name->setFocus(Qt::OtherFocusReason);
    m_lines.back().name->selectAll();
}

void PayRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 2);
    grid()->cells()->setColumnStretch(3, 3);
    if (!m_rows.empty()) grid()->addHeads({tr("way to pay, as it is called here")});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        addLine(i);
        fields.push_back(m_lines[i].name);
    }
    problem()->watch(fields);
    grid()->finish();
}

void PayRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new desk::WordField(m_formatter, tr("Give the way to pay a name."), body),
                    new QCheckBox(tr("cash"), body)};
    line.name->setObjectName(QStringLiteral("payName%1").arg(row));
    line.name->setAccessibleName(tr("name of way to pay %1").arg(row + 1));
    line.name->setRaw(QString::fromStdString(m_rows[at].name));
    desk::standsFor(*line.name, fieldOf<&WayToPay::name>());
    line.cash->setObjectName(QStringLiteral("payCash%1").arg(row));
    line.cash->setAccessibleName(tr("way to pay %1 is cash").arg(row + 1));
    line.cash->setToolTip(tr("It is rounded to the smallest coin, and change is given of it"));
    line.cash->setChecked(m_rows[at].isCash);
    desk::standsFor(*line.cash, fieldOf<&WayToPay::isCash>());
    grid()->cells()->addWidget(line.name, row + 1, 0);
    grid()->cells()->addWidget(line.cash, row + 1, 1);
    auto* remove = grid()->addRemove(row + 1, 2, tr("Take way to pay %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, row] {
        m_rows.erase(m_rows.begin() + row);
        rebuild();
        Q_EMIT edited();
    });
    connect(line.name, &desk::TypedField::committed, this, &PayRows::committed);
    connect(line.cash, &QCheckBox::clicked, this, &PayRows::committed);
    m_lines.push_back(line);
}

void PayRows::committed() {
    std::vector<WayToPay> rows;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const auto& line = m_lines[i];
        const bool isGood = line.name->problem().isEmpty(); // a bad one stays as typed, and as the book has it
        rows.push_back({isGood ? line.name->words() : m_rows[i].name, line.cash->isChecked()});
    }
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::shop

#include "moc_pay_rows.cpp"
