// SPDX-License-Identifier: MIT
#pragma once

#include "app/verbs/json_words.h"

namespace sp::verbs {

/// What book.json of an export holds (db::Book::exportTo), as JSON Schema, draft 2020-12: every key with what a person
/// calls it, its unit and its bounds, made from the one table of fields.
Json bookSchema();

} // namespace sp::verbs
