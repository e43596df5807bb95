// SPDX-License-Identifier: MIT
#include "app/main/launcher.h"

#include "app/counter/counter_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/message_bar.h"
#include "app/main/first_book.h"
#include "app/session/settings.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTimer>

namespace sp::program {

namespace {

QString bookKinds() { return QObject::tr("Job books (*.jobbook)"); }

QString documents() { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

/// How much of the start may be spent on sealing results of quotes from older versions.
constexpr std::chrono::seconds kSealingBudget{2};

base::Result<std::unique_ptr<db::Book>> opened(const QString& file) {
    auto book = db::Book::open(file.toStdString(), db::systemEnvironment());
    if (book) words::sealOldResults(**book, kSealingBudget, words::SheetWords());
    return book;
}

} // namespace

Launcher::Launcher(desk::Theme& theme, desk::Prompter& prompter, QObject* parent)
    : QObject(parent)
    , m_theme(theme)
    , m_prompter(prompter) {}

QString Launcher::demoFile() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("demo.jobbook"));
}

FirstBook openFirstBook(const QString& file) {
    if (!file.isEmpty()) return {opened(file), {}};
    QString instead;
    const auto last = session::kept(session::kLastBook);
    if (!last.isEmpty() && QFileInfo::exists(last)) {
        auto book = opened(last);
        if (book) return {std::move(book), {}};
        instead = words::sentence(book.error());
    }
    const auto demo = Launcher::demoFile();
    if (QFileInfo::exists(demo)) return {opened(demo), instead};
    QDir().mkpath(QFileInfo(demo).absolutePath());
    return {demo::createDemoBook(demo.toStdString(), db::systemEnvironment()), instead};
}

base::Done Launcher::start(FirstBook first) {
    const auto shown = show(std::move(first.book));
    if (shown && !first.instead.isEmpty())
        m_window->messages().tell(
            desk::Tone::Warn, tr("This is the demo book, because the last one did not open. %1").arg(first.instead));
    return shown;
}

base::Done Launcher::show(base::Result<std::unique_ptr<db::Book>> book) {
    if (!book) return base::fail(book.error());
    session::save(session::kLastBook, QString::fromStdString((*book)->file().string()));
    auto window = std::make_unique<MainWindow>(std::move(*book), m_theme, m_prompter);
    connect(window.get(), &MainWindow::newBookAsked, this, &Launcher::newBook, Qt::QueuedConnection);
    connect(window.get(), &MainWindow::openBookAsked, this, &Launcher::openBook, Qt::QueuedConnection);
    window->show();
    m_window = std::move(window);
    return {};
}

void Launcher::newBook() {
    const auto file = m_prompter.fileToSave(
        {tr("Start a job book"), documents(), tr("My shop"), bookKinds(), QStringLiteral("jobbook")});
    if (!file) return;
    auto made = createFirstBook(*file, QLocale(), db::systemEnvironment());
    const auto shown = show(std::move(made));
    if (!shown && m_window) m_window->messages().tell(desk::Tone::Warn, words::sentence(shown.error()));
}

void Launcher::openBook(const QString& asked) {
    auto file = asked;
    if (file.isEmpty()) {
        const auto chosen =
            m_prompter.fileToOpen({tr("Open a job book"), documents(), {}, bookKinds(), QStringLiteral("jobbook")});
        if (!chosen) return;
        file = *chosen;
    }
    if (m_window &&
        QFileInfo(file).canonicalFilePath() ==
            QFileInfo(QString::fromStdString(m_window->session().book().file().string())).canonicalFilePath())
        return;
    const auto shown = show(opened(file));
    if (!shown && m_window) m_window->messages().tell(desk::Tone::Warn, words::sentence(shown.error()));
}

} // namespace sp::program
