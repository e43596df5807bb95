// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/bar_limits.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace sp::layout {

using BoxCounts = std::vector<std::int64_t>; ///< by kind

/// All of `counts` are at least those of `other`.
bool reaches(const BoxCounts& counts, const BoxCounts& other);

/// Which counts of boxes may lie in one bin: those under all limits that reach none of the excluded. What may not lie
/// in it is known for certain, what may is not.
class BinCounts {
  public:
    /// No more of each kind than `most`.
    explicit BinCounts(BoxCounts most)
        : m_most(std::move(most)) {}

    void add(CountLimit limit) { m_limits.push_back(std::move(limit)); }
    /// Neither these nor more.
    void exclude(BoxCounts counts) { m_excluded.push_back(std::move(counts)); }

    bool allows(const BoxCounts& counts) const;

    struct Worth {
        BoxCounts counts;
        double worth = 0;
    };
    /// The counts of the most worth, at prices of 0 or more by kind; nothing when `steps`, which are lowered by the
    /// work done, run out.
    std::optional<Worth> worthiest(const std::vector<double>& prices, std::int64_t& steps) const;

  private:
    class Search;
    BoxCounts m_most;
    std::vector<CountLimit> m_limits;
    std::vector<BoxCounts> m_excluded;
};

} // namespace sp::layout
