// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/lettering.h"
#include "core/catalogue/shop.h"
#include "core/quoting/sheet_content.h"

#include <QColor>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <functional>
#include <vector>

class QPainter;

namespace sp::paper {

// Where everything of a paper stands, page by page, before anything is drawn. Points (1/72 in) from the upper left
// corner of the page.

struct PlacedText {
    QPointF baseline; ///< its left end
    QString text;
    Face face = Face::Body;
    QColor colour;
    bool isFigures = false; ///< a number or an amount, ending at a column's right edge
};

struct PlacedRule {
    QPointF from;
    double length = 0; ///< to the right
    double thickness = 0.6;
    QColor colour;
};

struct PlacedTint {
    QRectF area;
    QColor colour;
};

struct PlacedStone {
    QPointF centre;
    double radius = 0;
    QColor colour;
};

/// A rectangle with a thin outline; filled where `fill` is valid.
struct PlacedBox {
    QRectF area;
    QColor outline;
    QColor fill;
    bool dashed = false;
};

/// An upper right corner filled as a triangle.
struct PlacedCorner {
    QPointF at;
    double side = 0;
    QColor colour;
};

/// What draws itself into its area; one unit of the painter is a point.
struct PlacedPicture {
    QRectF area;
    std::function<void(QPainter&, const QRectF&)> paint;
};

struct PlacedPage {
    std::vector<PlacedTint> tints; ///< below everything else
    std::vector<PlacedRule> rules;
    std::vector<PlacedStone> stones;
    std::vector<PlacedText> texts;
    std::vector<PlacedBox> boxes; ///< of plans: above tints and rules, below stones and texts
    std::vector<PlacedCorner> corners;
    std::vector<PlacedPicture> pictures; ///< below the texts
};

/// The page: Letter is 612 × 792, A4 595 × 842 points.
QSizeF pageSize(catalogue::Paper paper);

/// Lays the sheet out. At least one page. A line is kept together with its extras where that fits a page; where a page
/// ends among the amounts, its foot says what is carried forward and the next page's head brings it forward. The
/// totals stay together.
std::vector<PlacedPage> layOut(const quoting::SheetContent& sheet, catalogue::Paper paper, const Lettering& lettering);

} // namespace sp::paper
