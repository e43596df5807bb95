// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace sp::desk {

/// Without case, accents and needless spaces.
QString folded(const QString& text);

/// Whether two names may be meant for one person: "Marisol Venn" and "Marisol Venner", or with a slip of the finger,
/// the words in another order, or a part of the name alone. Names of fewer than four letters are like none.
bool isLike(const QString& one, const QString& other);

} // namespace sp::desk
