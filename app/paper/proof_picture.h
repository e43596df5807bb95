// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_content.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include <optional>
#include <vector>

class QPainter;

namespace sp::paper {

/// Where the letter of a colour stands, and the stone that it leads to; from the picture's upper left corner, in
/// points.
struct ProofLetter {
    QPointF stone;
    QPointF centre;
};

inline constexpr double kLetterRing = 6.5; ///< radius of the ring round a letter, points

/// The stones of a proof as they lie, at a scale of one to a whole number, so that they go into `room` (points).
class ProofPicture {
  public:
    ProofPicture(const quoting::SheetProof& proof, QSizeF room);

    bool isEmpty() const { return m_size.isEmpty(); }
    QSizeF size() const { return m_size; } ///< in points
    int scale() const { return m_scale; }  ///< 2 for "1 : 2"
    /// For each row of stones a place near one of them where no stone lies, at most `beside` points right of the
    /// picture; none where there is no room.
    std::vector<std::optional<ProofLetter>> letters(double beside) const;
    /// `area` has the picture's size. Each stone is an image that a PDF keeps once.
    void paint(QPainter& painter, const QRectF& area) const;

  private:
    struct Row {
        std::uint32_t rgb = 0;
        double across = 0; ///< points
        std::vector<QPointF> centres;
    };

    std::vector<Row> m_rows;
    QSizeF m_size;
    int m_scale = 1;
};

} // namespace sp::paper
