// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/messages.h"
#include "core/units/values.h"

namespace sp::needs {

#define SP_NEEDS_FAULTS(X)                                                                                             \
    X(PlatenWithoutSize, OutOfRange)                                                                                   \
    X(SupplyGone, NotFound)                                                                                            \
    X(WrongKind, Invalid)                                                                                              \
    X(NoPrice, Missing)                                                                                                \
    X(StoneTwice, Invalid)                                                                                             \
    X(SizeCountOutOfRange, OutOfRange)                                                                                 \
    X(NoSuchSize, NotFound)                                                                                            \
    X(TooManySizedPieces, OutOfRange)                                                                                  \
    X(PiecesOutOfRange, OutOfRange)                                                                                    \
    X(SizeOutOfRange, OutOfRange)                                                                                      \
    X(TypedPriceNegative, OutOfRange)                                                                                  \
    X(TooManyPlaces, OutOfRange)                                                                                       \
    X(ChargeWithoutPrice, Missing)                                                                                     \
    X(PlannedPiecesBelowOne, OutOfRange)                                                                               \
    X(NoStones, Missing)                                                                                               \
    X(TooManyColours, OutOfRange)                                                                                      \
    X(StonesOutOfRange, OutOfRange)                                                                                    \
    X(LossOutOfRange, OutOfRange)                                                                                      \
    X(NoBase, Missing)                                                                                                 \
    X(WorkTooLarge, TooLarge)

// A line without a title, and what a material is to a line. Then the spares of a line: how many, the pieces expected to
// be spoiled, of how many pieces, and in which size.
#define SP_NEEDS_NOTES(X)                                                                                              \
    X(ThisLine)                                                                                                        \
    X(Base)                                                                                                            \
    X(Tape)                                                                                                            \
    X(Template)                                                                                                        \
    X(Packing)                                                                                                         \
    X(StoneInRow)                                                                                                      \
    X(NoSpares)                                                                                                        \
    X(SparesPlanned)                                                                                                   \
    X(SparesOfSize)                                                                                                    \
    X(SparesElsewhere)

SP_FAULTS(Needs, SP_NEEDS_FAULTS)
SP_NOTES(Needs, SP_NEEDS_NOTES)

} // namespace sp::needs
