// SPDX-License-Identifier: MIT
// Figures to hold against: one key to a repainted price in one frame of 16 ms with 100 lines.
#include "app/counter/counter_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/main/main_window.h"

#include <QApplication>
#include <QLineEdit>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <benchmark/benchmark.h>

#include <cstdio>

using namespace sp;

namespace {

/// The window on a demo book with an order of so many lines, the last one being edited.
std::unique_ptr<program::MainWindow> windowOf(const QTemporaryDir& folder, desk::Theme& theme, desk::Prompter& prompter,
                                              int lines) {
    auto book =
        demo::createDemoBook(folder.filePath(QStringLiteral("demo.jobbook")).toStdString(), db::systemSurroundings());
    if (!book) return nullptr;
    auto window = std::make_unique<program::MainWindow>(std::move(*book), theme, prompter);
    const auto designs = window->session().designs();
    for (int i = 0; i < lines; ++i)
        window->presenter().addDesign(designs[static_cast<std::size_t>(i) % designs.size()].id);
    window->show();
    QApplication::processEvents();
    return window;
}

void keyToRepaintedPrice(benchmark::State& state) {
    const QTemporaryDir folder;
    desk::Theme theme(*qApp, desk::Scheme::Light);
    desk::DialogPrompter prompter;
    const auto window = windowOf(folder, theme, prompter, static_cast<int>(state.range(0)));
    if (!window) return state.SkipWithError("no demo book");
    auto* pieces = window->findChild<QLineEdit*>(QStringLiteral("pieces"));
    bool two = false;
    for (auto _ : state) {
        pieces->selectAll();
        QTest::keyClick(pieces, two ? '7' : '9'); // priced in the key's own event
        two = !two;
        window->repaint();
        QApplication::sendPostedEvents();
    }
}
BENCHMARK(keyToRepaintedPrice)->Arg(1)->Arg(100)->Unit(benchmark::kMillisecond)->Iterations(200);

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
