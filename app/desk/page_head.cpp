// SPDX-License-Identifier: MIT
#include "app/desk/page_head.h"

#include "app/desk/card.h"

namespace sp::desk {

PageHead addPageHead(QVBoxLayout& column, const QString& title, const char* noteName, QWidget* parent) {
    const PageHead head{new QHBoxLayout, new QVBoxLayout,
                        new TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, parent)};
    head.row->setSpacing(20);
    head.words->setSpacing(4);
    head.words->addWidget(pageTitle(title, parent));
    head.note->setObjectName(QLatin1String(noteName));
    head.words->addWidget(head.note);
    head.words->addStretch(1);
    head.row->addLayout(head.words, 1);
    column.addLayout(head.row);
    return head;
}

} // namespace sp::desk
