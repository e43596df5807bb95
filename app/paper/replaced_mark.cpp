// SPDX-License-Identifier: MIT
#include "app/paper/replaced_mark.h"

#include "app/paper/brick.h"
#include "app/paper/page_frame.h"
#include "app/paper/paper_colours.h"

#include <algorithm>

namespace sp::paper {

void layOver(Document& document, const QString& mark, catalogue::Paper paper) {
    if (mark.isEmpty()) return;
    constexpr auto kFace = Face::SmallStrong;
    constexpr double kRoom = 8; ///< between the line and its frame
    const Lettering lettering;
    const double column = columnWidth(paper);
    const BrickPen pen(lettering, column);
    const auto text = pen.fitted(kFace, mark, column - 2 * kRoom);
    const double width = lettering.width(kFace, text) + 2 * kRoom;
    const double height = lettering.leading(kFace) + 4;
    const double left = kSideMargin + (column - width) / 2;
    const double top = std::max(0.0, (kTopMargin - height) / 2);
    for (auto& page : document.pages) {
        page.boxes.push_back({QRectF(left, top, width, height), kInk, {}, false});
        page.texts.push_back({QPointF(left + kRoom, top + 2 + lettering.ascent(kFace)), text, kFace, kInk, false});
    }
}

} // namespace sp::paper
