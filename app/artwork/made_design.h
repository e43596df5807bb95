// SPDX-License-Identifier: MIT
#pragma once

#include "app/session/book_session.h"
#include "core/artwork/estimate.h"

#include <QString>

namespace sp::artwork {

/// As a design's size: to a hundredth of an inch or a tenth of a millimetre, never below what the drawing takes.
units::Length roundedUp(double millimetres, units::LengthUnit unit);

/// What a design goes on until somebody says otherwise: the first backing among the supplies, or none.
base::Id firstBacking(session::BookSession& session);

/// What a design that was only estimated says of itself in its note: how many stones it may take.
QString estimateNote(const QString& least, const QString& most);
/// Whether a note is such a one, with or without more behind it.
bool isEstimateNote(const std::string& note);

struct SizedTally : Tally {
    std::string stoneSize; ///< by name
};
/// The counts kept with the drawing of an estimated design, as DesignArtwork::counts; one or more.
std::string estimatedCounts(const std::vector<SizedTally>& tallies);

} // namespace sp::artwork
