// SPDX-License-Identifier: MIT
// What the program does from main to its first painted window, on the book named on the command line; with the word
// `filled` after it, until the Counter stands with its price.
#include "app/counter/counter_page.h"
#include "app/main/launcher.h"
#include "app/words/words.h"
#include "tests/bench/first_paint.h"

#include <QSettings>
#include <QStandardPaths>

#include <cstdio>
#include <future>
#include <string_view>

namespace {

bool isCounter(QObject* watched) { return qobject_cast<sp::counter::CounterPage*>(watched) != nullptr; }

} // namespace

int main(int argc, char** argv) {
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationName(QStringLiteral("Stonepenny"));
    QApplication app(argc, argv);
    auto first =
        std::async(std::launch::async, sp::program::openFirstBook, QString::fromLocal8Bit(argc > 1 ? argv[1] : ""));
    sp::desk::Theme theme(app, sp::desk::Scheme::System, sp::desk::Theme::Fonts::Later);
    sp::desk::DialogPrompter prompter;
    sp::program::Launcher launcher(theme, prompter);
    launcher.start(first.get());
    if (!launcher.window()) return 1;
    const bool isFilled = argc > 2 && std::string_view(argv[2]) == "filled";
    const sp::bench::QuitAtFirstPaint quit(app, isFilled ? isCounter : sp::bench::isMainWindow);
    return QApplication::exec();
}
