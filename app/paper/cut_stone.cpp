// SPDX-License-Identifier: MIT
#include "app/paper/cut_stone.h"

#include <QPainter>
#include <QPolygonF>

#include <array>
#include <cmath>
#include <numbers>

namespace sp::paper {

namespace {

constexpr int kFacets = 8;

QPointF corner(QPointF centre, double radius, int index) {
    const double angle = (index + 0.5) * 2 * std::numbers::pi / kFacets;
    return centre + QPointF(std::cos(angle), std::sin(angle)) * radius;
}

/// Towards white (share > 0) or black (share < 0).
QColor shaded(const QColor& colour, double share) {
    const double towards = share > 0 ? 1.0 : 0.0;
    const double by = std::abs(share);
    const auto mix = [&](float channel) { return static_cast<float>(channel + (towards - channel) * by); };
    return QColor::fromRgbF(mix(colour.redF()), mix(colour.greenF()), mix(colour.blueF()));
}

} // namespace

void drawCutStone(QPainter& painter, QPointF centre, double radius, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    const double table = radius * 0.52;
    for (int i = 0; i < kFacets; ++i) {
        const double middle = (i + 1) * 2 * std::numbers::pi / kFacets;
        const double light = std::cos(middle - 1.25 * std::numbers::pi); // from the upper left
        painter.setBrush(shaded(colour, light * 0.38 + (i % 2 == 0 ? 0.06 : -0.06)));
        painter.drawPolygon(QPolygonF({corner(centre, radius, i), corner(centre, radius, i + 1),
                                       corner(centre, table, i + 1), corner(centre, table, i)}));
    }
    QPolygonF top;
    for (int i = 0; i < kFacets; ++i) top.append(corner(centre, table, i));
    painter.setBrush(shaded(colour, 0.42));
    painter.drawPolygon(top);
    QPolygonF girdle;
    for (int i = 0; i < kFacets; ++i) girdle.append(corner(centre, radius, i));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(shaded(colour, -0.45), radius * 0.09));
    painter.drawPolygon(girdle);
    painter.restore();
}

} // namespace sp::paper
