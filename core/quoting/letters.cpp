// SPDX-License-Identifier: MIT
#include "core/quoting/letters.h"

#include <algorithm>

namespace sp::quoting {

std::string letterOf(std::size_t index) {
    constexpr std::size_t kLetters = 26;
    std::string letters;
    for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / kLetters)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % kLetters));
    return letters;
}

std::vector<catalogue::StoneCount> mostFirst(std::vector<catalogue::StoneCount> stones) {
    std::ranges::stable_sort(stones, std::ranges::greater(), [](const auto& stone) { return stone.count.value(); });
    return stones;
}

} // namespace sp::quoting
