// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/money.h"

#include <QStyledItemDelegate>

#include <vector>

namespace sp::figures {

/// What a row cost and what is left of what it brought in, with the figures as they are written; left is below nothing
/// for a loss.
struct EarnedBar {
    units::Money cost;
    units::Money left;
    QString costFigure;
    QString leftFigure;

    friend bool operator==(const EarnedBar&, const EarnedBar&) = default;
};

/// Draws the cell of each row as a bar: cost as an outline, what is left as a fill behind it, a loss as a hatched part
/// of the cost that nobody paid; figures on the marks, or behind them where there is no room. Read in black and white.
class EarnedDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// One for each row; all are drawn to one scale.
    void setBars(std::vector<EarnedBar> bars);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    std::vector<EarnedBar> m_bars;
    double m_most = 1; ///< micro-units of the longest bar
    QString m_longest; ///< of the figures
};

} // namespace sp::figures
