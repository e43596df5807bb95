// SPDX-License-Identifier: MIT
#include "app/desk/flow_grid.h"

#include <QWidget>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kBetweenBoxes = 12;
constexpr int kBetweenRows = 8;

int heightOf(const QLayoutItem& item, int width) {
    return item.hasHeightForWidth() ? item.heightForWidth(width) : item.sizeHint().height();
}

} // namespace

FlowGrid::FlowGrid(int columns)
    : m_columns(columns) {
    setContentsMargins(0, 0, 0, 0);
}

FlowGrid::~FlowGrid() = default;

void FlowGrid::add(QWidget* box, int span) {
    addChildWidget(box);
    m_cells.push_back({std::make_unique<QWidgetItem>(box), span});
    invalidate();
}

void FlowGrid::addItem(QLayoutItem* item) { m_cells.push_back({std::unique_ptr<QLayoutItem>(item), 1}); }

QLayoutItem* FlowGrid::itemAt(int index) const {
    return index >= 0 && index < count() ? m_cells[static_cast<std::size_t>(index)].item.get() : nullptr;
}

QLayoutItem* FlowGrid::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    const auto at = m_cells.begin() + index;
    auto* item = at->item.release();
    m_cells.erase(at);
    return item;
}

int FlowGrid::spanOf(const Cell& cell, int columns) const {
    const int parts = m_columns / columns;
    return std::clamp((cell.span + parts - 1) / parts, 1, columns);
}

int FlowGrid::widthOf(int span, int columns, int width) const {
    const int column = (width - (columns - 1) * kBetweenBoxes) / columns;
    return span == columns ? width : span * column + (span - 1) * kBetweenBoxes;
}

int FlowGrid::columnsFor(int width) const {
    for (int columns = m_columns; columns > 1; columns /= 2)
        if (std::ranges::all_of(m_cells, [&](const Cell& cell) {
                return cell.item->isEmpty() ||
                       cell.item->minimumSize().width() <= widthOf(spanOf(cell, columns), columns, width);
            }))
            return columns;
    return 1;
}

int FlowGrid::arrange(const QRect& rect, bool moves) const {
    const int columns = columnsFor(rect.width());
    int y = rect.y();
    for (std::size_t first = 0; first < m_cells.size();) {
        int taken = 0;
        int height = 0;
        std::size_t last = first;
        for (; last < m_cells.size(); ++last) {
            if (m_cells[last].item->isEmpty()) continue;
            const int span = spanOf(m_cells[last], columns);
            if (taken + span > columns) break;
            taken += span;
            height = std::max(height, heightOf(*m_cells[last].item, widthOf(span, columns, rect.width())));
        }
        if (taken > 0) {
            int x = rect.x();
            for (std::size_t i = first; moves && i < last; ++i) {
                if (m_cells[i].item->isEmpty()) continue;
                const int width = widthOf(spanOf(m_cells[i], columns), columns, rect.width());
                m_cells[i].item->setGeometry({x, y, width, height});
                x += width + kBetweenBoxes;
            }
            y += height + kBetweenRows;
        }
        first = last;
    }
    return std::max(0, y - rect.y() - kBetweenRows);
}

int FlowGrid::heightForWidth(int width) const { return arrange({0, 0, width, 0}, false); }

QSize FlowGrid::sizeHint() const {
    int width = 0;
    for (const auto& cell : m_cells)
        if (!cell.item->isEmpty())
            width = std::max(width,
                             (cell.item->sizeHint().width() + kBetweenBoxes) * m_columns / cell.span - kBetweenBoxes);
    return {width, heightForWidth(width)};
}

/// Its height is heightForWidth's alone: that of one column would be too much for all others.
QSize FlowGrid::minimumSize() const {
    QSize least(0, 0);
    for (const auto& cell : m_cells)
        if (!cell.item->isEmpty()) least = least.expandedTo(cell.item->minimumSize());
    return least;
}

void FlowGrid::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

} // namespace sp::desk

#include "moc_flow_grid.cpp"
