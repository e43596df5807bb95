// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/sheet_painter.h"
#include "core/catalogue/shop.h"

#include <QString>

namespace sp::paper {

/// Lays a line in a frame over the head margin of every page, above what was given, which stays as it is: that a quote
/// was replaced. An empty one changes nothing. Needs a QGuiApplication.
void layOver(Document& document, const QString& mark, catalogue::Paper paper);

} // namespace sp::paper
