// SPDX-License-Identifier: MIT
#pragma once

#include "core/pricing/order_difference.h"
#include "db/book/book.h"

#include <QString>
#include <QStringList>

namespace sp::words {

/// "24 × Lantern", of a line as it is now, or was where it was removed; its pieces as they are written.
QString lineOf(const pricing::LineDifference& line, const QString& pieces);
/// What became of it: "added", "taken out", or its parts: "quantity: 26 (was 24), base: Tee, black (was Hoodie)". Empty
/// where only its price is another.
QString fateOf(const pricing::LineDifference& line);
/// "day it is wanted: 2026-12-24 (was 2026-12-20)".
QString partOf(const pricing::ChangedPart& part);

/// What is laid over a sheet that is no longer the newest: "Replaced by 2026-0042-2 on 30 Nov 2026"; `day` as it is
/// written.
QString replacedMark(const db::ReplacedBy& by, const QString& day);

/// What is done once a revision of an invoiced job is agreed to.
QString invoicedNote(const QString& number);

} // namespace sp::words
