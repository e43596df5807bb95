// SPDX-License-Identifier: MIT
#include "app/main/launcher.h"

#include "app/backups/backups_dialog.h"
#include "app/backups/restoring.h"
#include "app/counter/counter_page.h"
#include "app/demo/demo_orders.h"
#include "app/desk/fonts.h"
#include "app/desk/message_bar.h"
#include "app/main/book_trouble.h"
#include "app/main/first_book.h"
#include "app/session/index_keeper.h"
#include "app/session/settings.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTimer>

#include <algorithm>
#include <iterator>

namespace sp::program {

namespace {

QString bookKinds() { return QObject::tr("Job books (*.jobbook)"); }

QString documents() { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

/// How much of the start may be spent on sealing results of quotes from older versions.
constexpr std::chrono::seconds kSealingBudget{2};

FirstBook opened(const QString& file) {
    auto book = db::Book::open(file.toStdString(), session::seat());
    if (book) words::sealOldResults(**book, kSealingBudget, words::SheetWords());
    return {std::move(book), file};
}

/// A backup goes away in its time, with whatever was worked into it: it is restored, not opened.
FirstBook openedUnlessBackup(const QString& file) {
    if (!backups::isBackup(file.toStdString(), backups::backupRoot())) return opened(file);
    return {words::fail(base::Code::ReadOnly, file.toStdString(),
                        QCoreApplication::translate("App", "“%1” is a backup, which is kept as it is; restore it by "
                                                           "“Backups…” or “Open a backup…”.")
                            .arg(QFileInfo(file).fileName())),
            file};
}

FirstBook openedDemo() {
    const auto demo = Launcher::demoFile();
    if (QFileInfo::exists(demo)) return opened(demo);
    QDir().mkpath(QFileInfo(demo).absolutePath());
    return {demo::createBusyDemo(demo.toStdString(), session::seat()), demo};
}

/// The nearest folder above the file that is there: of a stick that is not plugged in, where sticks are.
QString folderNear(const QString& file) {
    auto folder = QFileInfo(file).absolutePath();
    while (!QFileInfo(folder).isDir() && QFileInfo(folder).absolutePath() != folder)
        folder = QFileInfo(folder).absolutePath();
    return folder;
}

} // namespace

Launcher::Launcher(desk::Theme& theme, desk::Prompter& prompter, QObject* parent)
    : QObject(parent)
    , m_theme(theme)
    , m_prompter(prompter) {}
Launcher::~Launcher() = default;

QString Launcher::demoFile() {
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("demo.jobbook"));
}

FirstBook openFirstBook(const QString& file) {
    const auto wanted = file.isEmpty() ? session::kept(session::kLastBook) : file;
    return wanted.isEmpty() || wanted == Launcher::demoFile() ? openedDemo() : openedUnlessBackup(wanted);
}

void Launcher::start(FirstBook first) { show(std::move(first)); }

bool Launcher::show(FirstBook opened) {
    if (!opened.book) {
        tell(opened.file, opened.book.error());
        return false;
    }
    const auto file = QString::fromStdString((*opened.book)->file().string());
    auto window = std::make_unique<MainWindow>(std::move(*opened.book), m_theme, m_prompter);
    if (!window->session().shop().isDemo && file != demoFile()) {
        session::save(session::kLastBook, file);
        session::noteLastBook(file);
    }
    connect(
        window.get(), &MainWindow::demoAsked, this, [this] { show(openedDemo()); }, Qt::QueuedConnection);
    connect(window.get(), &MainWindow::newBookAsked, this, &Launcher::newBook, Qt::QueuedConnection);
    connect(window.get(), &MainWindow::openBookAsked, this, &Launcher::openBook, Qt::QueuedConnection);
    window->show();
    m_window = std::move(window);
    // It may be its own button that asked.
    if (m_trouble) m_trouble.release()->deleteLater();
    return true;
}

void Launcher::tell(const QString& file, const base::Error& error) {
    const auto sentence = words::sentence(error);
    if (m_window) return m_window->messages().tell(desk::Tone::Warn, sentence);
    if (!m_trouble) {
        m_wanted = file; // and stays so when another file was tried instead
        desk::setZoom(session::kept(session::kZoom));
        m_trouble = std::make_unique<BookTrouble>();
        connect(m_trouble.get(), &BookTrouble::tryAgainAsked, this,
                [this] { show(m_wanted == demoFile() ? openedDemo() : opened(m_wanted)); });
        connect(m_trouble.get(), &BookTrouble::locateAsked, this, [this] { openChosen(tr("Locate your job book")); });
        connect(m_trouble.get(), &BookTrouble::backupAsked, this, &Launcher::showBackups);
        connect(m_trouble.get(), &BookTrouble::demoAsked, this, [this] { show(openedDemo()); });
        connect(m_trouble.get(), &BookTrouble::newBookAsked, this, &Launcher::newBook);
    }
    m_trouble->tell(m_wanted, sentence, m_wanted == demoFile());
    m_trouble->show();
}

void Launcher::comeForward(const QString& file) {
    auto* shown = m_window ? static_cast<QWidget*>(m_window.get()) : m_trouble.get();
    if (!shown) return;
    if (shown->isMinimized()) shown->showNormal();
    shown->raise();
    shown->activateWindow();
    if (!file.isEmpty()) openBook(file);
}

void Launcher::openChosen(const QString& title) {
    const auto file = m_prompter.fileToOpen({title, folderNear(m_wanted), {}, bookKinds(), QStringLiteral("jobbook")});
    if (file) show(openedUnlessBackup(*file));
}

/// Those of the book that is missed; where there are none under its name, those of any.
void Launcher::showBackups() {
    const auto root = backups::backupRoot();
    const std::filesystem::path book = m_wanted.toStdString();
    auto all = db::allBackupsIn(root);
    std::vector<db::Backup> own;
    std::ranges::copy_if(all, std::back_inserter(own),
                         [&](const db::Backup& one) { return one.book == book.stem().string(); });
    if (all.empty()) return openChosen(tr("Open a backup of your job book"));
    const auto elsewhere = std::filesystem::path(documents().toStdString());
    auto* dialog = new backups::BackupsDialog(
        {own.empty() ? std::move(all) : std::move(own),
         root,
         [book, elsewhere] { return backups::restoreTarget(book, elsewhere, QDate::currentDate()); },
         {},
         nullptr},
        m_formatter, m_prompter, m_trouble.get());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &backups::BackupsDialog::restored, this, [this](const QString& file) { show(opened(file)); });
    dialog->open();
}

void Launcher::newBook() {
    const auto file = m_prompter.fileToSave(
        {tr("Start a job book"), documents(), tr("My shop"), bookKinds(), QStringLiteral("jobbook")});
    if (file) show({createFirstBook(*file, QLocale(), session::seat()), *file});
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
    show(openedUnlessBackup(file));
}

} // namespace sp::program

#include "moc_launcher.cpp"
