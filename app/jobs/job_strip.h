// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/card.h"
#include "app/desk/choice_field.h"
#include "app/desk/field_box.h"
#include "app/desk/figures.h"
#include "app/format/formatter.h"
#include "app/jobs/jobs_presenter.h"

#include <QBoxLayout>
#include <QPushButton>

namespace sp::jobs {

/// Below the table: the current quote, its stage, and a button that opens it at the Counter.
class JobStrip : public desk::Card {
    Q_OBJECT

  public:
    JobStrip(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Shows the current quote. A stage typed wrongly stays until another quote is shown.
    void load();
    /// How many quotes are selected in the table.
    void setChosen(int quotes);

  Q_SIGNALS:
    void openAsked();
    void moneyAsked();      ///< the payments of the quote
    void papersAsked();     ///< its invoice, receipts and credit notes
    void planAsked();       ///< a sheet plan of the selected quotes
    void benchSheetAsked(); ///< what to make it by
    void changesAsked();    ///< what has changed since the quote was given
    void repeatAsked();     ///< order again what it ordered
    void reviseAsked();     ///< change what it ordered

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void stageChosen(const QVariant& chosen);
    void moveOn();
    void arrange();
    void choiceTaken(const QVariant& chosen);
    void loadChoices(const db::QuoteSummary& job);

    JobsPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QBoxLayout* m_actions = nullptr;
    QBoxLayout* m_rows = nullptr; ///< the description, with the buttons beside or below it
    desk::TextLabel* m_title = nullptr;
    desk::TextLabel* m_detail = nullptr;
    desk::FigureLabel* m_total = nullptr;
    desk::TextLabel* m_left = nullptr; ///< what is left of it, once something was paid
    desk::ChoiceField* m_choice = nullptr;
    desk::FieldBox* m_choiceBox = nullptr;
    desk::ChoiceField* m_stage = nullptr;
    QPushButton* m_next = nullptr; ///< to the usual next stage
    QPushButton* m_money = nullptr;
    QPushButton* m_papers = nullptr;
    QPushButton* m_plan = nullptr;
    QPushButton* m_bench = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_revise = nullptr;
    QPushButton* m_open = nullptr;
    QPushButton* m_changes = nullptr;
    base::Id m_shown;
};

} // namespace sp::jobs
