// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/palette.h"

#include <QIcon>
#include <QPainter>

namespace sp::desk {

/// Our own drawings, resources/icons/*.svg on a 24 px grid with one stroke weight.
enum class Icon {
    Counter,
    Designs,
    Supplies,
    Buying,
    Jobs,
    Bench,
    Customers,
    Figures,
    Shop,
    FirstSteps,
    TurnOver,
    Print,
    Add,
    Remove,
    Undo,
    Redo,
    Stone,
    Find,
    Close,
    Open,
    Save
};

/// The drawing as an icon that takes the role's colour of the look in force at each painting, sharp at every scale.
QIcon icon(Icon which, Role role = Role::Ink);
void paintIcon(QPainter& painter, const QRectF& box, Icon which, const QColor& colour);

} // namespace sp::desk
