// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/guillotine.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// More are not listed.
inline constexpr std::size_t kMaxSideSums = 3'000;

/// 0 and the sums of sides no longer than `whole`, rising: of every box one side at most, either when it may turn, else
/// its width. Empty where there are more than kMaxSideSums.
std::vector<std::int64_t> sideSums(const std::vector<BoxKind>& kinds, std::int64_t whole, bool mayTurn);

/// Sums of either side of the kinds of which some are left, each as often as it was there at first: for telling what
/// cannot be filled. Of more kinds than a few, the sums of all.
class SideSums {
  public:
    SideSums(const std::vector<BoxKind>& kinds, std::int64_t whole);

    /// Rising, from 0; empty where there are too many.
    const std::vector<std::int64_t>& of(const std::vector<std::int64_t>& left);
    /// The greatest of them that is not longer; of too many, the length. `length` 0 or more.
    static std::int64_t below(const std::vector<std::int64_t>& sums, std::int64_t length);

  private:
    static constexpr std::size_t kMaxKinds = 6;
    struct Known {
        bool isMade = false;
        std::vector<std::int64_t> sums;
    };
    const std::vector<BoxKind>& m_kinds;
    std::int64_t m_whole;
    std::vector<Known> m_known; ///< by a bit for each kind left; of many kinds one for all
};

} // namespace sp::layout
