// SPDX-License-Identifier: MIT
#include "core/layout/pattern.h"

#include <utility>

namespace sp::layout {

Frame Frame::part(Tick cornerX, Tick cornerY, bool towardsLess, bool towardsBelow) const {
    Frame next = *this;
    const Tick alongWidth = swapped ? cornerY : cornerX;
    const Tick alongHeight = swapped ? cornerX : cornerY;
    next.x += leftwards ? -alongWidth : alongWidth;
    next.y += downwards ? -alongHeight : alongHeight;
    if (towardsLess) (swapped ? next.downwards : next.leftwards) ^= true;
    if (towardsBelow) (swapped ? next.leftwards : next.downwards) ^= true;
    return next;
}

Frame Frame::exchanged() const {
    Frame next = *this;
    next.swapped = !swapped;
    return next;
}

Spot Frame::spot(Tick atX, Tick atY, Tick spanX, Tick spanY, bool turned) const {
    const Frame corner = part(atX, atY, false, false);
    const Tick alongWidth = swapped ? spanY : spanX;
    const Tick alongHeight = swapped ? spanX : spanY;
    return {leftwards ? corner.x - alongWidth : corner.x, downwards ? corner.y - alongHeight : corner.y,
            turned != swapped};
}

Upright::Upright(const Problem& asked)
    : problem(asked)
    , turnsSheet(asked.width < asked.height)
    , turnsPiece(asked.sideA < asked.sideB) {
    if (turnsSheet) std::swap(problem.width, problem.height);
    if (turnsPiece) std::swap(problem.sideA, problem.sideB);
}

void Upright::undo(std::vector<Spot>& spots) const {
    for (Spot& spot : spots) {
        if (turnsSheet) spot = {spot.y, spot.x, !spot.turned};
        if (turnsPiece) spot.turned = !spot.turned;
    }
}

} // namespace sp::layout
