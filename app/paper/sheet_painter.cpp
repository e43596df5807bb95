// SPDX-License-Identifier: MIT
#include "app/paper/sheet_painter.h"

#include "app/desk/stone_painter.h"
#include "app/paper/paper_colours.h"
#include "core/base/ensure.h"

#include <QPagedPaintDevice>
#include <QPainter>

namespace sp::paper {

SheetPainter::SheetPainter(const SheetContent& sheet, catalogue::Paper paper)
    : m_pages(layOut(sheet, paper, m_lettering)) {}

void SheetPainter::paintPage(QPainter& painter, int index) const {
    base::ensure(index >= 0 && index < pageCount(), "a page that is painted exists");
    const auto& page = m_pages[static_cast<std::size_t>(index)];
    for (const auto& tint : page.tints) painter.fillRect(tint.area, tint.colour);
    for (const auto& rule : page.rules)
        painter.fillRect(QRectF(rule.from.x(), rule.from.y() - rule.thickness / 2, rule.length, rule.thickness),
                         rule.colour);
    for (const auto& stone : page.stones) {
        const QPointF reach(stone.radius, stone.radius);
        desk::paintStone(painter, QRectF(stone.centre - reach, stone.centre + reach), stone.colour, kWhite);
    }
    // One run for each text, figures too: a number drawn digit by digit is not a number any more to who copies it.
    for (const auto& text : page.texts)
        m_lettering.draw(painter, text.baseline, text.face, text.colour, text.text);
}

bool SheetPainter::paintOn(QPagedPaintDevice& device, int first, int last) const {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const double scale = device.logicalDpiX() / 72.0;
    painter.scale(scale, device.logicalDpiY() / 72.0);
    for (int page = first; page <= last; ++page) {
        if (page > first && !device.newPage()) return false;
        paintPage(painter, page);
    }
    return painter.end();
}

} // namespace sp::paper
