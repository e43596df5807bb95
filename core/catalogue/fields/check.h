// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/catalogue/fields/messages.h"
#include "core/catalogue/fields/tables.h"

#include <string>
#include <string_view>

namespace sp::catalogue::fields {

/// Whether every field of a value holds what the table says it may.
/// Errors: Invalid, naming the first field that does not and the thing: its "name", where it has one.
base::Done checkRanges(const Object& object, const void* value);

/// "The loss of “Jet”"; an empty thing is left out.
base::Message fieldNamed(std::string_view thing, Term words);

/// The error of one field, which is the first value of the fault.
template<base::ListedFault F, class... Values>
base::Done wrongField(F fault, std::string_view thing, Term words, const Values&... values) {
    return base::fail(fault, std::string(thing), fieldNamed(thing, words), values...);
}

// What the headers of the catalogue say beyond the range of one field. A type without a rule of its own has none.
template<class T>
base::Done checkTogether(const T&) {
    return {};
}
base::Done checkTogether(const Material& material);
base::Done checkTogether(const Pack& pack);
base::Done checkTogether(const PricedMaterial& priced);
base::Done checkTogether(const Shop& shop);
base::Done checkTogether(const Customer& customer);
base::Done checkTogether(const Design& design);
base::Done checkTogether(const Kit& kit);
base::Done checkTogether(const ColourMaterial& colour);
base::Done checkTogether(const PriceListColumns& list);
base::Done checkTogether(const Order& order);

/// Whether a value may be saved.
/// Errors: Invalid, naming the field and the thing.
template<class T>
base::Done check(const T& value) {
    if (auto good = checkRanges(objectOf<T>(), &value); !good) return good;
    return checkTogether(value);
}

} // namespace sp::catalogue::fields
