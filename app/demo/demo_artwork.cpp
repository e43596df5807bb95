// SPDX-License-Identifier: MIT
#include "app/demo/demo_artwork.h"

#include "core/artwork/artwork_file.h"
#include "core/artwork/estimate_by_colour.h"
#include "core/artwork/stone_sizes.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace sp::demo {

namespace {

using artwork::Box;
using artwork::Point;

struct LaidInk {
    const InkStones* ink;
    double diameter = 0;
    std::vector<Point> centres;
};

units::Length micrometres(double millimetres) {
    return units::Length::fromNanometres(static_cast<std::int64_t>(millimetres * 1'000 + 0.5) * 1'000);
}

artwork::StoneStyle styleOf(InkStones::Style style) {
    switch (style) {
    case InkStones::Style::Outline: return artwork::StoneStyle::Outline;
    case InkStones::Style::Fill: return artwork::StoneStyle::Fill;
    case InkStones::Style::Both: break;
    }
    return artwork::StoneStyle::Both;
}

units::Length diameterOf(const InkStones& ink) {
    const auto sizes = artwork::publishedStoneSizes();
    return sizes[artwork::sizeNamed(ink.size, sizes).value()].middle();
}

base::Result<std::vector<LaidInk>> lay(const DemoShape& shape) {
    const auto drawing = artwork::readArtwork(shape.svg, shape.design);
    if (!drawing) return base::fail(drawing.error());
    std::vector<artwork::ColourRequest> requests;
    for (const auto& ink : shape.inks)
        requests.push_back(
            {ink.ink, artwork::EstimateRequest{diameterOf(ink), micrometres(ink.pitch), {}, styleOf(ink.style), {}}});
    auto parts = artwork::estimateByColour(*drawing, *drawing->millimetresPerUnit, requests, true, shape.design);
    if (!parts) return base::fail(parts.error());
    std::vector<LaidInk> laid;
    for (const auto& ink : shape.inks) {
        const auto part = std::ranges::find(*parts, ink.ink, &artwork::ColourEstimate::colour);
        if (part != parts->end())
            laid.push_back({&ink, diameterOf(ink).millimetres(), std::move(part->estimate.centres)});
    }
    return laid;
}

/// Centres alone are moved: stones keep their size.
void stretchTo(double width, double height, std::vector<LaidInk>& laid) {
    // The box goes by the rims, of several sizes, so one step comes near and a few come there.
    constexpr int kSteps = 8;
    for (int step = 0; step < kSteps; ++step) {
        Box box;
        Box centres;
        for (const auto& part : laid)
            for (const Point centre : part.centres) {
                box.add(centre, part.diameter / 2);
                centres.add(centre);
            }
        const double across = 1 + (width - box.width()) / centres.width();
        const double down = 1 + (height - box.height()) / centres.height();
        for (auto& part : laid)
            for (Point& centre : part.centres) centre = {(centre.x - box.left) * across, (centre.y - box.top) * down};
    }
}

} // namespace

base::Result<DemoArtwork> layStones(const DemoShape& shape) {
    auto laid = lay(shape);
    if (!laid) return base::fail(laid.error());
    stretchTo(shape.width, shape.height, *laid);
    DemoArtwork made;
    made.svg = fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
                           "viewBox=\"0 0 {0} {1}\">\n",
                           shape.width, shape.height);
    struct Counted : LaidStones {
        const InkStones* ink = nullptr;
    };
    std::vector<Counted> counted;
    for (const auto& part : *laid) {
        for (const Point centre : part.centres)
            made.svg += fmt::format("<circle cx=\"{:.3f}\" cy=\"{:.3f}\" r=\"{:.3f}\" fill=\"#{:06x}\"/>\n", centre.x,
                                    centre.y, part.diameter / 2, part.ink->rgb);
        const auto count = static_cast<std::int64_t>(part.centres.size());
        const auto same = std::ranges::find(counted, part.ink->material, &Counted::material);
        if (same == counted.end())
            counted.push_back({{part.ink->material, count}, part.ink});
        else
            same->count += count;
    }
    made.svg += "</svg>\n";
    std::ranges::stable_sort(counted, std::ranges::greater(), &Counted::count);
    for (const auto& one : counted) {
        made.counts += fmt::format("{}{{\"colour\":\"#{:06x}\",\"count\":{},\"size\":\"{}\"}}",
                                   made.counts.empty() ? "[" : ",", one.ink->rgb, one.count, one.ink->size);
        made.stones.push_back(one);
    }
    made.counts += "]";
    return made;
}

} // namespace sp::demo
