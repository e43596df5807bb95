// SPDX-License-Identifier: MIT
#pragma once

#include "core/needs/spares.h"

#include <QStringList>

#include <span>
#include <string>

namespace sp::words {

/// A line's title and its spares.
struct SparesOfLine {
    std::string title;
    needs::LineSpares spares;
};

/// How many spares are made and why, a sentence a line that has any; of one line alone also why it has none.
QStringList spareNotes(std::span<const SparesOfLine> lines, const needs::SpareRule& rule);
/// The same of an order's lines.
QStringList spareNotes(std::span<const catalogue::OrderLine> lines, const catalogue::Shop& shop);

} // namespace sp::words
