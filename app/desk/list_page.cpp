// SPDX-License-Identifier: MIT
#include "app/desk/list_page.h"

#include "app/desk/card.h"

namespace sp::desk {

QVBoxLayout* ListPage::buildList(const QString& title, const StoneListWords& words, const char* name, const char* find,
                                 const Formatter& formatter) {
    auto* column = new QVBoxLayout;
    column->setSpacing(12);
    column->addWidget(pageTitle(title, this));
    m_list = new StoneList(words, formatter, this);
    m_list->find().setObjectName(QLatin1String(find));
    m_list->rows().setObjectName(QLatin1String(name));
    column->addWidget(m_list, 1);
    sides()->addLayout(column, 2);
    connect(m_list, &StoneList::searched, this, &ListPage::search);
    connect(m_list, &StoneList::chosen, this, [this](const base::Id& thing) { openAnother(thing); });
    return column;
}

void ListPage::fill(const base::Id& kept) { m_list->setRows(rows(m_list->find().text().trimmed(), kept), openOne()); }

void ListPage::refresh() {
    fill(openOne());
    load();
}

/// A card open for something no longer listed would be edited by mistake.
void ListPage::search() {
    fill({});
    if (!m_list->holds(openOne())) openAnother(m_list->first());
}

void ListPage::focusFind() { m_list->find().setFocus(Qt::ShortcutFocusReason); }

} // namespace sp::desk

#include "moc_list_page.cpp"
