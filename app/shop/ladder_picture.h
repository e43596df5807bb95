// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/pricing/ladder_curve.h"

#include <QWidget>

#include <memory>

namespace sp::shop {

/// "24 pieces: 7.10 each, 170.40 in all; 23 pieces come to more"
QString ladderPointWords(const pricing::LadderCurve& curve, const pricing::QuantityPrice& point,
                         const desk::Formatter& formatter);

/// "21 to 23 pieces come to more than 24, which are 396.00.", a sentence a cliff; of none that more always cost more.
QStringList cliffWords(const pricing::LadderCurve& curve, const desk::Formatter& formatter);

/// The price of a piece and the total by quantity, one above the other; a cliff is hatched from where the dearer pieces
/// begin to where it drops, with both numbers on it. Left and Right move along the quantities, Page Up and Page Down by
/// twelve, Home and End to the ends; the quantity is read out.
class LadderPicture : public QWidget {
    Q_OBJECT

  public:
    explicit LadderPicture(const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// None: nothing is drawn.
    void setCurve(std::shared_ptr<const pricing::LadderCurve> curve);
    /// The point looked at; null without a curve.
    const pricing::QuantityPrice* marked() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void moved();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void moveTo(std::ptrdiff_t point);
    void announce();
    QRectF plot() const;

    const desk::Formatter& m_formatter;
    std::shared_ptr<const pricing::LadderCurve> m_curve;
    std::ptrdiff_t m_marked = 0; ///< among the points
};

} // namespace sp::shop
