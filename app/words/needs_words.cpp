// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/needs/messages.h"

namespace sp::words {

Source sourceOf(needs::Fault fault) {
    using enum needs::Fault;
    switch (fault) {
    case PlatenWithoutSize:
        return {QT_TRANSLATE_NOOP("Needs", "The platen of the press has no size; give its width and depth in Shop.")};
    case SupplyGone:
        return {QT_TRANSLATE_NOOP("Needs", "The %1 of %2 is no longer among the supplies; choose another.")};
    case WrongKind: return {QT_TRANSLATE_NOOP("Needs", "%1 cannot be the %2 of %3: it is %4; choose another.")};
    case NoPrice: return {QT_TRANSLATE_NOOP("Needs", "%1 has no price; add a pack with a price to it in Supplies.")};
    case StoneTwice: return {QT_TRANSLATE_NOOP("Needs", "%1 names %2 twice; put both counts in one row.")};
    case SizeCountOutOfRange:
        return {QT_TRANSLATE_NOOP("Needs", "%1 of %2 is not from 0 to %3, the pieces of the line; correct the sizes.")};
    case NoSuchSize:
        return {QT_TRANSLATE_NOOP("Needs", "%1 is not a size of what %2 goes on; choose one of its sizes.")};
    case TooManySizedPieces:
        return {
            QT_TRANSLATE_NOOP("Needs", "The sizes of %1 add up to %2, more than its pieces, %3; correct one of them.")};
    case PiecesOutOfRange: return {QT_TRANSLATE_NOOP("Needs", "%2 has %1 pieces; give a number from 1 to 1,000,000.")};
    case SizeOutOfRange:
        return {QT_TRANSLATE_NOOP("Needs", "%1 needs a width and a height above nothing and up to a kilometre.")};
    case TypedPriceNegative:
        return {QT_TRANSLATE_NOOP("Needs", "The price asked for %1 is below nothing; type 0 or more.")};
    case PlannedPiecesBelowOne:
        return {QT_TRANSLATE_NOOP("Needs", "The templates of %1 cannot be spread over %2 pieces; plan for 1 or more.")};
    case TooManyPlaces: return {QT_TRANSLATE_NOOP("Needs", "%1 has designs at more than %2 places; leave some out.")};
    case ChargeWithoutPrice: return {QT_TRANSLATE_NOOP("Needs", "%1 has no price; type one, or say what is sold.")};
    case NoStones: return {QT_TRANSLATE_NOOP("Needs", "%1 has no stones; add a colour and how many a piece takes.")};
    case TooManyColours: return {QT_TRANSLATE_NOOP("Needs", "%1 has more than %2 colours; leave some out.")};
    case StonesOutOfRange:
        return {QT_TRANSLATE_NOOP("Needs", "%1 takes %2 of %3 a piece; give a number from 1 to 1,000,000.")};
    case LossOutOfRange:
        return {QT_TRANSLATE_NOOP("Needs", "The loss of %1 must be from 0 to below 100 %; correct it in Supplies.")};
    case NoBase:
        return {QT_TRANSLATE_NOOP("Needs", "Say what %1 goes on: a backing, a blank, or the customer's own garment.")};
    case WorkTooLarge:
        return {QT_TRANSLATE_NOOP("Needs",
                                  "The bench minutes of this order are more than can be reckoned with; make it "
                                  "smaller.")};
    }
    return {};
}

Source sourceOf(needs::Note note) {
    using enum needs::Note;
    switch (note) {
    case ThisLine: return {QT_TRANSLATE_NOOP("Needs", "This line")};
    case Base: return {QT_TRANSLATE_NOOP("Needs", "base")};
    case Tape: return {QT_TRANSLATE_NOOP("Needs", "tape")};
    case Template: return {QT_TRANSLATE_NOOP("Needs", "template")};
    case Packing: return {QT_TRANSLATE_NOOP("Needs", "packing")};
    case StoneInRow: return {QT_TRANSLATE_NOOP("Needs", "stone in row %1")};
    case NoSpares: return {QT_TRANSLATE_NOOP("Needs", "No spares: only %1 of %2 is expected to be spoiled.")};
    case SparesPlanned: return {QT_TRANSLATE_NOOP("Needs", "Spares: %1, as %2 of %3 are expected to be spoiled.")};
    case SparesOfSize: return {QT_TRANSLATE_NOOP("Needs", "Spares: %1 in %4, as %2 of %3 are expected to be spoiled.")};
    case SparesElsewhere:
        return {QT_TRANSLATE_NOOP("Needs",
                                  "Spares: %1 with another line on the same, as %2 of %3 are expected to be spoiled.")};
    }
    return {};
}

} // namespace sp::words
