// SPDX-License-Identifier: MIT
#include "app/counter/slip_totals.h"

#include "app/desk/card.h"
#include "app/paper/care_notes.h"
#include "app/words/sheet_words.h"
#include "app/words/shown.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace sp::counter {

namespace {

using desk::Role;
using desk::TextSize;
using desk::Weight;
using words::shown;

constexpr int kMaxSteps = 5;

/// A quantity of the ladder with its price; the one ordered has a tinted background.
class StepCell : public QWidget {
  public:
    using QWidget::QWidget;
    bool isOrdered = false;

  protected:
    void paintEvent(QPaintEvent*) override {
        if (!isOrdered) return;
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(desk::colour(Role::JewelSoft));
        painter.drawRoundedRect(rect(), 6, 6);
    }
};

} // namespace

SlipTotals::SlipTotals(QWidget* parent)
    : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 8, 24, 16);
    column->setSpacing(6);
    column->addWidget(new desk::Hairline(this));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(0, 1);
    m_together = addRow(grid, 0, QStringLiteral("together"));
    m_tax = addRow(grid, 1, QStringLiteral("tax"));
    m_moreGrid = new QGridLayout;
    m_moreGrid->setVerticalSpacing(4);
    m_moreGrid->setColumnStretch(0, 1);
    grid->addLayout(m_moreGrid, 2, 0, 1, 2);
    m_taxNote = addNote(grid, 3);
    const auto payWord = shown(words::SheetWords().labels().toPay);
    m_payWord = new desk::TextLabel(payWord, TextSize::Body, Role::Ink, Weight::Strong, this);
    auto* pay = new QHBoxLayout; // a layout of its own, or the large figure would narrow the labels above it
    pay->addWidget(m_payWord, 1);
    m_toPay = new desk::FigureLabel({}, TextSize::Total, Role::Ink, Weight::Strong, this);
    m_toPay->setObjectName(QStringLiteral("toPay"));
    m_toPay->setMeaning(payWord);
    pay->addWidget(m_toPay);
    grid->addLayout(pay, 4, 0, 1, 2);
    m_included = addNote(grid, 5);
    m_deposit = addRow(grid, 6, QStringLiteral("deposit"));
    m_balance = addRow(grid, 7, QStringLiteral("balance"));
    column->addLayout(grid);
    m_why = new desk::TextLabel({}, TextSize::Body, Role::Warn, Weight::Plain, this);
    m_why->setObjectName(QStringLiteral("whyNoPrice"));
    m_why->setWordWrap(true);
    m_why->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    connect(m_why, &QLabel::linkActivated, this, &SlipTotals::missingPriceFollowed);
    column->addWidget(m_why);
    column->addWidget(new desk::Hairline(this));
    m_ladderTitle = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_ladderTitle->setWordWrap(true);
    column->addWidget(m_ladderTitle);
    m_ladder = new QWidget(this);
    auto* steps = new QHBoxLayout(m_ladder);
    steps->setContentsMargins(0, 0, 0, 0);
    steps->setSpacing(4);
    for (int i = 0; i < kMaxSteps; ++i) {
        auto* cell = new StepCell(m_ladder);
        auto* inside = new QVBoxLayout(cell);
        inside->setContentsMargins(4, 4, 4, 4);
        inside->setSpacing(0);
        auto* pieces = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, cell);
        auto* each = new desk::TextLabel({}, TextSize::Body, Role::Ink, Weight::Strong, cell);
        for (auto* label : {pieces, each}) {
            label->setAlignment(Qt::AlignHCenter);
            inside->addWidget(label);
        }
        steps->addWidget(cell, 1);
        m_steps.push_back({cell, pieces, each});
    }
    column->addWidget(m_ladder);
    m_care = new desk::TextLabel(paper::slipCaution(), TextSize::Small, Role::Muted, Weight::Plain, this);
    m_care->setWordWrap(true);
    column->addWidget(m_care);
}

