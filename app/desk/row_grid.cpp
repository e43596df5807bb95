// SPDX-License-Identifier: MIT
#include "app/desk/row_grid.h"

#include "app/desk/figures.h"
#include "app/desk/icons.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace sp::desk {

namespace {

constexpr int kDown = 4; ///< pixels between rows

} // namespace

RowGrid::RowGrid(int across, QWidget* parent)
    : QWidget(parent)
    , m_across(across) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    restart();
}

void RowGrid::restart() {
    if (m_body) {
        layout()->removeWidget(m_body);
        // Hidden, a field loses the focus and is done, for rows that are no longer there.
        for (auto* field : m_body->findChildren<QLineEdit*>()) field->blockSignals(true);
        m_body->hide();
        m_body->deleteLater(); // a click on one of its own buttons may have led here
    }
    m_body = new QWidget(this);
    layout()->addWidget(m_body);
    m_cells = new QGridLayout(m_body);
    m_cells->setContentsMargins(0, 0, 0, 0);
    m_cells->setHorizontalSpacing(m_across);
    m_cells->setVerticalSpacing(kDown);
}

void RowGrid::finish() { m_body->show(); }

void RowGrid::addHeads(const QStringList& heads) {
    for (int i = 0; i < heads.size(); ++i)
        m_cells->addWidget(new TextLabel(heads[i], TextSize::Small, Role::Muted, Weight::Plain, m_body), 0, i);
}

QToolButton* RowGrid::addRemove(int row, int column, const QString& words) {
    auto* remove = new QToolButton(m_body);
    remove->setIcon(icon(Icon::Remove, Role::Muted));
    remove->setAutoRaise(true);
    remove->setFocusPolicy(Qt::StrongFocus); // what is being typed in a field is done before a row goes
    remove->setAccessibleName(words);
    remove->setToolTip(words);
    m_cells->addWidget(remove, row, column);
    return remove;
}

} // namespace sp::desk

#include "moc_row_grid.cpp"
