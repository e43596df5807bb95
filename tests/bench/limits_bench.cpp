// SPDX-License-Identifier: MIT
// What the largest questions cost that are still answered or refused, in processor time, each once:
// limits_bench. Figures to hold against: each below 300 ms; of 10,000 fits none above 20 ms.
#include "core/artwork/artwork_file.h"
#include "core/artwork/count.h"
#include "core/artwork/estimate_by_colour.h"
#include "core/layout/fit.h"
#include "core/layout/mixed.h"
#include "core/supply/purchase.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <random>
#include <string>
#include <vector>

using namespace sp;

namespace {

double processorMilliseconds() { return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

template<class Ask>
void timed(const char* name, Ask ask) {
    const double start = processorMilliseconds();
    const std::string said = ask();
    std::printf("%-44s %8.1f ms  %s\n", name, processorMilliseconds() - start, said.c_str());
}

template<class T>
std::string outcome(const base::Result<T>& answer, const std::string& said) {
    return answer ? said : "refused: " + base::describe(answer.error());
}

std::string manyPacks() {
    supply::PurchaseProblem problem;
    problem.suppliers = {{"s", units::Money::fromMicros(5'000'000), {}, {}}};
    problem.needs = {{"m", units::Count::of(123'456)}};
    for (int i = 0; i < 20'000; ++i)
        problem.packs.push_back({fmt::format("p{}", i),
                                 "s",
                                 {{"m", units::Count::of(100 + i % 977)}},
                                 {{units::Count::of(1), units::Money::fromMicros(1'000'000 + 7'919 * (i % 1'009))}},
                                 {}});
    const auto answer = supply::planPurchase(problem);
    return outcome(answer, answer && answer->plan && answer->plan->proven ? "proven" : "unproven");
}

std::string manyColours(bool estimated) {
    std::string svg = "<svg width='1000mm' height='1000mm' viewBox='0 0 1000 1000'>";
    for (int i = 0; i < 60'000; ++i)
        svg += fmt::format("<circle cx='{}' cy='{}' r='1.4' fill='#{:06x}'/>", 4 * (i % 245), 4 * (i / 245), i * 17);
    svg += "</svg>";
    const double read = processorMilliseconds();
    const auto drawing = artwork::readArtwork(std::move(svg), "colours.svg");
    if (!drawing) return outcome(drawing, "");
    if (!estimated) {
        const auto counted = artwork::countStones(*drawing, {}, "colours.svg");
        return outcome(counted, counted ? fmt::format("{} groups", counted->groups.size()) : "");
    }
    std::vector<artwork::ColourRequest> requests;
    const auto size = units::Length::fromMicrometres(2'000);
    for (const auto& colour : artwork::coloursOf(*drawing))
        requests.push_back({colour, artwork::EstimateRequest{size, size, {}, artwork::StoneStyle::Fill, {}}});
    const auto estimates = artwork::estimateByColour(*drawing, 1, requests, false, "colours.svg");
    return outcome(estimates, fmt::format("{:.1f} ms to read", processorMilliseconds() - read));
}

std::string manyPieces(int sizes) {
    std::vector<layout::MixedPiece> pieces;
    for (int i = 0; i < sizes; ++i)
        pieces.push_back({fmt::format("p{}", i),
                          {units::Length::fromMicrometres(20'000 + 10 * i), units::Length::fromMicrometres(30'000)},
                          1});
    const std::vector<layout::MixedSheet> sheets{
        {"s",
         {units::Length::fromMicrometres(2'000'000), units::Length::fromMicrometres(2'000'000)},
         units::Money::fromMicros(1'000'000),
         {}}};
    const auto plan = layout::packSheets(sheets, pieces, {}, {});
    return outcome(plan, plan ? fmt::format("{} sheets, bound {}", plan->sheets.size(), plan->sheetBound) : "");
}

void manyFits() {
    std::mt19937_64 random(20261125);
    const auto between = [&random](std::int64_t least, std::int64_t most) {
        return units::Length::fromMicrometres(
            100 * (least + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most - least + 1))));
    };
    std::vector<std::pair<double, std::string>> times;
    for (int i = 0; i < 10'000; ++i) {
        const layout::Sheet sheet{between(2'000, 6'100), between(2'000, 6'100)};
        const layout::Piece piece{between(100, 1'500), between(100, 1'500)};
        const layout::FitRules rules{between(0, 60), between(0, 60)};
        const double start = processorMilliseconds();
        const auto fit = layout::fitSheet(sheet, piece, rules);
        times.emplace_back(processorMilliseconds() - start,
                           fmt::format("{:.1f} x {:.1f} of {:.1f} x {:.1f}, margin {:.1f}, gap {:.1f} mm",
                                       piece.width.millimetres(), piece.height.millimetres(), sheet.width.millimetres(),
                                       sheet.height.millimetres(), rules.margin.millimetres(),
                                       rules.gap.millimetres()));
    }
    std::sort(times.rbegin(), times.rend());
    const auto slow = std::count_if(times.begin(), times.end(), [](const auto& time) { return time.first > 20; });
    std::printf("10,000 fits: %ld above 20 ms, median %.3f ms; the worst:\n", static_cast<long>(slow),
                times[times.size() / 2].first);
    for (int i = 0; i < 5; ++i)
        std::printf("  %.1f ms  %s\n", times[static_cast<std::size_t>(i)].first,
                    times[static_cast<std::size_t>(i)].second.c_str());
}

} // namespace

int main() {
    timed("20,000 packs of one material", manyPacks);
    timed("60,000 colours in a file, counted", [] { return manyColours(false); });
    timed("60,000 colours in a file, estimated", [] { return manyColours(true); });
    timed("1,000 different pieces", [] { return manyPieces(1'000); });
    timed("100,000 different pieces", [] { return manyPieces(100'000); });
    manyFits();
    return 0;
}
