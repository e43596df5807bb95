// SPDX-License-Identifier: MIT
// Figure to hold against: a picture of 100,000 stones moves at 60 frames a second, 16.7 ms each. view_bench [stones]
// moves the picture 30 pixels a frame, as a hand does, and back, at three zooms; prints the median, the slowest of a
// hundred and the slowest frame, in processor time.
#include "app/artwork/artwork_view.h"
#include "app/desk/theme.h"

#include <QApplication>
#include <QStandardPaths>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <vector>

using namespace sp;

namespace {

double processorMilliseconds() { return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// Stones of SS10 in rows, in twelve colours.
artwork::Picture rowsOf(int stones) {
    artwork::Picture picture;
    const int across = static_cast<int>(std::ceil(std::sqrt(1.6 * stones)));
    for (int i = 0; i < stones; ++i)
        picture.stones.push_back({{3.2 * (i % across), 3.2 * (i / across)},
                                  2.8,
                                  0x203040u * static_cast<unsigned>(1 + i % 12),
                                  i % 997 == 0,
                                  false});
    return picture;
}

void move(artwork::ArtworkView& view, double zoom) {
    view.fit();
    view.zoomBy(zoom, QPointF(view.rect().center()));
    view.repaint();
    constexpr int kFrames = 240;
    std::vector<double> times;
    for (int frame = 0; frame < kFrames; ++frame) {
        const double way = frame / 60 % 2 == 0 ? 1 : -1;
        const double start = processorMilliseconds();
        view.moveBy({30 * way, frame < kFrames / 2 ? 18.0 : -18.0});
        view.repaint();
        times.push_back(processorMilliseconds() - start);
    }
    std::sort(times.begin(), times.end());
    const auto late = std::count_if(times.begin(), times.end(), [](double t) { return t > 1000.0 / 60; });
    std::printf("zoom %4.1f: median %.1f ms, 99 of 100 within %.1f ms, slowest %.1f ms, %d of %d frames late\n", zoom,
                times[kFrames / 2], times[kFrames * 99 / 100], times.back(), static_cast<int>(late), kFrames);
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication app(argc, argv);
    const desk::Theme theme(app, desk::Scheme::Light);
    artwork::ArtworkView view;
    view.resize(1600, 1000);
    view.show();
    QApplication::processEvents();
    const int stones = argc > 1 ? std::atoi(argv[1]) : 100'000;
    view.setPicture(rowsOf(stones), true);
    std::printf("%d stones on 1600 x 1000 pixels\n", stones);
    for (const double zoom : {1.0, 2.0, 6.0}) move(view, zoom);
}
