// SPDX-License-Identifier: MIT
#include "app/paper/paper_colours.h"
#include "app/paper/sheet_bricks.h"
#include "app/words/shown.h"

#include <algorithm>

namespace sp::paper {

namespace {

constexpr std::size_t kCardsInARow = 2;
constexpr double kCardGap = 16;
constexpr double kCardPadding = 12;
constexpr double kTick = 9; ///< side of the box to tick
/// Lines whose price each stands on a card; the rest is below, with all others.
constexpr std::size_t kMostLinesOnCard = 4;

using words::shown;

} // namespace

Brick BrickMaker::choicesNote() const {
    Brick brick;
    brick.gap = 16;
    brick.keepWithNext = true;
    brick.height = paragraph(brick, 0, 0, Face::Body, kInk, shown(m_sheet.choicesNote), m_width, 2);
    return brick;
}

/// Writes a card from `left` on; returns the y below its last row, where its tick box may begin.
double BrickMaker::card(Brick& brick, double left, double width, const quoting::SheetChoice& choice) const {
    const double x = left + kCardPadding;
    const double right = left + width - kCardPadding;
    double y = kCardPadding;
    write(brick, x, y, Face::Strong, kInk, shown(choice.name));
    y += m_lettering.leading(Face::Strong);
    y = paragraph(brick, x, y, Face::Small, kMutedInk, shown(choice.difference), right - x, 3) + 6;
    for (std::size_t i = 0; i < std::min(choice.lines.size(), kMostLinesOnCard); ++i) {
        const auto& line = choice.lines[i];
        const double room = right - x - m_lettering.width(Face::Body, shown(line.each)) - 8;
        const auto title = QStringLiteral("%1 × %2, %3")
                               .arg(shown(line.pieces), shown(line.title), shown(m_sheet.labels.each).toLower());
        figuresRight(brick, right, y, Face::Body, kInk, shown(line.each));
        y = paragraph(brick, x, y, Face::Small, kMutedInk, title, room, 2) + 2;
    }
    return y;
}

Brick BrickMaker::cards(std::span<const quoting::SheetChoice* const> choices) const {
    Brick brick;
    brick.gap = 10;
    const double width = (m_width - kCardGap * (kCardsInARow - 1)) / kCardsInARow;
    double below = 0;
    for (std::size_t i = 0; i < choices.size(); ++i)
        below = std::max(below, card(brick, static_cast<double>(i) * (width + kCardGap), width, *choices[i]));
    const double totalHeight = m_lettering.leading(Face::Total);
    brick.height = below + totalHeight + kTick + 2 * kCardPadding;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        const double left = static_cast<double>(i) * (width + kCardGap);
        const double x = left + kCardPadding;
        brick.parts.boxes.push_back({{left, 0, width, brick.height}, kHairline, {}, false});
        figuresRight(brick, left + width - kCardPadding, below, Face::Total, kInk, shown(choices[i]->toPay.text));
        write(brick, x, below + m_lettering.ascent(Face::Total) - m_lettering.ascent(Face::Strong), Face::Strong, kInk,
              shown(m_sheet.labels.toPay));
        const double tick = below + totalHeight + kCardPadding / 2;
        brick.parts.boxes.push_back({{x, tick, kTick, kTick}, kInk, {}, false});
        write(brick, x + kTick + 6, tick + (kTick - m_lettering.leading(Face::Small)) / 2, Face::Small, kInk,
              shown(m_sheet.labels.takeThis));
    }
    return brick;
}

Brick BrickMaker::choiceHead(const quoting::SheetChoice& choice) const {
    Brick brick;
    brick.gap = 22;
    brick.keepWithNext = true;
    const auto name = shown(choice.name);
    write(brick, 0, 0, Face::Title, kInk, name);
    const double x = m_lettering.width(Face::Title, name) + 10;
    const double shift = m_lettering.ascent(Face::Title) - m_lettering.ascent(Face::Body);
    const double y = paragraph(brick, x, shift, Face::Body, kMutedInk, shown(choice.difference), m_width - x, 2);
    brick.height = std::max(y, m_lettering.leading(Face::Title));
    return brick;
}

void BrickMaker::addChoices(std::vector<Brick>& bricks) const {
    const auto choices = quoting::choicesOf(m_sheet);
    bricks.push_back(choicesNote());
    for (std::size_t first = 0; first < choices.size(); first += kCardsInARow)
        bricks.push_back(cards(std::span(choices).subspan(first, std::min(kCardsInARow, choices.size() - first))));
    for (const auto* choice : choices) {
        bricks.push_back(choiceHead(*choice));
        addAmounts(bricks, *choice);
        bricks.push_back(totals(*choice));
        addLadders(bricks, *choice);
    }
}

} // namespace sp::paper
