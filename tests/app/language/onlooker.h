// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractItemModel>
#include <QString>
#include <QWidget>

#include <set>
#include <string>

namespace sp::session {
class BookSession;
}

namespace sp::test {

/// Reads what the program shows or prints in the pseudo language: a word in letters without accents went past the
/// translators, unless it is the shop's own or no language turns it. Looks, too, whether the longer words have room.
class Onlooker {
  public:
    Onlooker();

    /// Words that stay what they are.
    void know(const std::string& text);
    /// All that a book says in its own words.
    void knowBook(session::BookSession& session);

    /// A text at some place, noted down if any of its words went past the translators.
    void look(const QString& where, const QString& text);
    /// A widget by itself: what it shows, tells and is called. A model with all its cells.
    void lookAt(const QWidget& widget, const QString& where);
    /// A window or dialog with everything in it that can be seen, its menus too.
    void lookAtAll(const QWidget& window, const QString& where);
    /// Only whether everything in it that can be seen has room.
    void measureAll(const QWidget& window, const QString& where);

    /// Whether a page must be scrolled sideways: that hides a part of every line; only a table may have it.
    void lookForHidden(const QWidget& window, const QString& where);

    std::size_t count() const { return m_found.size(); }
    /// What was noted down, a line each.
    std::string found() const;

  private:
    QString untranslated(const QString& text) const;
    void lookIn(const QAbstractItemModel& model, const QModelIndex& parent, const QString& at);
    void measure(const QWidget& widget, const QString& at);

    std::set<QString> m_known;
    std::set<QString> m_found;
};

} // namespace sp::test
