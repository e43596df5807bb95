// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace sp::layout {

/// The free rectangles of a sheet, every one as large as it can be; they may overlap. Sides in nanometres.
class FreePlaces {
  public:
    struct Place {
        std::int64_t left = 0;
        std::int64_t low = 0;
        std::int64_t right = 0;
        std::int64_t high = 0;

        bool holds(const Place& other) const {
            return left <= other.left && low <= other.low && right >= other.right && high >= other.high;
        }
        bool touches(const Place& other) const {
            return left < other.right && other.left < right && low < other.high && other.low < high;
        }
    };

    explicit FreePlaces(const Place& all)
        : m_places{all} {}

    /// What is used is free no more: each place it touches is cut into up to four, of which those stay that no other
    /// holds, behind the places it did not touch. Answers the comparisons that took at most, for who counts work.
    std::int64_t take(const Place& used);

    const std::vector<Place>& places() const { return m_places; }

  private:
    std::vector<Place> m_places;
    std::vector<Place> m_kept;
    std::vector<Place> m_cut;
};

} // namespace sp::layout
