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

void addTotals(QVBoxLayout* column, const std::vector<Total>& totals, QWidget* parent) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(0);
    int at = 0;
    for (const auto& total : totals) {
        grid->addWidget(new desk::TextLabel(total.label, TextSize::Small, Role::Muted, Weight::Plain, parent), 0, at);
        auto* shown = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, parent);
        shown->setObjectName(QLatin1String(total.name));
        shown->setMeaning(total.label);
        shown->setFigure(total.figure);
        shown->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        grid->addWidget(shown, 1, at, Qt::AlignLeft);
        grid->setColumnStretch(at++, 1);
    }
    column->addLayout(grid);
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
