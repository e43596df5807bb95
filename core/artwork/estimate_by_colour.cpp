// SPDX-License-Identifier: MIT
#include "core/artwork/estimate_by_colour.h"

#include "core/artwork/colour_parts.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace sp::artwork {

namespace {

constexpr double kClearMm = 0.004; ///< what rounding may take from either side

/// For each part, null where it is left free.
std::vector<const ColourRequest*> requestsFor(std::span<const ColourRequest> requests,
                                              const std::vector<ColourPart>& parts) {
    std::unordered_map<std::string_view, const ColourRequest*> known;
    for (const ColourRequest& request : requests)
        if (request.stones) known.try_emplace(request.colour, &request);
    std::vector<const ColourRequest*> all;
    for (const ColourPart& part : parts) {
        const auto found = known.find(part.colour);
        all.push_back(found == known.end() ? nullptr : found->second);
    }
    return all;
}

} // namespace

std::vector<std::string> coloursOf(const Drawing& drawing) {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> numbered; // shape, ink
    for (const Outline& outline : drawing.outlines) numbered.emplace_back(outline.shape, outline.ink);
    for (const Disc& disc : drawing.discs) numbered.emplace_back(disc.shape, disc.ink);
    std::stable_sort(numbered.begin(), numbered.end());
    std::vector<bool> known(drawing.inks.size());
    std::vector<std::string> colours;
    std::unordered_set<std::string_view> told;
    for (const auto& [shape, ink] : numbered) {
        if (known[ink]) continue;
        known[ink] = true;
        const auto& colour = drawing.inks[ink].colour;
        if (told.insert(colour).second) colours.push_back(colour);
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
    const auto asked = requestsFor(requests, *parts);
    for (std::size_t below = 0; below < parts->size(); ++below) {
        const auto* own = asked[below];
        if (!own) continue;
        const double radius = own->stones->diameter.millimetres() / 2;
        for (std::size_t other = 0; other < parts->size(); ++other) {
            const auto* request = asked[other];
            if (other == below || !request || (*parts)[other].lines.empty()) continue;
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
    for (std::size_t i = 0; i < parts->size(); ++i) {
        const ColourPart& part = (*parts)[i];
        auto& colour = estimates.emplace_back(ColourEstimate{part.colour, true, {}});
        const auto* request = asked[i];
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
