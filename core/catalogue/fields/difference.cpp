// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/difference.h"

#include <set>

namespace sp::catalogue::fields {

namespace {

void collect(const Object& object, const void* before, const void* after, std::set<Term>& terms) {
    for (const auto& field : object.fields) {
        const void* was = field.in(before);
        const void* now = field.in(after);
        if (field.type->equal(was, now)) continue;
        if (field.type->sort == Sort::Object)
            collect(field.type->object(), was, now, terms);
        else
            terms.insert(field.words);
    }
}

} // namespace

std::optional<Term> onlyDifference(const Object& object, const void* before, const void* after) {
    std::set<Term> terms;
    collect(object, before, after, terms);
    return terms.size() == 1 ? std::optional(*terms.begin()) : std::nullopt;
}

} // namespace sp::catalogue::fields
