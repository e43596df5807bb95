// SPDX-License-Identifier: MIT
// What the program does from main to its first painted window, on the book named on the command line.
#include "app/main/launcher.h"
#include "tests/bench/first_paint.h"

#include <QSettings>
#include <QStandardPaths>

#include <cstdio>

int main(int argc, char** argv) {
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Stonepenny"));
    QCoreApplication::setApplicationName(QStringLiteral("Stonepenny"));
    QApplication app(argc, argv);
    sp::bench::QuitAtFirstPaint quit(app);
    sp::desk::Theme theme(app);
    sp::desk::DialogPrompter prompter;
    sp::program::Launcher launcher(theme, prompter);
    if (const auto started = launcher.start(QString::fromLocal8Bit(argc > 1 ? argv[1] : "")); !started) {
        std::fprintf(stderr, "%s\n", started.error().detail.c_str());
        return 1;
    }
    return QApplication::exec();
}
