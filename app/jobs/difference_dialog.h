// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/pricing/order_difference.h"

#include <QDialog>
#include <QString>

#include <optional>

class QGridLayout;
class QVBoxLayout;

namespace sp::jobs {

/// What a revision is shown with.
struct DifferenceShown {
    QString was;                            ///< the number of the quote that it is compared with
    QString is;                             ///< of the revision; empty while it was not given
    QString note{};                         ///< one sentence more, on what is to be done; may be empty
    std::optional<units::Money> today{}; ///< how much more what was given would come to today
    bool asksToGive = false;                ///< whether it can be given here: the dialog is accepted then
};

/// What tells a revised quote from the one before, line by line, adding up to the difference of what is to be paid. It
/// shows nothing that the customer may not see. Show it with open().
class DifferenceDialog : public QDialog {
    Q_OBJECT

  public:
    DifferenceDialog(const DifferenceShown& shown, const base::Result<pricing::OrderDifference>& difference,
                     const desk::Formatter& formatter, QWidget* parent = nullptr);

  private:
    void buildTotals(QVBoxLayout* column, const pricing::OrderDifference& difference);
    void buildNotes(QVBoxLayout* column, const DifferenceShown& shown, const pricing::OrderDifference& difference);
    QWidget* buildRows(const pricing::OrderDifference& difference);
    void buildLines(QVBoxLayout* column, const pricing::OrderDifference& difference);
    void buildRest(QVBoxLayout* column, const pricing::OrderDifference& difference);
    void buildButtons(QVBoxLayout* column, bool asksToGive);
    void putWords(QGridLayout* grid, int row, int column, const QString& words, bool muted = false);
    void putFigure(QGridLayout* grid, int row, int column, const QString& figure, const QString& meaning);

    desk::Formatter m_formatter;
};

} // namespace sp::jobs
