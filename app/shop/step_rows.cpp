// SPDX-License-Identifier: MIT
#include "app/shop/step_rows.h"

#include "core/pricing/mark_up.h"

#include <QPushButton>

#include <algorithm>

namespace sp::shop {

StepRows::StepRows(const desk::Formatter& formatter, const std::array<QString, 3>& heads, const QString& name,
                   const catalogue::fields::Field& from, const catalogue::fields::Field& rate, bool showsMargin,
                   QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter)
    , m_heads(heads)
    , m_name(name)
    , m_from(from)
    , m_rate(rate)
    , m_showsMargin(showsMargin) {
    auto* add = addButton(tr("+ step"), name + QStringLiteral("Add"));
    connect(add, &QPushButton::clicked, this, [this] {
        m_rows.push_back(m_rows.empty() ? StepRow{1, {}} : StepRow{m_rows.back().from * 2, m_rows.back().rate});
        rebuild();
        Q_EMIT edited();
        m_lines.back().from->setFocus(Qt::OtherFocusReason);
    });
}

QString StepRows::marginOf(units::Rate markUp) const {
    const auto margin = m_showsMargin ? pricing::marginFromMarkUp(markUp) : std::nullopt;
    return margin ? m_formatter.rate(*margin) : QString();
}

void StepRows::setRows(const std::vector<StepRow>& rows) {
    const bool same = rows.size() == m_lines.size();
    m_rows = rows;
    if (!same) return rebuild();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!m_lines[i].from->isDirty()) m_lines[i].from->setValue(units::Count::of(rows[i].from));
        if (!m_lines[i].rate->isDirty()) m_lines[i].rate->setValue(rows[i].rate);
        m_lines[i].margin->setText(marginOf(rows[i].rate));
    }
}

void StepRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(4, 1);
    grid()->addHeads({m_heads.begin(), m_heads.end()});
    for (std::size_t i = 0; i < m_rows.size(); ++i) addLine(static_cast<int>(i));
    std::vector<desk::TypedField*> fields;
    for (const auto& line : m_lines) fields.insert(fields.end(), {line.from, line.rate});
    problem()->watch(fields);
    grid()->finish();
}

void StepRows::addLine(int row) {
    const auto& step = m_rows[static_cast<std::size_t>(row)];
    Line line{new desk::CountField(m_formatter, grid()->body()), new desk::RateField(m_formatter, grid()->body()),
              new desk::TextLabel(marginOf(step.rate), desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain,
                                  grid()->body())};
    line.from->setObjectName(QStringLiteral("%1From%2").arg(m_name).arg(row));
    line.from->setAccessibleName(QStringLiteral("%1, %2").arg(m_heads[0]).arg(row + 1));
    desk::standsFor(*line.from, m_from);
    desk::standsFor(*line.rate, m_rate);
    line.from->setValue(units::Count::of(step.from));
    line.rate->setObjectName(QStringLiteral("%1Rate%2").arg(m_name).arg(row));
    line.rate->setAccessibleName(QStringLiteral("%1, %2").arg(m_heads[1]).arg(row + 1));
    line.rate->setUnitText(QStringLiteral("%"));
    line.rate->setValue(step.rate);
    for (desk::TypedField* field :
         {static_cast<desk::TypedField*>(line.from), static_cast<desk::TypedField*>(line.rate)}) {
        field->setMaximumWidth(desk::scaled(120));
        connect(field, &desk::TypedField::committed, this, &StepRows::committed);
    }
    grid()->cells()->addWidget(line.from, row + 1, 0);
    grid()->cells()->addWidget(line.rate, row + 1, 1);
    grid()->cells()->addWidget(line.margin, row + 1, 2);
    auto* remove = grid()->addRemove(row + 1, 3, tr("Take step %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, row] {
        m_rows.erase(m_rows.begin() + row);
        rebuild();
        Q_EMIT edited();
    });
    m_lines.push_back(line);
}

void StepRows::committed() {
    std::vector<StepRow> rows;
    for (const auto& line : m_lines) {
        const auto from = line.from->value();
        const auto rate = line.rate->value();
        if (!from || !rate) return;
        rows.push_back({from->value(), *rate});
    }
    std::sort(rows.begin(), rows.end(), [](const StepRow& a, const StepRow& b) { return a.from < b.from; });
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::shop

#include "moc_step_rows.cpp"
