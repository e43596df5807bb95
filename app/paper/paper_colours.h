// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"

#include <QColor>

namespace sp::paper {

// Paper takes the light table of the palette whatever look the screen has.
inline QColor inkOf(desk::Role role) { return desk::colour(role, desk::Look::Light); }

inline const QColor kInk = inkOf(desk::Role::Ink);
inline const QColor kMutedInk = inkOf(desk::Role::Muted);
inline const QColor kHairline = inkOf(desk::Role::Hairline);
inline const QColor kSoftJewel = inkOf(desk::Role::JewelSoft);
inline const QColor kJewel = inkOf(desk::Role::Jewel);
inline const QColor kWhite = inkOf(desk::Role::Paper);

} // namespace sp::paper
