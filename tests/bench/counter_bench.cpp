// SPDX-License-Identifier: MIT
// Figures to hold against: one key to a repainted price in one frame of 16 ms with 100 lines; a cut file of 2,000
// stones from the drop to its price on the slip in 100 ms.
#include "app/counter/counter_page.h"
#include "app/demo/demo_book.h"
#include "app/desk/prompter.h"
#include "app/desk/theme.h"
#include "app/main/main_window.h"
#include "core/base/freed_memory.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLineEdit>
#include <QMimeData>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>
#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <cstdio>

using namespace sp;

namespace {

/// The window on a demo book with an order of so many lines, the last one being edited.
std::unique_ptr<program::MainWindow> windowOf(const QTemporaryDir& folder, desk::Theme& theme, desk::Prompter& prompter,
                                              int lines) {
    auto book =
        demo::createDemoBook(folder.filePath(QStringLiteral("demo.jobbook")).toStdString(), db::systemEnvironment());
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

void drop(QWidget& window, const QString& file) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file)});
    QDragEnterEvent entered(QPoint(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &entered);
    QDropEvent event(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &event);
}

/// Holes for SS10 in rows of 50, in one colour.
std::string plateOf(std::int64_t holes) {
    std::string svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"160mm\" height=\"160mm\" viewBox=\"0 0 160 160\">";
    for (std::int64_t i = 0; i < holes; ++i)
        svg += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"1.4\"/>", 2 + 3.1 * static_cast<double>(i % 50),
                           2 + 3.1 * static_cast<double>(i / 50));
    return svg + "</svg>";
}

/// The file is read, counted and shown, becomes a design at the first offer, and stands priced on the Counter.
void dropToPrice(benchmark::State& state) {
    const QTemporaryDir folder;
    desk::Theme theme(*qApp, desk::Scheme::Light);
    desk::DialogPrompter prompter;
    const auto window = windowOf(folder, theme, prompter, 1);
    if (!window) return state.SkipWithError("no demo book");
    QFile file(folder.filePath(QStringLiteral("holes.svg")));
    const auto drawn = plateOf(state.range(0));
    if (!file.open(QIODevice::WriteOnly) || file.write(drawn.c_str()) < 0) return state.SkipWithError("no cut file");
    file.close();
    for (auto _ : state) {
        const auto lines = window->presenter().order().lines.size();
        drop(*window, file.fileName());
        auto* use = window->findChild<QAbstractButton*>(QStringLiteral("useNew"));
        while (use == nullptr || !use->isVisible()) {
            QApplication::processEvents();
            use = window->findChild<QAbstractButton*>(QStringLiteral("useNew"));
        }
        window->repaint();
        use->click();
        window->repaint();
        if (window->presenter().order().lines.size() != lines + 1 || !window->presenter().priced())
            return state.SkipWithError("no price for the file");
    }
}
BENCHMARK(dropToPrice)->Arg(2'000)->Unit(benchmark::kMillisecond)->Iterations(20);

} // namespace

int main(int argc, char** argv) {
    sp::base::keepFreedMemory(); // as the app does
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
