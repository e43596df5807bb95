// SPDX-License-Identifier: MIT
#include "app/jobs/changes_dialog.h"

#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/jobs/changes_rows.h"
#include "app/words/words.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace sp::jobs {

using desk::Role;
using desk::TextSize;
using desk::Weight;

ChangesDialog::ChangesDialog(const std::string& number, With with,
                             const base::Result<pricing::PriceComparison>& compared, const desk::Formatter& formatter,
                             QWidget* parent)
    : QDialog(parent)
    , m_formatter(formatter)
    , m_with(with) {
    setObjectName(QStringLiteral("changes"));
    setWindowTitle((with == With::Today ? tr("What has changed since quote %1") : tr("Quote %1, ordered again"))
                       .arg(QString::fromStdString(number)));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    column->addWidget(desk::pageTitle(windowTitle(), this));
    if (!compared) {
        auto* why = new desk::TextLabel(
            tr("It cannot be priced with today’s prices. %1").arg(words::sentence(compared.error())), TextSize::Body,
            Role::Ink, Weight::Plain, this);
        why->setObjectName(QStringLiteral("changesSaid"));
        why->setWordWrap(true);
        column->addWidget(why);
        column->addStretch(1);
        resize(desk::withinScreen(*this, {desk::scaled(560), desk::scaled(200)}));
    } else {
        buildTotals(column, *compared);
        column->addWidget(scrolling(buildTables(*compared), "changesRows", this), 1);
        resize(desk::withinScreen(*this, {desk::scaled(640), desk::scaled(560)}));
    }
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->button(QDialogButtonBox::Close)->setText(tr("Close"));
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

void ChangesDialog::buildTotals(QVBoxLayout* column, const pricing::PriceComparison& compared) {
    addTotals(column,
              {{tr("As given"), m_formatter.money(compared.totalThen), "totalThen"},
               {tr("Today"), m_formatter.money(compared.totalNow), "totalNow"},
               {tr("Difference"), signedMoney(compared.difference(), m_formatter), "totalDifference"}},
              this);
    auto* said = new desk::TextLabel(compared.causes.empty() ? tr("Nothing that this order uses has changed.")
                                     : m_with == With::Today
                                         ? tr("The quote stays as it was given; this only says what it would come to.")
                                         : tr("At today’s prices. What was for that once does not come along."),
                                     TextSize::Small, Role::Muted, Weight::Plain, this);
    said->setObjectName(QStringLiteral("changesSaid"));
    said->setWordWrap(true);
    column->addWidget(said);
}

QWidget* ChangesDialog::buildTables(const pricing::PriceComparison& compared) {
    auto* body = new QWidget(this);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 12, 0);
    column->setSpacing(8);
    if (!compared.causes.empty()) buildCauses(column, compared);
    buildLines(column, compared);
    column->addStretch(1);
    return body;
}

void ChangesDialog::putWords(QGridLayout* grid, int row, int column, const QString& words, bool muted) {
    auto* label = new desk::TextLabel(words, muted ? TextSize::Small : TextSize::Body, muted ? Role::Muted : Role::Ink,
                                      Weight::Plain, this);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    grid->addWidget(label, row, column);
}

void ChangesDialog::putFigure(QGridLayout* grid, int row, int column, const QString& figure, const QString& meaning) {
    auto* shown = new desk::FigureLabel({}, TextSize::Body, Role::Ink, Weight::Plain, this);
    shown->setMeaning(meaning);
    shown->setFigure(figure);
    grid->addWidget(shown, row, column, Qt::AlignRight | Qt::AlignVCenter);
}

void ChangesDialog::buildCauses(QVBoxLayout* column, const pricing::PriceComparison& compared) {
    auto* grid = rowsGrid(column, tr("Why"), {tr("What"), tr("was"), tr("is"), tr("on the total")}, this);
    int row = 2;
    for (const auto& cause : compared.causes) {
        const auto what = words::sentence(cause.what);
        putWords(grid, row, 0, what, false);
        const bool changedOnly = cause.was == base::Value() && cause.now == base::Value();
        putFigure(grid, row, 1, changedOnly ? QString() : words::sentence(cause.was), tr("was"));
        putFigure(grid, row, 2, changedOnly ? tr("changed") : words::sentence(cause.now), tr("is"));
        putFigure(grid, row, 3, signedMoney(cause.effect, m_formatter), what);
        ++row;
    }
}

void ChangesDialog::buildLines(QVBoxLayout* column, const pricing::PriceComparison& compared) {
    auto* grid =
        rowsGrid(column, tr("By line"), {tr("Line"), tr("each, given"), tr("each, today"), tr("on the line")}, this);
    int row = 2;
    for (const auto& line : compared.lines) {
        const auto title = tr("%1 × %2").arg(m_formatter.count(line.quantity), QString::fromStdString(line.title));
        putWords(grid, row, 0, title, false);
        putFigure(grid, row, 1, m_formatter.money(line.eachThen), tr("each, given"));
        putFigure(grid, row, 2, m_formatter.money(line.eachNow), tr("each, today"));
        putFigure(grid, row, 3, signedMoney(line.difference(), m_formatter), title);
        ++row;
    }
}

} // namespace sp::jobs

#include "moc_changes_dialog.cpp"
