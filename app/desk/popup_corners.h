// SPDX-License-Identifier: MIT
#pragma once

class QWidget;

namespace sp::desk {

/// Gives a window of its own, a menu or a list of choices, the corners of a field, also where nothing composes the
/// desktop: it is cut to that shape at every size. Its shadow is the desktop's.
void roundCorners(QWidget& popup);

} // namespace sp::desk
