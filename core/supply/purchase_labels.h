// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_relaxation.h"

#include <array>
#include <functional>
#include <map>
#include <vector>

namespace sp::supply {

/// With all kits decided, covers the materials one after the other so that each supplier's goods reach its sum, at
/// the least cost: labels carry cost and goods, dominated ones and those whose bound passes the limit fall away.
class LabelSearch {
  public:
    static constexpr std::size_t kMaxSums = 4;

    /// `relaxation` has been evaluated, stays as it is and outlives this object; `tick` adds to the work and says
    /// whether to stop.
    LabelSearch(Market& market, const Relaxation& relaxation, std::function<bool(std::int64_t)> tick)
        : m_market(market)
        , m_relaxation(relaxation)
        , m_tick(std::move(tick)) {}

    struct Task {
        std::vector<std::int64_t> needs; ///< units left after the kits, by material
        std::vector<std::int64_t> goods; ///< bought with the kits, by sum of the relaxation
        std::int64_t spent = 0;          ///< granules: shipping, kits and what was bought ahead
        std::int64_t limit = 0;          ///< granules: only plans below this are of interest
        std::size_t mostLabels = 0;      ///< kept from one material to the next
    };
    struct Outcome {
        bool isComplete = true;                  ///< no label was left out: what was not found does not exist
        std::optional<std::vector<Bought>> plan; ///< the cheapest found below the limit, without the kits
    };
    Outcome run(const Task& task);
    /// The scaled bound of a task at the relaxation's multipliers.
    std::int64_t boundOf(const Task& task) const;

  private:
    using Goods = std::array<std::int64_t, kMaxSums>;
    struct Option {
        std::int64_t reduced = 0; ///< scaled, above the least
        std::int64_t cost = 0;
        std::int64_t value = 0;
        std::int64_t packs = 0;
        Goods goods{};
        std::int32_t rest = 0; ///< units from the suppliers without a sum
    };
    struct Options {
        std::int64_t gap = -1; ///< every option with reduced <= gap is listed
        bool isComplete = true;
        std::vector<Option> list;
    };
    struct Label {
        std::int64_t reduced = 0;
        std::int64_t cost = 0;
        std::int64_t value = 0;
        std::int64_t packs = 0;
        Goods goods{};
        std::int32_t before = 0;
        std::int32_t option = 0;
    };

    const Options& options(int material, std::int64_t need, std::int64_t gap);
    void listOptions(int material, std::int64_t need, std::size_t c, std::int64_t n, std::int64_t price, Option option,
                     Options& into);
    std::vector<Label> extended(const std::vector<Label>& labels, const Options& options, const Goods& targets,
                                std::int64_t gap, std::int64_t mostCost);
    bool thin(std::vector<Label>& labels, std::size_t most, const Goods& targets) const;
    std::vector<Bought> collected(const std::vector<std::vector<Label>>& stages, std::size_t last,
                                  const std::vector<const Options*>& lists, const std::vector<int>& order) const;

    Market& m_market;
    const Relaxation& m_relaxation;
    std::function<bool(std::int64_t)> m_tick;
    std::int64_t m_mostMoney = 0; ///< no plan of interest spends more
    std::size_t m_mostRaw = 0;    ///< labels before the dominated ones are dropped
    bool m_isCut = false;
    bool m_isStopped = false;
    std::map<std::pair<int, std::int64_t>, Options> m_options;
};

} // namespace sp::supply
