// SPDX-License-Identifier: MIT
#pragma once

#include "core/artwork/count.h"
#include "core/base/id.h"

#include <cstdint>
#include <map>
#include <vector>

namespace sp::artwork {

/// What a picture of artwork shows, in millimetres, y downwards.
struct Picture {
    struct SetStone {
        Point centre;
        double diameter = 0;
        std::uint32_t rgb = 0;
        bool collides = false;
        bool isOut = false; ///< a person said that it is none
    };
    /// A disc that is not a stone, or is one again.
    struct Disc {
        Point centre;
        double radius = 0;
        Classification classification = Classification::Ring;
    };
    struct Line {
        std::vector<Point> points;
        bool closed = false;
        Classification classification = Classification::NotRound;
        Box box;
        bool isShape = false; ///< the edge of a shape that stones are set in, drawn plain
    };

    std::vector<SetStone> stones;
    std::map<base::Id, std::int64_t> counts; ///< by material, of a kept design; else empty
    std::vector<Disc> discs;
    std::vector<Line> lines;

    /// Around everything there is.
    Box box() const {
        Box all;
        for (const auto& stone : stones) all.add(stone.centre, stone.diameter / 2);
        for (const auto& disc : discs) all.add(disc.centre, disc.radius);
        for (const auto& line : lines) {
            if (line.box.isEmpty()) continue;
            all.add(Point{line.box.left, line.box.top});
            all.add(Point{line.box.right, line.box.bottom});
        }
        return all;
    }
};

} // namespace sp::artwork
