// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/brick.h"
#include "app/paper/proof_picture.h"
#include "core/quoting/sheet_content.h"

#include <vector>

namespace sp::paper {

/// The proofs of a sheet in bricks: each design as it will look, with its size, and its colours by letters; last, the
/// line to agree on.
class ProofBricks : private BrickPen {
  public:
    ProofBricks(const quoting::SheetContent& sheet, const Lettering& lettering, double width)
        : BrickPen(lettering, width)
        , m_sheet(sheet) {}

    std::vector<Brick> all() const;

  private:
    Brick head() const;
    Brick proof(const quoting::SheetProof& proof) const;
    Brick agreement() const;
    /// The size beside and below the picture; from where the picture begins.
    void drawSize(Brick& brick, const quoting::SheetProof& proof, const QRectF& area) const;
    void drawLetters(Brick& brick, const quoting::SheetProof& proof, const ProofPicture& picture, QPointF corner) const;
    void ring(Brick& brick, QPointF centre, const QString& letter) const;
    /// The colours with their counts; returns the y below.
    double rows(Brick& brick, const quoting::SheetProof& proof, double left, double y) const;

    const quoting::SheetContent& m_sheet;
};

} // namespace sp::paper
