// SPDX-License-Identifier: MIT
#include "core/artwork/laid_stones.h"

#include "core/artwork/artwork_file.h"
#include "core/artwork/colour.h"
#include "core/artwork/count.h"
#include "core/artwork/nearest_stone.h"

#include <algorithm>
#include <optional>

namespace sp::artwork {

namespace {

std::optional<std::size_t> materialOf(const StoneGroup& group, std::span<const catalogue::Material> materials,
                                      std::span<const catalogue::ColourMaterial> chosen) {
    if (!group.size) return std::nullopt;
    const auto& size = publishedStoneSizes()[*group.size].name;
    const auto called = [&](const base::Id& id) -> std::optional<std::size_t> {
        const auto found = std::ranges::find(materials, id, &catalogue::Material::id);
        if (found == materials.end()) return std::nullopt;
        return static_cast<std::size_t>(found - materials.begin());
    };
    if (const auto rgb = parseColour(group.colour))
        for (const auto& known : chosen)
            if (known.rgb == *rgb && known.stoneSize == size)
                if (const auto material = called(known.material)) return material;
    const auto nearest = nearestStone(group.colour, size, materials);
    return nearest ? called(*nearest) : std::nullopt;
}

} // namespace

std::vector<LaidStone> laidStones(const catalogue::DesignArtwork& drawing,
                                  std::span<const catalogue::Material> materials,
                                  std::span<const catalogue::ColourMaterial> chosen) {
    const auto read = readArtwork(drawing.file, drawing.fileName);
    if (!read) return {};
    CountOptions options;
    options.millimetresPerUnit = drawing.unit.millimetres();
    options.holeAllowance = drawing.holeAllowance;
    const auto counted = countStones(*read, options, drawing.fileName);
    if (!counted) return {};
    std::vector<std::optional<std::size_t>> stones;
    for (const auto& group : counted->groups) stones.push_back(materialOf(group, materials, chosen));
    std::vector<LaidStone> laid;
    laid.reserve(counted->stones.size());
    for (const auto& stone : counted->stones)
        if (const auto material = stones[stone.group]) laid.push_back({stone.centre, stone.diameter, *material});
    return laid;
}

} // namespace sp::artwork
