// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <compare>
#include <map>
#include <utility>

namespace sp::counter {

/// Entries of the Counter that cannot be read, by what they belong to and field; kept until corrected or until that is
/// removed.
class UnreadEntries {
  public:
    /// Used instead of a line's number for an entry of the order itself.
    static constexpr int kOrder = -1;
    /// Used instead of a place's number for an entry of the line itself.
    static constexpr int kWholeLine = -1;

    struct Owner {
        int line = kOrder;
        int place = kWholeLine;

        friend auto operator<=>(const Owner&, const Owner&) = default;
    };

    bool isEmpty() const { return m_entries.empty(); }
    /// `problem` is one sentence; empty: the entry can be read again. False when nothing changed.
    bool set(Owner owner, const QString& field, const QString& problem, const QString& typed);
    /// Null if the entry of the field can be read.
    const QString* typed(Owner owner, const QString& field) const;
    /// Whether the line or one of its places has an unreadable entry in the field; without a field, in any.
    bool has(int line, const QString& field) const;
    /// The problem to show first and its line: `current`'s come before the order's, and those before other lines'.
    std::pair<int, QString> first(int current) const;

    void clear() { m_entries.clear(); }
    /// The line was removed; the lines after it move up.
    void removeLine(int line);
    /// One of the line's places was removed; those after it move up.
    void removePlace(int line, int place);
    /// One of the numbered fields ("stone2") was removed; those after it move up.
    void removeNumbered(Owner owner, const QString& beginning, int number);
    /// Removes the entries of fields whose names begin with that.
    void drop(Owner owner, const QString& beginning);

  private:
    struct Entry {
        QString typed;
        QString sentence;
    };
    std::map<std::pair<Owner, QString>, Entry> m_entries;
};

} // namespace sp::counter
