// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/page_frame.h"

#include <functional>
#include <optional>

namespace sp::paper {

/// What pages end and begin with where a break falls among amounts.
struct CarriedAmounts {
    std::function<Brick(const QString& label, const QString& amount)> row;
    Brick tableHead;
    QString forward; ///< "Carried forward"
    QString brought; ///< "Brought forward"
};

/// Lays bricks onto pages below each other, each page with its head and foot. At least one page.
std::vector<PlacedPage> layOnPages(const std::vector<Brick>& bricks, const PageFrame& frame, catalogue::Paper paper,
                                   const std::optional<CarriedAmounts>& carried = std::nullopt);

/// Puts the pieces of `parts` onto the page, moved.
void moveInto(PlacedPage& page, const PlacedPage& parts, QPointF by);
/// The frame's foot under every page.
void putFeet(std::vector<PlacedPage>& pages, const PageFrame& frame, catalogue::Paper paper);

} // namespace sp::paper
