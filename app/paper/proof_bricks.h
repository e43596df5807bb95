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
    void add(std::vector<Brick>& bricks, const quoting::SheetProof& proof) const;
    /// One that has only words: there was no room for its picture.
    Brick leftOut(const quoting::SheetProof& proof) const;
    Brick picture(const quoting::SheetProof& proof) const;
    Brick agreement() const;
    /// The size beside and below the picture; from where the picture begins.
    void drawSize(Brick& brick, const quoting::SheetProof& proof, const QRectF& area) const;
    void drawLetters(Brick& brick, const quoting::SheetProof& proof, const ProofPicture& picture, QPointF corner) const;
    void ring(Brick& brick, QPointF centre, const QString& letter) const;
    /// A colour with its count, as high as a row.
    void row(Brick& brick, const quoting::ProofStone& stone, double left, double y) const;

    const quoting::SheetContent& m_sheet;
};

} // namespace sp::paper
