// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/base/messages.h"

namespace sp::words {

Source sourceOf(base::Fault fault) {
    using enum base::Fault;
    switch (fault) {
    case NotAKey: return {QT_TRANSLATE_NOOP("Base", "This is not a key in the 8-4-4-4-12 form.")};
    }
    return {};
}

Source sourceOf(base::Note note) {
    using enum base::Note;
    switch (note) {
    case About: return {QT_TRANSLATE_NOOP("Base", "%1: %2")};
    }
    return {};
}

} // namespace sp::words
