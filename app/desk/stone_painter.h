// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"

#include <QPainter>

#include <cstdint>

namespace sp::desk {

/// Paints a cut round stone seen from above, the table in the middle and the crown's facets round it, light from the
/// upper left, in shades of its own colour. Fills the square `box`, 12 to 400 px. The same colour, size and ground
/// always give the same picture. `ground` is what it lies on: the rim is drawn so that a dark stone is seen on a dark
/// ground and a clear one on white.
void paintStone(QPainter& painter, const QRectF& box, const QColor& stone, const QColor& ground);

/// A stone's colour, moved away from the ground's until it is seen on it: for what is too small for a rim.
QColor seenOn(QColor stone, const QColor& ground);

/// A stone's colour as the catalogue keeps it (0xRRGGBB).
QColor stoneColour(std::uint32_t rgb);

} // namespace sp::desk