SlipTotals::Row SlipTotals::addRow(QGridLayout* grid, int row, const QString& objectName) {
    Row made{new desk::TextLabel({}, TextSize::Body, Role::Muted, Weight::Plain, this),
             new desk::FigureLabel({}, TextSize::Body, Role::Ink, Weight::Plain, this)};
    made.amount->setObjectName(objectName);
    made.label->setWordWrap(true); // a certificate's name and place can be long, and the slip's width is fixed
    grid->addWidget(made.label, row, 0);
    grid->addWidget(made.amount, row, 1);
    return made;
}

desk::TextLabel* SlipTotals::addNote(QGridLayout* grid, int row) {
    auto* note = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    note->setWordWrap(true);
    note->hide();
    grid->addWidget(note, row, 0, 1, 2);
    return note;
}

void SlipTotals::fill(const Row& row, const QString& label, const QString& amount) {
    row.label->setVisible(!amount.isEmpty());
    row.amount->setVisible(!amount.isEmpty());
    row.label->setText(label);
    row.amount->setMeaning(label);
    row.amount->setFigure(amount);
}

void SlipTotals::fillMoreTaxes(const std::vector<quoting::SheetTax>& taxes) {
    while (m_moreTaxes.size() < taxes.size()) {
        const auto row = static_cast<int>(m_moreTaxes.size());
        m_moreTaxes.push_back(addRow(m_moreGrid, row, QStringLiteral("tax%1").arg(row + 2)));
    }
    for (std::size_t i = 0; i < m_moreTaxes.size(); ++i) {
        const bool there = i < taxes.size();
        fill(m_moreTaxes[i], there ? shown(taxes[i].label) : QString(),
             there ? shown(taxes[i].amount.text) : QString());
    }
}

void SlipTotals::setContent(const quoting::SheetContent& content, const quoting::SheetLadder& ladder) {
    m_why->hide();
    fill(m_together, shown(content.labels.together), content.showsTogether ? shown(content.together.text) : QString());
    fill(m_tax, shown(quoting::taxLabel(content, content)), content.tax ? shown(content.tax->amount.text) : QString());
    fillMoreTaxes(content.moreTaxes);
    m_taxNote->setText(shown(quoting::taxNote(content, content)));
    m_taxNote->setVisible(!m_taxNote->text().isEmpty());
    m_included->setText(shown(content.taxIncluded));
    m_included->setVisible(!m_included->text().isEmpty());
    m_toPay->setFigure(shown(content.toPay.text));
    fill(m_deposit, shown(content.labels.deposit), content.deposit ? shown(content.deposit->text) : QString());
    fill(m_balance, shown(content.labels.balance), content.deposit ? shown(content.balance.text) : QString());
    fillLadder(ladder);
}

void SlipTotals::fillLadder(const quoting::SheetLadder& ladder) {
    m_ladderTitle->setVisible(!ladder.steps.empty());
    m_ladder->setVisible(!ladder.steps.empty());
    m_ladderTitle->setText(shown(ladder.title));
    QStringList spoken;
    for (std::size_t i = 0; i < m_steps.size(); ++i) {
        const bool there = i < ladder.steps.size();
        auto* cell = static_cast<StepCell*>(m_steps[i].cell);
        cell->setVisible(there);
        if (!there) continue;
        const auto& step = ladder.steps[i];
        cell->isOrdered = step.isOrdered;
        cell->update();
        m_steps[i].pieces->setText(shown(step.pieces));
        m_steps[i].each->setText(shown(step.each));
        spoken << tr("%1 at %2 each").arg(shown(step.pieces), shown(step.each));
    }
    m_ladder->setAccessibleName(spoken.join(QStringLiteral(", ")));
}

void SlipTotals::setNoPrice(const QString& why, bool isLink) {
    for (const auto& row : {m_together, m_tax, m_deposit, m_balance}) fill(row, {}, {});
    fillMoreTaxes({});
    m_toPay->setFigure(QStringLiteral("—"));
    m_taxNote->hide();
    m_included->hide();
    m_why->setTextFormat(isLink ? Qt::RichText : Qt::PlainText);
    m_why->setText(isLink ? QStringLiteral("<a href=\"0\">%1</a>").arg(why.toHtmlEscaped()) : why);
    m_why->setVisible(!why.isEmpty());
    fillLadder({});
}

} // namespace sp::counter

#include "moc_slip_totals.cpp"
