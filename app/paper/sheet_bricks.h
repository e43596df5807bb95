// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/lettering.h"
#include "app/paper/sheet_layout.h"
#include "core/quoting/sheet_content.h"

#include <QString>

#include <span>
#include <vector>

namespace sp::paper {

/// A part of the sheet that no page break goes through. Its pieces are placed from its own upper left corner.
struct Brick {
    double gap = 0; ///< free space above, dropped at the head of a page
    double height = 0;
    bool keepWithNext = false;
    bool isAmount = false;            ///< stands in the column of amounts: a page that ends after it carries forward
    bool needsBroughtForward = false; ///< an amount or the totals: read together with the amounts above
    QString running;                  ///< of an amount: the sum down to here
    PlacedPage parts;
};

/// Makes the bricks of a sheet for a column of text of the given width, in points.
class BrickMaker {
  public:
    BrickMaker(const quoting::SheetContent& sheet, const Lettering& lettering, double width);

    /// From the letterhead to the last note, in order.
    std::vector<Brick> all() const;

    // What pages begin and end with when a break falls among the amounts.
    Brick tableHead() const;
    Brick carried(const QString& label, const QString& amount) const;
    /// The head of every page but the first.
    Brick pageHead() const;
    /// The foot of page `page` (from 1) of `pages`.
    Brick pageFoot(int page, int pages) const;

  private:
    struct Columns {
        double piecesRight = 0;
        double stones = 0;
        double title = 0;
        double titleWidth = 0;
        double eachRight = 0;
        double stonesShown = 0;
    };

    Columns measure() const;

    // Writing into a brick; each returns the width or the number of lines it took.
    void write(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& text) const;
    void writeRight(Brick& brick, double right, double y, Face face, const QColor& colour, const QString& text) const;
    void figuresRight(Brick& brick, double right, double y, Face face, const QColor& colour, const QString& text) const;
    /// Wrapped from `y` down; returns the y below.
    double paragraph(Brick& brick, double x, double y, Face face, const QColor& colour, const QString& text,
                     double width, int mostLines) const;
    void rule(Brick& brick, double x, double y, double length) const;

    Brick letterhead() const;
    Brick addressee() const;
    void addLine(std::vector<Brick>& bricks, const quoting::SheetLine& line, bool isFirst) const;
    Brick lineBrick(const quoting::SheetLine& line) const;
    void drawStones(Brick& brick, const quoting::SheetLine& line, double y) const;
    Brick rowBrick(const quoting::SheetRow& row, Face face, const QColor& colour) const;
    void addAmounts(std::vector<Brick>& bricks, const quoting::SheetChoice& choice) const;
    Brick totals(const quoting::SheetChoice& choice) const;
    /// The terms in the free space left of the totals; false when there is not enough of it.
    bool placeTermsBeside(Brick& totals) const;
    double totalsRow(Brick& brick, double y, const QString& label, const QString& note, const QString& amount) const;
    double grandTotal(Brick& brick, double y) const;
    double choiceTotal(Brick& brick, double y, const quoting::SheetChoice& choice) const;
    /// Where "To pay" begins: in line with the other totals unless the amount is too long for that.
    double grandTotalLeft() const;
    struct LadderColumn {
        units::Count quantity;
        QString pieces;
    };

    static std::vector<LadderColumn> ladderColumns(const quoting::SheetChoice& choice);
    Brick ladderHead(const quoting::SheetChoice& choice, std::span<const LadderColumn> columns, double cell) const;
    Brick ladderRow(const quoting::SheetLadder& ladder, std::span<const LadderColumn> columns, double cell) const;
    void addLadders(std::vector<Brick>& bricks, const quoting::SheetChoice& choice) const;
    void addNotes(std::vector<Brick>& bricks, const QString& heading, const std::vector<std::string>& notes,
                  Face face) const;

    // Of a sheet that offers several choices, see choice_bricks.cpp.
    bool hasChoices() const { return !m_sheet.others.empty(); }
    /// The choices side by side, then the lines and sums of each.
    void addChoices(std::vector<Brick>& bricks) const;
    Brick choicesNote() const;
    Brick cards(std::span<const quoting::SheetChoice* const> choices) const;
    double card(Brick& brick, double left, double width, const quoting::SheetChoice& choice) const;
    Brick choiceHead(const quoting::SheetChoice& choice) const;

    const quoting::SheetContent& m_sheet;
    const Lettering& m_lettering;
    double m_width;
    Columns m_columns;
};

} // namespace sp::paper
