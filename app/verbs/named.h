// SPDX-License-Identifier: MIT
#pragma once

#include "app/words/words.h"
#include "core/base/result.h"

#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

namespace sp::verbs {

inline std::string lowered(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

/// The thing of that name: the name itself, else without regard to case, else the only name that holds the text; null
/// where there is none. Errors: Ambiguous where several names hold it.
template<class T>
base::Result<const T*> findNamed(const std::vector<T>& things, const std::string& name) {
    std::vector<const T*> holding;
    for (const auto& thing : things) {
        if (thing.name == name) return &thing;
        if (!name.empty() && lowered(thing.name).find(lowered(name)) != std::string::npos) holding.push_back(&thing);
    }
    for (const auto* thing : holding)
        if (lowered(thing->name) == lowered(name)) return thing;
    if (holding.size() == 1) return holding.front();
    if (holding.empty()) return nullptr;
    std::string names;
    for (const auto* thing : holding) names += (names.empty() ? "“" : ", “") + thing->name + "”";
    return words::fail(base::Code::Ambiguous, name, QT_TRANSLATE_NOOP("App", "“%1” could be %2; give the whole name."),
                       name, names);
}

/// The thing of that name, as findNamed finds it. Errors: also NotFound with the sentence `notThere`, marked by
/// QT_TRANSLATE_NOOP("App", …), its place the name.
template<class T>
base::Result<T> named(const std::vector<T>& things, const std::string& name, const char* notThere) {
    const auto found = findNamed(things, name);
    if (!found) return base::fail(found.error());
    if (*found == nullptr) return words::fail(base::Code::NotFound, name, notThere, name);
    return **found;
}

} // namespace sp::verbs
