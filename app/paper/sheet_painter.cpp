// SPDX-License-Identifier: MIT
#include "app/paper/sheet_painter.h"

#include "app/desk/stone_painter.h"
#include "app/paper/paper_colours.h"
#include "core/base/ensure.h"

#include <QPainter>

#include <utility>

namespace sp::paper {

SheetPainter::SheetPainter(std::vector<PlacedPage> pages)
    : m_pages(std::move(pages)) {}

namespace {

void paintBoxes(QPainter& painter, const PlacedPage& page) {
    painter.save();
    for (const auto& box : page.boxes) {
        painter.setPen(QPen(box.outline, 0.6, box.dashed ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.setBrush(box.fill.isValid() ? QBrush(box.fill) : QBrush(Qt::NoBrush));
        painter.drawRect(box.area);
    }
    painter.setPen(Qt::NoPen);
    for (const auto& corner : page.corners) {
        painter.setBrush(corner.colour);
        painter.drawPolygon(
            QPolygonF{corner.at, corner.at - QPointF(corner.side, 0), corner.at + QPointF(0, corner.side)});
    }
    painter.restore();
}

} // namespace

void SheetPainter::paintPage(QPainter& painter, int index) const {
    base::ensure(index >= 0 && index < pageCount(), "a page that is painted exists");
    const auto& page = m_pages[static_cast<std::size_t>(index)];
    for (const auto& tint : page.tints) painter.fillRect(tint.area, tint.colour);
    for (const auto& rule : page.rules)
        painter.fillRect(QRectF(rule.from.x(), rule.from.y() - rule.thickness / 2, rule.length, rule.thickness),
                         rule.colour);
    paintBoxes(painter, page);
    for (const auto& stone : page.stones) {
        const QPointF reach(stone.radius, stone.radius);
        desk::paintStone(painter, QRectF(stone.centre - reach, stone.centre + reach), stone.colour, kWhite);
    }
    for (const auto& picture : page.pictures) {
        painter.save();
        picture.paint(painter, picture.area);
        painter.restore();
    }
    // One run for each text, figures too: a number drawn digit by digit is not a number any more to who copies it.
    for (const auto& text : page.texts) m_lettering.draw(painter, text.baseline, text.face, text.colour, text.text);
}

} // namespace sp::paper
