// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::layout {

#define SP_LAYOUT_FAULTS(X)                                                                                            \
    X(PieceCountOutOfRange, OutOfRange)                                                                                \
    X(TooMuchRoll, TooLarge)                                                                                           \
    X(RulesOutOfRange, OutOfRange)                                                                                     \
    X(NothingToLay, Missing)                                                                                           \
    X(TooManySizes, TooLarge)                                                                                          \
    X(PieceOutOfRange, OutOfRange)                                                                                     \
    X(PieceCountBelowOne, OutOfRange)                                                                                  \
    X(TooManyPieces, TooLarge)                                                                                         \
    X(PieceFitsNoSheet, TooLarge)                                                                                      \
    X(NotEnoughSheets, Missing)                                                                                        \
    X(NoWayFound, Missing)                                                                                             \
    X(NoSheet, Missing)                                                                                                \
    X(TooManySheetKinds, TooLarge)                                                                                     \
    X(SheetOutOfRange, OutOfRange)                                                                                     \
    X(SheetPriceOrLimitNegative, OutOfRange)                                                                           \
    X(NothingInsideMargins, OutOfRange)                                                                                \
    X(SizesTooLarge, TooLarge)                                                                                         \
    X(NoRollInsideMargins, OutOfRange)                                                                                 \
    X(PieceWiderThanRoll, TooLarge)                                                                                    \
    X(PiecesTakeTooMuchRoll, TooLarge)                                                                                 \
    X(TooManyWouldFit, TooLarge)                                                                                       \
    X(RollWidthZero, OutOfRange)                                                                                       \
    X(RollWidthTooLong, OutOfRange)                                                                                    \
    X(SheetWidthZero, OutOfRange)                                                                                      \
    X(SheetWidthTooLong, OutOfRange)                                                                                   \
    X(SheetHeightZero, OutOfRange)                                                                                     \
    X(SheetHeightTooLong, OutOfRange)                                                                                  \
    X(PieceWidthZero, OutOfRange)                                                                                      \
    X(PieceWidthTooLong, OutOfRange)                                                                                   \
    X(PieceHeightZero, OutOfRange)                                                                                     \
    X(PieceHeightTooLong, OutOfRange)                                                                                  \
    X(MarginNegative, OutOfRange)                                                                                      \
    X(MarginTooLong, OutOfRange)                                                                                       \
    X(GapNegative, OutOfRange)                                                                                         \
    X(GapTooLong, OutOfRange)                                                                                          \
    X(MarginLeavesNoRoll, OutOfRange)                                                                                  \
    X(MarginLeavesNoSheet, OutOfRange)                                                                                 \
    X(PieceTooWideForRoll, TooLarge)                                                                                   \
    X(PieceTooWideForRollOneWay, TooLarge)                                                                             \
    X(PieceTooLargeForSheet, TooLarge)                                                                                 \
    X(PieceTooLargeForSheetOneWay, TooLarge)

SP_FAULTS(Layout, SP_LAYOUT_FAULTS)

} // namespace sp::layout
