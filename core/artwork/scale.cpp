// SPDX-License-Identifier: MIT
#include "core/artwork/scale.h"

#include "core/artwork/messages.h"
#include "core/artwork/scanner.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace sp::artwork {

namespace {

void weigh(ScaleProposal& proposal, const Drawing& drawing, const CountOptions& options) {
    const double allowance = options.holeAllowance.millimetres();
    double away = 0;
    for (const Disc& disc : drawing.discs) {
        const double diameter = 2 * disc.radius * proposal.millimetresPerUnit;
        const auto size = sizeOfHole(diameter, allowance, options.sizes);
        if (!size) continue;
        ++proposal.fitting;
        const double middle = options.sizes[*size].middle().millimetres();
        away += std::abs(diameter - allowance - middle) / middle;
    }
    if (proposal.fitting > 0) proposal.misfit = away / static_cast<double>(proposal.fitting);
}

} // namespace

std::vector<ScaleProposal> proposeScales(const Drawing& drawing, const CountOptions& options) {
    std::vector<ScaleProposal> proposals = {
        {"96 dpi", 25.4 / 96}, {"90 dpi", 25.4 / 90}, {"72 dpi", 25.4 / 72}, {"mm", 1}, {"in", 25.4}};
    for (auto& proposal : proposals) weigh(proposal, drawing, options);
    std::stable_sort(proposals.begin(), proposals.end(), [](const ScaleProposal& a, const ScaleProposal& b) {
        return a.fitting != b.fitting ? a.fitting > b.fitting : a.misfit < b.misfit;
    });
    return proposals;
}

base::Result<ScaleProposal> parseScale(std::string_view text) {
    text = trimmed(text);
    constexpr std::array<std::pair<std::string_view, double>, 3> kUnits = {{{"mm", 1}, {"cm", 10}, {"in", 25.4}}};
    for (const auto& [name, millimetres] : kUnits)
        if (equalsIgnoringCase(text, name)) return ScaleProposal{std::string(name), millimetres};
    Scanner scanner(text);
    const auto number = scanner.number();
    const auto unit = trimmed(scanner.rest());
    const bool isDpi = equalsIgnoringCase(unit, "dpi");
    if (!number || !(unit.empty() || isDpi)) return base::fail(Fault::NotAScale, "scale", text);
    const double millimetres = isDpi && *number > 0 ? 25.4 / *number : *number;
    if (!(millimetres >= 1e-6 && millimetres <= 1e6)) return base::fail(Fault::ScaleOutOfRange, "scale", text);
    return ScaleProposal{isDpi ? fmt::format("{} dpi", *number) : "mm per unit", millimetres};
}

} // namespace sp::artwork
