// SPDX-License-Identifier: MIT
#include "app/counter/unread_entries.h"

#include <algorithm>

namespace sp::counter {

bool UnreadEntries::set(int line, const QString& field, const QString& problem, const QString& typed) {
    if (problem.isEmpty()) return m_entries.erase({line, field}) > 0;
    m_entries[{line, field}] = {typed, problem};
    return true;
}

const QString* UnreadEntries::typed(int line, const QString& field) const {
    const auto found = m_entries.find({line, field});
    return found == m_entries.end() ? nullptr : &found->second.typed;
}

bool UnreadEntries::has(int line, const QString& field) const {
    if (!field.isEmpty()) return typed(line, field) != nullptr;
    return std::ranges::any_of(m_entries, [line](const auto& entry) { return entry.first.first == line; });
}

std::pair<int, QString> UnreadEntries::first(int current) const {
    const auto of = [this](int line) {
        return std::ranges::find_if(m_entries, [line](const auto& entry) { return entry.first.first == line; });
    };
    auto found = of(current);
    if (found == m_entries.end()) found = of(kOrder);
    if (found == m_entries.end()) found = m_entries.begin();
    return found == m_entries.end() ? std::pair(kOrder, QString())
                                    : std::pair(found->first.first, found->second.sentence);
}

void UnreadEntries::removeLine(int line) {
    std::map<std::pair<int, QString>, Entry> kept;
    for (auto& [key, entry] : m_entries)
        if (key.first != line) kept[{key.first > line ? key.first - 1 : key.first, key.second}] = std::move(entry);
    m_entries = std::move(kept);
}

void UnreadEntries::removeNumbered(int line, const QString& beginning, int number) {
    std::map<std::pair<int, QString>, Entry> kept;
    for (auto& [key, entry] : m_entries) {
        const bool isOneOfThem = key.first == line && key.second.startsWith(beginning);
        const int at = isOneOfThem ? key.second.mid(beginning.size()).toInt() : -1;
        if (isOneOfThem && at == number) continue;
        kept[at > number ? std::pair(line, beginning + QString::number(at - 1)) : key] = std::move(entry);
    }
    m_entries = std::move(kept);
}

void UnreadEntries::drop(int line, const QString& beginning) {
    std::erase_if(m_entries, [&](const auto& entry) {
        return entry.first.first == line && entry.first.second.startsWith(beginning);
    });
}

} // namespace sp::counter
