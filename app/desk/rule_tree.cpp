// SPDX-License-Identifier: MIT
#include "app/desk/rule_tree.h"

#include "app/format/rule_role.h"

#include "app/desk/bench_style.h"
#include "app/desk/figures.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kLabel = 0;
constexpr int kAmount = 1;

/// A row: the label, and under it the rule that made the figure.
class RuleDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const auto* view = qobject_cast<const QTreeView*>(option.widget);
        const int width = std::max(80, (view ? view->columnWidth(kLabel) : 200) - depthOf(index) * 20 - 28);
        return {width, scaled(22) + ruleHeight(index, width) + scaled(4)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const bool chosen = option.state & QStyle::State_Selected;
        if (chosen) painter->fillRect(option.rect, colour(Role::JewelSoft));
        const bool top = !index.parent().isValid();
        const QRect line(option.rect.left() + 2, option.rect.top() + 2, option.rect.width() - 4, scaled(20));
        painter->setFont(textFont(TextSize::Body, top ? Weight::Strong : Weight::Plain));
        painter->setPen(colour(Role::Ink));
        const auto words = index.data().toString();
        if (index.column() == kAmount) {
            drawFigures(*painter, line, Qt::AlignRight | Qt::AlignVCenter, words);
        } else {
            painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                              painter->fontMetrics().elidedText(words, Qt::ElideRight, line.width()));
            painter->setFont(textFont(TextSize::Small));
            painter->setPen(colour(Role::Muted));
            painter->drawText(QRect(line.left(), line.bottom() + 1, line.width(), option.rect.bottom() - line.bottom()),
                              Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, shownRule(index));
        }
        painter->restore();
    }

  private:
    static int depthOf(const QModelIndex& index) {
        int depth = 0;
        for (auto up = index.parent(); up.isValid(); up = up.parent()) ++depth;
        return depth;
    }
    /// A sum of parts that are there to be opened needs no words.
    static QString shownRule(const QModelIndex& index) {
        const bool opens = index.model()->rowCount(index.siblingAtColumn(0)) > 0;
        return opens ? QString() : index.data(kRuleRole).toString();
    }
    static int ruleHeight(const QModelIndex& index, int width) {
        const auto rule = shownRule(index.siblingAtColumn(kLabel));
        if (rule.isEmpty()) return 0;
        const QFontMetrics metrics(textFont(TextSize::Small));
        return metrics.boundingRect(QRect(0, 0, width, 1000), Qt::TextWordWrap, rule).height();
    }
};

} // namespace

RuleTree::RuleTree(QWidget* parent)
    : QTreeView(parent) {
    setHeaderHidden(true);
    setFrameShape(QFrame::NoFrame);
    viewport()->setAutoFillBackground(false);
    setItemDelegate(new RuleDelegate(this));
    setIndentation(scaled(20));
    setMinimumHeight(scaled(150));
    setExpandsOnDoubleClick(false);
    setEditTriggers(NoEditTriggers);
    setVerticalScrollMode(ScrollPerPixel);
    header()->setStretchLastSection(false);
    header()->setMinimumSectionSize(20);
    const auto toggle = [this](const QModelIndex& index) {
        const auto first = index.siblingAtColumn(kLabel);
        setExpanded(first, !isExpanded(first));
    };
    connect(this, &QTreeView::clicked, this, toggle);
    connect(this, &QTreeView::activated, this, toggle);
}

void RuleTree::setModel(QAbstractItemModel* model) {
    QTreeView::setModel(model);
    header()->setSectionResizeMode(kLabel, QHeaderView::Stretch);
    header()->setSectionResizeMode(kAmount, QHeaderView::Fixed);
    header()->resizeSection(kAmount, scaled(72));
}

/// Round the row that the keys are at; round all of it before they went to one.
void RuleTree::paintEvent(QPaintEvent* event) {
    QTreeView::paintEvent(event);
    if (!hasFocus()) return;
    const auto current = currentIndex();
    QRect box = viewport()->rect();
    if (current.isValid())
        box = visualRect(current.siblingAtColumn(kLabel)).united(visualRect(current.siblingAtColumn(kAmount)));
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour(Role::Jewel), 2));
    painter.drawRoundedRect(QRectF(box).adjusted(1, 1, -1, -1), kFieldRadius, kFieldRadius);
}

void RuleTree::focusInEvent(QFocusEvent* event) {
    QTreeView::focusInEvent(event);
    viewport()->update();
}

void RuleTree::focusOutEvent(QFocusEvent* event) {
    QTreeView::focusOutEvent(event);
    viewport()->update();
}

void RuleTree::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTreeView::currentChanged(current, previous);
    viewport()->update(); // the outline lies across cells
}

QStringList RuleTree::opened() const {
    QStringList labels;
    for (int row = 0; model() && row < model()->rowCount(); ++row)
        if (const auto index = model()->index(row, kLabel); isExpanded(index)) labels << index.data().toString();
    return labels;
}

void RuleTree::open(const QStringList& labels) {
    for (int row = 0; model() && row < model()->rowCount(); ++row)
        if (const auto index = model()->index(row, kLabel); labels.contains(index.data().toString())) expand(index);
}

} // namespace sp::desk

#include "moc_rule_tree.cpp"
