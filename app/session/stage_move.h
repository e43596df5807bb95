// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"

#include <QStringList>

#include <functional>

namespace sp::session {

/// Moves a job to a stage, in one step to undo, and says what of the shelf was booked for it and what was lacking.
/// Errors: as db::Book::setStage, told to who asked.
base::Result<db::ShelfUse> moveToStage(BookSession& session, const db::QuoteSummary& job, db::Stage stage);

/// What is to be said of that, a sentence each (words::lackSentences); `written` writes a count.
QStringList saidOfUse(BookSession& session, const db::ShelfUse& use,
                      const std::function<QString(std::int64_t)>& written);

} // namespace sp::session
