// SPDX-License-Identifier: MIT
#include "app/jobs/changes_rows.h"

#include "app/desk/card.h"
#include "app/desk/figures.h"

#include <QGridLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace sp::jobs {

using desk::Role;
using desk::TextSize;
using desk::Weight;

QString signedMoney(units::Money amount, const desk::Formatter& formatter) {
    if (amount.isZero()) return formatter.money(amount);
    return amount.isNegative() ? QStringLiteral("−") + formatter.money(-amount)
                               : QStringLiteral("+") + formatter.money(amount);
}

QGridLayout* rowsGrid(QVBoxLayout* column, const QString& title, const QStringList& heads, QWidget* parent) {
    column->addWidget(desk::sectionTitle(title, parent));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(0, 1);
    for (int i = 0; i < heads.size(); ++i)
        grid->addWidget(new desk::TextLabel(heads.at(i), TextSize::Small, Role::Muted, Weight::Plain, parent), 0, i,
                        i == 0 ? Qt::AlignLeft : Qt::AlignRight);
    grid->addWidget(new desk::Hairline(parent), 1, 0, 1, static_cast<int>(heads.size()));
    column->addLayout(grid);
    return grid;
}

QWidget* scrolling(QWidget* rows, const char* name, QWidget* parent) {
    auto* scroll = new QScrollArea(parent);
    scroll->setObjectName(QLatin1String(name));
    scroll->setAccessibleName(parent->windowTitle());
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(rows);
    rows->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    return scroll;
}

} // namespace sp::jobs
