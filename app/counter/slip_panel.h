// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/format/formatter.h"
#include "core/pricing/left_out.h"
#include "core/quoting/sheet_maker.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

namespace sp::counter {

class SlipBack;
class SlipLines;
class SlipTotals;

/// The quote sheet of this order: as it was given, or as it would be printed now under that number. `ladders` as in
/// quoting::SheetInput.
quoting::SheetContent sheetOf(CounterPresenter& presenter, const desk::Formatter& formatter, const std::string& number,
                              std::span<const std::vector<pricing::LadderPrice>> ladders);

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
    SlipTotals* m_totals = nullptr;
    SlipBack* m_back = nullptr;
    QPushButton* m_issue = nullptr;
    QPushButton* m_print = nullptr;
    QPushButton* m_turn = nullptr;
};

} // namespace sp::counter
