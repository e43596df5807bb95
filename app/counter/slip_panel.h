// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/format/formatter.h"
#include "app/words/sheet_words.h"
#include "core/pricing/left_out.h"
#include "core/quoting/sheet_maker.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

namespace sp::counter {

class SlipBack;
class SlipChoices;
class SlipLines;
class SlipTotals;

/// The words of the sheet, with figures and days as this shop reads them.
words::SheetWords sheetWords(const desk::Formatter& formatter);

/// What stands on the slip: the sheet as it was given, or of the order as it is now, without the prices of other
/// quantities. Looks at the choice that is looked at. Only while there is a price.
quoting::SheetContent slipOf(CounterPresenter& presenter, const words::SheetWords& words);

/// The right of the Counter: the slip, front or back, and its buttons.
class SlipPanel : public QWidget {
    Q_OBJECT

  public:
    SlipPanel(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    bool isTurned() const;
    void turnOver();
    /// The total on the front; a dash while there is none.
    QString toPay() const;

  Q_SIGNALS:
    void issueAsked();
    void printAsked();
    void copyAsked();
    void buyingAsked();
    void mendAsked(const pricing::LeftOut& leftOut);
    void turned(bool back);

  private:
    void refresh();
    void refreshButtons();

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    quoting::SheetContent m_content;
    QStackedWidget* m_sides = nullptr;
    SlipLines* m_lines = nullptr;
    SlipChoices* m_choices = nullptr;
    SlipTotals* m_totals = nullptr;
    SlipBack* m_back = nullptr;
    QPushButton* m_issue = nullptr;
    QPushButton* m_print = nullptr;
    QPushButton* m_turn = nullptr;
};

} // namespace sp::counter
