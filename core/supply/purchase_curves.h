// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/purchase_model.h"

#include <compare>
#include <cstdint>
#include <vector>

namespace sp::supply {

/// Money first, then the worth of what it brings (more is better), then the number of packs.
struct Spend {
    std::int64_t money = 0;
    std::int64_t value = 0;
    std::int64_t packs = 0;

    friend bool operator==(const Spend&, const Spend&) = default;
    friend bool operator<(const Spend& a, const Spend& b) {
        if (a.money != b.money) return a.money < b.money;
        if (a.value != b.value) return a.value > b.value;
        return a.packs < b.packs;
    }
    friend Spend operator+(const Spend& a, const Spend& b) {
        return {a.money + b.money, a.value + b.value, a.packs + b.packs};
    }
};

/// So many packs of one kind.
struct Bought {
    int pack = 0;
    std::int64_t count = 0;
};

/// The least that `n` units of one material cost from one supplier's single-material packs, n = 0 .. need.
class Curve {
  public:
    Curve(const Model& model, int material, int supplier, std::vector<int> packs);

    int supplier() const { return m_supplier; }
    const std::vector<int>& packs() const { return m_packs; }
    const std::vector<Spend>& best() const { return m_best; }
    /// The n after which more costs more; ends with the need.
    const std::vector<int>& steps() const { return m_steps; }
    /// Adds what `best()[n]` buys.
    void collect(int n, std::vector<Bought>& into) const;

  private:
    int m_supplier;
    const Model* m_model;
    std::vector<int> m_packs;
    std::vector<Spend> m_best;
    std::vector<int> m_steps;
    std::vector<std::vector<std::int32_t>> m_choice; ///< by pack, by n
};

/// The least that n units cost from several suppliers together.
class Merged {
  public:
    Merged(std::vector<const Curve*> curves, int need);

    const std::vector<Spend>& best() const { return m_best; }
    const std::vector<int>& steps() const { return m_steps; }
    void collect(int n, std::vector<Bought>& into) const;

  private:
    struct Split {
        std::int32_t here = 0;
        std::int32_t rest = 0;
    };
    std::vector<const Curve*> m_curves;
    std::vector<Spend> m_best;
    std::vector<int> m_steps;
    std::vector<std::vector<Split>> m_splits; ///< by curve, by n
};

/// Every sum of money that can be spent on a curve's packs, with the most units it brings: what is needed to reach a
/// supplier's goods sum exactly, where the cheapest way to cover a need alone is not enough.
class MoneyList {
  public:
    struct Entry {
        std::int64_t money;
        std::int64_t units;
        std::int64_t packs;
    };
    /// All sums from 0 to `limit` granules. Up to kMaxRowLength a row of every granule is filled; beyond that only the
    /// sums that packs add up to are kept, at most kMaxSums of them.
    MoneyList(const Model& model, const Curve& curve, std::int64_t limit);
    static constexpr std::int64_t kMaxRowLength = 131'072;
    static constexpr std::size_t kMaxSums = 400'000;

    std::int64_t limit() const { return m_limit; }
    /// False when there are more sums than are kept; then there are none.
    bool isWhole() const { return m_isWhole; }
    /// False when a pack could be bought oftener than is counted here: what is not listed may still exist.
    bool isExact() const { return m_isExact; }
    /// The simple steps that it took.
    std::int64_t work() const { return m_work; }
    /// Rising in money.
    const std::vector<Entry>& entries() const { return m_entries; }
    /// Adds what was bought for the sum of an entry.
    void collect(std::int64_t money, std::vector<Bought>& into) const;

  private:
    struct Sum {
        std::int64_t money = 0;
        std::int64_t most = 0; ///< units and packs in one number
        std::int64_t count = 0;
    };
    struct Range; ///< counts of a pack at one price

    std::vector<Range> ranges(const ModelPack& pack);
    void fillRow();
    void addToRow(const std::vector<std::int64_t>& before, const Range& range, std::vector<std::int64_t>& row,
                  std::vector<std::int32_t>& choice) const;
    void fillSums();
    void addEntry(std::int64_t money, std::int64_t most);

    const Model* m_model;
    std::vector<int> m_packs;
    std::int64_t m_limit;
    bool m_isWhole = true;
    bool m_isExact = true;
    std::int64_t m_work = 0;
    std::vector<Entry> m_entries;
    std::vector<std::vector<std::int32_t>> m_choice; ///< by pack, by money: of a row
    std::vector<std::vector<Sum>> m_sums;            ///< by pack, rising in money: of sums
};

/// Where a rising row of figures changes: every n with row[n + 1] != row[n], and the last.
template<class Row>
std::vector<int> stepsOf(const Row& row) {
    std::vector<int> steps;
    for (std::size_t n = 0; n < row.size(); ++n)
        if (n + 1 == row.size() || !(row[n] == row[n + 1])) steps.push_back(static_cast<int>(n));
    return steps;
}

} // namespace sp::supply
