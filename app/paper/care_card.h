// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "app/paper/sheet_painter.h"
#include "core/catalogue/bench.h"
#include "core/catalogue/shop.h"

namespace sp::paper {

/// How a customer cares for the work, how a decal is applied, and what to beware of, one sentence each.
struct CareWords {
    QStringList care;     ///< of the shop's own notes those on care and safety
    QStringList applying; ///< with the figures of the shop's press
};

/// Temperatures are written in the shop's unit. A press that nothing is known of is left out of the sentences.
CareWords careWords(const catalogue::Shop& shop, const catalogue::HeatPress& press, const desk::Formatter& formatter);

/// A page of care cards, all alike, which fill it: four where their words have room on a quarter, else two. The page is
/// cut at the marks, across and along, and nothing is left over. More words than half a page holds are a paper of their
/// own.
Document careCards(const catalogue::Shop& shop, const CareWords& words);

} // namespace sp::paper
