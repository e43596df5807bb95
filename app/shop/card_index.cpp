// SPDX-License-Identifier: MIT
#include "app/shop/card_index.h"

#include "app/desk/fonts.h"

#include <QScrollBar>

namespace sp::shop {

CardIndex::CardIndex(QScrollArea& page, QWidget* parent)
    : QListWidget(parent)
    , m_page(page) {
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Cards of this page"));
    connect(this, &QListWidget::currentRowChanged, this, &CardIndex::lead);
    connect(m_page.verticalScrollBar(), &QScrollBar::valueChanged, this, &CardIndex::follow);
}

void CardIndex::add(const QString& title, QWidget& card) {
    addItem(title);
    m_cards.push_back(&card);
    if (m_cards.size() == 1) mark(0);
    updateGeometry();
}

void CardIndex::mark(int row) {
    m_isLeading = true;
    setCurrentRow(row);
    m_isLeading = false;
}

void CardIndex::lead(int row) {
    if (row < 0 || m_isLeading) return;
    m_isLeading = true;
    m_page.verticalScrollBar()->setValue(m_cards[static_cast<std::size_t>(row)]->y());
    m_isLeading = false;
}

QComboBox* CardIndex::makeChoice(QWidget* parent) {
    auto* choice = new QComboBox(parent);
    choice->setModel(model());
    connect(choice, &QComboBox::activated, this, [this](int row) {
        mark(row);
        lead(row); // again too, where the page was scrolled a little since
    });
    connect(this, &QListWidget::currentRowChanged, choice, &QComboBox::setCurrentIndex);
    return choice;
}

/// The card that begins last above the middle of what is seen.
void CardIndex::follow() {
    if (m_isLeading) return;
    const int middle = m_page.verticalScrollBar()->value() + m_page.viewport()->height() / 2;
    int row = 0;
    for (std::size_t i = 0; i < m_cards.size(); ++i)
        if (m_cards[i]->y() <= middle) row = static_cast<int>(i);
    mark(row);
}

QSize CardIndex::sizeHint() const {
    return {sizeHintForColumn(0) + desk::scaled(16), std::max(1, count()) * sizeHintForRow(0) + desk::scaled(8)};
}

} // namespace sp::shop

#include "moc_card_index.cpp"
