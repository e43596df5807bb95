// SPDX-License-Identifier: MIT
#include "core/layout/fit_memo.h"

#include <algorithm>
#include <utility>

namespace sp::layout {

base::Result<std::shared_ptr<const SheetFit>> FitMemo::fit(const Sheet& sheet, const Piece& piece,
                                                           const FitRules& rules) {
    const Key key{sheet, piece, rules, 0};
    if (const Entry* known = find(key)) return known->sheet;
    auto fresh = fitSheet(sheet, piece, rules);
    if (!fresh) return base::fail(std::move(fresh.error()));
    auto kept = std::make_shared<const SheetFit>(*std::move(fresh));
    remember({key, kept, nullptr, kept->positions.size()});
    return kept;
}

base::Result<std::shared_ptr<const RollNeed>> FitMemo::roll(units::Length rollWidth, const Piece& piece,
                                                            const FitRules& rules, std::int64_t pieces) {
    const Key key{{rollWidth, {}}, piece, rules, pieces};
    if (const Entry* known = find(key)) return known->roll;
    auto fresh = lengthForPieces(rollWidth, piece, rules, pieces);
    if (!fresh) return base::fail(std::move(fresh.error()));
    auto kept = std::make_shared<const RollNeed>(*std::move(fresh));
    remember({key, nullptr, kept, kept->positions.size()});
    return kept;
}

const FitMemo::Entry* FitMemo::find(const Key& key) {
    const auto found = std::find_if(m_entries.begin(), m_entries.end(),
                                    [&key](const Entry& entry) { return entry.key == key; });
    if (found == m_entries.end()) return nullptr;
    m_entries.splice(m_entries.begin(), m_entries, found);
    return &m_entries.front();
}

void FitMemo::remember(Entry entry) {
    if (m_capacity == 0) return;
    m_positions += entry.positions;
    m_entries.push_front(std::move(entry));
    while (m_entries.size() > m_capacity || (m_positions > kMostRemembered && m_entries.size() > 1)) {
        m_positions -= m_entries.back().positions;
        m_entries.pop_back();
    }
}

} // namespace sp::layout
