// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/bin_counts.h"
#include "core/layout/mixed_search.h"
#include "core/layout/pattern_cover.h"
#include "core/layout/turned_counts.h"

#include <cstdint>
#include <vector>

namespace sp::layout {

/// How many bins of one size boxes of few kinds take at least, by what counts of them one bin can hold at most: the
/// linear programme of P. Gilmore and R. Gomory (1961, from memory) over all counts that may lie in a bin (BinCounts),
/// which is sharpened limit by limit. Then the counts that would help most are laid, or it is shown that they cannot
/// be.
class CountSearch {
  public:
    static constexpr std::size_t kMaxKinds = 4;

    /// `most` of each kind in one bin, by a bound that holds; 1 to kMaxKinds kinds, each of which fits the bin.
    CountSearch(std::vector<BoxKind> kinds, std::int64_t width, std::int64_t height, bool mayTurn, BoxCounts most);

    /// No fewer bins; sharpened until `steps` are used up.
    std::int64_t bound(std::int64_t& steps);
    /// Adds ways to lay bin 0 with which fewer are needed, until the whole numbers above both linear programmes meet;
    /// then makes the bound better. Answers the bound.
    std::int64_t search(std::vector<BinWay>& ways, Effort& effort);

  private:
    std::vector<double> pricesOf(const std::vector<BoxCounts>& columns, std::vector<double>* copies = nullptr) const;
    double valueOf(const std::vector<double>& prices) const;
    void sharpen(std::int64_t& steps);
    std::optional<BinCounts::Worth> worthiest(BinCounts& may, const std::vector<double>& prices, std::int64_t& steps);
    bool layNext(std::vector<BinWay>& ways, Effort& effort);
    bool proveNext(std::vector<BinWay>& ways, Effort& effort);
    void layLast(std::vector<BinWay>& ways, Effort& effort);
    BoxCounts leftForLast(const std::vector<BinWay>& ways, std::int64_t& bins) const;
    bool tryToLay(const BoxCounts& counts, std::vector<BinWay>& ways, Effort& effort);

    std::vector<BoxKind> m_kinds;
    std::int64_t m_width;
    std::int64_t m_height;
    bool m_mayTurn;
    BoxCounts m_demands;
    BinCounts m_may;   ///< what may lie in one bin
    BinCounts m_tried; ///< and was not tried in vain
    TurnedCounts m_turned;
    std::vector<BoxCounts> m_columns;
    std::vector<BoxCounts> m_open; ///< neither laid nor shown not to lie, with as much work as is given now
    std::int64_t m_work = 0;       ///< steps for one try
    double m_least = 0;            ///< bins
};

} // namespace sp::layout
