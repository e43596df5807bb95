// SPDX-License-Identifier: MIT
#include "app/jobs/difference_dialog.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/jobs/changes_rows.h"
#include "app/words/difference_words.h"
#include "app/words/words.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::jobs {

using desk::Role;
using desk::TextSize;
using desk::Weight;
using pricing::LineFate;

DifferenceDialog::DifferenceDialog(const DifferenceShown& shown,
                                   const base::Result<pricing::OrderDifference>& difference,
                                   const desk::Formatter& formatter, QWidget* parent)
    : QDialog(parent)
    , m_formatter(formatter) {
    setObjectName(QStringLiteral("difference"));
    setWindowTitle(shown.is.isEmpty() ? tr("Revision of quote %1").arg(shown.was)
                                      : tr("Quote %1 beside %2").arg(shown.is, shown.was));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(windowTitle(), this));
    if (!difference) {
        auto* why =
            new desk::TextLabel(words::sentence(difference.error()), TextSize::Body, Role::Ink, Weight::Plain, this);
        why->setObjectName(QStringLiteral("differenceSaid"));
        why->setWordWrap(true);
        column->addWidget(why);
        column->addStretch(1);
        resize(desk::withinScreen(*this, {desk::scaled(560), desk::scaled(200)}));
    } else {
        buildTotals(column, *difference);
        buildNotes(column, shown, *difference);
        column->addWidget(scrolling(buildRows(*difference), "differenceRows", this), 1);
        resize(desk::withinScreen(*this, {desk::scaled(720), desk::scaled(560)}));
    }
    buildButtons(column, shown.asksToGive && difference.has_value());
}

void DifferenceDialog::buildTotals(QVBoxLayout* column, const pricing::OrderDifference& difference) {
    addTotals(column,
              {{tr("It was"), m_formatter.money(difference.totalWas), "totalWas"},
               {tr("Revised"), m_formatter.money(difference.totalIs), "totalIs"},
               {tr("Difference"), signedMoney(difference.difference(), m_formatter), "totalDifference"}},
              this);
}

void DifferenceDialog::buildNotes(QVBoxLayout* column, const DifferenceShown& shown,
                                  const pricing::OrderDifference& difference) {
    QStringList said;
    if (difference.isNothing())
        said << tr("Nothing is ordered otherwise, and it comes to the same.");
    else if (shown.today && !shown.today->isZero())
        said << (shown.today->isNegative() ? tr("At today’s prices what was given would come to %1 less.")
                                              : tr("At today’s prices what was given would come to %1 more."))
                    .arg(m_formatter.money(shown.today->isNegative() ? -*shown.today : *shown.today));
    if (shown.asksToGive)
        said << tr("Quote %1 is kept as it was given; what was paid stays with the job, and the customer agrees anew.")
                    .arg(shown.was);
    if (!shown.note.isEmpty()) said << shown.note;
    if (said.isEmpty()) return;
    auto* label = new desk::TextLabel(said.join(QLatin1Char(' ')), TextSize::Small, Role::Muted, Weight::Plain, this);
    label->setObjectName(QStringLiteral("differenceSaid"));
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    column->addWidget(label);
}

QWidget* DifferenceDialog::buildRows(const pricing::OrderDifference& difference) {
    auto* body = new QWidget(this);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 12, 0);
    column->setSpacing(8);
    buildLines(column, difference);
    if (!difference.amounts.empty() || !difference.parts.empty()) buildRest(column, difference);
    column->addStretch(1);
    return body;
}

void DifferenceDialog::putWords(QGridLayout* grid, int row, int column, const QString& words, bool muted) {
    auto* label = new desk::TextLabel(words, muted ? TextSize::Small : TextSize::Body, muted ? Role::Muted : Role::Ink,
                                      Weight::Plain, this);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    grid->addWidget(label, row, column);
}

void DifferenceDialog::putFigure(QGridLayout* grid, int row, int column, const QString& figure,
                                 const QString& meaning) {
    auto* shown = new desk::FigureLabel({}, TextSize::Body, Role::Ink, Weight::Plain, this);
    shown->setMeaning(meaning);
    shown->setFigure(figure);
    grid->addWidget(shown, row, column, Qt::AlignRight | Qt::AlignTop);
}

void DifferenceDialog::buildLines(QVBoxLayout* column, const pricing::OrderDifference& difference) {
    auto* grid = rowsGrid(
        column, tr("By line"),
        {tr("Line"), tr("each, was"), tr("each, is"), tr("amount, was"), tr("amount, is"), tr("difference")}, this);
    int row = 2;
    for (const auto& line : difference.lines) {
        const auto title = words::lineOf(line, m_formatter.count(line.is ? line.is->quantity : line.was->quantity));
        const auto fate = words::fateOf(line);
        auto* what = new QVBoxLayout;
        what->setSpacing(0);
        auto* name = new desk::TextLabel(title, TextSize::Body, line.fate == LineFate::Same ? Role::Muted : Role::Ink,
                                         Weight::Plain, this);
        name->setTextFormat(Qt::PlainText);
        name->setWordWrap(true);
        what->addWidget(name);
        if (!fate.isEmpty()) {
            auto* how = new desk::TextLabel(fate, TextSize::Small, Role::Muted, Weight::Plain, this);
            how->setTextFormat(Qt::PlainText);
            how->setWordWrap(true);
            what->addWidget(how);
        }
        grid->addLayout(what, row, 0);
        const auto& was = line.was;
        const auto& is = line.is;
        putFigure(grid, row, 1, was ? m_formatter.money(was->each) : QString(), tr("each, was"));
        putFigure(grid, row, 2, is ? m_formatter.money(is->each) : QString(), tr("each, is"));
        putFigure(grid, row, 3, was ? m_formatter.money(was->charged) : QString(), tr("amount, was"));
        putFigure(grid, row, 4, is ? m_formatter.money(is->charged) : QString(), tr("amount, is"));
        putFigure(grid, row, 5, signedMoney(line.difference(), m_formatter), title);
        ++row;
    }
}

void DifferenceDialog::buildRest(QVBoxLayout* column, const pricing::OrderDifference& difference) {
    auto* grid = rowsGrid(column, tr("The whole order"), {tr("What"), tr("was"), tr("is"), tr("difference")}, this);
    int row = 2;
    for (const auto& amount : difference.amounts) {
        const auto what = words::sentence(amount.what);
        putWords(grid, row, 0, what);
        putFigure(grid, row, 1, m_formatter.money(amount.was), tr("was"));
        putFigure(grid, row, 2, m_formatter.money(amount.is), tr("is"));
        putFigure(grid, row, 3, signedMoney(amount.difference(), m_formatter), what);
        ++row;
    }
    for (const auto& part : difference.parts) putWords(grid, row++, 0, words::partOf(part), true);
}

void DifferenceDialog::buildButtons(QVBoxLayout* column, bool asksToGive) {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* close = buttons->button(QDialogButtonBox::Close);
    close->setText(asksToGive ? tr("Not yet") : tr("Close"));
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    if (asksToGive) {
        auto* give = buttons->addButton(tr("&Give the revision"), QDialogButtonBox::AcceptRole);
        give->setObjectName(QStringLiteral("giveRevision"));
        desk::makePrimary(*give);
        give->setDefault(true);
        give->setFocus();
        connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    }
    column->addWidget(buttons);
}

} // namespace sp::jobs

#include "moc_difference_dialog.cpp"
