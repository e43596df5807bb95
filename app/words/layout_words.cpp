// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/layout/messages.h"

namespace sp::words {

Source sourceOf(layout::Fault fault) {
    using enum layout::Fault;
    switch (fault) {
    case PieceCountOutOfRange:
        return {QT_TRANSLATE_NOOP("Layout", "The number of pieces must be 1 to %1; enter a number in that range.")};
    case TooMuchRoll:
        return {QT_TRANSLATE_N_NOOP("Layout", "%n pieces of %2 need more than 1 km of roll; ask for fewer pieces."),
                "%n piece of %2 needs more than 1 km of roll; ask for a smaller one."};
    case RulesOutOfRange: return {QT_TRANSLATE_NOOP("Layout", "Margin and gap must be 0 or more: change them.")};
    case NothingToLay: return {QT_TRANSLATE_NOOP("Layout", "There is nothing to lay: say what is to be cut.")};
    case TooManySizes:
        return {QT_TRANSLATE_NOOP("Layout",
                                  "More than 1,000 different pieces are not planned at once: plan them in parts.")};
    case PieceOutOfRange:
        return {QT_TRANSLATE_NOOP("Layout", "Piece %1 must have sides above 0 and up to 1 km: change its size.")};
    case PieceCountBelowOne:
        return {QT_TRANSLATE_NOOP("Layout", "Of piece %1 1 or more must be cut: change its count.")};
    case TooManyPieces:
        return {QT_TRANSLATE_NOOP("Layout", "More than 20,000 pieces are not planned at once: plan them in parts.")};
    case PieceFitsNoSheet:
        return {QT_TRANSLATE_NOOP(
            "Layout", "Piece %1 fits no sheet, whichever way round: take a larger sheet or a smaller margin.")};
    case NotEnoughSheets:
        return {QT_TRANSLATE_NOOP("Layout", "The sheets that can be had do not take all pieces: allow more of them.")};
    case NoWayFound:
        return {QT_TRANSLATE_NOOP("Layout",
                                  "No way was found to lay all pieces on the sheets that can be had: allow one more.")};
    case NoSheet: return {QT_TRANSLATE_NOOP("Layout", "There is no sheet to lay on: name one.")};
    case TooManySheetKinds:
        return {QT_TRANSLATE_NOOP("Layout", "More than 50 kinds of sheets are not compared at once: leave some out.")};
    case SheetOutOfRange:
        return {QT_TRANSLATE_NOOP("Layout", "Sheet %1 must have sides above 0 and up to 1 km: change its size.")};
    case SheetPriceOrLimitNegative:
        return {QT_TRANSLATE_NOOP("Layout", "Price and number of sheet %1 must be 0 or more: change them.")};
    case NothingInsideMargins:
        return {QT_TRANSLATE_NOOP(
            "Layout", "No sheet has anything left inside its margin, or none can be had: change margin or sheets.")};
    case SizesTooLarge:
        return {QT_TRANSLATE_NOOP("Layout", "The sizes are larger than the program works with: change them.")};
    case NoRollInsideMargins:
        return {QT_TRANSLATE_NOOP("Layout", "The roll has no width left inside its margin: change one of them.")};
    case PieceWiderThanRoll:
        return {QT_TRANSLATE_NOOP(
            "Layout", "Piece %1 is wider than the roll, whichever way round: take a wider roll or a smaller margin.")};
    case PiecesTakeTooMuchRoll:
        return {QT_TRANSLATE_NOOP("Layout", "The pieces take more than 1 km of roll: plan them in parts.")};
    case TooManyWouldFit:
        return {QT_TRANSLATE_NOOP(
            "Layout", "More than %1 pieces of %2 would fit the sheet; check the unit the piece was entered in.")};
    case RollWidthZero: return {QT_TRANSLATE_NOOP("Layout", "The roll width must be more than zero; enter its size.")};
    case RollWidthTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The roll width is longer than 1 km; check the unit it was entered in.")};
    case SheetWidthZero:
        return {QT_TRANSLATE_NOOP("Layout", "The sheet width must be more than zero; enter its size.")};
    case SheetWidthTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The sheet width is longer than 1 km; check the unit it was entered in.")};
    case SheetHeightZero:
        return {QT_TRANSLATE_NOOP("Layout", "The sheet height must be more than zero; enter its size.")};
    case SheetHeightTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The sheet height is longer than 1 km; check the unit it was entered in.")};
    case PieceWidthZero:
        return {QT_TRANSLATE_NOOP("Layout", "The piece width must be more than zero; enter its size.")};
    case PieceWidthTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The piece width is longer than 1 km; check the unit it was entered in.")};
    case PieceHeightZero:
        return {QT_TRANSLATE_NOOP("Layout", "The piece height must be more than zero; enter its size.")};
    case PieceHeightTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The piece height is longer than 1 km; check the unit it was entered in.")};
    case MarginNegative: return {QT_TRANSLATE_NOOP("Layout", "The margin cannot be less than zero; enter 0 for none.")};
    case MarginTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The margin is longer than 1 km; check the unit it was entered in.")};
    case GapNegative: return {QT_TRANSLATE_NOOP("Layout", "The gap cannot be less than zero; enter 0 for none.")};
    case GapTooLong:
        return {QT_TRANSLATE_NOOP("Layout", "The gap is longer than 1 km; check the unit it was entered in.")};
    case MarginLeavesNoRoll:
        return {QT_TRANSLATE_NOOP("Layout",
                                  "A margin of %1 all round leaves nothing of a roll of %2; make the margin smaller.")};
    case MarginLeavesNoSheet:
        return {QT_TRANSLATE_NOOP(
            "Layout", "A margin of %1 all round leaves nothing of a sheet of %2; make the margin smaller.")};
    case PieceTooWideForRoll:
        return {QT_TRANSLATE_NOOP("Layout", "A piece of %1 does not fit the usable width of the roll, %2, either way "
                                            "round; make the piece smaller or choose a larger roll.")};
    case PieceTooWideForRollOneWay:
        return {QT_TRANSLATE_NOOP("Layout", "A piece of %1 does not fit the usable width of the roll, %2, the way the "
                                            "material runs; make the piece smaller or choose a larger roll.")};
    case PieceTooLargeForSheet:
        return {QT_TRANSLATE_NOOP("Layout", "A piece of %1 does not fit the usable part of the sheet, %2, either way "
                                            "round; make the piece smaller or choose a larger sheet.")};
    case PieceTooLargeForSheetOneWay:
        return {QT_TRANSLATE_NOOP("Layout", "A piece of %1 does not fit the usable part of the sheet, %2, the way the "
                                            "material runs; make the piece smaller or choose a larger sheet.")};
    }
    return {};
}

} // namespace sp::words
