// SPDX-License-Identifier: MIT
#include "app/counter/unread_entries.h"

#include <algorithm>

namespace sp::counter {

bool UnreadEntries::set(Owner owner, const QString& field, const QString& problem, const QString& typed) {
    if (problem.isEmpty()) return m_entries.erase({owner, field}) > 0;
    m_entries[{owner, field}] = {typed, problem};
    return true;
}

const QString* UnreadEntries::typed(Owner owner, const QString& field) const {
    const auto found = m_entries.find({owner, field});
    return found == m_entries.end() ? nullptr : &found->second.typed;
}

bool UnreadEntries::has(int line, const QString& field) const {
    return std::ranges::any_of(m_entries, [&](const auto& entry) {
        return entry.first.first.line == line && (field.isEmpty() || entry.first.second == field);
    });
}

std::pair<int, QString> UnreadEntries::first(int current) const {
    const auto of = [this](int line) {
        return std::ranges::find_if(m_entries, [line](const auto& entry) { return entry.first.first.line == line; });
    };
    auto found = of(current);
    if (found == m_entries.end()) found = of(kOrder);
    if (found == m_entries.end()) found = m_entries.begin();
    return found == m_entries.end() ? std::pair(kOrder, QString())
                                    : std::pair(found->first.first.line, found->second.sentence);
}

void UnreadEntries::removeLine(int line) {
    std::map<std::pair<Owner, QString>, Entry> kept;
    for (auto& [key, entry] : m_entries) {
        auto owner = key.first;
        if (owner.line == line) continue;
        if (owner.line > line) --owner.line;
        kept[{owner, key.second}] = std::move(entry);
    }
    m_entries = std::move(kept);
}

void UnreadEntries::removePlace(int line, int place) {
    std::map<std::pair<Owner, QString>, Entry> kept;
    for (auto& [key, entry] : m_entries) {
        auto owner = key.first;
        if (owner == Owner{line, place}) continue;
        if (owner.line == line && owner.place > place) --owner.place;
        kept[{owner, key.second}] = std::move(entry);
    }
    m_entries = std::move(kept);
}

void UnreadEntries::removeNumbered(Owner owner, const QString& beginning, int number) {
    std::map<std::pair<Owner, QString>, Entry> kept;
    for (auto& [key, entry] : m_entries) {
        const bool isOneOfThem = key.first == owner && key.second.startsWith(beginning);
        const int at = isOneOfThem ? key.second.mid(beginning.size()).toInt() : -1;
        if (isOneOfThem && at == number) continue;
        kept[at > number ? std::pair(owner, beginning + QString::number(at - 1)) : key] = std::move(entry);
    }
    m_entries = std::move(kept);
}

void UnreadEntries::drop(Owner owner, const QString& beginning) {
    std::erase_if(m_entries, [&](const auto& entry) {
        return entry.first.first == owner && entry.first.second.startsWith(beginning);
    });
}

} // namespace sp::counter
