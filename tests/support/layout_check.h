// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sp::support {

/// What is wrong with a layout, or nothing: every piece inside the margin, every two a gap apart. Compares
/// each with each and knows nothing of how the layout was made.
inline std::string faultOf(const std::vector<layout::Position>& positions, const layout::Sheet& sheet,
                           const layout::Piece& piece, const layout::FitRules& rules) {
    struct Box {
        units::Length left, right, bottom, top;
    };
    std::vector<Box> boxes;
    for (const auto& at : positions) {
        if (at.turned && rules.oneWay) return "a piece is turned on one-way material";
        const Box box{at.x, at.x + (at.turned ? piece.height : piece.width), at.y,
                      at.y + (at.turned ? piece.width : piece.height)};
        if (box.left < rules.margin || box.right > sheet.width - rules.margin || box.bottom < rules.margin ||
            box.top > sheet.height - rules.margin) {
            return "piece " + std::to_string(boxes.size()) + " leaves the usable part";
        }
        for (std::size_t k = 0; k < boxes.size(); ++k) {
            const bool beside = box.left >= boxes[k].right + rules.gap || boxes[k].left >= box.right + rules.gap;
            const bool above = box.bottom >= boxes[k].top + rules.gap || boxes[k].bottom >= box.top + rules.gap;
            if (!beside && !above) {
                return "pieces " + std::to_string(k) + " and " + std::to_string(boxes.size()) + " are too close";
            }
        }
        boxes.push_back(box);
    }
    return {};
}

} // namespace sp::support
