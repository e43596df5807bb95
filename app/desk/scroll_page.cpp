// SPDX-License-Identifier: MIT
#include "app/desk/scroll_page.h"

#include <QStyle>

#include <algorithm>

namespace sp::desk {

ScrollPage::ScrollPage(const QMargins& margins, QWidget* parent)
    : QScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    viewport()->setAutoFillBackground(false);
    auto* body = new QWidget(this);
    setWidget(body);
    body->setAutoFillBackground(false); // setWidget would fill it
    m_column = new QVBoxLayout(body);
    auto room = margins;
    room.setRight(std::max(0, room.right() - style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this)));
    m_column->setContentsMargins(room);
    m_column->setSpacing(12);
}

} // namespace sp::desk

#include "moc_scroll_page.cpp"
