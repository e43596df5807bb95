// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/shelf_state.h"

#include <QString>
#include <QStringList>

#include <functional>

namespace sp::words {

/// What is there of a material, in words: "1,980 on the shelf, 600 promised, 1,380 free".
QString shelfSentence(const db::OnShelf& there, const std::function<QString(std::int64_t)>& written);

/// The same in short, for a list: "1,980 on the shelf, 1,380 free"; without a job that takes of it "1,980 on the
/// shelf".
QString shelfInShort(const db::OnShelf& there, const std::function<QString(std::int64_t)>& written);

/// What a job that went on took, as far as the shelf did not have it, or more was taken before than it takes now, or it
/// cannot be told, and what stays booked for one that was let go: a sentence each, none where all of it was there.
/// `nameOf` gives the name of a material.
QStringList lackSentences(const db::ShelfUse& use, const std::function<QString(const base::Id&)>& nameOf,
                          const std::function<QString(std::int64_t)>& written);

} // namespace sp::words
