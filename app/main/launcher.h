// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/main/main_window.h"

#include <QObject>
#include <QString>

#include <memory>

namespace sp::program {

/// The book to start with and, where that is not the one last open, the reason.
struct FirstBook {
    base::Result<std::unique_ptr<db::Book>> book;
    QString instead;
};

/// Opens `file`; without one, the book last open, else the demo book, which is created if it is missing. Needs the
/// application object but no window, so it can run in a thread while the window is built. Errors: as db::Book::open and
/// demo::createDemoBook.
FirstBook openFirstBook(const QString& file);

/// Opens and closes the window over a job book: which book at the start, a new one, another one.
class Launcher : public QObject {
    Q_OBJECT

  public:
    Launcher(desk::Theme& theme, desk::Prompter& prompter, QObject* parent = nullptr);

    /// Shows the window over that book. Errors: the book's own.
    base::Done start(FirstBook first);
    MainWindow* window() { return m_window.get(); }

    /// The default path of the demo book.
    static QString demoFile();

  private:
    base::Done show(base::Result<std::unique_ptr<db::Book>> book);
    void newBook();
    void openBook(const QString& file);

    desk::Theme& m_theme;
    desk::Prompter& m_prompter;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace sp::program
