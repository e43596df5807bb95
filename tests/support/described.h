// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/error.h"

#include <optional>
#include <string>
#include <vector>

// What is said in codes and values, as text to compare: "NameOfAnother(Kit, LANTERN kit)".
namespace sp::test {

inline std::string describedMessage(const base::Message& message) {
    return describe(message);
} // one meaning, to pass on
inline std::string described(const base::Error& error) { return describe(error.message()); }
inline std::string described(const std::optional<base::Error>& error) { return error ? described(*error) : ""; }
inline std::string described(const std::optional<base::Message>& message) { return message ? describe(*message) : ""; }
inline std::vector<std::string> described(const std::vector<base::Message>& messages) {
    std::vector<std::string> all;
    for (const auto& message : messages) all.push_back(describe(message));
    return all;
}

} // namespace sp::test
