// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QPalette>

namespace sp::desk {

/// What a colour is for. Pages name roles, never colours; palette.cpp is the one file with colour values in it.
enum class Role {
    Bench,        ///< the window behind everything
    Card,         ///< what one works on
    Paper,        ///< the slip, sheets in a picture
    Field,        ///< inside of fields and lists
    Ink,          ///< text
    Muted,        ///< labels, units, second lines
    Hairline,     ///< between things; carries no meaning
    FieldOutline, ///< round a field, a check box
    Jewel,        ///< what acts or is chosen
    OnJewel,      ///< text on it
    JewelSoft,    ///< quiet ground of something chosen
    Good,
    Warn
};

/// The tables we have; of the last two every text keeps 7 : 1. Contrast: the system asked for high contrast, its own
/// palette answers for every role.
enum class Look { Light, Dark, Contrast, LightContrast, DarkContrast };

/// The colour of a role in the look in force (see Theme; Light before there is one). Ask while painting, do not keep.
QColor colour(Role role);
/// The same in a named look; Contrast reads the application's palette.
QColor colour(Role role, Look look);

/// The look in force.
Look currentLook();

/// A step of the jewel for charts: 0 is the jewel itself, each further step fades into `ground`. Steps beyond the
/// sixth stay at the faintest, which is still told from the ground.
QColor jewelStep(int step, Role ground = Role::Card);

/// `share` of `over` laid on `under`, 0 to 1.
QColor blended(const QColor& over, const QColor& under, double share);

/// Towards white, towards black; 0 leaves it, 1 gets there.
QColor lightened(const QColor& colour, double share);
QColor deepened(const QColor& colour, double share);

/// A contrast ratio, 1 to 21 (WCAG 2.2, "contrast ratio" and "relative luminance").
double contrast(const QColor& a, const QColor& b);

/// Qt's palette in a look: highlighted, placeholder and disabled text stay readable (4.5 : 1).
QPalette paletteFor(Look look);

} // namespace sp::desk
