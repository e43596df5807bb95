// SPDX-License-Identifier: MIT
#pragma once

#include <QPixmap>
#include <QStyledItemDelegate>

#include <functional>
#include <utility>

namespace sp::desk {

/// Two-line rows for lists of designs and supplies: stones at the left, the name, a muted second line. The model
/// gives the second line and the stones (a QVariantList of QColor) under the roles named here.
class StoneListDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    StoneListDelegate(int detailRole, int stonesRole, QObject* parent);

    /// A picture in the place of the stones, for the rows that have one: what to paint into a square of so many pixels
    /// on that ground, or null.
    using RowPicture = std::function<QPixmap(const QModelIndex& row, QSize room, const QColor& ground, double ratio)>;
    void setPictures(RowPicture pictures) { m_pictures = std::move(pictures); }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    int m_detailRole;
    int m_stonesRole;
    RowPicture m_pictures;
};

} // namespace sp::desk
