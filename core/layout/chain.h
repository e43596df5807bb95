// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/pattern.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace sp::layout {

/// A strip that may be used any number of times.
struct Link {
    Tick length = 0;        ///< > 0
    std::int64_t count = 0; ///< pieces it holds, > 0
};

/// Strips put end to end: the shortest way to hold a number of pieces (an unbounded knapsack over counts).
/// The first kTable counts are exact. Beyond them the strip with the most pieces a length is repeated and the
/// table finishes, which is exact too whenever the strips hold no more than kTable / (pieces of that strip)
/// each, since among as many other strips as that one has pieces, some hold a multiple of it.
class Chain {
  public:
    static constexpr std::int64_t kTable = 40'000;

    /// `links` not empty.
    explicit Chain(std::vector<Link> links, std::int64_t mostCount);

    const std::vector<Link>& links() const { return m_links; }
    Tick shortest(std::int64_t count) const;
    /// The most pieces in a chain no longer than `length`, at most the mostCount it was made for.
    std::int64_t mostWithin(Tick length) const;
    /// The links of shortest(count) and how often each stands there, the repeated one first.
    std::vector<std::pair<std::size_t, std::int64_t>> parts(std::int64_t count) const;

  private:
    std::int64_t repeats(std::int64_t count) const;

    std::vector<Link> m_links;
    std::int64_t m_mostCount;
    std::size_t m_densest = 0;
    std::vector<Tick> m_shortest;
    std::vector<std::uint16_t> m_last;
};

} // namespace sp::layout
