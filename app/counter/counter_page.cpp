// SPDX-License-Identifier: MIT
#include "app/counter/counter_page.h"

#include "app/artwork/design_pictures.h"
#include "app/counter/line_panel.h"
#include "app/counter/order_panel.h"
#include "app/counter/slip_panel.h"
#include "app/desk/card.h"
#include "app/desk/folding_columns.h"
#include "app/paper/preview_dialog.h"
#include "app/paper/sheet_words_of.h"
#include "core/catalogue/fields/tables.h"

#include <QApplication>
#include <QHideEvent>
#include <QVBoxLayout>

namespace sp::counter {

CounterPage::CounterPage(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_pictures(new artwork::DesignPictures(presenter.session(), this)) {
    // Before the panels hear of it and hide what has the focus.
    connect(&m_presenter, &CounterPresenter::lineShown, this, &CounterPage::keepFocus);
    connect(&m_presenter, &CounterPresenter::changed, this, &CounterPage::keepFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(desk::pageMargins());
    column->setSpacing(12);
    m_messages = new desk::MessageBar(this);
    column->addWidget(m_messages);
    m_columns = new desk::FoldingColumns(this);
    column->addWidget(m_columns, 1);
    m_order = new OrderPanel(presenter, m_formatter, *m_pictures, m_columns);
    m_line = new LinePanel(presenter, m_formatter, *m_pictures, m_columns);
    m_slip = new SlipPanel(presenter, m_formatter, *m_pictures, m_columns);
    m_columns->addColumn(m_order, tr("Order"), 272, false);
    m_columns->addColumn(m_line, tr("Line"), 480, true);
    m_columns->addColumn(m_slip, tr("Slip"), 408, false);
    m_slip->setRetreat([this] { focusLine(); });
    connectAll();
    refresh();
}

void CounterPage::connectAll() {
    connect(m_order, &OrderPanel::lineEntered, this, &CounterPage::focusPieces);
    connect(m_line, &LinePanel::designsWanted, this, &CounterPage::focusStart);
    connect(m_line, &LinePanel::removeAsked, &m_presenter, &CounterPresenter::removeLine);
    connect(m_slip, &SlipPanel::issueAsked, this, &CounterPage::issue);
    connect(m_slip, &SlipPanel::printAsked, this, &CounterPage::showSheet);
    connect(m_slip, &SlipPanel::buyingAsked, this, &CounterPage::buyingAsked);
    connect(m_slip, &SlipPanel::mendAsked, this, &CounterPage::mendAsked);
    connect(m_order, &OrderPanel::hoursAsked, this, [this] {
        Q_EMIT mendAsked({{}, &catalogue::fields::fieldOf<&catalogue::BenchWeek::monday>(), {}});
    });
    connect(m_slip, &SlipPanel::repeatAsked, &m_presenter, &CounterPresenter::repeat);
    connect(m_slip, &SlipPanel::reviseAsked, this, &CounterPage::revise);
    connect(&m_presenter, &CounterPresenter::changed, this, &CounterPage::refresh);
    connect(&m_presenter, &CounterPresenter::orderShown, this, &CounterPage::showIssued);
}

void CounterPage::focusPieces() {
    m_columns->showColumn(1);
    m_line->focusPieces();
}

/// Into the line, without a line to where one is added, as far as they are in sight.
void CounterPage::focusLine() {
    if (m_columns->isFolded())
        m_columns->focusShown();
    else if (m_presenter.hasLine())
        m_line->focusPieces();
    else
        m_order->focusDesign();
}

/// Without a line there is nothing left to type in its panel. Qt would take the next input, be it a button.
void CounterPage::keepFocus() {
    const auto* focus = QApplication::focusWidget();
    if (m_presenter.hasLine() || !m_line || !focus || !m_line->isAncestorOf(focus)) return;
    m_order->focusDesign();
}

/// The next who looks at the Counter may be a customer.
void CounterPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (!event->spontaneous()) m_slip->showFront();
}

void CounterPage::refresh() {
    m_columns->setFigure(tr("To pay"), m_slip->toPay());
    if (m_presenter.revised() && m_messages->sentence().isEmpty()) showRevising();
}

void CounterPage::revise() {
    if (const auto why = m_presenter.revise(); !why.isEmpty()) {
        m_messages->tell(desk::Tone::Warn, why);
        return;
    }
    focusLine();
}

/// Stays while that draft is shown: giving it is something else than giving a new quote.
void CounterPage::showRevising() {
    m_messages->tell(desk::Tone::Jewel,
                     tr("This revises quote %1, which is kept as it was given.")
                         .arg(QString::fromStdString(m_presenter.quote().revises->number)),
                     tr("What is different"), [this] {
                         showRevising(); // its button has taken it down
                         Q_EMIT differenceAsked(false);
                     });
    m_messages->setClosable(false);
}

void CounterPage::showIssued() {
    if (m_presenter.revised()) return showRevising();
    m_messages->setClosable(true);
    if (!m_presenter.isIssued()) {
        m_messages->dismiss();
        return;
    }
    auto told =
        tr("Quote %1 was given on %2 and stays as it is.")
            .arg(QString::fromStdString(m_presenter.quote().number), m_formatter.date(m_presenter.order().quotedOn));
    if (const auto otherwise = m_presenter.reckonedOtherwise())
        told += QLatin1Char(' ') +
                tr("Reckoned by today’s rules from the prices of that day it would be %1; what was given is shown.")
                    .arg(m_formatter.money(*otherwise));
    m_messages->tell(desk::Tone::Good, told, tr("New order"), [this] { startNew(); });
}

/// Why there is no sheet yet. What is still being typed for the customer counts as entered.
QString CounterPage::whyNotReady() {
    m_order->finishCustomer();
    if (!m_presenter.priced()) return m_presenter.whyNoPrice();
    if (!m_presenter.typedCustomer().isEmpty()) return m_order->whyNoCustomer();
    return m_presenter.whyNoOtherPrice();
}

void CounterPage::issue() {
    if (m_presenter.isIssued()) return;
    if (const auto why = whyNotReady(); !why.isEmpty()) {
        m_messages->setClosable(true);
        m_messages->tell(desk::Tone::Warn, tr("This quote cannot be given yet: %1").arg(why));
        return;
    }
    if (m_presenter.revised())
        Q_EMIT differenceAsked(true);
    else
        giveNow();
}

void CounterPage::giveNow() {
    if (m_presenter.issue(paper::sheetWords(m_formatter))) showIssued();
}

void CounterPage::showSheet() {
    m_presenter.saveDraft();
    if (const auto why = m_presenter.isIssued() ? QString() : whyNotReady(); !why.isEmpty()) {
        m_messages->setClosable(true);
        m_messages->tell(desk::Tone::Warn, tr("There is no sheet to print yet: %1").arg(why));
        return;
    }
    const auto words = paper::sheetWords(m_formatter);
    auto sheet = m_presenter.isIssued() ? slipOf(m_presenter, words) : m_presenter.draftSheet(words);
    const auto number = QString::fromStdString(m_presenter.quote().number);
    const auto name = number.isEmpty() ? tr("Draft") : tr("Quote %1").arg(number);
    paper::showPreview(paper::documentOf(sheet, m_presenter.prices().shop.paper), m_presenter.prices().shop.paper, name,
                       "preview", this);
}

void CounterPage::addChoice() { m_presenter.addChoice(); }

void CounterPage::turnOver() {
    m_slip->turnOver();
    m_columns->showColumn(2);
}

void CounterPage::startNew() {
    m_presenter.startNew();
    m_columns->showColumn(0);
    focusStart();
}

void CounterPage::focusStart() {
    m_columns->showColumn(0);
    m_order->focusDesign();
}

void CounterPage::setSaveNote(const QString& note, bool trouble) { m_order->setSaveNote(note, trouble); }

} // namespace sp::counter

#include "moc_counter_page.cpp"
