// SPDX-License-Identifier: MIT
#include "app/jobs/payment_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_box.h"
#include "app/words/payment_words.h"
#include "app/words/words.h"

#include <QBoxLayout>
#include <QGridLayout>

namespace sp::jobs {

using desk::Role;
using desk::TextSize;
using desk::Weight;

PaymentDialog::PaymentDialog(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QDialog(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_job(presenter.current()->id) {
    setObjectName(QStringLiteral("payments"));
    setWindowTitle(tr("Payments for %1").arg(QString::fromStdString(m_presenter.current()->number)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(windowTitle(), this));
    buildFigures(column);
    m_table = new desk::FiguresTable(
        tr("Payments"),
        {{tr("Day"), false, false}, {tr("How"), false, false}, {tr("Note")}, {tr("Amount"), true, false}}, this);
    m_table->setObjectName(QStringLiteral("paymentList"));
    column->addWidget(m_table, 1);
    buildEntry(column);
    buildButtons(column);
    resize(desk::withinScreen(*this, {desk::scaled(620), desk::scaled(520)}));
    load();
    m_amount->setFocus(Qt::OtherFocusReason);
}

void PaymentDialog::buildFigures(QBoxLayout* column) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(28);
    grid->setVerticalSpacing(0);
    int at = 0;
    for (const auto& [label, name, figure] :
         {std::tuple{tr("To pay"), "accountTotal", &m_total}, std::tuple{tr("Paid"), "accountPaid", &m_paid},
          std::tuple{tr("Left"), "accountLeft", &m_left}}) {
        auto* words = new desk::TextLabel(label, TextSize::Small, Role::Muted, Weight::Plain, this);
        grid->addWidget(words, 0, at);
        m_leftLabel = words; // the last
        *figure = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, this);
        (*figure)->setObjectName(QLatin1String(name));
        (*figure)->setMeaning(label);
        (*figure)->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        grid->addWidget(*figure, 1, at++);
    }
    grid->setColumnStretch(at, 1);
    column->addLayout(grid);
}

void PaymentDialog::buildEntry(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_amount = new desk::MoneyField(m_formatter, this);
    m_amount->setObjectName(QStringLiteral("paymentAmount"));
    row->addWidget(new desk::FieldBox(tr("&Amount"), m_amount, this), 2, Qt::AlignTop);
    m_kind = new desk::ChoiceField(m_formatter, this);
    m_kind->setObjectName(QStringLiteral("paymentKind"));
    m_kind->setNewWording(tr("“%1”"));
    std::vector<desk::Choice> kinds;
    for (const auto& way : words::waysToPay(m_presenter.waysToPay())) {
        const auto name = QString::fromStdString(way.name);
        kinds.push_back({name, name, {}, {}});
    }
    const auto first = kinds.front().id;
    m_kind->setChoices(std::move(kinds));
    m_kind->setCurrent(first);
    connect(m_kind, &desk::ChoiceField::chosen, this, &PaymentDialog::askAnew);
    connect(m_kind, &desk::ChoiceField::typedNew, this, [this](const QString& kind) {
        auto all = m_kind->choices();
        all.push_back({kind, kind, {}, {}});
        m_kind->setChoices(std::move(all));
        m_kind->setCurrent(kind);
        askAnew();
    });
    row->addWidget(new desk::FieldBox(tr("&How"), m_kind, this), 2, Qt::AlignTop);
    const auto today = m_presenter.today();
    m_day = new desk::DateField(m_formatter, today, this);
    m_day->setObjectName(QStringLiteral("paymentDay"));
    m_day->setValue(today);
    row->addWidget(new desk::FieldBox(tr("&Day"), m_day, this), 2, Qt::AlignTop);
    m_note = new desk::WordField(m_formatter, {}, this);
    m_note->setObjectName(QStringLiteral("paymentNote"));
    m_note->setEmptyAllowed(true);
    row->addWidget(new desk::FieldBox(tr("&Note"), m_note, this), 3, Qt::AlignTop);
    column->addLayout(row);
    m_problem = new desk::ProblemNote(this);
    m_problem->setObjectName(QStringLiteral("paymentProblem"));
    m_problem->watch({m_amount, m_kind, m_day, m_note});
    column->addWidget(m_problem);
    connect(m_amount, &desk::TypedField::edited, this, &PaymentDialog::weighBeyond);
}

void PaymentDialog::buildButtons(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto add = [&](QPushButton*& button, const QString& text, const char* name, auto act) {
        button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
    };
    add(m_take, tr("&Take payment"), "takePayment", [this] { takeOrChange(); });
    desk::makePrimary(*m_take);
    m_take->setDefault(true);
    add(m_keep, QString(), "keepCredit", [this] { take(pricing::Beyond::Kept); });
    add(m_giveBack, tr("&Give back"), "giveBack", [this] { giveBack(); });
    add(m_takeBack, tr("Take this &one back"), "takeBackPayment", [this] { takeBack(); });
    m_takeBack->setToolTip(tr("Books the chosen payment back: one that was a mistake"));
    row->addStretch(1);
    QPushButton* close = nullptr;
    add(close, tr("Close"), "closePayments", [this] { reject(); });
    column->addLayout(row);
}

void PaymentDialog::load() {
    const auto account = m_presenter.account(m_job);
    if (!account) {
        m_problem->setRefusal(words::sentence(account.error()));
        for (auto* button : {m_take, m_keep, m_giveBack, m_takeBack}) button->setEnabled(false);
        m_keep->hide();
        return;
    }
    m_account = *account;
    m_payments = m_presenter.payments(m_job);
    m_total->setFigure(m_formatter.money(m_account.total));
    m_paid->setFigure(m_formatter.money(m_account.paid));
    const bool hasCredit = !m_account.credit.isZero();
    m_leftLabel->setText(hasCredit ? tr("Credit") : tr("Left"));
    m_left->setMeaning(m_leftLabel->text());
    m_left->setFigure(m_formatter.money(hasCredit ? m_account.credit : m_account.left));
    std::vector<QStringList> rows;
    for (const auto& payment : m_payments) {
        auto note = QString::fromStdString(payment.note);
        if (const auto role = words::roleOf(payment); !role.isEmpty())
            note = note.isEmpty() ? role : tr("%1: %2").arg(role, note);
        rows.push_back({m_formatter.date(payment.paidOn), QString::fromStdString(payment.kind), note,
                        m_formatter.money(payment.amount)});
    }
    m_table->setRows(rows);
    m_takeBack->setEnabled(!rows.empty());
    m_giveBack->setEnabled(!m_account.paid.isZero());
    ask();
    m_note->setRaw({});
}

pricing::Tender PaymentDialog::tender() const { return words::tenderOf(m_kind->text(), m_presenter.waysToPay()); }

units::Money PaymentDialog::due() const {
    return tender() == pricing::Tender::Cash ? pricing::countedOut(m_account.left, m_account.coin) : m_account.left;
}

void PaymentDialog::ask() {
    const auto next = m_account.next(tender());
    m_asked = next.isZero() ? std::nullopt : std::optional(next);
    m_amount->setOptionalValue(m_asked);
    weighBeyond();
}

void PaymentDialog::askAnew() {
    const auto amount = m_amount->value();
    if (m_asked ? amount && *amount == *m_asked : m_amount->isBlank())
        ask();
    else
        weighBeyond();
}

bool PaymentDialog::isBeyond() const {
    const auto amount = m_amount->value();
    return amount && *amount > std::max(m_account.left, due());
}

void PaymentDialog::weighBeyond() {
    const bool beyond = isBeyond();
    const bool hasChange = beyond && tender() == pricing::Tender::Cash;
    m_keep->setVisible(beyond);
    m_take->setEnabled(!beyond || !due().isZero());
    const auto amount = m_amount->value();
    if (hasChange)
        m_take->setText(tr("&Take %1, change %2").arg(m_formatter.money(*amount), m_formatter.money(*amount - due())));
    else if (amount && due() != m_account.left && (*amount == due() || *amount == m_account.left))
        m_take->setText(
            tr("&Take %1, rounded from %2").arg(m_formatter.money(due()), m_formatter.money(m_account.left)));
    else
        m_take->setText(tr("&Take payment"));
    if (beyond) m_keep->setText(tr("&Keep %1 as credit").arg(m_formatter.money(*amount - m_account.left)));
    if (!beyond) m_problem->setRefusal({});
}

void PaymentDialog::take(pricing::Beyond beyond) {
    const auto amount = m_amount->value();
    if (!amount) {
        m_amount->showError();
        m_amount->setFocus(Qt::OtherFocusReason);
        return;
    }
    book(*amount, beyond);
}

void PaymentDialog::takeOrChange() {
    const bool hasChange = isBeyond() && tender() == pricing::Tender::Cash;
    take(hasChange ? pricing::Beyond::Change : pricing::Beyond::Refused);
}

void PaymentDialog::giveBack() {
    const auto amount = m_amount->value();
    if (!amount) {
        m_amount->showError();
        m_amount->setFocus(Qt::OtherFocusReason);
        return;
    }
    book(-*amount, pricing::Beyond::Refused);
}

void PaymentDialog::book(units::Money amount, pricing::Beyond beyond) {
    const auto day = m_day->value();
    if (!day || !m_kind->problem().isEmpty()) return; // the note says what is wrong
    catalogue::Payment payment;
    payment.job = m_job;
    payment.amount = amount;
    payment.kind = m_kind->text().trimmed().toStdString();
    payment.paidOn = *day;
    payment.note = m_note->text().trimmed().toStdString();
    if (const auto refused = m_presenter.pay(std::move(payment), beyond, tender())) {
        m_problem->setRefusal(words::sentence(*refused));
        return;
    }
    load();
    m_amount->setFocus(Qt::OtherFocusReason);
}

void PaymentDialog::takeBack() {
    const int row = m_table->currentIndex().row();
    if (row < 0 || row >= static_cast<int>(m_payments.size())) {
        m_problem->setRefusal(tr("No payment is chosen; choose the one to take back in the list."));
        return;
    }
    if (const auto refused = m_presenter.takeBackPayment(m_payments[static_cast<std::size_t>(row)].id)) {
        m_problem->setRefusal(words::sentence(*refused));
        return;
    }
    load();
}

} // namespace sp::jobs

#include "moc_payment_dialog.cpp"
