// SPDX-License-Identifier: MIT
#include "app/paper/proof_picture.h"

#include "app/desk/stone_painter.h"
#include "app/paper/paper_colours.h"
#include "core/quoting/proofs.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sp::paper {

namespace {

constexpr double kPointsPerMillimetre = 72 / 25.4;
constexpr int kSmallestScale = 1000;
constexpr double kImagesPerPoint = 10; ///< pixels of a stone's image: 720 to the inch
constexpr double kLeastImage = 16;
constexpr double kMostImage = 96;
constexpr double kCell = 1.5; ///< points
constexpr std::size_t kTriedStones = 40;
constexpr int kDirections = 16;
constexpr double kNearest = 11;
constexpr double kFarthestLetter = 60;
constexpr double kStride = 3;
constexpr double kCrossing = 3; ///< what a cell that a leader crosses counts as much as, in points of its length

/// Which cells of the picture and its margin are taken.
class TakenCells {
  public:
    TakenCells(QSizeF size, double beside)
        : m_area(QRectF(QPointF(), QSizeF(size.width() + beside, size.height())))
        , m_columns(static_cast<int>(m_area.width() / kCell) + 1)
        , m_taken(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_area.height() / kCell + 1)) {}

    bool isTaken(QPointF at) const { return m_area.contains(at) && m_taken[indexOf(at)]; }

    /// Calls for the middle of each cell of a disc.
    template<class Visit>
    void overDisc(QPointF centre, double radius, Visit visit) {
        for (double y = -radius; y <= radius; y += kCell)
            for (double x = -radius; x <= radius; x += kCell)
                if (x * x + y * y <= radius * radius) visit(centre + QPointF(x, y));
    }
    void take(QPointF centre, double radius) {
        overDisc(centre, radius, [&](QPointF at) {
            if (m_area.contains(at)) m_taken[indexOf(at)] = true;
        });
    }
    bool isFree(QPointF centre, double radius) {
        const QPointF reach(radius, radius);
        if (!m_area.contains(QRectF(centre - reach, centre + reach))) return false;
        bool isFree = true;
        overDisc(centre, radius, [&](QPointF at) { isFree = isFree && !isTaken(at); });
        return isFree;
    }

  private:
    std::size_t indexOf(QPointF at) const {
        return static_cast<std::size_t>(at.y() / kCell) * static_cast<std::size_t>(m_columns) +
               static_cast<std::size_t>(at.x() / kCell);
    }

    QRectF m_area;
    int m_columns;
    std::vector<bool> m_taken;
};

/// How good a letter's place is: the shorter its leader and the fewer stones it crosses the better.
double burdenOf(const TakenCells& cells, QPointF stone, QPointF direction, double distance, double radius) {
    double burden = distance;
    for (double at = radius + kCell; at < distance - kLetterRing; at += kCell)
        if (cells.isTaken(stone + direction * at)) burden += kCrossing;
    return burden;
}

} // namespace

ProofPicture::ProofPicture(const quoting::SheetProof& proof, QSizeF room) {
    artwork::Box box;
    std::vector<std::vector<artwork::Point>> places;
    for (const auto& stone : proof.stones) {
        places.push_back(quoting::unpacked(stone.places));
        for (const auto& place : places.back()) box.add(place, stone.across.millimetres() / 2);
    }
    if (box.isEmpty() || room.isEmpty()) return;
    const double wide = box.width() * kPointsPerMillimetre;
    const double high = box.height() * kPointsPerMillimetre;
    const double shrunk = std::ceil(std::max({1.0, wide / room.width(), high / room.height()}) - 1e-9);
    if (shrunk > kSmallestScale) return; // no design of a shop
    m_scale = static_cast<int>(shrunk);
    m_size = QSizeF(wide, high) / shrunk;
    const double unit = kPointsPerMillimetre / shrunk;
    for (std::size_t i = 0; i < places.size(); ++i) {
        Row row{proof.stones[i].rgb, proof.stones[i].across.millimetres() * unit, {}};
        for (const auto& place : places[i])
            row.centres.push_back(QPointF(place.x - box.left, place.y - box.top) * unit);
        m_rows.push_back(std::move(row));
    }
}

std::vector<std::optional<ProofLetter>> ProofPicture::letters(double beside) const {
    TakenCells cells(m_size, beside);
    for (const auto& row : m_rows)
        for (const auto& centre : row.centres) cells.take(centre, row.across / 2 + kCell);
    std::vector<std::optional<ProofLetter>> letters;
    for (const auto& row : m_rows) {
        std::optional<ProofLetter> best;
        double least = kFarthestLetter * kCrossing;
        const auto step = std::max<std::size_t>(1, row.centres.size() / kTriedStones);
        for (std::size_t i = 0; i < row.centres.size(); i += step)
            for (int turn = 0; turn < kDirections; ++turn) {
                const double angle = turn * 2 * std::numbers::pi / kDirections;
                const QPointF direction(std::cos(angle), std::sin(angle));
                for (double distance = kNearest; distance < std::min(least, kFarthestLetter); distance += kStride) {
                    const auto centre = row.centres[i] + direction * distance;
                    if (!cells.isFree(centre, kLetterRing + 1)) continue;
                    const double burden = burdenOf(cells, row.centres[i], direction, distance, row.across / 2);
                    if (burden >= least) break;
                    least = burden;
                    best = ProofLetter{row.centres[i], centre};
                    break;
                }
            }
        if (best) cells.take(best->centre, kLetterRing + 2);
        letters.push_back(best);
    }
    return letters;
}

void ProofPicture::paint(QPainter& painter, const QRectF& area) const {
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    for (const auto& row : m_rows) {
        const int side = static_cast<int>(std::clamp(row.across * kImagesPerPoint, kLeastImage, kMostImage));
        QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter onImage(&image);
        desk::paintStone(onImage, QRectF(0, 0, side, side), desk::stoneColour(row.rgb), kWhite);
        onImage.end();
        const QPointF reach(row.across / 2, row.across / 2);
        for (const auto& centre : row.centres) {
            const auto at = area.topLeft() + centre;
            painter.drawImage(QRectF(at - reach, at + reach), image, QRectF(image.rect()));
        }
    }
}

} // namespace sp::paper
