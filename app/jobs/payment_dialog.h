// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/desk/problem_note.h"
#include "app/desk/value_fields.h"
#include "app/desk/word_field.h"
#include "app/jobs/jobs_presenter.h"

#include <QDialog>
#include <QPushButton>

class QBoxLayout;

namespace sp::jobs {

/// The money of a job: what is to pay, what was paid, every payment, and fields for the next. Enter takes what is asked
/// for next. What is more than is left is taken only when somebody says what becomes of it.
class PaymentDialog : public QDialog {
    Q_OBJECT

  public:
    /// Of the job that is current now, and of no other later.
    PaymentDialog(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

  private:
    void buildFigures(QBoxLayout* column);
    void buildEntry(QBoxLayout* column);
    void buildButtons(QBoxLayout* column);
    void load();
    void take(pricing::Beyond beyond);
    /// Of cash beyond what is left, the rest is change.
    void takeOrChange();
    pricing::Tender tender() const;
    /// What is left, as it can be paid in the way that is chosen.
    units::Money due() const;
    /// Puts what is asked for next into the field; `askAnew` leaves there what somebody typed.
    void ask();
    void askAnew();
    void giveBack();
    void takeBack();
    void book(units::Money amount, pricing::Beyond beyond);
    /// Asks what becomes of what is more than is left, if that is so.
    void weighBeyond();
    bool isBeyond() const;

    JobsPresenter& m_presenter;
    desk::Formatter m_formatter;
    base::Id m_job;
    pricing::Account m_account;
    std::optional<units::Money> m_asked;
    std::vector<catalogue::Payment> m_payments;
    desk::FigureLabel* m_total = nullptr;
    desk::FigureLabel* m_paid = nullptr;
    desk::FigureLabel* m_left = nullptr;
    desk::TextLabel* m_leftLabel = nullptr;
    desk::FiguresTable* m_table = nullptr;
    desk::MoneyField* m_amount = nullptr;
    desk::ChoiceField* m_kind = nullptr;
    desk::DateField* m_day = nullptr;
    desk::WordField* m_note = nullptr;
    desk::ProblemNote* m_problem = nullptr;
    QPushButton* m_take = nullptr;
    QPushButton* m_keep = nullptr;
    QPushButton* m_giveBack = nullptr;
    QPushButton* m_takeBack = nullptr;
};

} // namespace sp::jobs
