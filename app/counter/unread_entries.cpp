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

bool UnreadEntries::concern(int choice) const {
    return std::ranges::any_of(m_entries, [&](const auto& entry) {
        const int of = entry.first.first.choice;
        return of == kWhole || of == choice;
    });
}

bool UnreadEntries::has(int choice, int line, const QString& field) const {
    return std::ranges::any_of(m_entries, [&](const auto& entry) {
        const auto& owner = entry.first.first;
        return owner.choice == choice && owner.line == line && (field.isEmpty() || entry.first.second == field);
    });
}

std::pair<int, QString> UnreadEntries::first(int choice, int currentLine) const {
    std::pair<int, QString> best{kWhole, QString()};
    int bestRank = 3;
    for (const auto& [key, entry] : m_entries) {
        const auto& owner = key.first;
        if (owner.choice != kWhole && owner.choice != choice) continue;
        const int rank = owner.line == kWhole ? 1 : owner.line == currentLine ? 0 : 2;
        if (rank >= bestRank) continue;
        bestRank = rank;
        best = {owner.line, entry.sentence};
    }
    return best;
}

void UnreadEntries::removeAt(const Owner& removed, int Owner::*number) {
    std::map<std::pair<Owner, QString>, Entry> kept;
    const auto isOfSame = [&](Owner owner) {
        // The same as the removed one but for the number and what is smaller than it.
        if (number == &Owner::choice) return owner.choice != kWhole;
        if (number == &Owner::line) return owner.choice == removed.choice && owner.line != kWhole;
        return owner.choice == removed.choice && owner.line == removed.line && owner.place != kWhole;
    };
    for (auto& [key, entry] : m_entries) {
        auto owner = key.first;
        if (isOfSame(owner)) {
            if (owner.*number == removed.*number) continue;
            if (owner.*number > removed.*number) --(owner.*number);
        }
        kept[{owner, key.second}] = std::move(entry);
    }
    m_entries = std::move(kept);
}

void UnreadEntries::removeChoice(int choice) { removeAt({choice, kWhole, kWhole}, &Owner::choice); }

void UnreadEntries::removeLine(int choice, int line) { removeAt({choice, line, kWhole}, &Owner::line); }

void UnreadEntries::removePlace(int choice, int line, int place) { removeAt({choice, line, place}, &Owner::place); }

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
