// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/planning/messages.h"

namespace sp::words {

Source sourceOf(planning::Fault fault) {
    using enum planning::Fault;
    switch (fault) {
    case MaterialGone:
        return {QT_TRANSLATE_NOOP("Planning", "A material of %1 is no longer in the book; choose another one.")};
    case NothingToCut:
        return {QT_TRANSLATE_NOOP(
            "Planning", "%1 needs a number of pieces, a width and a height before it can be laid on a sheet.")};
    }
    return {};
}

Source sourceOf(planning::Note note) {
    using enum planning::Note;
    switch (note) {
    case ALine: return {QT_TRANSLATE_NOOP("Planning", "A line")};
    }
    return {};
}

} // namespace sp::words
