// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>

#include <string_view>

// For what reads and upgrades records.
namespace sp::db::records {

using Json = nlohmann::json;

/// Throws Damaged: the key is missing, or there is what cannot be.
[[noreturn]] void refuseKey(std::string_view key);

/// For an Upgrade: the value of a key, taken out of its object. Throws Damaged when it is not there.
Json takeOut(Json& object, std::string_view key);

} // namespace sp::db::records
