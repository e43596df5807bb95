// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace sp::catalogue {

/// The most choices that a customer weighs against each other.
inline constexpr std::size_t kMaxChoices = 4;

/// Of several choices one is looked at and kept apart; the others stand in `others`, in their order, without it. Looks
/// at the choice with the number `wanted` (from 0, among all) instead: puts `looked`, with the number `at`, back into
/// its place and takes the wanted one out. Both numbers must be those of a choice.
template<class T>
void lookAt(T& looked, std::vector<T>& others, std::int64_t& at, std::int64_t wanted) {
    others.insert(others.begin() + at, std::move(looked));
    looked = std::move(others[static_cast<std::size_t>(wanted)]);
    others.erase(others.begin() + wanted);
    at = wanted;
}

} // namespace sp::catalogue
