// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/paper/sheet_painter.h"
#include "core/base/result.h"
#include "db/book/book.h"

namespace sp::paper {

/// The bench sheet of a quote, a draft too: what it orders as it was given, at the standards of then; the press, the
/// letterhead and the drawings are those of today, and so is the day on which the bench gets to it. One that was
/// replaced says so on every page and has no such day. Of several choices it has the one that is looked at, and says
/// which that is and whether it is taken. Errors: the book's; those of quoting::benchSheetOf; Missing where nothing of
/// it is made.
base::Result<Document> benchPaper(db::Book& book, const db::Quote& quote, const desk::Formatter& formatter,
                                  layout::FitMemo& fits);

} // namespace sp::paper
