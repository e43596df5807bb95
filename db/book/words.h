// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/difference.h"

#include <optional>
#include <string>

namespace sp::db {

// What undo calls a change: "fixed price of Jet SS10", "adding Jet SS10", "quantity of Lantern".

/// The one field that differs; empty when it is not one.
template<class T>
std::string fieldChanged(const T& before, const T& after) {
    const auto term = catalogue::fields::onlyDifference(before, after);
    return std::string(term ? catalogue::fields::english(*term) : std::string_view());
}

template<class T>
std::string changeOf(const std::optional<T>& before, const T& after) {
    if (!before) return "adding " + after.name;
    const std::string field = fieldChanged(*before, after);
    return (field.empty() ? std::string("change") : field) + " of " + after.name;
}

std::string changeOf(const catalogue::Shop& before, const catalogue::Shop& after);
std::string changeOf(const catalogue::BenchStandards& before, const catalogue::BenchStandards& after);
std::string changeOf(const catalogue::Order& before, const catalogue::Order& after);

} // namespace sp::db
