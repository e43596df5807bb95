// SPDX-License-Identifier: MIT
#pragma once

#include <QScrollArea>
#include <QVBoxLayout>

namespace sp::desk {

/// A column of things that scrolls when it is longer than its place, on the ground it lies on. The bar's room is taken
/// from the right margin and kept free while there is nothing to scroll, so that nothing moves sideways.
class ScrollPage : public QScrollArea {
    Q_OBJECT

  public:
    explicit ScrollPage(const QMargins& margins, QWidget* parent = nullptr);

    /// Where the things go; 12 px lie between them.
    QVBoxLayout* column() { return m_column; }

  private:
    QVBoxLayout* m_column;
};

} // namespace sp::desk
