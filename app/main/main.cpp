// SPDX-License-Identifier: MIT
#include "app/desk/fonts.h"
#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/main/launcher.h"
#include "app/main/sheet_writer.h"
#include "app/session/settings.h"
#include "app/verbs/verbs.h"
#include "app/words/words.h"

#include <QApplication>
#include <QGuiApplication>
#include <QMessageBox>

#include <cstdio>
#include <future>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace sp;

int say(const verbs::Outcome& outcome) {
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    if (written) return outcome.exit;
    std::fputs("The answer could not be written out; the disk may be full.\n", stderr);
    return 1;
}

int runVerb(int argc, char** argv, const std::vector<std::string>& words) {
    // Some verbs need fonts, but none a screen.
    std::optional<QGuiApplication> drawing;
    if (verbs::needsFonts(words)) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        drawing.emplace(argc, argv);
    }
    return say(verbs::run(words, {db::systemSurroundings(), program::writeSheet, artwork::outlinesOf}));
}

std::string help() {
    return "Stonepenny: what will this order cost, and what shall the customer pay?\n\n"
           "  stonepenny [BOOK.jobbook]   opens the app on a job book\n"
           "  stonepenny --version\n" +
           verbs::usage() +
           "\nDates are YYYY-MM-DD. --json answers in JSON. Exit 0: done, 1: not possible, 2: wrong use.\n";
}

/// Without a screen Qt would end the program with a message for developers; this prints one for the user.
bool hasScreen() {
    return qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
}

int runWindow(int argc, char** argv, const QString& file) {
    if (!hasScreen())
        return say(
            {1, {}, "There is no screen here to open a window on; use the verbs that stonepenny --help lists.\n"});
    QApplication app(argc, argv);
    // Opening the book waits for the disk and loading fonts for the processor, so both run at once. The application
    // object comes first: Qt takes the first thread that uses it for the GUI thread.
    auto first = std::async(std::launch::async, program::openFirstBook, file);
    const auto scheme = static_cast<desk::Scheme>(session::kept(session::kScheme));
    desk::Theme theme(app, scheme, desk::Theme::Fonts::Later);
    desk::DialogPrompter prompter;
    program::Launcher launcher(theme, prompter);
    if (const auto started = launcher.start(first.get()); !started) {
        const auto sentence = words::sentence(started.error());
        std::fprintf(stderr, "%s\n", sentence.toUtf8().constData());
        QMessageBox box(QMessageBox::Warning, QStringLiteral("Stonepenny"), sentence, QMessageBox::Close);
        box.exec();
        return 1;
    }
    return QApplication::exec();
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication::setOrganizationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationVersion(QStringLiteral(STONEPENNY_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.stonepenny.stonepenny"));
    const std::vector<std::string> words(argv + 1, argv + argc);
    const auto asksHelp = [](const std::string& word) { return word == "--help" || word == "-h"; };
    if (!words.empty() && (asksHelp(words.front()) || (verbs::isVerb(words.front()) && asksHelp(words.back()))))
        return say({0, help(), {}});
    if (!words.empty() && words.front() == "--version") return say({0, "stonepenny " STONEPENNY_VERSION "\n", {}});
    if (!words.empty() && verbs::isVerb(words.front())) return runVerb(argc, argv, words);
    if (!words.empty() && (words.size() > 1 || words.front().empty() || words.front()[0] == '-' ||
                           words.front().find(".jobbook") == std::string::npos))
        return say({2,
                    {},
                    "“" + words.front() +
                        "” is not a verb and not a job book; stonepenny --help lists what there "
                        "is.\n"});
    return runWindow(argc, argv, words.empty() ? QString() : QString::fromStdString(words.front()));
}
