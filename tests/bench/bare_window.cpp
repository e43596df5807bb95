// SPDX-License-Identifier: MIT
// The least a Qt program can do: one empty QMainWindow, until it has been painted once.
#include "tests/bench/first_paint.h"

#include <QMainWindow>

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    sp::bench::QuitAtFirstPaint quit(app, sp::bench::isMainWindow);
    QMainWindow window;
    window.resize(1366, 768);
    window.show();
    return QApplication::exec();
}
