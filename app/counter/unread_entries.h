// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <utility>

namespace sp::counter {

/// What was typed on the Counter and cannot be read, by line and field; kept until it is mended or its line goes.
class UnreadEntries {
  public:
    /// In place of a line's number: an entry of the order itself.
    static constexpr int kOrder = -1;

    bool isEmpty() const { return m_entries.empty(); }
    /// Without a problem, one sentence, it is readable again. False when nothing changed.
    bool set(int line, const QString& field, const QString& problem, const QString& typed);
    /// Null when the field holds nothing unreadable.
    const QString* typed(int line, const QString& field) const;
    /// In the field, or, when that is empty, in any of the line.
    bool has(int line, const QString& field) const;
    /// What to say first, and on which line: of `current` before the order's, and those before other lines'.
    std::pair<int, QString> first(int current) const;

    void clear() { m_entries.clear(); }
    /// The line is taken out; those below it move up.
    void removeLine(int line);
    /// One of the line's numbered fields ("stone2") is taken out; those after it move up.
    void removeNumbered(int line, const QString& beginning, int number);
    /// Fields whose name begins so are no longer on the line.
    void drop(int line, const QString& beginning);

  private:
    struct Entry {
        QString typed;
        QString sentence;
    };
    std::map<std::pair<int, QString>, Entry> m_entries;
};

} // namespace sp::counter
