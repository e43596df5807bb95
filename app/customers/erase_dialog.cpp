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

EraseDialog::EraseDialog(CustomersPresenter& presenter, const std::vector<db::Leaving>& copies,
                         const desk::Formatter& formatter, QWidget* parent)
    : QDialog(parent)
    , m_presenter(presenter)
    , m_problem(new desk::ProblemNote(this)) {
    setObjectName(QStringLiteral("eraseCustomerQuestion"));
    setWindowTitle(tr("Erase %1?").arg(QString::fromStdString(m_presenter.current()->name)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    auto* title = desk::pageTitle(windowTitle(), this);
    title->setWordWrap(true);
    column->addWidget(title);
    const auto say = [&](const QString& words, Role role) {
        auto* label = new desk::TextLabel(words, TextSize::Body, role, Weight::Plain, this);
        label->setWordWrap(true);
        column->addWidget(label);
    };
    say(words::whatErasingLeaves(), Role::Ink);
    if (!copies.empty()) {
        say(tr("These copies of the book hold the person still. The days hold if the book is used every day; a copy "
               "that you delete yourself is gone at once."),
            Role::Muted);
        auto* table = new desk::FiguresTable(QStringLiteral("copiesLeft"),
                                             {{tr("Copy"), false, true}, {tr("Goes on"), false, false}}, this);
        table->setObjectName(QStringLiteral("copiesLeft"));
        std::vector<QStringList> rows;
        for (const auto& copy : copies)
            rows.push_back({QString::fromStdString(copy.backup.file.filename().string()),
                            copy.day ? formatter.date(units::Date::fromDays(*copy.day)) : tr("when you delete it")});
        table->setRows(rows);
        column->addWidget(table, 1);
    }
    m_problem->setObjectName(QStringLiteral("eraseProblem"));
    column->addWidget(m_problem);
    auto* row = new QHBoxLayout;
    auto* erase = new QPushButton(tr("&Erase for good"), this);
    erase->setObjectName(QStringLiteral("eraseForGood"));
    erase->setAutoDefault(false);
    auto* keep = new QPushButton(tr("&Keep"), this);
    keep->setObjectName(QStringLiteral("keepCustomer"));
    keep->setDefault(true);
    row->addWidget(erase);
    row->addStretch(1);
    row->addWidget(keep);
    column->addLayout(row);
    connect(erase, &QPushButton::clicked, this, &EraseDialog::erase);
    connect(keep, &QPushButton::clicked, this, &QDialog::reject);
    resize(desk::withinScreen(*this, {desk::scaled(640), desk::scaled(copies.empty() ? 260 : 520)}));
    keep->setFocus(Qt::OtherFocusReason);
}

void EraseDialog::erase() {
    const auto refusal = m_presenter.erase();
    m_problem->setRefusal(refusal);
    if (refusal.isEmpty()) accept();
}

} // namespace sp::customers

#include "moc_erase_dialog.cpp"
