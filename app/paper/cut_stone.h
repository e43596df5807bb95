// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QPointF>

class QPainter;

namespace sp::paper {

/// A cut stone seen from above: girdle, eight crown facets lit from the upper left, table.
void drawCutStone(QPainter& painter, QPointF centre, double radius, const QColor& colour);

} // namespace sp::paper
