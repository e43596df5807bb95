// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/geometry.h"
#include "core/catalogue/design_artwork.h"
#include "core/catalogue/material.h"

#include <span>
#include <vector>

namespace sp::artwork {

/// A stone of a design where it lies, in millimetres, y downwards.
struct LaidStone {
    Point centre;
    double diameter = 0;
    std::size_t material = 0; ///< index into the materials handed over
};

/// The stones of a kept drawing as they lie. Each colour and size of the drawing is the stone among `materials` that it
/// was counted as (`chosen`) or looks like; what is none of them is left out. Nothing where the drawing shows no stones
/// as discs or cannot be read.
std::vector<LaidStone> laidStones(const catalogue::DesignArtwork& drawing,
                                  std::span<const catalogue::Material> materials,
                                  std::span<const catalogue::ColourMaterial> chosen);

} // namespace sp::artwork
