// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/card.h"
#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/format/formatter.h"
#include "app/jobs/jobs_presenter.h"

#include <QBoxLayout>
#include <QPushButton>

namespace sp::jobs {

/// Under the table: the quote looked at, where it stands, and the way to the Counter.
class JobStrip : public desk::Card {
    Q_OBJECT

  public:
    JobStrip(JobsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Shows the current quote; a stage that cannot be read stays while the quote is the same.
    void load();
    /// So many quotes are chosen in the table.
    void setChosen(int quotes);

  Q_SIGNALS:
    void openAsked();
    void planAsked();    ///< how what the chosen quotes need cut lies on its sheets
    void changesAsked(); ///< what is no longer as when the quote was given

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void stageChosen(const QVariant& chosen);

    JobsPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QBoxLayout* m_rows = nullptr; ///< what it is, and below or beside it what can be done
    desk::TextLabel* m_title = nullptr;
    desk::TextLabel* m_detail = nullptr;
    desk::FigureLabel* m_total = nullptr;
    desk::ChoiceField* m_stage = nullptr;
    QPushButton* m_plan = nullptr;
    QPushButton* m_open = nullptr;
    QPushButton* m_changes = nullptr;
    base::Id m_shown;
};

} // namespace sp::jobs
