// SPDX-License-Identifier: MIT
#pragma once

#include "app/counter/counter_presenter.h"
#include "app/desk/message_bar.h"
#include "app/format/formatter.h"
#include "core/pricing/left_out.h"

#include <QWidget>

namespace sp::artwork {
class DesignPictures;
} // namespace sp::artwork

namespace sp::desk {
class FoldingColumns;
} // namespace sp::desk

namespace sp::counter {

class LinePanel;
class OrderPanel;
class SlipPanel;

/// The Counter: order, line and slip side by side, folded into one strip where there is no room.
class CounterPage : public QWidget {
    Q_OBJECT

  public:
    CounterPage(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// Gives the quote; of a revision its difference is asked for first (differenceAsked), then giveNow is called.
    void issue();
    void giveNow();
    void revise(); ///< opens the draft that revises the given quote, or says why there is none
    void addChoice();
    void showSheet();
    void turnOver();
    void startNew();
    void focusStart();
    void focusPieces(); ///< of the current line
    void setSaveNote(const QString& note, bool trouble);
    desk::MessageBar& messages() { return *m_messages; }

  Q_SIGNALS:
    void mendAsked(const pricing::LeftOut& leftOut); ///< the owner wants to see the field that mends it
    void buyingAsked();                              ///< the owner wants to see how to buy for this order
    /// What tells the revision from the quote it revises is to be shown, to be given there or only looked at.
    void differenceAsked(bool asksToGive);

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    void connectAll();
    void focusLine();
    void keepFocus();
    void refresh();
    void showRevising();
    void showIssued();
    QString whyNotReady();

    CounterPresenter& m_presenter;
    desk::Formatter m_formatter;
    artwork::DesignPictures* m_pictures; ///< one for all three columns
    desk::MessageBar* m_messages = nullptr;
    desk::FoldingColumns* m_columns = nullptr;
    OrderPanel* m_order = nullptr;
    LinePanel* m_line = nullptr;
    SlipPanel* m_slip = nullptr;
};

} // namespace sp::counter
