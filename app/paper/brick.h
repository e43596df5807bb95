// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/lettering.h"
#include "app/paper/sheet_layout.h"

#include <QString>

#include <memory>

namespace sp::paper {

/// A part of a paper that no page break goes through. Its pieces are placed from its own upper left corner.
struct Brick {
    double gap = 0; ///< free space above, dropped at the head of a page
    double height = 0;
    bool keepWithNext = false;
    bool isAmount = false;            ///< stands in the column of amounts: a page that ends after it carries forward
    bool needsBroughtForward = false; ///< an amount or the totals: read together with the amounts above
    QString running;                  ///< of an amount: the sum down to here
    std::shared_ptr<const Brick> headAgain{}; ///< what stands above it where a page begins with it: its table's head
    PlacedPage parts;
};

/// Writes into bricks that fill a column of the given width, in points. Baselines go by the top of a line.
class BrickPen {
  public:
    BrickPen(const Lettering& lettering, double width)
        : m_lettering(lettering)
        , m_width(width) {}

    void write(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& text) const;
    void writeRight(Brick& brick, double right, double y, Face face, const QColor& colour, const QString& text) const;
    void figuresRight(Brick& brick, double right, double y, Face face, const QColor& colour, const QString& text) const;
    /// Wrapped from `y` down; returns the y below.
    double paragraph(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& text,
                     double width, int mostLines) const;
    void rule(Brick& brick, double x, double y, double length) const;
    /// One line, cut off where it is too long.
    QString fitted(Face face, const QString& text, double width) const;

  protected:
    const Lettering& m_lettering;
    double m_width;
};

} // namespace sp::paper
