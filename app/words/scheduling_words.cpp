// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/scheduling/messages.h"

namespace sp::words {

Source sourceOf(scheduling::Fault fault) {
    using enum scheduling::Fault;
    switch (fault) {
    case NoBenchTime:
        return {QT_TRANSLATE_NOOP("Scheduling", "No day can be promised: no weekday has time at the bench yet; type it "
                                                "in Shop, under Bench hours.")};
    case NotWithinYears:
        return {QT_TRANSLATE_NOOP("Scheduling", "The bench does not get to it within %1 years; look at the closed days "
                                                "and the hours in Shop.")};
    case WorkNotKnown:
        return {QT_TRANSLATE_NOOP(
            "Scheduling",
            "No day can be promised, since the bench minutes of %1 are not known (%2); mend that job first.")};
    }
    return {};
}

} // namespace sp::words
