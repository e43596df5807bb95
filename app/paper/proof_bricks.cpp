// SPDX-License-Identifier: MIT
#include "app/paper/proof_bricks.h"

#include "app/paper/paper_colours.h"
#include "app/words/shown.h"

#include <QPainter>

#include <algorithm>
#include <memory>

namespace sp::paper {

namespace {

constexpr double kTableFrom = 0.58; ///< share of the width left of the colours
constexpr double kTallest = 250;    ///< of a picture that stands alone, points
constexpr double kTallestOfSome = 165;
constexpr double kBesidePicture = 16; ///< room for letters right of it
constexpr double kMeasureGap = 6;     ///< from the picture to the line that measures it
constexpr double kMeasureTick = 6;
constexpr double kMeasurePen = 0.6;
constexpr double kRowHeight = 18;
constexpr std::size_t kRowsBeside = 12; ///< colours beside a picture; further ones go on below it
constexpr double kStoneOfRow = 5;       ///< radius
constexpr double kSignFrom = 0.34;
constexpr double kSignGap = 16;
constexpr double kSignDay = 0.76;
constexpr double kSignRoom = 30; ///< above the line, to write in

using words::shown;

} // namespace

std::vector<Brick> ProofBricks::all() const {
    std::vector<Brick> bricks;
    if (m_sheet.proofs.empty()) return bricks;
    bricks.push_back(head());
    for (const auto& one : m_sheet.proofs) add(bricks, one);
    bricks.back().keepWithNext = true;
    bricks.push_back(agreement());
    return bricks;
}

Brick ProofBricks::head() const {
    Brick brick;
    brick.gap = 18;
    brick.keepWithNext = true;
    rule(brick, 0, 0, m_width);
    write(brick, 0, 10, Face::Title, kInk, shown(m_sheet.labels.proof));
    brick.height = 10 + m_lettering.leading(Face::Title);
    return brick;
}

void ProofBricks::ring(Brick& brick, QPointF centre, const QString& letter) const {
    const QPointF reach(kLetterRing, kLetterRing);
    brick.parts.pictures.push_back({QRectF(centre - reach, centre + reach), [](QPainter& painter, const QRectF& area) {
                                        painter.setPen(QPen(kInk, kMeasurePen));
                                        painter.setBrush(kWhite);
                                        painter.drawEllipse(area);
                                    }});
    write(brick, centre.x() - m_lettering.width(Face::SmallStrong, letter) / 2,
          centre.y() - m_lettering.leading(Face::SmallStrong) / 2, Face::SmallStrong, kInk, letter);
}

void ProofBricks::drawLetters(Brick& brick, const quoting::SheetProof& proof, const ProofPicture& picture,
                              QPointF corner) const {
    const auto letters = picture.letters(kBesidePicture);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        if (!letters[i]) continue;
        const auto stone = letters[i]->stone;
        const auto centre = letters[i]->centre;
        // The area is what a page moves: the leader is drawn from its corner.
        brick.parts.pictures.push_back(
            {QRectF(corner, picture.size()), [stone, centre](QPainter& painter, const QRectF& area) {
                 painter.setPen(QPen(kInk, kMeasurePen));
                 painter.drawLine(area.topLeft() + stone, area.topLeft() + centre);
                 painter.setPen(Qt::NoPen);
                 painter.setBrush(kInk);
                 painter.drawEllipse(area.topLeft() + stone, 1.2, 1.2);
             }});
        ring(brick, corner + centre, shown(proof.stones[i].letter));
    }
}

void ProofBricks::drawSize(Brick& brick, const quoting::SheetProof& proof, const QRectF& area) const {
    const double x = area.left() - kMeasureGap - kMeasureTick / 2;
    const double y = area.bottom() + kMeasureGap + kMeasureTick / 2;
    const auto upright = [&](double at, double from, double length) {
        brick.parts.tints.push_back({QRectF(at - kMeasurePen / 2, from, kMeasurePen, length), kMutedInk});
    };
    const auto level = [&](double from, double at, double length) {
        brick.parts.tints.push_back({QRectF(from, at - kMeasurePen / 2, length, kMeasurePen), kMutedInk});
    };
    upright(x, area.top(), area.height());
    for (const double end : {area.top(), area.bottom()}) level(x - kMeasureTick / 2, end, kMeasureTick);
    level(area.left(), y, area.width());
    for (const double end : {area.left(), area.right()}) upright(end, y - kMeasureTick / 2, kMeasureTick);
    const double half = m_lettering.leading(Face::Small) / 2;
    writeRight(brick, x - kMeasureTick, area.center().y() - half, Face::Small, kInk, shown(proof.height));
    const auto width = shown(proof.width);
    write(brick, area.center().x() - m_lettering.width(Face::Small, width) / 2, y + kMeasureTick / 2 + 1, Face::Small,
          kInk, width);
}

