// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/bench.h"
#include "core/catalogue/material.h"
#include "core/catalogue/stone_colour.h"
#include "db/book/book.h"
#include "db/records/stage.h"

#include <QString>

namespace sp::words {

/// What a person calls them: "stone", "backing", "set up".
QString nameOf(catalogue::MaterialKind kind);
QString nameOf(catalogue::Step step);
QString nameOf(db::Stage stage);
/// Of a stone: "Light rose".
QString nameOf(catalogue::StoneColour colour);

enum class Thing { Piece, Stone, Sheet, Lift, Template, Cycle, TestPress, Kit, Pack };
/// "1 piece", "24 pieces", with the number as it is written for the reader.
QString counted(Thing thing, std::int64_t number, const QString& written);

/// What a quote is called in a list: its first line's title and how many more there are.
QString titleOf(const db::QuoteSummary& quote);

} // namespace sp::words
