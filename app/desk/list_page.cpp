// SPDX-License-Identifier: MIT
#include "app/desk/list_page.h"

#include "app/desk/card.h"

#include <QVBoxLayout>

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kListWidth = 348;

} // namespace

FlowGrid* ListPage::buildList(const QString& title, const StoneListWords& words, const char* name, const char* find,
                              const Formatter& formatter) {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(pageTitle(title, this));
    m_list = new StoneList(words, formatter, this);
    m_list->find().setObjectName(QLatin1String(find));
    m_list->rows().setObjectName(QLatin1String(name));
    column->addWidget(m_list, 1);
    auto* actions = new FlowGrid(3);
    column->addLayout(actions);
    m_columns = new FoldingColumns(this);
    m_columns->addColumn(side, title, kListWidth, false);
    sides()->addWidget(m_columns, 1);
    for (const auto signal : {&QAbstractItemView::activated, &QAbstractItemView::clicked})
        connect(&m_list->rows(), signal, this, [this] {
            if (m_columns->isFolded()) m_columns->showColumn(1);
        });
    connect(m_list, &StoneList::searched, this, &ListPage::search);
    connect(m_list, &StoneList::chosen, this, [this](const base::Id& thing) { openAnother(thing); });
    return actions;
}

void ListPage::addCard(QWidget* card) { m_columns->addColumn(card, {}, 0, true); }

void ListPage::fill(const base::Id& kept) { m_list->setRows(rows(m_list->find().text().trimmed(), kept), openOne()); }

/// While folded the card is found under the name of what is on it.
void ListPage::showCard() {
    load();
    const auto shown = rows({}, openOne());
    const auto open = std::ranges::find(shown, openOne(), &StoneListRow::id);
    m_columns->setWord(1, open == shown.end() ? tr("Nothing yet") : open->name);
}

void ListPage::refresh() {
    fill(openOne());
    showCard();
}

/// A card open for something no longer listed would be edited by mistake.
void ListPage::search() {
    fill({});
    if (!m_list->holds(openOne())) openAnother(m_list->first());
}

void ListPage::focusFind() {
    m_columns->reveal(*m_list);
    m_list->find().setFocus(Qt::ShortcutFocusReason);
}

} // namespace sp::desk

#include "moc_list_page.cpp"
