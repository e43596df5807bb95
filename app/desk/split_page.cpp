// SPDX-License-Identifier: MIT
#include "app/desk/split_page.h"

#include "app/desk/card.h"

#include <QVBoxLayout>

namespace sp::desk {

SplitPage::SplitPage(QWidget* parent)
    : QWidget(parent)
    , m_messages(new MessageBar(this))
    , m_sides(new QHBoxLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(pageMargins());
    column->setSpacing(12);
    column->addWidget(m_messages);
    m_sides->setSpacing(20);
    column->addLayout(m_sides, 1);
}

} // namespace sp::desk

#include "moc_split_page.cpp"
