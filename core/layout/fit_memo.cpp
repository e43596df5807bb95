// SPDX-License-Identifier: MIT
#include "core/layout/fit_memo.h"

#include "core/layout/roll.h"

namespace sp::layout {

std::size_t FitMemo::Hash::operator()(const Key& key) const noexcept {
    std::uint64_t mixed = 1469598103934665603ULL;
    for (const std::int64_t part :
         {key.sheet.width.nanometres(), key.sheet.height.nanometres(), key.piece.width.nanometres(),
          key.piece.height.nanometres(), key.rules.margin.nanometres(), key.rules.gap.nanometres(),
          static_cast<std::int64_t>(key.rules.oneWay), key.pieces}) {
        mixed = (mixed ^ static_cast<std::uint64_t>(part)) * 0x9E3779B97F4A7C15ULL;
        mixed ^= mixed >> 29;
    }
    return mixed;
}

template<class Work>
base::Result<std::int64_t> FitMemo::remembered(const Key& key, Work work) {
    if (const auto found = m_answers.find(key); found != m_answers.end()) return found->second;
    auto answer = work();
    if (!answer) return answer;
    if (m_answers.size() >= kMaxRemembered) m_answers.clear();
    m_answers.emplace(key, *answer);
    return answer;
}

base::Result<std::int64_t> FitMemo::count(const Sheet& sheet, const Piece& piece, const FitRules& rules) {
    return remembered({sheet, piece, rules, 0}, [&]() -> base::Result<std::int64_t> {
        const auto answer = fitSheet(sheet, piece, rules);
        if (!answer) return base::fail(answer.error());
        return answer->count;
    });
}

base::Result<units::Length> FitMemo::length(units::Length rollWidth, const Piece& piece, const FitRules& rules,
                                            std::int64_t pieces) {
    const auto answer = remembered({{rollWidth, {}}, piece, rules, pieces}, [&]() -> base::Result<std::int64_t> {
        const auto need = lengthForPieces(rollWidth, piece, rules, pieces);
        if (!need) return base::fail(need.error());
        return need->length.nanometres();
    });
    if (!answer) return base::fail(answer.error());
    return units::Length::fromNanometres(*answer);
}

} // namespace sp::layout
