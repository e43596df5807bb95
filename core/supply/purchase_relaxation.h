// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_curves.h"

#include <map>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace sp::supply {

/// Bounds are kept in 4096ths of a granule, so that the multipliers are whole numbers and no bound is ever rounded up.
inline constexpr std::int64_t kScale = 4096;
inline constexpr std::int64_t kShareScale = 1024;
inline constexpr std::int64_t kScaledNever = std::int64_t{1} << 60;

/// A scaled bound in whole granules: no plan costs less.
inline std::int64_t roundedUp(std::int64_t scaled) {
    if (scaled >= kScaledNever) return kNever;
    return scaled <= 0 ? 0 : (scaled + kScale - 1) / kScale;
}

/// What is fixed for every state of the suppliers: curves by material and supplier, kits, merged curves by set.
class Market {
  public:
    /// Makes no curves beyond `steps` of work; see isWhole.
    Market(const Model& model, std::int64_t steps);

    struct KitUse {
        int kit = 0;  ///< index into kits()
        int give = 0; ///< which of the kit's gives
        std::int64_t units = 0;
    };

    const Model& model() const { return m_model; }
    int materials() const { return static_cast<int>(m_model.needs.size()); }
    int suppliers() const { return static_cast<int>(m_model.suppliers.size()); }
    std::int64_t need(int material) const { return m_model.needs[static_cast<std::size_t>(material)]; }
    /// Model pack indexes of the packs that give several materials.
    const std::vector<int>& kits() const { return m_kits; }
    const ModelPack& kit(int k) const {
        return m_model.packs[static_cast<std::size_t>(m_kits[static_cast<std::size_t>(k)])];
    }
    /// The most of kit k that a cheapest plan can hold.
    std::int64_t kitMost(int k) const { return m_kitMost[static_cast<std::size_t>(k)]; }
    const std::vector<KitUse>& kitsOf(int material) const { return m_kitsOf[static_cast<std::size_t>(material)]; }
    /// Null when the supplier sells none of the material on its own.
    const Curve* curve(int material, int supplier) const;
    /// All curves of the material from the suppliers marked; kept for the next time while memory allows.
    std::shared_ptr<const Merged> merged(int material, const std::vector<char>& suppliers);
    /// Every sum that can be spent on the curve, to `limit` granules at least; null when there are too many of them.
    const MoneyList* moneyList(int material, int supplier, std::int64_t limit);
    /// True as long as no limit of the program cut into what a cheapest plan may hold.
    bool isExact() const { return m_isExact; }
    /// False when the work would not do for every curve: then nothing can be asked of it.
    bool isWhole() const { return m_isWhole; }
    /// The simple steps that curves, merged curves and lists of sums have taken since it was last asked.
    std::int64_t takeWork() { return std::exchange(m_work, 0); }

  private:
    const Model& m_model;
    std::vector<int> m_kits;
    std::vector<std::int64_t> m_kitMost;
    std::vector<std::vector<KitUse>> m_kitsOf;
    std::vector<std::vector<std::unique_ptr<Curve>>> m_curves; ///< by material, rising supplier
    std::vector<std::map<std::vector<int>, std::shared_ptr<const Merged>>> m_merged;
    struct Listed {
        std::unique_ptr<MoneyList> list;
        std::int64_t tooLong = kNever; ///< from this limit on there are too many sums
    };
    std::map<std::pair<int, int>, Listed> m_lists; ///< by material and supplier
    std::size_t m_keptCells = 0;
    std::int64_t m_work = 0;
    bool m_isExact = true;
    bool m_isWhole = true;
};

enum class State : char { Open, Off, Paid, Free };

/// The price of a goods sum by supplier and how a kit's price is split over its materials.
struct Multipliers {
    std::vector<int> goods;               ///< 0 .. kScale, by sum to be reached
    std::vector<std::vector<int>> shares; ///< by kit, by give; each row adds up to kShareScale at most
};

