// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>

#include <string>

namespace sp::desk {

/// The picture that is kept with a design, from the bytes of a PNG. None where they are none, or one of more than
/// 2,048 pixels a side, which no picture kept here is: a book made to do harm could hold one that takes all memory.
QImage keptPicture(const std::string& png);

} // namespace sp::desk
