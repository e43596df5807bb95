// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QHash>
#include <QPainter>
#include <QPixmap>

namespace sp::artwork {

/// Cut stones painted once for each colour and diameter and then stamped: what makes 100,000 of them move. Stamps sit
/// on a quarter of a device pixel while they are small, so that even rows look even.
class StoneSprites {
  public:
    /// `ground` as desk::paintStone. Another ground or ratio forgets what was painted.
    void setGround(const QColor& ground, double devicePixelRatio);

    /// Stamps a stone of `diameter` device-independent pixels round `centre`.
    void paint(QPainter& painter, QPointF centre, double diameter, std::uint32_t rgb);

  private:
    const QColor& speck(std::uint32_t rgb);
    const QPixmap& sprite(std::uint32_t rgb, int halfPixels, int phase);

    QHash<quint64, QPixmap> m_sprites;
    QHash<QRgb, QColor> m_specks; ///< a stone's colour as it is seen on the ground
    QColor m_ground;
    double m_ratio = 1;
};

} // namespace sp::artwork
