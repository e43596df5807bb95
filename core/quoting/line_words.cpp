// SPDX-License-Identifier: MIT
#include "core/quoting/line_words.h"

#include "core/units/measured.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace sp::quoting {

std::string LineWords::baseOf(const catalogue::OrderLine& line) const {
    if (line.customersGarment) return m_words.ownGarment();
    const auto* baseMaterial = m_book.find(line.baseMaterial);
    return baseMaterial ? baseMaterial->material.name : std::string();
}

std::vector<StoneColour> LineWords::coloursOf(const catalogue::Placement& place) const {
    std::vector<StoneColour> colours;
    for (const auto& stone : place.stones)
        if (const auto* found = m_book.find(stone.material))
            colours.push_back({found->material.name, found->material.stone.rgb});
    return colours;
}

std::vector<StoneColour> LineWords::coloursOf(const catalogue::OrderLine& line) const {
    std::vector<StoneColour> colours;
    for (const auto& place : line.places)
        for (auto& colour : coloursOf(place))
            if (std::find(colours.begin(), colours.end(), colour) == colours.end())
                colours.push_back(std::move(colour));
    return colours;
}

std::string LineWords::sizeOf(const catalogue::Placement& place) const {
    if (place.width.isZero() || place.height.isZero()) return {};
    const auto side = [&](units::Length length) {
        return units::measuredLength(length, m_book.shop.lengthUnit, m_words.numbers());
    };
    return fmt::format("{} × {} {}", side(place.width), side(place.height), units::nameOf(m_book.shop.lengthUnit));
}

std::string LineWords::stonesOf(const catalogue::Placement& place) const {
    std::string stones;
    for (const auto& colour : coloursOf(place)) stones += (stones.empty() ? "" : ", ") + colour.name;
    return stones;
}

std::string LineWords::detailOf(const catalogue::OrderLine& line) const {
    auto what = baseOf(line);
    const auto add = [&what](std::string_view between, const std::string& more) {
        if (!what.empty() && !more.empty()) what += between;
        what += more;
    };
    if (line.places.size() == 1) {
        add(", ", sizeOf(line.first()));
        add(" · ", stonesOf(line.first()));
        return what;
    }
    for (const auto& place : line.places) {
        const auto& title = place.title.empty() ? line.title : place.title;
        add(" · ", place.place.empty() ? title : fmt::format("{}: {}", place.place, title));
        add(", ", sizeOf(place));
        add(", ", stonesOf(place));
    }
    return what;
}

} // namespace sp::quoting
