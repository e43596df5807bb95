// SPDX-License-Identifier: MIT
#include "app/customers/erase_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/words/contact_words.h"

#include <QBoxLayout>
#include <QPushButton>

namespace sp::customers {

using desk::Role;
using desk::TextSize;
using desk::Weight;

EraseDialog::EraseDialog(CustomersPresenter& presenter, const db::BackupPlaces& places,
                         const desk::Formatter& formatter, QWidget* parent)
    : QDialog(parent)
    , m_presenter(presenter)
    , m_customer(presenter.currentId())
    , m_problem(new desk::ProblemNote(this)) {
    setObjectName(QStringLiteral("eraseCustomerQuestion"));
    setWindowTitle(tr("Erase %1?").arg(QString::fromStdString(m_presenter.current()->name)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    auto* title = desk::pageTitle(windowTitle(), this);
    title->setWordWrap(true);
    column->addWidget(title);
    say(column, words::whatErasingLeaves(), Role::Ink);
    const auto copies = m_presenter.copies(places);
    if (!copies.empty()) addCopies(column, copies, formatter);
    if (places.isSecondAway())
        say(column, words::secondPlaceIsAway(QString::fromStdString(places.second.string())), Role::Warn);
    m_problem->setObjectName(QStringLiteral("eraseProblem"));
    column->addWidget(m_problem);
    addButtons(column);
    resize(desk::withinScreen(*this, {desk::scaled(640), desk::scaled(copies.empty() ? 260 : 520)}));
    m_keep->setFocus(Qt::OtherFocusReason);
}

void EraseDialog::say(QVBoxLayout* column, const QString& words, Role role) {
    auto* label = new desk::TextLabel(words, TextSize::Body, role, Weight::Plain, this);
    label->setWordWrap(true);
    column->addWidget(label);
}

void EraseDialog::addCopies(QVBoxLayout* column, const std::vector<db::Leaving>& copies,
                            const desk::Formatter& formatter) {
    say(column,
        tr("These copies of the book hold the person still. The days hold if the book is used every day; a copy "
           "that you delete yourself is gone at once."),
        Role::Muted);
    auto* table =
        new desk::FiguresTable(windowTitle(), {{tr("Copy"), false, true}, {tr("Goes on"), false, false}}, this);
    table->setObjectName(QStringLiteral("copiesLeft"));
    std::vector<QStringList> rows;
    for (const auto& copy : copies) {
        const auto name = QString::fromStdString(copy.backup.file.filename().string());
        rows.push_back({copy.isInSecondPlace ? tr("%1, in the second place").arg(name) : name,
                        copy.day ? formatter.date(units::Date::fromDays(*copy.day)) : tr("when you delete it")});
    }
    table->setRows(rows);
    column->addWidget(table, 1);
}

void EraseDialog::addButtons(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_erase = new QPushButton(tr("&Erase for good"), this);
    m_erase->setObjectName(QStringLiteral("eraseForGood"));
    m_erase->setAutoDefault(false);
    m_keep = new QPushButton(tr("&Keep"), this);
    m_keep->setObjectName(QStringLiteral("keepCustomer"));
    m_keep->setDefault(true);
    row->addWidget(m_erase);
    row->addStretch(1);
    row->addWidget(m_keep);
    column->addLayout(row);
    connect(m_erase, &QPushButton::clicked, this, &EraseDialog::erase);
    connect(m_keep, &QPushButton::clicked, this, &QDialog::reject);
}

void EraseDialog::erase() {
    const auto refusal = m_presenter.erase(m_customer);
    m_problem->setRefusal(refusal);
    if (refusal.isEmpty()) return accept();
    if (m_presenter.session().customer(m_customer)) return;
    // Erased, and something is to be read nevertheless: nobody is left to erase or to keep.
    m_erase->setEnabled(false);
    m_keep->setText(tr("&Close"));
}

} // namespace sp::customers

#include "moc_erase_dialog.cpp"
