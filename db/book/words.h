// SPDX-License-Identifier: MIT
#pragma once

#include "db/snapshot/snapshot.h"

#include <optional>
#include <string>

namespace sp::db {

// What undo calls a change: "fixed price of Jet SS10", "adding Jet SS10", "quantity of Lantern".

template<class T>
std::string changeOf(const std::optional<T>& before, const T& after) {
    if (!before) return "adding " + after.name;
    const std::string field = snapshot::difference(*before, after);
    return (field.empty() ? std::string("change") : field) + " of " + after.name;
}

std::string changeOf(const catalogue::Shop& before, const catalogue::Shop& after);
std::string changeOf(const catalogue::BenchStandards& before, const catalogue::BenchStandards& after);
std::string changeOf(const catalogue::Order& before, const catalogue::Order& after);

} // namespace sp::db
