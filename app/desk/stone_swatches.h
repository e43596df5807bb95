// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"

#include <QWidget>

#include <vector>

namespace sp::desk {

/// A few stones in a row, each lying a little over the one before; after four comes "+3".
class StoneSwatches : public QWidget {
    Q_OBJECT

  public:
    explicit StoneSwatches(QWidget* parent = nullptr, int side = 20);

    void setStones(std::vector<QColor> stones);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::vector<QColor> m_stones;
    int m_side;
};

/// Paints the same row into the left of `box`, vertically in its middle; returns the width used.
int paintStones(QPainter& painter, const QRect& box, const std::vector<QColor>& stones, int side, int most,
                const QColor& ground);

} // namespace sp::desk
