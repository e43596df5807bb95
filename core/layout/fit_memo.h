// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/roll.h"

#include <cstddef>
#include <list>
#include <memory>

namespace sp::layout {

/// Remembers answers, so that repricing an order lays nothing out twice. Passed in by whoever prices; not
/// shared between threads. Holds at most `capacity` answers and kMostRemembered positions in all (about 5
/// MB); the answer that was asked for longest ago goes first. Errors are not remembered. An answer handed out
/// lives on by itself.
class FitMemo {
  public:
    static constexpr std::size_t kMostRemembered = 200'000;

    explicit FitMemo(std::size_t capacity = 256)
        : m_capacity(capacity) {}

    /// As fitSheet.
    base::Result<std::shared_ptr<const SheetFit>> fit(const Sheet& sheet, const Piece& piece,
                                                      const FitRules& rules);
    /// As lengthForPieces.
    base::Result<std::shared_ptr<const RollNeed>> roll(units::Length rollWidth, const Piece& piece,
                                                       const FitRules& rules, std::int64_t pieces);

    std::size_t size() const { return m_entries.size(); }

  private:
    /// A roll is kept with the height 0, which no sheet that fits anything has.
    struct Key {
        Sheet sheet;
        Piece piece;
        FitRules rules;
        std::int64_t pieces = 0;

        friend bool operator==(const Key&, const Key&) = default;
    };
    struct Entry {
        Key key;
        std::shared_ptr<const SheetFit> sheet;
        std::shared_ptr<const RollNeed> roll;
        std::size_t positions = 0;
    };

    const Entry* find(const Key& key);
    void remember(Entry entry);

    std::size_t m_capacity;
    std::size_t m_positions = 0;
    std::list<Entry> m_entries; ///< the one asked for last stands first
};

} // namespace sp::layout
