// SPDX-License-Identifier: MIT
#include "app/desk/tab_order.h"

#include "app/desk/folding_columns.h"

#include <QApplication>
#include <QGridLayout>
#include <QScrollArea>

#include <algorithm>
#include <unordered_set>

namespace sp::desk {

namespace {

/// Walks widgets as their layouts show them.
class StopWalk {
  public:
    std::vector<QWidget*> stops;

    void visit(QWidget& widget, bool isRoot = false) {
        if (!isRoot && (widget.isWindow() || widget.isHidden())) return;
        m_seen.insert(&widget);
        if (!isRoot && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus)) {
            stops.push_back(&widget);
            if (!qobject_cast<QScrollArea*>(&widget)) return; // what is inside it is its own affair
        }
        if (auto* area = qobject_cast<QAbstractScrollArea*>(&widget)) {
            auto* scroll = qobject_cast<QScrollArea*>(area);
            if (scroll && scroll->widget()) visit(*scroll->widget());
            return;
        }
        if (widget.layout()) visit(*widget.layout());
        for (auto* child : widget.children()) {
            auto* inside = qobject_cast<QWidget*>(child);
            if (inside && m_seen.count(inside) == 0) visit(*inside);
        }
    }

  private:
    void visit(QLayout& layout) {
        for (auto* item : inOrder(layout)) {
            if (item->widget())
                visit(*item->widget());
            else if (item->layout())
                visit(*item->layout());
        }
    }

    static std::vector<QLayoutItem*> inOrder(QLayout& layout) {
        std::vector<std::pair<std::pair<int, int>, QLayoutItem*>> placed;
        const auto* grid = qobject_cast<const QGridLayout*>(&layout);
        for (int i = 0; i < layout.count(); ++i) {
            int row = i;
            int column = 0;
            int rowSpan = 1;
            int columnSpan = 1;
            if (grid) grid->getItemPosition(i, &row, &column, &rowSpan, &columnSpan);
            placed.push_back({{row, column}, layout.itemAt(i)});
        }
        std::stable_sort(placed.begin(), placed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<QLayoutItem*> items;
        for (const auto& [place, item] : placed) items.push_back(item);
        return items;
    }

    std::unordered_set<QWidget*> m_seen;
};

} // namespace

std::vector<QWidget*> tabStops(const QWidget& root) {
    StopWalk walk;
    walk.visit(const_cast<QWidget&>(root), true);
    return walk.stops;
}

bool moveFocus(const QWidget& root, bool next) {
    const auto stops = tabStops(root);
    const auto at = std::find(stops.begin(), stops.end(), QApplication::focusWidget());
    if (at == stops.end()) return false;
    auto* stop =
        next ? (at + 1 == stops.end() ? stops.front() : *(at + 1)) : (at == stops.begin() ? stops.back() : *(at - 1));
    stop->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    scrollTo(*stop);
    return true;
}

void scrollTo(QWidget& widget) {
    constexpr int kRoom = 28; // the label above a field, the sentence under it
    for (auto* up = widget.parentWidget(); up; up = up->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(up)) area->ensureWidgetVisible(&widget, 0, kRoom);
}

void focusOn(QWidget& widget) {
    for (auto* up = widget.parentWidget(); up; up = up->parentWidget())
        if (auto* columns = qobject_cast<FoldingColumns*>(up)) columns->reveal(widget);
    widget.setFocus(Qt::OtherFocusReason);
    scrollTo(widget);
}

} // namespace sp::desk
