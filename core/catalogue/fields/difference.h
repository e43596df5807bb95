// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/tables.h"

#include <optional>

namespace sp::catalogue::fields {

/// What differs between two values with these fields: the term, when one says it all; nothing when they do not differ
/// or in several ways. A field that has fields of its own counts as what differs among these.
std::optional<Term> onlyDifference(const Object& object, const void* before, const void* after);

template<class T>
std::optional<Term> onlyDifference(const T& before, const T& after) {
    return onlyDifference(objectOf<T>(), &before, &after);
}

} // namespace sp::catalogue::fields
