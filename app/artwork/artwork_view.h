// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/picture.h"
#include "app/artwork/stone_sprites.h"

#include <QHash>
#include <QPixmap>
#include <QWidget>

#include <functional>
#include <memory>
#include <optional>

namespace sp::artwork {

class StoneGrid;

/// Shows artwork to scale: cut stones in their colours, what is not a stone as thin marked lines. Ctrl and the wheel
/// zoom, the wheel alone, the arrows and a drag move; + - and 0 (or Home) zoom and fit; a click picks a stone, or a
/// line that is none; Page Up and Page Down pick the stone before and after. What was drawn is kept in tiles, so a
/// move paints only what comes into sight.
class ArtworkView : public QWidget {
    Q_OBJECT

  public:
    explicit ArtworkView(QWidget* parent = nullptr);
    ~ArtworkView() override;

    /// Fits it when `fits`; else zoom and place stay where a person put them.
    void setPicture(Picture picture, bool fits);
    const Picture& picture() const { return m_picture; }
    /// -1: none. Moves it into sight.
    void setSelected(int stone);
    /// What is picked, for those who hear it; it is announced.
    void say(const QString& words);
    /// Things left out for this reason stand out; nothing: none do.
    void setHighlighted(std::optional<Classification> classification);

    void fit();
    /// Keeps what lies under `at` where it is.
    void zoomBy(double factor, QPointF at);
    void moveBy(QPointF pixels);
    double pixelsPerMm() const { return m_scale; }
    QPointF toScreen(Point place) const;

    QSize sizeHint() const override { return {640, 520}; }
    QSize minimumSizeHint() const override { return {240, 200}; }

  Q_SIGNALS:
    void picked(int stone);                                      ///< -1: nothing there
    void pickedLine(sp::artwork::Classification classification); ///< something that is no stone
    void zoomed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QPixmap tile(int column, int row);
    void paintTile(QPainter& painter, const Box& part);
    std::function<bool(const Box&)> seenIn(const Box& part) const; ///< what shows in that part of the picture
    void paintLines(QPainter& painter, const Box& part);
    void paintDiscs(QPainter& painter, const std::function<bool(const Box&)>& seen, bool standing);
    void paintStones(QPainter& painter, const Box& part);
    void paintCollisions(QPainter& painter, const Box& part);
    QPen penOf(Classification classification) const;
    Point toPicture(QPointF at) const;
    void pickAt(QPointF at);
    int stoneAt(Point place) const;
    std::optional<Classification> lineAt(Point place) const;
    void step(int by);
    void bound();
    void forget();

    Picture m_picture;
    Box m_box;
    std::unique_ptr<StoneGrid> m_grid;
    StoneSprites m_sprites;
    QHash<quint64, QPixmap> m_tiles;
    double m_scale = 4; ///< device-independent pixels a millimetre
    QPointF m_origin;   ///< where the picture's zero lies on the widget, whole device pixels
    bool m_fitted = true;
    int m_selected = -1;
    std::optional<Classification> m_highlighted;
    QPointF m_pressedAt;
    QPointF m_draggedTo;
    bool m_dragging = false;
};

} // namespace sp::artwork
