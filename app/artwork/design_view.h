// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/picture.h"
#include "app/artwork/stone_sprites.h"
#include "app/format/formatter.h"

#include <QPixmap>
#include <QWidget>

#include <memory>

namespace sp::artwork {

/// A design as large as there is room, its stones as they lie, with width and height drawn beside. Without a picture it
/// says so, calmly. It is looked at, not acted on.
class DesignView : public QWidget {
    Q_OBJECT

  public:
    explicit DesignView(QWidget* parent = nullptr);

    /// A picture of null: there is none. Width and height are drawn beside it only where it has their proportions; of
    /// other ones they would say what is not so. Nothing is painted anew while all is as it was.
    void showDesign(const QString& name, std::shared_ptr<const Picture> picture, units::Length width,
                    units::Length height, const desk::Formatter& formatter);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QPixmap painted();
    void paintMeasures(QPainter& painter, const QRectF& box) const;

    std::shared_ptr<const Picture> m_picture;
    QString m_width;  ///< as it is read, "5 in"; empty: not drawn
    QString m_height; ///< the same
    StoneSprites m_sprites;
    QPixmap m_painted;
};

} // namespace sp::artwork
