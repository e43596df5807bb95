// SPDX-License-Identifier: MIT
#include "core/needs/shared_sets.h"

#include <algorithm>
#include <functional>

namespace sp::needs {

namespace {

using catalogue::Placement;

struct Spot {
    std::size_t line;
    std::size_t place;
    const Placement* what;
    std::size_t likeness; ///< the same for all that are made with one set, and for few others
};

/// A number of what a set is known by.
std::size_t likenessOf(const Placement& place) {
    auto seed = std::hash<base::Id>()(place.design);
    const auto mix = [&seed](std::int64_t n) {
        seed ^= std::hash<std::int64_t>()(n) + 0x9E3779B97F4A7C15ULL + (seed << 6) + (seed >> 2);
    };
    mix(place.width.nanometres());
    mix(place.height.nanometres());
    mix(place.plannedPieces.has_value() ? 1 : 0);
    for (const auto& stone : place.stones) mix(stone.count.value());
    return seed;
}

/// The places of an order that may share a set, those that are alike together, else in the order of the lines.
std::vector<Spot> candidates(std::span<const catalogue::OrderLine> lines) {
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < lines[i].places.size(); ++k)
            if (const auto& place = lines[i].places[k]; !place.design.isNone() && !place.templatesOnWall)
                spots.push_back({i, k, &place, likenessOf(place)});
    std::ranges::stable_sort(spots, {}, &Spot::likeness);
    return spots;
}

bool haveSameLayers(const Placement& one, const Placement& other, const FindMaterial& find) {
    return std::ranges::equal(one.stones, other.stones, [&](const auto& a, const auto& b) {
        if (a.count != b.count) return false;
        if (a.material == b.material) return true;
        const auto* first = find(a.material);
        const auto* second = find(b.material);
        return first && second && first->stone.size == second->stone.size;
    });
}

bool areMadeWithOneSet(const Placement& one, const Placement& other, const FindMaterial& find) {
    // A set that is paid off over planned pieces is paid for in another way than one that is paid by the job: shared by
    // both, a part of it would be charged to nobody.
    return one.design == other.design && one.width == other.width && one.height == other.height &&
           one.plannedPieces.has_value() == other.plannedPieces.has_value() && haveSameLayers(one, other, find);
}

std::vector<std::vector<SharedSet>> eachAlone(std::span<const catalogue::OrderLine> lines) {
    std::vector<std::vector<SharedSet>> sets(lines.size());
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < lines[i].places.size(); ++k) sets[i].push_back({lines[i].quantity.value(), i, k});
    return sets;
}

} // namespace

std::vector<std::vector<SharedSet>> sharedSets(std::span<const catalogue::OrderLine> lines, const FindMaterial& find) {
    const auto spots = candidates(lines);
    std::vector<std::size_t> first(spots.size()); ///< with which each of them shares, or itself
    bool isAnyShared = false;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        first[i] = i;
        for (std::size_t k = i; k > 0 && spots[k - 1].likeness == spots[i].likeness; --k)
            if (areMadeWithOneSet(*spots[i].what, *spots[k - 1].what, find)) {
                first[i] = first[k - 1];
                isAnyShared = true;
                break;
            }
    }
    if (!isAnyShared) return {};
    auto sets = eachAlone(lines);
    for (std::size_t i = 0; i < spots.size(); ++i) {
        if (first[i] == i) continue;
        const auto& root = spots[first[i]];
        sets[spots[i].line][spots[i].place] = {0, root.line, root.place};
        sets[root.line][root.place].pieces += lines[spots[i].line].quantity.value();
    }
    for (auto& line : sets)
        for (auto& set : line) set.pieces = sets[set.line][set.place].pieces;
    return sets;
}

std::vector<std::vector<SharedSet>> sharedSets(std::span<const catalogue::OrderLine> lines,
                                               const catalogue::PriceBook& book) {
    return sharedSets(lines, [&book](const base::Id& id) -> const catalogue::Material* {
        const auto* known = book.find(id);
        return known ? &known->material : nullptr;
    });
}

} // namespace sp::needs
