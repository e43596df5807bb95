// SPDX-License-Identifier: MIT
#pragma once

#include "core/layout/fit.h"

#include <QStringList>
#include <QWidget>

namespace sp::desk {

/// A sheet (or the used part of a roll) drawn to scale with the pieces on it, and caption lines below. Pieces are
/// filled, or outlined where nothing is used up (a template on the wall).
class SheetPicture : public QWidget {
    Q_OBJECT

  public:
    explicit SheetPicture(QWidget* parent = nullptr);

    /// Both sides of sheet and piece above zero; positions as layout::fitSheet gives them. A roll longer than six
    /// times its width is drawn cut off with a torn edge.
    void setSheet(const layout::Sheet& sheet, const layout::Piece& piece, std::vector<layout::Position> positions);
    void setOutlined(bool outlined);
    /// The first line in ink, the others muted; together they are what a screen reader says.
    void setCaption(const QStringList& lines);
    void clear();

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintSheet(QPainter& painter, const QRectF& ground) const;

    layout::Sheet m_sheet;
    layout::Piece m_piece;
    std::vector<layout::Position> m_positions;
    QStringList m_caption;
    bool m_outlined = false;
};

} // namespace sp::desk
