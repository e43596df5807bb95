// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/count.h"
#include "core/artwork/scale.h"
#include "core/base/ensure.h"

#include <cmath>

namespace sp::fuzz {

/// Bounds that a small file can reach soon, so that the fuzzer spends its time on many files.
inline constexpr artwork::Limits kSmallLimits{64'000, 2'000, 20'000, 20'000, 2'000, 400'000};

/// A refusal is a fault whose values are clean text.
inline void checkRefusal(const base::Error& error) {
    base::ensure(error.fault.room == base::Room::Artwork, "a refusal is a fault of the room");
    const std::string values = describe(error.message());
    base::ensure(values.size() < 2000, "a refusal is of bearable length");
    for (const char c : values) base::ensure(static_cast<unsigned char>(c) >= 0x20, "a value has no controls");
}

/// Whatever was read holds together, and so does what is counted in it at several scales.
inline void checkDrawing(const base::Result<artwork::Drawing>& drawing) {
    if (!drawing) return checkRefusal(drawing.error());
    for (const auto& disc : drawing->discs) {
        base::ensure(disc.ink < drawing->inks.size(), "a disc has an ink");
        base::ensure(disc.radius > 0 && std::isfinite(disc.centre.x) && std::isfinite(disc.centre.y),
                     "a disc is somewhere and has a size");
    }
    for (const auto& outline : drawing->outlines) {
        base::ensure(outline.ink < drawing->inks.size(), "an outline has an ink");
        base::ensure(outline.size >= 2 && outline.first + outline.size <= drawing->points.size(),
                     "an outline has points");
    }
    for (const auto& proposal : artwork::proposeScales(*drawing, {})) {
        artwork::CountOptions options;
        options.millimetresPerUnit = proposal.millimetresPerUnit;
        const auto counted = artwork::countStones(*drawing, options, "file");
        if (!counted) {
            checkRefusal(counted.error());
            continue;
        }
        std::int64_t grouped = 0;
        for (const auto& group : counted->groups) grouped += group.count.value();
        std::size_t stones = 0;
        std::size_t twice = 0;
        for (const auto classification : counted->discClasses) {
            stones += classification == artwork::Classification::Stone;
            twice += classification == artwork::Classification::Duplicate;
        }
        base::ensure(stones == counted->stones.size() && static_cast<std::size_t>(grouped) == stones,
                     "every stone is in one group");
        base::ensure(twice == counted->duplicates, "duplicates are counted once each");
        base::ensure(!counted->width().isNegative() && !counted->height().isNegative(), "a design has a size");
    }
}

} // namespace sp::fuzz
