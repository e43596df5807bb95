// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/costing/messages.h"

namespace sp::words {

Source sourceOf(costing::Fault fault) {
    using enum costing::Fault;
    switch (fault) {
    case LineTooCostly:
        return {QT_TRANSLATE_NOOP(
            "Costing", "%1 comes to more money than this program reckons with; check its pieces, stones and prices.")};
    case NoProductiveHours:
        return {QT_TRANSLATE_NOOP("Costing",
                                  "The month has no productive hours to carry the overhead; give them in Shop.")};
    case SpoilageOutOfRange:
        return {QT_TRANSLATE_NOOP("Costing", "Spoilage must be from 0 to below 100 %; correct it in Shop.")};
    case CardFeeOutOfRange:
        return {QT_TRANSLATE_NOOP("Costing", "The card fee must be from 0 to below 100 %; correct it in Shop.")};
    case MachineLifeBelowOne:
        return {QT_TRANSLATE_NOOP("Costing",
                                  "A machine must be reckoned to last at least one use; correct its life in Shop.")};
    }
    return {};
}

} // namespace sp::words
