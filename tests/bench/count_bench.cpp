// SPDX-License-Identifier: MIT
//
// Counting 100,000 holes in each of nine forms, beside a plain QXmlStreamReader pass over the same text in the same
// run; the same holes as DXF; the time and the memory of counting. Files are drawn by tests/support/nine_forms.
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "tests/support/nine_forms.h"

#include <QByteArray>
#include <QXmlStreamReader>
#include <benchmark/benchmark.h>

#include <fstream>

using namespace sp;

namespace {

constexpr std::size_t kHoles = 100'000;

/// Of this process, from the system's own account.
double peakMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1000;
    return 0;
}

void count(benchmark::State& state, const std::string& text) {
    for (auto _ : state) {
        const auto drawing = artwork::readArtwork(text, "holes");
        const auto counted = drawing ? artwork::countStones(*drawing, {}, "holes") : base::fail(drawing.error());
        if (!counted || counted->stones.size() != kHoles || counted->groups.size() != 4)
            state.SkipWithError("miscounted");
        benchmark::DoNotOptimize(counted);
    }
    state.counters["MB of text"] = static_cast<double>(text.size()) / 1e6;
    state.counters["peak MB"] = peakMegabytes();
}

void countForm(benchmark::State& state, support::HoleForm form) { count(state, support::drawHoles(form, kHoles)); }

void streamForm(benchmark::State& state, support::HoleForm form) {
    const QByteArray text = QByteArray::fromStdString(support::drawHoles(form, kHoles));
    for (auto _ : state) {
        QXmlStreamReader reader(text);
        std::size_t elements = 0;
        while (!reader.atEnd()) elements += reader.readNext() == QXmlStreamReader::StartElement;
        benchmark::DoNotOptimize(elements);
    }
}

void countDxf(benchmark::State& state) { count(state, support::drawHolesAsDxf(kHoles)); }

void countFew(benchmark::State& state) {
    const std::string text = support::drawHoles(support::HoleForm::Circle, 2'000);
    for (auto _ : state) {
        const auto drawing = artwork::readArtwork(text, "holes");
        benchmark::DoNotOptimize(artwork::countStones(*drawing, {}, "holes"));
    }
}

const bool registered = [] {
    for (const auto form : support::kHoleForms) {
        const std::string name(support::nameOf(form));
        benchmark::RegisterBenchmark((name + ": count").c_str(), countForm, form)->Unit(benchmark::kMillisecond);
        benchmark::RegisterBenchmark((name + ": stream").c_str(), streamForm, form)->Unit(benchmark::kMillisecond);
    }
    benchmark::RegisterBenchmark("DXF: count", countDxf)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("2,000 stones: count", countFew)->Unit(benchmark::kMillisecond);
    return true;
}();

} // namespace
