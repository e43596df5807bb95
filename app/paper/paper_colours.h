// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>

namespace sp::paper {

// Paper stays light whatever theme the screen has.
inline const QColor kInk{0x1D, 0x27, 0x30};
inline const QColor kMutedInk{0x5A, 0x64, 0x6D};
inline const QColor kHairline{0xD5, 0xCF, 0xC5};
inline const QColor kSoftJewel{0xF1, 0xE3, 0xE8};
inline const QColor kJewel{0x8A, 0x28, 0x46};

} // namespace sp::paper
