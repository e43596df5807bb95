// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/page_frame.h"
#include "core/quoting/sheet_content.h"

#include <QString>

#include <span>
#include <vector>

namespace sp::paper {

/// Makes the bricks of a sheet for a column of text of the given width, in points.
class BrickMaker : private BrickPen {
  public:
    BrickMaker(const quoting::SheetContent& sheet, const Lettering& lettering, double width);

    /// From the letterhead to the last note, in order.
    std::vector<Brick> all() const;

    // What pages begin and end with when a break falls among the amounts.
    Brick tableHead() const;
    Brick carried(const QString& label, const QString& amount) const;
    const PageFrame& frame() const { return m_frame; }

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

    void addLine(std::vector<Brick>& bricks, const quoting::SheetLine& line, bool isFirst) const;
    Brick lineBrick(const quoting::SheetLine& line) const;
    void drawStones(Brick& brick, const quoting::SheetLine& line, double y) const;
    Brick rowBrick(const quoting::SheetRow& row, Face face, const QColor& colour) const;
    void addAmounts(std::vector<Brick>& bricks, const quoting::SheetChoice& choice) const;
    Brick totals(const quoting::SheetChoice& choice) const;
    /// What was paid and what is left, below the totals; returns the y below.
    double settlement(Brick& brick, double y) const;
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
    PageFrame m_frame;
    Columns m_columns;
};

} // namespace sp::paper
