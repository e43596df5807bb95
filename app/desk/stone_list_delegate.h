// SPDX-License-Identifier: MIT
#pragma once

#include <QStyledItemDelegate>

namespace sp::desk {

/// Two-line rows for lists of designs and supplies: stones at the left, the name, a muted second line. The model
/// gives the second line and the stones (a QVariantList of QColor) under the roles named here.
class StoneListDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    StoneListDelegate(int detailRole, int stonesRole, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    int m_detailRole;
    int m_stonesRole;
};

} // namespace sp::desk
