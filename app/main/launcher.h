// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/format/formatter.h"
#include "app/main/main_window.h"

#include <QObject>
#include <QString>

#include <memory>

namespace sp::program {

class BookTrouble;

/// The book to start with, and which file that is, opened or not.
struct FirstBook {
    base::Result<std::unique_ptr<db::Book>> book;
    QString file;
};

/// Opens `file`; without one, the book last open; where there never was one, the demo book, which is created if it is
/// missing. Never another book instead of the one that does not open. Needs the application object but no window, so it
/// can run in a thread while the window is built. Errors: as db::Book::open and demo::createDemoBook.
FirstBook openFirstBook(const QString& file);

/// Opens and closes the window over a job book: which book at the start, a new one, another one. A book that was opened
/// is the one to start with the next time, the demo book never is.
class Launcher : public QObject {
    Q_OBJECT

  public:
    Launcher(desk::Theme& theme, desk::Prompter& prompter, QObject* parent = nullptr);
    ~Launcher() override;

    /// Shows the window over that book; where it did not open, which book it is and what can be done.
    void start(FirstBook first);
    /// Another start asked for the window, and for a file unless that is empty.
    void comeForward(const QString& file);
    MainWindow* window() { return m_window.get(); }
    /// Null while a book is open.
    BookTrouble* trouble() { return m_trouble.get(); }

    /// The default path of the demo book.
    static QString demoFile();

  private:
    /// Whether there is a window over it; where not, it is said in the one that stays, or instead of one.
    bool show(FirstBook opened);
    void tell(const QString& file, const base::Error& error);
    void newBook();
    void openBook(const QString& file);
    void openChosen(const QString& title);
    void showBackups();

    desk::Theme& m_theme;
    desk::Prompter& m_prompter;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<BookTrouble> m_trouble;
    desk::Formatter m_formatter{QLocale(), {}}; ///< while there is no shop
    QString m_wanted;                           ///< the file that the trouble is about
};

} // namespace sp::program