void ProofBricks::row(Brick& brick, const quoting::ProofStone& stone, double left, double y) const {
    const double middle = y + kRowHeight / 2;
    ring(brick, {left + kLetterRing, middle}, shown(stone.letter));
    const double stoneX = left + 2 * kLetterRing + 8 + kStoneOfRow;
    brick.parts.stones.push_back({{stoneX, middle}, kStoneOfRow, QColor::fromRgb(stone.rgb)});
    const double nameX = stoneX + kStoneOfRow + 8;
    const double top = middle - m_lettering.leading(Face::Body) / 2;
    const auto count = shown(stone.count);
    figuresRight(brick, m_width, top, Face::Body, kInk, count);
    const double room = m_width - nameX - m_lettering.width(Face::Body, count) - 8;
    write(brick, nameX, top, Face::Body, kInk, fitted(Face::Body, shown(stone.name), room));
}

void ProofBricks::add(std::vector<Brick>& bricks, const quoting::SheetProof& proof) const {
    if (proof.stones.empty()) {
        bricks.push_back(leftOut(proof));
        return;
    }
    bricks.push_back(picture(proof));
    // A page breaks between bricks: what goes on below the picture are bricks of their own.
    const double table = m_width * kTableFrom;
    for (std::size_t i = kRowsBeside; i < proof.stones.size(); ++i) {
        Brick brick;
        row(brick, proof.stones[i], table, 0);
        brick.height = kRowHeight;
        bricks.push_back(std::move(brick));
    }
    if (proof.note.empty()) return;
    bricks.back().keepWithNext = true;
    Brick note;
    note.height = paragraph(note, table, 4, Face::SmallStrong, kInk, shown(proof.note), m_width - table, 4);
    bricks.push_back(std::move(note));
}

Brick ProofBricks::leftOut(const quoting::SheetProof& proof) const {
    Brick brick;
    brick.gap = 10;
    const double y = paragraph(brick, 0, 0, Face::Strong, kInk, shown(proof.title), m_width, 6);
    brick.height = paragraph(brick, 0, y, Face::SmallStrong, kInk, shown(proof.note), m_width, 4);
    return brick;
}

Brick ProofBricks::picture(const quoting::SheetProof& proof) const {
    Brick brick;
    brick.gap = 10;
    const double table = m_width * kTableFrom;
    const double heightWidth = m_lettering.width(Face::Small, shown(proof.height));
    const double left = heightWidth + kMeasureGap + 1.5 * kMeasureTick + 2;
    const double tallest = m_sheet.proofs.size() == 1 ? kTallest : kTallestOfSome;
    const auto picture =
        std::make_shared<const ProofPicture>(proof, QSizeF(table - left - kBesidePicture - 8, tallest));
    const QRectF area(QPointF(left, 4), picture->size());
    if (!picture->isEmpty()) {
        brick.parts.pictures.push_back(
            {area, [picture](QPainter& painter, const QRectF& at) { picture->paint(painter, at); }});
        drawSize(brick, proof, area);
        drawLetters(brick, proof, *picture, area.topLeft());
    }
    const auto title = proof.choices.empty() ? shown(proof.title)
                                             : QStringLiteral("%1 · %2").arg(shown(proof.choices), shown(proof.title));
    double y = paragraph(brick, table, 0, Face::Strong, kInk, title, m_width - table, 2);
    const auto scale = QStringLiteral("1 : %1").arg(picture->scale());
    y = paragraph(brick, table, y, Face::Small, kMutedInk, shown(m_sheet.labels.proofScale).arg(scale), m_width - table,
                  2);
    writeRight(brick, m_width, y + 4, Face::Fine, kMutedInk, shown(m_sheet.labels.proofStones));
    y += 4 + m_lettering.leading(Face::Fine) + 2;
    for (std::size_t i = 0; i < std::min(proof.stones.size(), kRowsBeside); ++i, y += kRowHeight)
        row(brick, proof.stones[i], table, y);
    const double below = area.bottom() + kMeasureGap + 1.5 * kMeasureTick + m_lettering.leading(Face::Small);
    brick.height = std::max(y, below);
    return brick;
}

Brick ProofBricks::agreement() const {
    Brick brick;
    brick.gap = 2;
    const double line = kSignRoom;
    const double name = m_width * kSignFrom;
    const double day = m_width * kSignDay;
    write(brick, 0, line - m_lettering.ascent(Face::Strong), Face::Strong, kInk,
          fitted(Face::Strong, shown(m_sheet.labels.agree), name - kSignGap));
    brick.parts.rules.push_back({{name, line}, day - kSignGap - name, kMeasurePen, kInk});
    brick.parts.rules.push_back({{day, line}, m_width - day, kMeasurePen, kInk});
    write(brick, name, line + 3, Face::Fine, kMutedInk, shown(m_sheet.labels.agreeName));
    write(brick, day, line + 3, Face::Fine, kMutedInk, shown(m_sheet.labels.agreeDay));
    brick.height = line + 3 + m_lettering.leading(Face::Fine);
    return brick;
}

} // namespace sp::paper
