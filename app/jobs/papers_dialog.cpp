// SPDX-License-Identifier: MIT
#include "app/jobs/papers_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_box.h"
#include "app/jobs/difference_dialog.h"
#include "app/paper/preview_dialog.h"
#include "app/paper/replaced_mark.h"
#include "app/paper/sheet_words_of.h"
#include "app/words/bill_words.h"
#include "app/words/difference_words.h"
#include "app/words/translations.h"
#include "app/words/words.h"

#include <QBoxLayout>

#include <algorithm>

namespace sp::jobs {

using catalogue::PaperKind;
using desk::Role;
using desk::TextSize;
using desk::Weight;

PapersDialog::PapersDialog(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QDialog(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_job(presenter.current()->id) {
    setObjectName(QStringLiteral("papers"));
    setWindowTitle(tr("Papers of %1").arg(QString::fromStdString(m_presenter.current()->number)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(windowTitle(), this));
    m_table = new desk::FiguresTable(
        windowTitle(),
        {{tr("Day"), false, false}, {tr("Paper"), false, false}, {tr("Number")}, {tr("Amount"), true, false}}, this);
    m_table->setObjectName(QStringLiteral("paperList"));
    column->addWidget(m_table, 1);
    buildEntry(column);
    buildButtons(column);
    auto* caution = new desk::TextLabel(words::invoiceCaution(), TextSize::Small, Role::Muted, Weight::Plain, this);
    caution->setObjectName(QStringLiteral("invoiceCaution"));
    caution->setWordWrap(true);
    column->addWidget(caution);
    connect(m_table, &QAbstractItemView::activated, this, &PapersDialog::showChosen);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &PapersDialog::nameButtons);
    resize(desk::withinScreen(*this, {desk::scaled(680), desk::scaled(520)}));
    load();
    m_table->setFocus(Qt::OtherFocusReason);
}

void PapersDialog::buildEntry(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_amount = new desk::MoneyField(m_formatter, this);
    m_amount->setObjectName(QStringLiteral("creditAmount"));
    m_amount->setEmptyAllowed(true);
    m_amount->setToolTip(tr("How much a credit note takes back; empty: all that is left of the invoice"));
    row->addWidget(new desk::FieldBox(tr("&Take back"), m_amount, this), 0, Qt::AlignTop);
    row->addStretch(1);
    column->addLayout(row);
    m_problem = new desk::ProblemNote(this);
    m_problem->setObjectName(QStringLiteral("paperProblem"));
    m_problem->watch({m_amount});
    column->addWidget(m_problem);
}

void PapersDialog::buildButtons(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto add = [&](QPushButton*& button, const QString& text, const char* name, auto act) {
        button = new QPushButton(text, this);
        button->setObjectName(QLatin1String(name));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
    };
    add(m_show, tr("&Show"), "showPaper", [this] { showChosen(); });
    desk::makePrimary(*m_show);
    m_show->setDefault(true);
    add(m_difference, tr("&Difference"), "showDifference", [this] { showDifference(); });
    add(m_invoice, tr("&Invoice"), "issueInvoice", [this] { issueInvoice(); });
    add(m_receipt, tr("&Receipt"), "issueReceipt", [this] { issueReceipt(); });
    add(m_credit, tr("&Credit note"), "issueCredit", [this] { issueCredit(); });
    row->addStretch(1);
    QPushButton* close = nullptr;
    add(close, tr("Close"), "closePapers", [this] { reject(); });
    column->addLayout(row);
}

void PapersDialog::load() {
    auto given = m_presenter.given(m_job);
    auto billing = m_presenter.billing(m_job);
    if (!given || given->empty() || !billing) {
        if (!billing) m_problem->setRefusal(words::sentence(billing.error()));
        for (auto* button : {m_show, m_difference, m_invoice, m_receipt, m_credit}) button->setEnabled(false);
        return;
    }
    m_billing = std::move(*billing);
    m_given = std::move(*given);
    std::vector<QStringList> rows;
    for (const auto& quote : m_given) {
        const bool isReplaced = quote.number != m_given.back().number;
        rows.push_back(
            {m_formatter.date(quote.day), isReplaced ? tr("Quote, replaced") : words::nameOf(PaperKind::Quote),
             QString::fromStdString(quote.number), quote.total ? m_formatter.money(*quote.total) : QString()});
    }
    m_difference->setVisible(m_given.size() > 1);
    for (const auto& bill : m_billing.bills)
        rows.push_back({m_formatter.date(bill.result.day), words::nameOf(bill.kind),
                        QString::fromStdString(bill.number), m_formatter.money(bill.total)});
    m_table->setRows(rows);
    m_table->selectRow(static_cast<int>(rows.size()) - 1);
    nameButtons();
}

const db::OpenInvoice* PapersDialog::toCredit() const {
    const auto& open = m_billing.openInvoices;
    const int row = m_table->currentIndex().row() - static_cast<int>(m_given.size());
    if (row >= 0 && row < static_cast<int>(m_billing.bills.size())) {
        const auto& chosen = m_billing.bills[static_cast<std::size_t>(row)].id;
        const auto found = std::ranges::find(open, chosen, &db::OpenInvoice::id);
        if (found != open.end()) return &*found;
    }
    return open.empty() ? nullptr : &open.front();
}

/// Each button says what it would issue, or is grey and says why not.
void PapersDialog::nameButtons() {
    const auto& why = m_billing.whyNoInvoice;
    m_invoice->setEnabled(!why);
    m_invoice->setText(why ? tr("&Invoice") : tr("&Invoice of %1").arg(m_formatter.money(m_billing.toInvoice)));
    m_invoice->setToolTip(why ? words::sentence(*why) : tr("It stays once it is issued; a mistake is credited"));
    const auto& payments = m_billing.withoutReceipt;
    m_receipt->setEnabled(!payments.empty());
    m_receipt->setText(payments.empty() ? tr("&Receipt")
                                        : tr("&Receipt for %1").arg(m_formatter.money(payments.front().received)));
    m_receipt->setToolTip(payments.empty()
                              ? tr("Every payment that stands has its receipt")
                              : tr("For the payment of %1").arg(m_formatter.date(payments.front().payment.paidOn)));
    const auto* open = toCredit();
    m_credit->setEnabled(open != nullptr);
    m_amount->setEnabled(open != nullptr);
    m_credit->setText(open ? tr("&Credit note for %1").arg(QString::fromStdString(open->number)) : tr("&Credit note"));
    m_credit->setToolTip(open ? tr("%1 are left of it").arg(m_formatter.money(open->left))
                              : tr("There is no invoice of which anything is left"));
}

void PapersDialog::showChosen() {
    const int row = m_table->currentIndex().row() - static_cast<int>(m_given.size());
    if (row >= 0 && row < static_cast<int>(m_billing.bills.size())) {
        const auto& result = m_billing.bills[static_cast<std::size_t>(row)].result;
        show(result.sheet, result.paper);
        return;
    }
    if (m_given.empty()) return;
    auto sheet = m_presenter.quoteSheet(m_given[chosenQuote()].number, paper::sheetWords(m_formatter));
    if (sheet)
        show(std::move(sheet->sheet), sheet->paper, sheet->replacedBy);
    else
        m_problem->setRefusal(words::sentence(sheet.error()));
}

std::size_t PapersDialog::chosenQuote() const {
    const auto row = static_cast<std::size_t>(std::max(0, m_table->currentIndex().row()));
    return std::min(row, m_given.size() - 1);
}

/// Of the chosen quote from the one that it replaced; of the first, from the one it was replaced by.
void PapersDialog::showDifference() {
    if (m_given.size() < 2) return;
    const auto is = std::max<std::size_t>(1, chosenQuote());
    const auto& was = m_given[is - 1].number;
    const auto& now = m_given[is].number;
    auto* dialog = new DifferenceDialog({QString::fromStdString(was), QString::fromStdString(now)},
                                        m_presenter.difference(was, now, m_formatter.style()), m_formatter, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void PapersDialog::show(quoting::SheetContent sheet, catalogue::Paper paper,
                        const std::optional<db::ReplacedBy>& replacedBy) {
    auto document = paper::documentOf(sheet, paper);
    if (replacedBy) {
        const words::LanguageScope language({QString::fromStdString(sheet.language)});
        const auto day = paper::sheetWords(m_formatter).date(replacedBy->day);
        paper::layOver(document, words::replacedMark(*replacedBy, QString::fromStdString(day)), paper);
    }
    paper::showPreview(std::move(document), paper, QString::fromStdString(sheet.title), "preview", this);
}

void PapersDialog::settle(const base::Result<db::IssuedBill>& bill) {
    if (!bill) {
        m_problem->setRefusal(words::sentence(bill.error()));
        return;
    }
    m_problem->setRefusal({});
    load();
    showChosen();
}

void PapersDialog::issueInvoice() { settle(m_presenter.issueInvoice(m_job, paper::sheetWords(m_formatter))); }

void PapersDialog::issueReceipt() {
    if (m_billing.withoutReceipt.empty()) return;
    settle(m_presenter.issueReceipt(m_billing.withoutReceipt.front().payment.id, paper::sheetWords(m_formatter)));
}

void PapersDialog::issueCredit() {
    const auto* open = toCredit();
    if (!open || !m_amount->problem().isEmpty()) return; // the note says what is wrong
    const auto amount = m_amount->optionalValue();
    if (!amount) return;
    const auto bill = m_presenter.issueCredit(open->id, *amount, paper::sheetWords(m_formatter));
    if (bill) m_amount->setRaw({});
    settle(bill);
}

} // namespace sp::jobs

#include "moc_papers_dialog.cpp"
