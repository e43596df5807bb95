// SPDX-License-Identifier: MIT
#include "app/desk/rows_panel.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"

#include <QVBoxLayout>

namespace sp::desk {

RowsPanel::RowsPanel(int across, const QString& title, QWidget* parent)
    : QWidget(parent)
    , m_grid(new RowGrid(across, this))
    , m_problem(new ProblemNote(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    if (!title.isEmpty()) column->addWidget(sectionTitle(title, this));
    column->addWidget(m_grid);
    column->addWidget(m_problem);
}

void RowsPanel::setRefusal(const QString& sentence) {
    m_isRefused = !sentence.isEmpty();
    m_problem->setRefusal(sentence);
}

QPushButton* RowsPanel::addButton(const QString& words, const QString& name) {
    auto* add = new QPushButton(words, this);
    add->setObjectName(name);
    makeQuiet(*add);
    static_cast<QVBoxLayout*>(layout())->addWidget(add, 0, Qt::AlignLeft);
    return add;
}

} // namespace sp::desk

#include "moc_rows_panel.cpp"
