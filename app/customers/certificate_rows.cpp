// SPDX-License-Identifier: MIT
#include "app/customers/certificate_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/field_binding.h"
#include "core/catalogue/fields/tables.h"

#include <algorithm>

namespace sp::customers {

using catalogue::Certificate;
using catalogue::fields::fieldOf;

CertificateRows::CertificateRows(const desk::Formatter& formatter, units::Date today, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_formatter(formatter)
    , m_today(today) {
    auto* add = addButton(tr("+ further certificate"), QStringLiteral("certificateAdd"));
    connect(add, &QPushButton::clicked, this, &CertificateRows::addRow);
    desk::standsFor(*this, fieldOf<&catalogue::Customer::otherCertificates>());
    rebuild();
}

std::vector<CertificateRows::Typed> CertificateRows::typedOf(const std::vector<Certificate>& rows) {
    std::vector<Typed> typed;
    for (const auto& row : rows) typed.push_back({row.number, row.place, row.issuedOn, row.expiresOn, row});
    return typed;
}

bool CertificateRows::isUnfinished() const {
    return isRefused() ||
           std::ranges::any_of(m_typed, [](const Typed& one) { return !one.isBlank() && !one.isWhole(); }) ||
           std::ranges::any_of(m_lines, [](const Line& line) {
               return line.number->isDirty() || line.place->isDirty() || line.issuedOn->isDirty() ||
                      line.expiresOn->isDirty();
           });
}

void CertificateRows::setRows(const std::vector<Certificate>& rows) {
    m_onFile = rows;
    if (rows == m_rows) // as it was handed on
        for (auto& one : m_typed) one.onFile = one.kept();
    std::vector<Certificate> shown;
    for (const auto& one : m_typed)
        if (one.onFile) shown.push_back(*one.onFile);
    if (rows == shown || isUnfinished()) return; // a row that was just added stays
    startAnew(rows);
}

void CertificateRows::startAnew(const std::vector<Certificate>& rows) {
    m_onFile = m_rows = rows;
    m_typed = typedOf(rows);
    setRefusal({});
    rebuild();
}

void CertificateRows::addRow() {
    m_typed.emplace_back();
    rebuild();
    m_lines.back().number->setFocus(Qt::OtherFocusReason);
}

void CertificateRows::takeOut(std::size_t at) {
    m_typed[at] = {{}, {}, {}, {}, m_typed[at].onFile};
    auto rows = merged();
    m_typed.erase(m_typed.begin() + static_cast<std::ptrdiff_t>(at));
    rebuild();
    handOn(std::move(rows));
}

void CertificateRows::rebuild() {
    m_lines.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(0, 2);
    grid()->cells()->setColumnStretch(1, 2);
    if (!m_typed.empty()) grid()->addHeads({tr("number"), tr("good for"), tr("issued on"), tr("expires on")});
    std::vector<desk::TypedField*> fields;
    for (std::size_t i = 0; i < m_typed.size(); ++i) {
        addLine(i);
        const auto& line = m_lines[i];
        fields.insert(fields.end(), {line.number, line.place, line.issuedOn, line.expiresOn});
    }
    problem()->watch(fields);
    grid()->finish();
}

void CertificateRows::addLine(std::size_t at) {
    const auto row = static_cast<int>(at);
    auto* body = grid()->body();
    const Line line{new desk::WordField(m_formatter, {}, body), new desk::WordField(m_formatter, {}, body),
                    new desk::DateField(m_formatter, m_today, body), new desk::DateField(m_formatter, m_today, body)};
    const auto& typed = m_typed[at];
    line.number->setRaw(QString::fromStdString(typed.number));
    line.place->setRaw(QString::fromStdString(typed.place));
    const auto place = [&](desk::TypedField* field, int column, const QString& name, const QString& spoken) {
        field->setEmptyAllowed(true);
        field->setObjectName(name + QString::number(row));
        field->setAccessibleName(spoken);
        grid()->cells()->addWidget(field, row + 1, column);
        connect(field, &desk::TypedField::committed, this, [this, at] { committed(at); });
    };
    place(line.number, 0, QStringLiteral("certificateNumber"), tr("number of further certificate %1").arg(row + 1));
    place(line.place, 1, QStringLiteral("certificatePlace"),
          tr("what further certificate %1 is good for").arg(row + 1));
    place(line.issuedOn, 2, QStringLiteral("certificateIssued"),
          tr("day of issue of further certificate %1").arg(row + 1));
    place(line.expiresOn, 3, QStringLiteral("certificateExpires"),
          tr("day of expiry of further certificate %1").arg(row + 1));
    line.issuedOn->setOptionalValue(typed.issuedOn);
    line.expiresOn->setOptionalValue(typed.expiresOn);
    desk::standsFor(*line.number, fieldOf<&Certificate::number>());
    desk::standsFor(*line.place, fieldOf<&Certificate::place>());
    desk::standsFor(*line.issuedOn, fieldOf<&Certificate::issuedOn>());
    desk::standsFor(*line.expiresOn, fieldOf<&Certificate::expiresOn>());
    auto* remove = grid()->addRemove(row + 1, 4, tr("Take further certificate %1 out").arg(row + 1));
    connect(remove, &QToolButton::clicked, this, [this, at] { takeOut(at); });
    m_lines.push_back(line);
}

void CertificateRows::committed(std::size_t at) {
    const auto& line = m_lines[at];
    const auto issued = line.issuedOn->optionalValue();
    const auto expires = line.expiresOn->optionalValue();
    if (!issued || !expires) return; // a day that cannot be read stays, with its sentence
    m_typed[at] = {line.number->words(), line.place->words(), *issued, *expires, m_typed[at].onFile};
    handOn(merged());
}

std::optional<Certificate> CertificateRows::Typed::kept() const {
    if (isWhole()) return Certificate{number, place, *issuedOn, expiresOn};
    return isBlank() ? std::nullopt : onFile;
}

std::vector<Certificate> CertificateRows::merged() const {
    auto rows = m_onFile;
    auto next = rows.begin(); // where a new one goes: behind the row before it
    for (const auto& one : m_typed) {
        const auto now = one.kept();
        const auto old = one.onFile ? std::ranges::find(rows, *one.onFile) : rows.end();
        if (old == rows.end()) {
            if (now && now != one.onFile)
                next = rows.insert(next, *now) + 1; // new, or changed while another took it out
        } else if (now) {
            *old = *now;
            next = old + 1;
        } else {
            next = rows.erase(old);
        }
    }
    return rows;
}

void CertificateRows::handOn(std::vector<Certificate> rows) {
    if (rows == m_onFile && !isRefused()) return;
    m_rows = std::move(rows);
    Q_EMIT edited();
}

} // namespace sp::customers

#include "moc_certificate_rows.cpp"
