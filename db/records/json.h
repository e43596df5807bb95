// SPDX-License-Identifier: MIT
#pragma once

#include "core/catalogue/fields/field.h"

#include <nlohmann/json.hpp>

#include <string_view>

// For what reads and upgrades records.
namespace sp::db::records {

using Json = nlohmann::json;

/// Throws Damaged: the key is missing, or there is what cannot be.
[[noreturn]] void refuseKey(std::string_view key);

/// A value as JSON, its keys those of the table of fields.
Json plainJson(const catalogue::fields::Object& object, const void* value);

/// For an Upgrade: the value of a key, taken out of its object. Throws Damaged when it is not there.
Json takeOut(Json& object, std::string_view key);

} // namespace sp::db::records
