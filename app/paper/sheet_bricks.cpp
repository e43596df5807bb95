// SPDX-License-Identifier: MIT
#include "app/paper/sheet_bricks.h"

#include "app/paper/paper_colours.h"
#include "app/paper/proof_bricks.h"
#include "app/words/shown.h"

#include <algorithm>
#include <utility>

namespace sp::paper {

namespace {

constexpr double kStoneRadius = 6.0;
constexpr double kStoneStep = 9.0;
constexpr std::size_t kMaxStones = 4;
constexpr double kColumnGap = 16.0;
constexpr double kNotesIndent = 96.0;
constexpr double kNarrowestCell = 52.0;
constexpr double kLadderNames = 132.0;
constexpr double kCellPadding = 8.0;
constexpr double kTotalsLeft = 0.46; ///< share of the width left of the totals

using words::shown;

} // namespace

BrickMaker::BrickMaker(const quoting::SheetContent& sheet, const Lettering& lettering, double width)
    : BrickPen(lettering, width)
    , m_sheet(sheet)
    , m_frame(headOf(sheet), lettering, width)
    , m_columns(measure()) {}

BrickMaker::Columns BrickMaker::measure() const {
    double pieces = m_lettering.width(Face::Fine, shown(m_sheet.labels.pieces));
    double each = m_lettering.width(Face::Fine, shown(m_sheet.labels.each));
    double amount = 0;
    std::size_t stones = 0;
    const auto widen = [&](double& column, const std::string& figures) {
        column = std::max(column, m_lettering.width(Face::Strong, shown(figures)));
    };
    for (const auto* choice : quoting::choicesOf(m_sheet)) {
        widen(amount, choice->together.text);
        for (const auto& line : choice->lines) {
            widen(pieces, line.pieces);
            widen(each, line.each);
            widen(amount, line.running.text);
            for (const auto& extra : line.extras) widen(amount, extra.running.text);
            stones = std::max(stones, std::min(line.stones.size(), kMaxStones));
        }
        for (const auto& row : choice->adjustments) widen(amount, row.running.text);
    }
    Columns columns;
    columns.piecesRight = pieces;
    columns.stones = pieces + 12;
    columns.title = columns.stones;
    if (stones > 0) columns.title += 2 * kStoneRadius + kStoneStep * static_cast<double>(stones - 1) + 10;
    columns.eachRight = m_width - amount - kColumnGap;
    columns.titleWidth = columns.eachRight - each - kColumnGap - columns.title;
    return columns;
}

Brick BrickMaker::tableHead() const {
    Brick brick;
    brick.gap = 18;
    brick.keepWithNext = true;
    const auto& at = m_columns;
    writeRight(brick, at.piecesRight, 0, Face::Fine, kMutedInk, shown(m_sheet.labels.pieces));
    write(brick, at.title, 0, Face::Fine, kMutedInk, shown(m_sheet.labels.what));
    writeRight(brick, at.eachRight, 0, Face::Fine, kMutedInk, shown(m_sheet.labels.each));
    writeRight(brick, m_width, 0, Face::Fine, kMutedInk, shown(m_sheet.labels.amount));
    brick.height = m_lettering.leading(Face::Fine) + 4;
    rule(brick, 0, brick.height, m_width);
    return brick;
}

void BrickMaker::drawStones(Brick& brick, const quoting::SheetLine& line, double y) const {
    const auto drawn = std::min(line.stones.size(), kMaxStones);
    for (std::size_t i = 0; i < drawn; ++i)
        brick.parts.stones.push_back({{m_columns.stones + kStoneRadius + kStoneStep * static_cast<double>(i), y},
                                      kStoneRadius,
                                      QColor::fromRgb(line.stones[i].rgb)});
}

Brick BrickMaker::lineBrick(const quoting::SheetLine& line) const {
    Brick brick;
    brick.gap = 8;
    brick.isAmount = true;
    brick.needsBroughtForward = true;
    brick.running = shown(line.running.text);
    const auto& at = m_columns;
    figuresRight(brick, at.piecesRight, 0, Face::Strong, kInk, shown(line.pieces));
    figuresRight(brick, at.eachRight, 0, Face::Body, kMutedInk, shown(line.each));
    figuresRight(brick, m_width, 0, Face::Body, kInk, shown(line.amount.text));
    drawStones(brick, line, m_lettering.leading(Face::Body) / 2);
    double y = paragraph(brick, at.title, 0, Face::Body, kInk, shown(line.title), at.titleWidth, 3);
    y = std::max(y, m_lettering.leading(Face::Body));
    y = paragraph(brick, at.title, y, Face::Small, kMutedInk, shown(line.detail), at.titleWidth, 4);
    brick.height = paragraph(brick, at.title, y, Face::Small, kMutedInk, shown(line.note), at.titleWidth, 2);
    return brick;
}

Brick BrickMaker::rowBrick(const quoting::SheetRow& row, Face face, const QColor& colour) const {
    Brick brick;
    brick.isAmount = true;
    brick.needsBroughtForward = true;
    brick.running = shown(row.running.text);
    figuresRight(brick, m_width, 0, Face::Body, kInk, shown(row.amount.text));
    const double shift = (m_lettering.leading(Face::Body) - m_lettering.leading(face)) / 2;
    const double below = paragraph(brick, m_columns.title, shift, face, colour, shown(row.label),
                                   m_columns.eachRight - m_columns.title, 3);
    brick.height = std::max(below, m_lettering.leading(Face::Body));
    return brick;
}

void BrickMaker::addLine(std::vector<Brick>& bricks, const quoting::SheetLine& line, bool isFirst) const {
    bricks.push_back(lineBrick(line));
    if (!isFirst) rule(bricks.back(), m_columns.title, -4, m_width - m_columns.title);
    for (const auto& extra : line.extras) {
        bricks.back().keepWithNext = true;
        bricks.push_back(rowBrick(extra, Face::Small, kMutedInk));
    }
}

Brick BrickMaker::carried(const QString& label, const QString& amount) const {
    Brick brick;
    brick.gap = 8;
    rule(brick, 0, 0, m_width);
    write(brick, m_columns.title, 4, Face::SmallStrong, kInk, label);
    figuresRight(brick, m_width, 3, Face::Strong, kInk, amount);
    brick.height = m_lettering.leading(Face::Strong) + 4;
    return brick;
}

double BrickMaker::totalsRow(Brick& brick, double y, const QString& label, const QString& note,
                             const QString& amount) const {
    const double left = m_width * kTotalsLeft;
    const double room = m_width - left - kColumnGap - m_lettering.width(Face::Body, amount);
    figuresRight(brick, m_width, y, Face::Body, kInk, amount);
    y = paragraph(brick, left, y, Face::Body, kMutedInk, label, room, 3);
    return paragraph(brick, left, y, Face::Fine, kMutedInk, note, room, 2) + 4;
}

double BrickMaker::grandTotalLeft() const {
    const double labels = m_lettering.width(Face::Title, shown(m_sheet.labels.toPay)) + 6 +
                          m_lettering.width(Face::Small, shown(m_sheet.currency));
    const double amount = m_lettering.width(Face::Total, shown(m_sheet.toPay.text));
    return std::clamp(m_width - amount - kColumnGap - labels, 0.0, m_width * kTotalsLeft);
}

double BrickMaker::grandTotal(Brick& brick, double y) const {
    const QString label = shown(m_sheet.labels.toPay);
    const double left = grandTotalLeft();
    figuresRight(brick, m_width, y, Face::Total, kInk, shown(m_sheet.toPay.text));
    // On the baseline of the large figure.
    const double baseline = y + m_lettering.ascent(Face::Total);
    write(brick, left, baseline - m_lettering.ascent(Face::Title), Face::Title, kInk, label);
    write(brick, left + m_lettering.width(Face::Title, label) + 6, baseline - m_lettering.ascent(Face::Small),
          Face::Small, kMutedInk, shown(m_sheet.currency));
    return y + m_lettering.leading(Face::Total);
}

double BrickMaker::choiceTotal(Brick& brick, double y, const quoting::SheetChoice& choice) const {
    write(brick, m_width * kTotalsLeft, y, Face::Strong, kInk, shown(m_sheet.labels.toPay));
    figuresRight(brick, m_width, y, Face::Strong, kInk, shown(choice.toPay.text));
    return y + m_lettering.leading(Face::Strong);
}

Brick BrickMaker::totals(const quoting::SheetChoice& choice) const {
    Brick brick;
    brick.gap = 10;
    brick.needsBroughtForward = true;
    rule(brick, 0, 0, m_width);
    double y = 10;
    if (choice.showsTogether) y = totalsRow(brick, y, shown(m_sheet.labels.together), {}, shown(choice.together.text));
    if (choice.tax)
        y = totalsRow(brick, y, shown(quoting::taxLabel(m_sheet, choice)), shown(quoting::taxNote(m_sheet, choice)),
                      shown(choice.tax->amount.text));
    for (const auto& tax : choice.moreTaxes)
        y = totalsRow(brick, y, shown(tax.label), shown(tax.note), shown(tax.amount.text));
    y = hasChoices() ? choiceTotal(brick, y, choice) : grandTotal(brick, y + 6);
    y = paragraph(brick, m_width * kTotalsLeft, y, Face::Small, kMutedInk, shown(choice.taxIncluded),
                  m_width * (1 - kTotalsLeft), 3) +
        6;
    if (choice.deposit) {
        y = totalsRow(brick, y, shown(m_sheet.labels.deposit), {}, shown(choice.deposit->text));
        y = totalsRow(brick, y, shown(m_sheet.labels.balance), {}, shown(choice.balance.text));
    }
    y = settlement(brick, y);
    brick.height = y;
    return brick;
}

double BrickMaker::settlement(Brick& brick, double y) const {
    const double left = m_width * kTotalsLeft;
    for (const auto& row : m_sheet.settlement) {
        const bool isLast = &row == &m_sheet.settlement.back();
        if (!isLast) {
            y = totalsRow(brick, y, shown(row.label), {}, shown(row.amount.text));
            continue;
        }
        rule(brick, left, y, m_width - left);
        y += 6;
        figuresRight(brick, m_width, y, Face::Strong, kInk, shown(row.amount.text));
        const double room = m_width - left - kColumnGap - m_lettering.width(Face::Strong, shown(row.amount.text));
        y = paragraph(brick, left, y, Face::Strong, kInk, shown(row.label), room, 2) + 4;
    }
    return y;
}

bool BrickMaker::placeTermsBeside(Brick& totals) const {
    if (grandTotalLeft() < m_width * kTotalsLeft) return false;
    Brick terms;
    write(terms, 0, 10, Face::SmallStrong, kInk, shown(m_sheet.labels.terms));
    double y = 10 + m_lettering.leading(Face::SmallStrong) + 2;
    for (const auto& line : m_sheet.terms)
        y = paragraph(terms, 0, y, Face::Small, kMutedInk, shown(line), m_width * kTotalsLeft - 2 * kColumnGap, 12) + 2;
    if (y > totals.height) return false;
    auto& texts = totals.parts.texts;
    texts.insert(texts.end(), terms.parts.texts.begin(), terms.parts.texts.end());
    return true;
}

std::vector<BrickMaker::LadderColumn> BrickMaker::ladderColumns(const quoting::SheetChoice& choice) {
    std::vector<LadderColumn> columns;
    for (const auto& ladder : choice.ladders)
        for (const auto& step : ladder.steps) columns.push_back({step.quantity, shown(step.pieces)});
    std::ranges::sort(columns, {}, &LadderColumn::quantity);
    const auto isSame = [](const LadderColumn& a, const LadderColumn& b) { return a.quantity == b.quantity; };
    columns.erase(std::unique(columns.begin(), columns.end(), isSame), columns.end());
    return columns;
}

Brick BrickMaker::ladderHead(const quoting::SheetChoice& choice, std::span<const LadderColumn> columns,
                             double cell) const {
    Brick brick;
    brick.gap = 18;
    brick.keepWithNext = true;
    rule(brick, 0, 0, m_width);
    double y = 10;
    write(brick, 0, y, Face::SmallStrong, kInk, shown(m_sheet.labels.ladders));
    double right = kLadderNames;
    for (const auto& column : columns)
        figuresRight(brick, (right += cell) - kCellPadding, y, Face::Small, kMutedInk, column.pieces);
    y += m_lettering.leading(Face::SmallStrong);
    brick.height = paragraph(brick, 0, y, Face::Fine, kMutedInk, shown(choice.ladderNote), m_width, 2) + 2;
    return brick;
}

Brick BrickMaker::ladderRow(const quoting::SheetLadder& ladder, std::span<const LadderColumn> columns,
                            double cell) const {
    Brick brick;
    brick.gap = 2;
    brick.height = m_lettering.leading(Face::Body) + 2;
    paragraph(brick, 0, 2, Face::Small, kInk, shown(ladder.title), kLadderNames - kCellPadding, 1);
    double right = kLadderNames;
    for (const auto& column : columns) {
        right += cell;
        const auto step = std::ranges::find(ladder.steps, column.quantity, &quoting::LadderStep::quantity);
        if (step == ladder.steps.end()) continue;
        if (step->isOrdered) brick.parts.tints.push_back({{right - cell + 2, 0, cell - 2, brick.height}, kSoftJewel});
        figuresRight(brick, right - kCellPadding, 1, step->isOrdered ? Face::Strong : Face::Body, kInk,
                     shown(step->each));
    }
    return brick;
}

void BrickMaker::addLadders(std::vector<Brick>& bricks, const quoting::SheetChoice& choice) const {
    if (choice.ladders.empty()) return;
    double cell = kNarrowestCell;
    for (const auto& ladder : choice.ladders)
        for (const auto& step : ladder.steps)
            for (const auto& figures : {step.pieces, step.each})
                cell = std::max(cell, m_lettering.width(Face::Strong, shown(figures)) + 18);
    const auto quantities = ladderColumns(choice);
    // A table holds as many columns as fit; the others go into further tables below.
    const auto most = std::max(std::size_t{1}, static_cast<std::size_t>((m_width - kLadderNames) / cell));
    for (std::size_t first = 0; first < quantities.size(); first += most) {
        const auto columns = std::span(quantities).subspan(first, std::min(most, quantities.size() - first));
        bricks.push_back(ladderHead(choice, columns, cell));
        for (const auto& ladder : choice.ladders) {
            bricks.push_back(ladderRow(ladder, columns, cell));
            bricks.back().keepWithNext = &ladder != &choice.ladders.back();
        }
    }
}

void BrickMaker::addNotes(std::vector<Brick>& bricks, const QString& heading, const std::vector<std::string>& notes,
                          Face face) const {
    for (std::size_t i = 0; i < notes.size(); ++i) {
        Brick brick;
        brick.gap = i == 0 ? 14 : 1.5;
        double y = 0;
        if (i == 0) {
            rule(brick, 0, 0, m_width);
            y = 10;
            write(brick, 0, y + (m_lettering.leading(face) - m_lettering.leading(Face::SmallStrong)) / 2,
                  Face::SmallStrong, kInk, heading);
        }
        // Neither the first nor the last note stands alone on a page.
        brick.keepWithNext = i + 1 < notes.size() && (i == 0 || i + 2 == notes.size());
        brick.height = paragraph(brick, kNotesIndent, y, face, kMutedInk, shown(notes[i]), m_width - kNotesIndent, 12);
        bricks.push_back(std::move(brick));
    }
}

void BrickMaker::addAmounts(std::vector<Brick>& bricks, const quoting::SheetChoice& choice) const {
    if (choice.lines.empty()) return; // a receipt has none
    bricks.push_back(tableHead());
    for (std::size_t i = 0; i < choice.lines.size(); ++i) addLine(bricks, choice.lines[i], i == 0);
    for (std::size_t i = 0; i < choice.adjustments.size(); ++i) {
        bricks.push_back(rowBrick(choice.adjustments[i], Face::Body, kInk));
        bricks.back().gap = i == 0 ? 12 : 4;
    }
}

std::vector<Brick> BrickMaker::all() const {
    std::vector<Brick> bricks;
    bricks.push_back(m_frame.letterhead());
    bricks.push_back(m_frame.addressee());
    bool termsBeside = false;
    if (hasChoices()) {
        addChoices(bricks);
    } else {
        addAmounts(bricks, m_sheet);
        auto sums = totals(m_sheet);
        termsBeside = !m_sheet.terms.empty() && placeTermsBeside(sums);
        bricks.push_back(std::move(sums));
        addLadders(bricks, m_sheet);
    }
    for (auto& brick : ProofBricks(m_sheet, m_lettering, m_width).all()) bricks.push_back(std::move(brick));
    if (!termsBeside) addNotes(bricks, shown(m_sheet.labels.terms), m_sheet.terms, Face::Small);
    addNotes(bricks, shown(m_sheet.labels.care), m_sheet.care, Face::Fine);
    return bricks;
}

} // namespace sp::paper
