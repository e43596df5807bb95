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
    /// Used instead of a number for an entry of the order itself, of a choice or of a line as a whole.
    static constexpr int kWhole = -1;

    struct Owner {
        int choice = kWhole;
        int line = kWhole;
        int place = kWhole;

        friend auto operator<=>(const Owner&, const Owner&) = default;
    };

    /// Whether the order itself or that choice of it has an unreadable entry.
    bool concern(int choice) const;
    /// `problem` is one sentence; empty: the entry can be read again. False when nothing changed.
    bool set(Owner owner, const QString& field, const QString& problem, const QString& typed);
    /// Null if the entry of the field can be read.
    const QString* typed(Owner owner, const QString& field) const;
    /// Whether the line or one of its places has an unreadable entry in the field; without a field, in any.
    bool has(int choice, int line, const QString& field) const;
    /// The problem to show first where that choice is looked at, and its line (kWhole: none): the current line's come
    /// before those of the order and the choice, and those before other lines'.
    std::pair<int, QString> first(int choice, int currentLine) const;

    void clear() { m_entries.clear(); }
    /// The choice was removed; those after it move up.
    void removeChoice(int choice);
    /// The line was removed; the lines after it move up.
    void removeLine(int choice, int line);
    /// One of the line's places was removed; those after it move up.
    void removePlace(int choice, int line, int place);
    /// One of the numbered fields ("stone2") was removed; those after it move up.
    void removeNumbered(Owner owner, const QString& beginning, int number);
    /// Removes the entries of fields whose names begin with that.
    void drop(Owner owner, const QString& beginning);

  private:
    /// Removes what belongs to the one that `removed` names, or to a part of it, and moves those after it up. `number`:
    /// the member that numbers it.
    void removeAt(const Owner& removed, int Owner::*number);

    struct Entry {
        QString typed;
        QString sentence;
    };
    std::map<std::pair<Owner, QString>, Entry> m_entries;
};

} // namespace sp::counter
