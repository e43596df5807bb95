// SPDX-License-Identifier: MIT
#include "app/artwork/stone_sprites.h"

#include "app/desk/stone_painter.h"

#include <algorithm>
#include <cmath>

namespace sp::artwork {

namespace {

constexpr double kMote = 2.0;      ///< device pixels below which a stone is a speck of its colour
constexpr int kMinPainted = 24;    ///< device pixels; smaller ones are painted so and shrunk
constexpr int kMaxPainted = 400;   ///< as desk::paintStone goes
constexpr int kMaxPhased = 2 * 32; ///< half pixels
constexpr int kPhases = 4;
constexpr int kMaxSprites = 4000;

} // namespace

void StoneSprites::setGround(const QColor& ground, double devicePixelRatio) {
    if (ground == m_ground && devicePixelRatio == m_ratio) return;
    m_ground = ground;
    m_ratio = devicePixelRatio;
    m_sprites.clear();
    m_specks.clear();
}

const QColor& StoneSprites::speck(std::uint32_t rgb) {
    const auto known = m_specks.constFind(rgb);
    if (known != m_specks.constEnd()) return *known;
    return *m_specks.insert(rgb, desk::seenOn(desk::stoneColour(rgb), m_ground));
}

const QPixmap& StoneSprites::sprite(std::uint32_t rgb, int halfPixels, int phase) {
    const quint64 key = (quint64(rgb & 0xFFFFFF) << 32) | (quint64(halfPixels) << 8) | quint64(phase);
    const auto known = m_sprites.constFind(key);
    if (known != m_sprites.constEnd()) return *known;
    if (m_sprites.size() > kMaxSprites) m_sprites.clear();
    const double across = halfPixels / 2.0;
    const int room = static_cast<int>(std::ceil(across)) + 2;
    QPixmap picture(room, room);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const double shiftX = (phase % kPhases) / double(kPhases);
    const double shiftY = (phase / kPhases) / double(kPhases);
    const QRectF box(1 + shiftX, 1 + shiftY, across, across);
    if (across >= kMinPainted) {
        desk::paintStone(painter, box, desk::stoneColour(rgb), m_ground);
    } else {
        // Shrunk by a whole factor, so that nothing shimmers.
        const int factor = static_cast<int>(std::ceil(kMinPainted / across));
        QImage large(room * factor, room * factor, QImage::Format_ARGB32_Premultiplied);
        large.fill(Qt::transparent);
        QPainter onLarge(&large);
        desk::paintStone(onLarge, QRectF(box.topLeft() * factor, box.size() * factor), desk::stoneColour(rgb),
                         m_ground);
        onLarge.end();
        painter.drawImage(0, 0, large.scaled(room, room, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
    }
    painter.end();
    picture.setDevicePixelRatio(m_ratio);
    return *m_sprites.insert(key, picture);
}

void StoneSprites::paint(QPainter& painter, QPointF centre, double diameter, std::uint32_t rgb) {
    const double pixels = diameter * m_ratio;
    if (pixels < kMote) {
        const double side = std::max(diameter, 1 / m_ratio);
        painter.fillRect(QRectF(centre.x() - side / 2, centre.y() - side / 2, side, side), speck(rgb));
        return;
    }
    if (pixels > kMaxPainted) {
        desk::paintStone(painter, QRectF(centre.x() - diameter / 2, centre.y() - diameter / 2, diameter, diameter),
                         desk::stoneColour(rgb), m_ground);
        return;
    }
    const int half = std::max(static_cast<int>(std::lround(2 * pixels)), 2);
    const double left = centre.x() * m_ratio - half / 4.0;
    const double top = centre.y() * m_ratio - half / 4.0;
    int phase = 0;
    double wholeLeft = std::round(left);
    double wholeTop = std::round(top);
    if (half <= kMaxPhased) {
        wholeLeft = std::floor(left);
        wholeTop = std::floor(top);
        phase = std::min(static_cast<int>((left - wholeLeft) * kPhases), kPhases - 1) +
                kPhases * std::min(static_cast<int>((top - wholeTop) * kPhases), kPhases - 1);
    }
    painter.drawPixmap(QPointF((wholeLeft - 1) / m_ratio, (wholeTop - 1) / m_ratio), sprite(rgb, half, phase));
}

} // namespace sp::artwork
