// SPDX-License-Identifier: MIT
#pragma once

#include <QLatin1String>
#include <QSettings>

namespace sp::program {

inline constexpr auto kZoomSetting = "look/zoom";     ///< percent
inline constexpr auto kSchemeSetting = "look/scheme"; ///< a desk::Scheme as a number

/// A whole number kept of how the window looks; `usual` where there is none, or what stands there is no number.
inline int keptNumber(const char* key, int usual) {
    bool isNumber = false;
    const int number = QSettings().value(QLatin1String(key)).toInt(&isNumber);
    return isNumber ? number : usual;
}

} // namespace sp::program
