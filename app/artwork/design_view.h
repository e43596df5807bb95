// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/picture.h"
#include "app/artwork/stone_sprites.h"

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

    /// `width` and `height` as they are read, "5 in". A picture of null: there is none.
    void showDesign(const QString& name, std::shared_ptr<const Picture> picture, const QString& width,
                    const QString& height);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QPixmap painted();
    void paintMeasures(QPainter& painter, const QRectF& box) const;

    std::shared_ptr<const Picture> m_picture;
    QString m_width;
    QString m_height;
    StoneSprites m_sprites;
    QPixmap m_painted;
};

} // namespace sp::artwork
