// SPDX-License-Identifier: MIT
#pragma once

#include <QLayout>

#include <memory>
#include <vector>

namespace sp::desk {

/// Boxes side by side in equal columns, row after row, in the order in which they were added. Where the columns are too
/// narrow for what is in them there are half as many, rounded down, to one, so that it is never wider than its widest
/// box. What is in a row is as high as the row.
class FlowGrid : public QLayout {
    Q_OBJECT

  public:
    /// `columns` at most.
    explicit FlowGrid(int columns);
    ~FlowGrid() override;

    /// At the end; `span` columns wide where there are all of them, half as many in half of them. It goes to the next
    /// row where it does not fit.
    void add(QWidget* box, int span = 1);

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_cells.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

  private:
    struct Cell {
        std::unique_ptr<QLayoutItem> item;
        int span;
    };

    int columnsFor(int width) const;
    int spanOf(const Cell& cell, int columns) const;
    int widthOf(int span, int columns, int width) const;
    /// Puts the boxes in their places, or only asks how high all are together.
    int arrange(const QRect& rect, bool moves) const;

    int m_columns;
    std::vector<Cell> m_cells;
};

} // namespace sp::desk
