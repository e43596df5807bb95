// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/material.h"
#include "db/book/book.h"

#include <QString>

namespace sp::words {

/// What a person calls them: "stone", "backing", "set up".
QString nameOf(catalogue::MaterialKind kind);
QString nameOf(catalogue::Step step);

/// What a quote is called in a list: its first line's title and how many more there are.
QString titleOf(const db::QuoteSummary& quote);

} // namespace sp::words
