// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/counter/idle_watch.h"
#include "app/format/formatter.h"
#include "app/words/sheet_words.h"
#include "core/pricing/left_out.h"
#include "core/quoting/sheet_maker.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <utility>

namespace sp::artwork {
class DesignPictures;
} // namespace sp::artwork

namespace sp::counter {

class SlipBack;
class SlipChoices;
class SlipLines;
class SlipTotals;

/// What stands on the slip: the sheet as it was given, or of the order as it is now, without the prices of other
/// quantities. Looks at the choice that is looked at. Only while there is a price.
quoting::SheetContent slipOf(CounterPresenter& presenter, const words::SheetWords& words);

/// The right of the Counter: the slip, front or back, and its buttons. The owner's side turns back by itself: with
/// another quote, with this one given, and after a while without a key (session::kTurnsBackAfter). To a screen reader
/// the price, or why there is none, is announced once it has stood for a moment.
class SlipPanel : public QWidget {
    Q_OBJECT

  public:
    SlipPanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
              QWidget* parent = nullptr);

    bool isTurned() const;
    void turnOver();
    /// The customer's side, whichever is up.
    void showFront();
    /// Where the focus goes when the side that has it is turned away.
    void setRetreat(std::function<void()> retreat) { m_retreat = std::move(retreat); }
    /// The total on the front; a dash while there is none.
    QString toPay() const;

  Q_SIGNALS:
    void issueAsked();
    void printAsked();
    void repeatAsked();
    void reviseAsked();
    void buyingAsked();
    void mendAsked(const pricing::LeftOut& leftOut);

  private:
    void show(int side);
    void followQuote();
    QString spoken() const;
    void announce();
    void refresh();
    void refreshButtons();

    CounterPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    quoting::SheetContent m_content;
    std::function<void()> m_retreat;
    IdleWatch m_idle;
    QTimer m_quiet;                           ///< runs while the price may still change with the next key
    std::pair<base::Id, std::string> m_shown; ///< the quote on the slip and its number, empty for a draft
    QStackedWidget* m_sides = nullptr;
    SlipLines* m_lines = nullptr;
    SlipChoices* m_choices = nullptr;
    SlipTotals* m_totals = nullptr;
    SlipBack* m_back = nullptr;
    QPushButton* m_issue = nullptr;
    QPushButton* m_revise = nullptr; ///< of a given quote
    QPushButton* m_print = nullptr;
    QPushButton* m_turn = nullptr;
};

} // namespace sp::counter
