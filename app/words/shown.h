// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string>

namespace sp::words {

/// Core's UTF-8 as Qt shows it.
inline QString shown(const std::string& utf8) { return QString::fromStdString(utf8); }

} // namespace sp::words
