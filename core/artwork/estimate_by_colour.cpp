// SPDX-License-Identifier: MIT
#include "core/artwork/estimate_by_colour.h"

#include "core/artwork/colour_parts.h"

#include <algorithm>

namespace sp::artwork {

namespace {

constexpr double kClearMm = 0.004; ///< what rounding may take from either side

const ColourRequest* requestFor(std::span<const ColourRequest> requests, std::string_view colour) {
    const auto found = std::find_if(requests.begin(), requests.end(),
                                    [&](const ColourRequest& request) { return request.colour == colour; });
    return found == requests.end() || !found->stones ? nullptr : &*found;
}

} // namespace

std::vector<std::string> coloursOf(const Drawing& drawing) {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> numbered; // shape, ink
    for (const Outline& outline : drawing.outlines) numbered.emplace_back(outline.shape, outline.ink);
    for (const Disc& disc : drawing.discs) numbered.emplace_back(disc.shape, disc.ink);
    std::stable_sort(numbered.begin(), numbered.end());
    std::vector<bool> known(drawing.inks.size());
    std::vector<std::string> colours;
    for (const auto& [shape, ink] : numbered) {
        if (known[ink]) continue;
        known[ink] = true;
        const auto& colour = drawing.inks[ink].colour;
        if (std::find(colours.begin(), colours.end(), colour) == colours.end()) colours.push_back(colour);
    }
    return colours;
}

base::Result<std::vector<ColourEstimate>> estimateByColour(const Drawing& drawing, double millimetresPerUnit,
                                                           std::span<const ColourRequest> requests, bool withLines,
                                                           std::string_view fileName) {
    auto parts = colourPartsOf(drawing, millimetresPerUnit, withLines, fileName);
    if (!parts) return base::fail(parts.error());
    // Rows along lines come first: they lie on top of what they cross, and everything else keeps clear of them. Of two
    // lines the colour that comes later is on top.
    for (std::size_t below = 0; below < parts->size(); ++below) {
        const auto* own = requestFor(requests, (*parts)[below].colour);
        if (!own) continue;
        const double radius = own->stones->diameter.millimetres() / 2;
        for (std::size_t other = 0; other < parts->size(); ++other) {
            const auto* request = requestFor(requests, (*parts)[other].colour);
            if (other == below || !request) continue;
            auto& part = (*parts)[below];
            const auto& lines = (*parts)[other].lines;
            const double otherRadius = request->stones->diameter.millimetres() / 2;
            part.region = besideLines(part.region, lines, otherRadius + kClearMm);
            if (other > below) part.lines = linesBeside(std::move(part.lines), lines, radius + otherRadius + kClearMm);
        }
    }
    std::vector<ColourEstimate> estimates;
    bool hasArea = false;
    bool hasStones = false;
    double least = 0;
    for (const ColourPart& part : *parts) {
        auto& colour = estimates.emplace_back(ColourEstimate{part.colour, true, {}});
        const auto* request = requestFor(requests, part.colour);
        if (!request) continue;
        colour.isFree = false;
        auto estimate = estimateRegion(part.region, part.lines, *request->stones, fileName);
        if (!estimate) return base::fail(estimate.error());
        colour.estimate = std::move(*estimate);
        hasArea = hasArea || !part.region.empty() || !part.lines.empty();
        hasStones = hasStones || !colour.estimate.centres.empty();
        const double diameter = request->stones->diameter.millimetres();
        least = least == 0 ? diameter : std::min(least, diameter);
    }
    if (!hasArea) return base::fail(Fault::NoArea, std::string(fileName), fileName);
    if (!hasStones) return base::fail(Fault::NarrowerThanAStone, std::string(fileName), fileName, base::Real{least, 2});
    return estimates;
}

} // namespace sp::artwork