/// A state of the suppliers, relaxed: goods sums may be missed at a price per granule, and each material decides on
/// its own how many of a kit it takes, at its share of the kit's price. evaluate() bounds every plan in this state.
class Relaxation {
  public:
    Relaxation(Market& market, std::vector<State> states, bool sumsMatter);

    const std::vector<State>& states() const { return m_states; }
    std::int64_t shipping() const { return m_shipping; }
    /// Suppliers whose goods must reach a sum, and the sum less what was bought ahead.
    const std::vector<int>& sums() const { return m_sums; }
    std::int64_t sum(std::size_t c) const { return m_targets[c]; }
    /// Kits of allowed suppliers, in the order in which they are decided.
    const std::vector<int>& kits() const { return m_kits; }
    /// Merged curves of the suppliers without a sum, and of all allowed ones.
    const Merged& rest(int material) const { return *m_rest[static_cast<std::size_t>(material)]; }
    const Merged& all(int material) const { return *m_all[static_cast<std::size_t>(material)]; }
    const Curve* sumCurve(int material, std::size_t c) const { return m_curves[static_cast<std::size_t>(material)][c]; }

    /// The bound in 4096ths of a granule; kScaledNever when nothing covers. Leaves its tables for the readers below.
    std::int64_t evaluate(const Multipliers& multipliers);
    /// The same tables for prices of the sums alone; kits and undecided() are left as they are.
    void evaluateSums(const std::vector<int>& goods);
    /// What the suppliers with a sum sell in the cheapest cover of `n` units of a material, added to `goods`.
    void addGoods(int material, std::int64_t n, std::vector<std::int64_t>& goods) const;
    const Multipliers& multipliers() const { return m_multipliers; }
    /// Least scaled price of `n` units of a material from the sums' suppliers c and later, and the rest.
    std::int64_t tail(int material, std::size_t c, std::int64_t n) const {
        return m_tails[static_cast<std::size_t>(material)][c][static_cast<std::size_t>(n)];
    }
    /// Least scaled price of `n` units when the first `decided` of kits() are no longer to be chosen.
    std::int64_t undecided(int material, std::size_t decided, std::int64_t n) const;
    /// The part of the bound that no choice changes: shipping and the prices of the sums.
    std::int64_t fixedPart() const { return m_fixed; }
    /// Scaled price of `count` of a kit at the current multipliers.
    std::int64_t kitPrice(int k, std::int64_t count) const;

    /// What each material chose in the last evaluate().
    struct Choice {
        std::vector<std::int64_t> goods;               ///< by sum
        std::vector<std::vector<std::int64_t>> copies; ///< by kit, by give
    };
    Choice choice() const;

  private:
    struct Split {
        std::int32_t here = 0;
        std::int32_t rest = 0;
    };
    void mergeTails(int material);
    void mergeKits(int material);
    void priceKits();

    Market& m_market;
    std::vector<State> m_states;
    std::int64_t m_shipping = 0;
    std::vector<int> m_sums;
    std::vector<std::int64_t> m_targets;
    std::vector<int> m_kits;
    std::vector<std::size_t> m_rank; ///< by kit: place in m_kits, or its size when not allowed
    std::vector<std::shared_ptr<const Merged>> m_rest;
    std::vector<std::shared_ptr<const Merged>> m_all;
    std::vector<std::vector<const Curve*>> m_curves; ///< by material, by sum
    std::vector<std::vector<Market::KitUse>> m_uses; ///< by material: allowed kits in rank order
    Multipliers m_multipliers;
    std::int64_t m_fixed = 0;
    std::vector<std::vector<std::vector<std::int64_t>>> m_tails; ///< material, sum, units
    std::vector<std::vector<std::vector<Split>>> m_tailSplits;
    std::vector<std::vector<std::vector<std::int64_t>>> m_kitTails; ///< material, use, units
    std::vector<std::vector<std::vector<std::int32_t>>> m_kitChoice;
    std::vector<std::vector<std::vector<std::int64_t>>> m_prices;       ///< kit, give, count: share of the price
    std::vector<std::vector<std::vector<std::int32_t>>> m_cheapestFrom; ///< the cheapest count at or above each
};

} // namespace sp::supply
