// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace sp::layout {

/// A rectangle to lay, gap included, in nanometres; equal ones share a `kind`.
struct Box {
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::size_t kind = 0;
};

/// Of equal boxes so many are to be laid; gap included, in nanometres.
struct BoxKind {
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::int64_t count = 0;
};

/// The kinds in their order, sides as those of the last box of each.
std::vector<BoxKind> kindsOf(const std::vector<Box>& boxes);

/// A box laid: index into the boxes, lower-left corner.
struct Laid {
    std::size_t box = 0;
    std::int64_t x = 0;
    std::int64_t y = 0;
    bool turned = false;
};

/// What one filling of a bin leaves.
struct Filling {
    std::vector<Laid> laid;
    std::int64_t height = 0; ///< the highest top
    double area = 0;         ///< of the boxes laid, for choosing between fillings only
};

/// Fills a bin of width x height (height may be very large: a strip) with boxes of `order` that are not `used`, and
/// marks them used. Lowest place first; of the boxes that fit it the one that fills its width and levels with its
/// neighbours, in doubt the earlier in the order. `steps` is lowered by the work done.
Filling fillSkyline(const std::vector<Box>& boxes, const std::vector<std::size_t>& order, std::vector<char>& used,
                    std::int64_t width, std::int64_t height, bool mayTurn, std::int64_t& steps);

/// All boxes on a strip by the same rule, no higher than `height`; given up, with some boxes not laid, once more than
/// `waste` (area, nanometres squared) lies empty below them.
Filling fillStrip(const std::vector<Box>& boxes, const std::vector<std::size_t>& order, std::int64_t width,
                  std::int64_t height, bool mayTurn, double waste, std::int64_t& steps);

/// The same in maximal free rectangles: each box of the order in turn where its shorter side leaves least.
Filling fillFreeRectangles(const std::vector<Box>& boxes, const std::vector<std::size_t>& order,
                           std::vector<char>& used, std::int64_t width, std::int64_t height, bool mayTurn,
                           std::int64_t& steps);

} // namespace sp::layout
