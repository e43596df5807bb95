// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_model.h"

#include <cstdint>
#include <vector>

namespace sp::supply {

/// So many of each pack, and what that comes to; kept up to date while counts change one by one.
class Basket {
  public:
    /// Holds nothing but what was bought ahead. The model outlives it.
    explicit Basket(const Model& model);

    /// The cost of the pack's line, goods alone; kNever where so many cannot be bought.
    std::int64_t lineCost(std::size_t pack) const { return m_lines[pack]; }
    std::int64_t count(std::size_t pack) const { return m_counts[pack]; }
    const std::vector<std::int64_t>& counts() const { return m_counts; }
    /// `count` must be one that can be bought, or 0.
    void set(std::size_t pack, std::int64_t count);

    /// Units still missing; negative where there are more than needed.
    std::int64_t missing(std::size_t material) const { return m_missing[material]; }
    std::int64_t goods(std::size_t supplier) const { return m_goods[supplier]; }
    bool isUsed(std::size_t supplier) const { return m_used[supplier] > 0; }
    bool isCovered() const;
    /// What an order lacks to be taken, 0 where there is none.
    std::int64_t belowMinimum(std::size_t supplier) const;
    /// Whether it covers the needs with orders that are taken.
    bool isPlan() const;
    /// Granules, goods and shipping.
    std::int64_t cost() const;
    std::int64_t value() const { return m_value; }

  private:
    const Model* m_model;
    std::vector<std::int64_t> m_counts;
    std::vector<std::int64_t> m_lines; ///< goods by pack
    std::vector<std::int64_t> m_missing;
    std::vector<std::int64_t> m_goods;
    std::vector<std::int64_t> m_used; ///< lines by supplier
    std::int64_t m_value = 0;
};

} // namespace sp::supply
