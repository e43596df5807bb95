// SPDX-License-Identifier: MIT
#include "app/desk/tab_row.h"

#include "app/desk/bench_style.h"
#include "app/desk/fonts.h"
#include "app/desk/icons.h"

#include <algorithm>

namespace sp::desk {

namespace {

constexpr int kTabGap = 8;
/// What a button has beside its text.
constexpr int kTabEdges = 32;

} // namespace

TabRow::TabRow(QWidget* parent)
    : QWidget(parent) {
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(kTabGap);
    m_remove = new QPushButton(this);
    m_remove->setIcon(icon(Icon::Remove, Role::Muted));
    makeQuiet(*m_remove);
    m_remove->hide();
    m_row->addWidget(m_remove);
    m_row->addStretch(1);
    connect(m_remove, &QPushButton::clicked, this, [this] { Q_EMIT removeAsked(m_current); });
}

void TabRow::setTabs(const QStringList& names, int current, const QStringList& shorter) {
    const bool hadFocus = std::ranges::any_of(m_tabs, [](const auto* tab) { return tab->hasFocus(); });
    while (m_tabs.size() > static_cast<std::size_t>(names.size())) {
        m_tabs.back()->hide();
        m_tabs.back()->deleteLater();
        m_tabs.pop_back();
    }
    while (m_tabs.size() < static_cast<std::size_t>(names.size())) {
        auto* tab = new QPushButton(this);
        const int at = static_cast<int>(m_tabs.size());
        tab->setObjectName(QStringLiteral("%1Tab%2").arg(objectName()).arg(at));
        tab->setCheckable(true);
        tab->setAutoExclusive(true);
        makeQuiet(*tab);
        connect(tab, &QPushButton::clicked, this, [this, at] { Q_EMIT chosen(at); });
        m_row->insertWidget(at, tab);
        m_tabs.push_back(tab);
    }
    m_names = names;
    m_shorter = shorter;
    m_current = current;
    for (std::size_t i = 0; i < m_tabs.size(); ++i) {
        m_tabs[i]->setAccessibleName(names[static_cast<int>(i)]);
        m_tabs[i]->setToolTip(names[static_cast<int>(i)]);
    }
    if (current >= 0 && current < names.size()) {
        auto* tab = m_tabs[static_cast<std::size_t>(current)];
        tab->setChecked(true);
        if (hadFocus) tab->setFocus(Qt::OtherFocusReason);
    }
    cutNames();
}

void TabRow::setRemoval(const QString& words) {
    m_remove->setObjectName(objectName() + QStringLiteral("Remove"));
    m_remove->setVisible(!words.isEmpty());
    m_remove->setAccessibleName(words);
    m_remove->setToolTip(words);
}

void TabRow::addAtEnd(QWidget* widget) { m_row->addWidget(widget); }

void TabRow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    cutNames();
}

/// All get the same room, as far as the row goes.
void TabRow::cutNames() {
    if (m_tabs.empty()) return;
    int room = width();
    for (int i = 0; i < m_row->count(); ++i) {
        const auto* other = m_row->itemAt(i)->widget();
        if (!other || other->isHidden()) continue;
        room -= kTabGap;
        if (std::ranges::find(m_tabs, other) == m_tabs.end()) room -= other->sizeHint().width();
    }
    const int each = std::max(scaled(40), room / static_cast<int>(m_tabs.size()) - scaled(kTabEdges));
    const auto fits = [&](const QString& name) { return fontMetrics().horizontalAdvance(name) <= each; };
    const auto& shown = m_shorter.empty() || std::ranges::all_of(m_names, fits) ? m_names : m_shorter;
    for (std::size_t i = 0; i < m_tabs.size(); ++i)
        m_tabs[i]->setText(m_tabs[i]->fontMetrics().elidedText(shown[static_cast<int>(i)], Qt::ElideRight, each));
}

} // namespace sp::desk

#include "moc_tab_row.cpp"
