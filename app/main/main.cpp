// SPDX-License-Identifier: MIT
#include "app/backups/backup_keeper.h"
#include "app/desk/fonts.h"
#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/main/asked_to_end.h"
#include "app/main/doorbell.h"
#include "app/main/launcher.h"
#include "app/main/sheet_writer.h"
#include "app/session/index_keeper.h"
#include "app/session/settings.h"
#include "app/verbs/verbs.h"
#include "app/words/translations.h"
#include "app/words/words.h"
#include "core/base/freed_memory.h"

#include <QApplication>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLibraryInfo>

#include <algorithm>
#include <cstdio>
#include <future>
#include <memory>
#include <string>
#include <vector>

namespace {

using namespace sp;

std::string line(const char* source, const std::vector<base::Value>& values = {}) {
    return words::told(source, values).toStdString() + "\n";
}

int say(const verbs::Outcome& outcome) {
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    if (written) return outcome.exit;
    const auto why = line(QT_TRANSLATE_NOOP("App", "The answer could not be written out; the disk may be full."));
    std::fwrite(why.data(), 1, why.size(), stderr);
    return 1;
}

QStringList wishedLanguages() { return words::languagesBeforeEnglish(QLocale::system().uiLanguages()); }

/// In the language of whoever reads, once there is an application.
void speak(const QStringList& wished = wishedLanguages()) {
    words::speakFirstOf(wished, words::translationFolders(QCoreApplication::applicationDirPath()));
}

/// The window may speak another language than the system: days and figures are then written as that language does where
/// the system is.
void speakAsChosen() {
    const auto chosen = session::kept(session::kLanguage);
    if (chosen.isEmpty()) return speak();
    speak(words::languagesBeforeEnglish({chosen}));
    QLocale::setDefault(QLocale(QLocale(chosen).language(), QLocale::system().territory()));
}

/// What an answer in the terminal needs: fonts for some verbs, but no screen; for most in English nothing.
std::unique_ptr<QCoreApplication> applicationFor(const std::vector<std::string>& words, int& argc, char** argv) {
    if (verbs::needsFonts(words)) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        return std::make_unique<QGuiApplication>(argc, argv);
    }
    const bool makesPapers = std::find(words.begin(), words.end(), "--book") != words.end(); // in a customer's language
    return wishedLanguages().isEmpty() && !makesPapers ? nullptr : std::make_unique<QCoreApplication>(argc, argv);
}

bool namesABook(const std::vector<std::string>& words) {
    return words.size() == 1 && !words.front().empty() && words.front()[0] != '-' && !verbs::isVerb(words.front()) &&
           words.front().find(".jobbook") != std::string::npos;
}

/// Of everything but the window.
verbs::Outcome answerTo(const std::vector<std::string>& words) {
    const auto asksHelp = [](const std::string& word) { return word == "--help" || word == "-h"; };
    if (words.empty() || namesABook(words))
        return {1,
                {},
                line(QT_TRANSLATE_NOOP("App", "There is no screen here to open a window on; use the verbs that "
                                              "stonepenny --help lists."))};
    const bool isVerb = verbs::isVerb(words.front());
    if (asksHelp(words.front()) || (isVerb && asksHelp(words.back()))) return {0, verbs::help(), {}};
    if (words.front() == "--version") return {0, "stonepenny " STONEPENNY_VERSION "\n", {}};
    if (isVerb)
        return verbs::run(words, {session::seat(), program::writeSheet, artwork::outlinesOf, program::writeBill,
                                  program::writeCareCards, backups::backupPlaces(), program::writeBenchSheet});
    return {
        2,
        {},
        line(QT_TRANSLATE_NOOP("App", "“%1” is not a verb and not a job book; stonepenny --help lists what there is."),
             {base::asValue(words.front())})};
}

/// Without a screen Qt would end the program with a message for developers; this prints one for the user.
bool hasScreen() {
    return qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
}

int runWindow(int& argc, char** argv, const QString& file) {
    QApplication app(argc, argv);
    const program::AskedToEnd toEnd;
    QObject::connect(&toEnd, &program::AskedToEnd::asked, &app, [] {
        QApplication::closeAllWindows();
        QApplication::quit();
    });
    speakAsChosen();
    const auto asked = file.isEmpty() ? QString() : QFileInfo(file).absoluteFilePath();
    if (program::Doorbell::ring(asked)) return 0;
    program::Doorbell doorbell;
    doorbell.listen();
    // Opening the book waits for the disk and loading fonts for the processor, so both run at once. The application
    // object comes first: Qt takes the first thread that uses it for the GUI thread.
    auto first = std::async(std::launch::async, program::openFirstBook, file);
    const auto scheme = static_cast<desk::Scheme>(session::kept(session::kScheme));
    desk::Theme theme(app, scheme, desk::Theme::Fonts::Later);
    desk::DialogPrompter prompter;
    program::Launcher launcher(theme, prompter);
    QObject::connect(&doorbell, &program::Doorbell::rung, &launcher, &program::Launcher::comeForward);
    launcher.start(first.get());
    return QApplication::exec();
}

/// Plugins are code. They come from where Qt is installed, not from the program's folder nor from where the environment
/// says.
void mindOwnPlugins() {
    for (const auto* name : {"QT_PLUGIN_PATH", "QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_GENERIC_PLUGINS"})
        qunsetenv(name);
    QCoreApplication::setLibraryPaths({QLibraryInfo::path(QLibraryInfo::PluginsPath)});
}

} // namespace

int main(int argc, char** argv) {
    base::keepFreedMemory();
    mindOwnPlugins();
    QCoreApplication::setOrganizationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationVersion(QStringLiteral(STONEPENNY_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.stonepenny.stonepenny"));
    const std::vector<std::string> words(argv + 1, argv + argc);
    if ((words.empty() || namesABook(words)) && hasScreen())
        return runWindow(argc, argv, words.empty() ? QString() : QString::fromStdString(words.front()));
    const auto app = applicationFor(words, argc, argv);
    if (app) speak();
    return say(answerTo(words));
}
