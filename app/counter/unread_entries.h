// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <utility>

namespace sp::counter {

/// Entries of the Counter that cannot be read, by line and field; kept until corrected or until the line is removed.
class UnreadEntries {
  public:
    /// Used instead of a line's number for an entry of the order itself.
    static constexpr int kOrder = -1;

    bool isEmpty() const { return m_entries.empty(); }
    /// `problem` is one sentence; empty: the entry can be read again. False when nothing changed.
    bool set(int line, const QString& field, const QString& problem, const QString& typed);
    /// Null if the entry of the field can be read.
    const QString* typed(int line, const QString& field) const;
    /// Whether the field has an unreadable entry; without a field, whether any of the line has.
    bool has(int line, const QString& field) const;
    /// The problem to show first and its line: `current`'s come before the order's, and those before other lines'.
    std::pair<int, QString> first(int current) const;

    void clear() { m_entries.clear(); }
    /// The line was removed; the lines after it move up.
    void removeLine(int line);
    /// One of the line's numbered fields ("stone2") was removed; those after it move up.
    void removeNumbered(int line, const QString& beginning, int number);
    /// Removes the entries of fields whose names begin with that.
    void drop(int line, const QString& beginning);

  private:
    struct Entry {
        QString typed;
        QString sentence;
    };
    std::map<std::pair<int, QString>, Entry> m_entries;
};

} // namespace sp::counter
