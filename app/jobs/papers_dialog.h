// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/desk/problem_note.h"
#include "app/desk/value_fields.h"
#include "app/jobs/jobs_presenter.h"

#include <QDialog>
#include <QPushButton>

class QBoxLayout;

namespace sp::jobs {

/// The papers of a job: its quotes, of which the last is in force, and what was issued for it since. Enter shows the
/// chosen one, to be printed or saved as PDF; buttons issue the next invoice, receipt or credit note, which is then
/// shown. What cannot be issued is grey.
class PapersDialog : public QDialog {
    Q_OBJECT

  public:
    /// Of the job that is current now, and of no other later.
    PapersDialog(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

  private:
    void buildEntry(QBoxLayout* column);
    void buildButtons(QBoxLayout* column);
    void load();
    void showChosen();
    void show(quoting::SheetContent sheet, catalogue::Paper paper,
              const std::optional<db::ReplacedBy>& replacedBy = std::nullopt);
    /// The place of the chosen quote among those given, or that of the newest; 0 where there is one.
    std::size_t chosenQuote() const;
    void showDifference();
    void issueInvoice();
    void issueReceipt();
    void issueCredit();
    /// Lists it, chooses it and shows it, or says why it was refused.
    void settle(const base::Result<db::IssuedBill>& bill);
    /// The invoice that a credit note would be of: the chosen one, else the oldest of which something is left.
    const db::OpenInvoice* toCredit() const;
    void nameButtons();

    JobsPresenter& m_presenter;
    desk::Formatter m_formatter;
    base::Id m_job;
    std::vector<db::GivenQuote> m_given;
    db::Billing m_billing;
    desk::FiguresTable* m_table = nullptr;
    desk::MoneyField* m_amount = nullptr;
    desk::ProblemNote* m_problem = nullptr;
    QPushButton* m_show = nullptr;
    QPushButton* m_difference = nullptr; ///< of a job that was revised
    QPushButton* m_invoice = nullptr;
    QPushButton* m_receipt = nullptr;
    QPushButton* m_credit = nullptr;
};

} // namespace sp::jobs
