// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/difference.h"
#include "db/messages.h"

#include <optional>
#include <string_view>

namespace sp::db {

// What undo calls a change: FieldOf(FixedPrice, Jet SS10), Adding(Jet SS10), FieldOf(Quantity, Lantern).

/// A sort of thing as a value of messages, by the name that the change log has for it.
Note sortOf(std::string_view entity);

template<class T>
base::Message changeOf(const std::optional<T>& before, const T& after) {
    if (!before) return base::say(Note::Adding, after.name);
    const auto field = catalogue::fields::onlyDifference(*before, after);
    return field ? base::say(Note::FieldOf, *field, after.name) : base::say(Note::ChangeOf, after.name);
}

base::Message changeOf(const catalogue::Shop& before, const catalogue::Shop& after);
base::Message changeOf(const catalogue::BenchStandards& before, const catalogue::BenchStandards& after);
base::Message changeOf(const catalogue::Order& before, const catalogue::Order& after);

} // namespace sp::db
