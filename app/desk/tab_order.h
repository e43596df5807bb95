// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

class QWidget;

namespace sp::desk {

/// What Tab stops at below `root`, in the order the layouts show it: a box layout in its own order, a grid row by row.
/// Only what is visible and enabled; one stop of a group of buttons of which one is chosen. Read from the layouts each
/// time, so that rows built anew stand where they are seen, not where Qt appends what was made last.
std::vector<QWidget*> tabStops(const QWidget& root);

/// Gives the focus to the stop after (before) the one that has it, round the end, and scrolls it into view; false when
/// none of them has it.
bool moveFocus(const QWidget& root, bool next);

/// Scrolls whatever `widget` lies in so that it is seen.
void scrollTo(QWidget& widget);

/// Gives it the focus, in sight: the column that it is in is shown, and scrolled to it.
void focusOn(QWidget& widget);

} // namespace sp::desk
