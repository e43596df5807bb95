// SPDX-License-Identifier: MIT
#include "app/customers/contacts_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/figures_table.h"
#include "app/words/words.h"

#include <QBoxLayout>
#include <QPushButton>

namespace sp::customers {

using catalogue::ContactFit;

namespace {

QString wordOf(const catalogue::ContactRow& row) {
    if (row.fillsCertificate)
        return ContactsDialog::tr("there already; what was lacking is filled in, with a certificate of exemption");
    switch (row.fit) {
    case ContactFit::New: return ContactsDialog::tr("new");
    case ContactFit::Same: return ContactsDialog::tr("there already; what was lacking is filled in");
    case ContactFit::Known: return ContactsDialog::tr("there already");
    case ContactFit::Doubtful: return ContactsDialog::tr("left out: somebody else has the name, telephone or mail");
    }
    return {};
}

} // namespace

ContactsDialog::ContactsDialog(CustomersPresenter& presenter, std::vector<catalogue::Customer> contacts,
                               const db::ContactsPlan& plan, QWidget* parent)
    : QDialog(parent)
    , m_presenter(presenter)
    , m_contacts(std::move(contacts)) {
    setObjectName(QStringLiteral("contacts"));
    setWindowTitle(tr("Customers out of a file"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(windowTitle(), this));
    auto* table = new desk::FiguresTable(windowTitle(),
                                         {{tr("Name"), false, true}, {tr("What becomes of it"), false, true}}, this);
    table->setObjectName(QStringLiteral("contactList"));
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < plan.rows.size(); ++i) {
        const auto& refusal = plan.refusals[i];
        rows.push_back({QString::fromStdString(plan.rows[i].contact.name),
                        refusal ? tr("left out: %1").arg(words::sentence(*refusal)) : wordOf(plan.rows[i])});
    }
    table->setRows(rows);
    column->addWidget(table, 1);
    auto* row = new QHBoxLayout;
    auto* take = new QPushButton(tr("&Take them into the book"), this);
    take->setObjectName(QStringLiteral("takeContacts"));
    take->setEnabled(plan.count(ContactFit::New) + plan.count(ContactFit::Same) > 0);
    desk::makePrimary(*take);
    take->setDefault(true);
    auto* back = new QPushButton(tr("&Back"), this);
    back->setObjectName(QStringLiteral("leaveContacts"));
    back->setAutoDefault(false);
    row->addWidget(take);
    row->addStretch(1);
    row->addWidget(back);
    column->addLayout(row);
    connect(take, &QPushButton::clicked, this, &ContactsDialog::take);
    connect(back, &QPushButton::clicked, this, &QDialog::reject);
    resize(desk::withinScreen(*this, {desk::scaled(680), desk::scaled(480)}));
}

void ContactsDialog::take() {
    const auto taken = m_presenter.session().change([&](db::Book& book) { return book.takeContacts(m_contacts); });
    if (taken) accept();
}

} // namespace sp::customers

#include "moc_contacts_dialog.cpp"
