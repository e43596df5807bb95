// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"

#include <cstdint>
#include <unordered_map>

namespace sp::layout {

/// Remembers what fits, so that pricing an order again does not lay it out again. Forgets everything when it holds
/// kMaxRemembered answers. Errors are not remembered. Not for use from two threads at once.
class FitMemo {
  public:
    static constexpr std::size_t kMaxRemembered = 4'096;

    /// fitSheet's count.
    base::Result<std::int64_t> count(const Sheet& sheet, const Piece& piece, const FitRules& rules);
    /// lengthForPieces' length.
    base::Result<units::Length> length(units::Length rollWidth, const Piece& piece, const FitRules& rules,
                                       std::int64_t pieces);
    std::size_t size() const { return m_answers.size(); }

  private:
    struct Key {
        Sheet sheet; ///< of a roll: its width, and no height
        Piece piece;
        FitRules rules;
        std::int64_t pieces = 0; ///< of a roll

        friend bool operator==(const Key&, const Key&) = default;
    };
    struct Hash {
        std::size_t operator()(const Key& key) const noexcept;
    };

    template<class Work>
    base::Result<std::int64_t> remembered(const Key& key, Work work);

    std::unordered_map<Key, std::int64_t, Hash> m_answers;
};

} // namespace sp::layout
