// SPDX-License-Identifier: MIT
#include "app/counter/slip_panel.h"

#include "app/counter/slip_back.h"
#include "app/counter/slip_choices.h"
#include "app/counter/slip_lines.h"
#include "app/counter/slip_totals.h"
#include "app/desk/bench_style.h"
#include "app/desk/icons.h"
#include "app/desk/palette.h"
#include "app/desk/scroll_page.h"
#include "app/paper/sheet_words_of.h"
#include "app/session/settings.h"
#include "app/words/quote_sheet.h"
#include "app/words/sheet_words.h"
#include "app/words/words.h"

#include <QAccessible>
#include <QApplication>
#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace sp::counter {

namespace {

using desk::Role;

constexpr int kTeeth = 10; ///< width of a tooth of the torn edge, px
constexpr int kShadow = 6;
constexpr int kQuietBeforeSaid = 700; ///< ms
constexpr QMargins kBackMargins(24, 18, 24, 16);

/// A piece of paper with a torn upper edge and a shadow, the only one in the app.
class SlipPaper : public QWidget {
  public:
    using QWidget::QWidget;

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF sheet = QRectF(rect()).adjusted(kShadow, 0, -kShadow, -kShadow);
        QPainterPath path;
        path.moveTo(sheet.bottomLeft());
        path.lineTo(sheet.left(), sheet.top() + kTeeth / 2);
        const int teeth = static_cast<int>(sheet.width()) / kTeeth;
        const double width = sheet.width() / std::max(1, teeth);
        for (int i = 0; i < teeth; ++i) {
            path.lineTo(sheet.left() + (i + 0.5) * width, sheet.top());
            path.lineTo(sheet.left() + (i + 1) * width, sheet.top() + kTeeth / 2);
        }
        path.lineTo(sheet.bottomRight());
        path.closeSubpath();
        painter.setPen(Qt::NoPen);
        auto shade = desk::colour(Role::Ink, desk::Look::Light); // dark in both looks
        for (int i = kShadow; i > 0; --i) {
            shade.setAlphaF(0.03F);
            painter.setBrush(shade);
            painter.drawPath(path.translated(0, i * 0.8));
        }
        painter.setBrush(desk::colour(Role::Paper));
        painter.drawPath(path);
    }
};

} // namespace

quoting::SheetContent slipOf(CounterPresenter& presenter, const words::SheetWords& words) {
    if (presenter.isIssued()) return words::issuedSheet(presenter.quote(), presenter.session().fits(), words);
    const auto offers =
        quoting::offersOf(presenter.order(), presenter.prices(), *presenter.priced(), presenter.session().fits());
    return quoting::contentOf({{},
                               presenter.order(),
                               presenter.prices(),
                               *presenter.priced(),
                               {},
                               presenter.validUntil(),
                               words,
                               offers,
                               presenter.others()});
}

SlipPanel::SlipPanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
                     QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(8);
    auto* paper = new SlipPaper(this);
    auto* inside = new QVBoxLayout(paper);
    inside->setContentsMargins(kShadow, kTeeth / 2, kShadow, kShadow);
    m_sides = new QStackedWidget(paper);
    m_sides->setAutoFillBackground(false);
    inside->addWidget(m_sides);
    auto* front = new QWidget(m_sides);
    auto* frontColumn = new QVBoxLayout(front);
    frontColumn->setContentsMargins(0, 0, 0, 0);
    frontColumn->setSpacing(0);
    m_lines = new SlipLines(linePictures(presenter, pictures), front);
    connect(&pictures, &artwork::DesignPictures::changed, m_lines, &SlipLines::layAnew);
    m_lines->setObjectName(QStringLiteral("slipLines"));
    m_lines->setMinimumHeight(desk::scaled(150));
    m_choices = new SlipChoices(front);
    m_totals = new SlipTotals(front);
    frontColumn->addWidget(m_lines, 1);
    frontColumn->addWidget(m_choices);
    connect(m_choices, &SlipChoices::chosen, &m_presenter, &CounterPresenter::lookAt);
    frontColumn->addWidget(m_totals);
    connect(m_totals, &SlipTotals::missingPriceFollowed, this, [this] {
        if (const auto missing = m_presenter.missingPrice()) Q_EMIT mendAsked(*missing);
    });
    m_sides->addWidget(front);
    m_back = new SlipBack(presenter, formatter, m_sides);
    auto* backFrame = new desk::ScrollPage(kBackMargins, m_sides); // in a low window it scrolls; the buttons stay
    backFrame->column()->addWidget(m_back, 1);
    m_sides->addWidget(backFrame);
    column->addWidget(paper, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(kShadow, 0, kShadow, 0);
    buttons->setSpacing(8);
    m_issue = new QPushButton(this);
    m_issue->setObjectName(QStringLiteral("give"));
    desk::makePrimary(*m_issue);
    m_revise = new QPushButton(tr("R&evise this quote"), this);
    m_revise->setObjectName(QStringLiteral("revise"));
    desk::makeQuiet(*m_revise);
    m_print = new QPushButton(tr("P&rint"), this);
    m_print->setObjectName(QStringLiteral("print"));
    m_turn = new QPushButton(tr("Turn o&ver"), this);
    m_turn->setObjectName(QStringLiteral("turnOver"));
    m_turn->setToolTip(tr("Shows the owner’s side, or the customer’s again (F9)"));
    buttons->addWidget(m_issue, 2);
    buttons->addWidget(m_print, 1);
    buttons->addWidget(m_turn, 1);
    column->addWidget(m_revise, 0, Qt::AlignRight);
    column->addLayout(buttons);
    connect(m_issue, &QPushButton::clicked, this, [this] {
        if (m_presenter.isIssued())
            Q_EMIT repeatAsked();
        else
            Q_EMIT issueAsked();
    });
    connect(m_revise, &QPushButton::clicked, this, &SlipPanel::reviseAsked);
    connect(m_back, &SlipBack::buyingAsked, this, &SlipPanel::buyingAsked);
    connect(m_back, &SlipBack::mendAsked, this, &SlipPanel::mendAsked);
    connect(m_print, &QPushButton::clicked, this, &SlipPanel::printAsked);
    connect(m_turn, &QPushButton::clicked, this, &SlipPanel::turnOver);
    connect(&m_presenter, &CounterPresenter::orderShown, this, &SlipPanel::followQuote);
    connect(&m_presenter, &CounterPresenter::changed, this, &SlipPanel::refresh);
    connect(&m_idle, &IdleWatch::idle, this, &SlipPanel::showFront);
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(kQuietBeforeSaid);
    connect(&m_quiet, &QTimer::timeout, this, &SlipPanel::announce);
    followQuote();
    refresh();
}

bool SlipPanel::isTurned() const { return m_sides->currentIndex() == 1; }

void SlipPanel::turnOver() { show(isTurned() ? 0 : 1); }

void SlipPanel::showFront() {
    if (isTurned()) show(0);
}

void SlipPanel::show(int side) {
    const auto* focus = QApplication::focusWidget();
    // First: the widget with the focus is about to be hidden, and Qt would look for the next one by itself.
    if (focus && m_sides->isAncestorOf(focus) && m_retreat) m_retreat();
    m_sides->setCurrentIndex(side);
    refresh();
    if (isTurned())
        m_idle.start(session::kept(session::kTurnsBackAfter));
    else
        m_idle.stop();
}

void SlipPanel::followQuote() {
    auto now = std::make_pair(m_presenter.quote().id, m_presenter.quote().number);
    if (now == m_shown) return;
    m_shown = std::move(now);
    showFront();
}

QString SlipPanel::toPay() const { return m_totals->toPay(); }

QString SlipPanel::spoken() const {
    if (!m_presenter.priced() && !m_presenter.isIssued()) return m_presenter.whyNoPrice();
    const auto* line = m_presenter.pricedLine();
    return line ? tr("%1 each, to pay %2").arg(m_formatter.money(line->each), toPay()) : tr("To pay %1").arg(toPay());
}

void SlipPanel::announce() {
    const auto sentence = spoken();
    if (sentence == accessibleName()) return;
    setAccessibleName(sentence);
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void SlipPanel::refresh() {
    m_quiet.start();
    refreshButtons();
    if (!m_presenter.priced() && !m_presenter.isIssued()) {
        m_content = {};
        m_lines->setContent(nullptr, -1);
        m_choices->setNone();
        m_totals->setNoPrice(m_presenter.whyNoPrice(), m_presenter.missingPrice().has_value());
        return;
    }
    m_content = slipOf(m_presenter, paper::sheetWords(m_formatter));
    quoting::SheetLadder ladder;
    // Two rows of choices take the room of the ladder.
    if (m_presenter.ladder().size() > 1 && m_presenter.hasLine() && m_presenter.choices() <= 2) {
        ladder.title =
            tr("More or fewer of %1, each").arg(QString::fromStdString(m_presenter.line().title)).toStdString();
        for (const auto& step : m_presenter.ladder())
            ladder.steps.push_back({step.quantity, m_formatter.count(step.quantity).toStdString(),
                                    m_formatter.money(step.each).toStdString(), step.isOrdered});
    }
    m_lines->setContent(&m_content, m_presenter.current());
    m_choices->setContent(m_content);
    m_totals->setContent(m_content, ladder);
}

void SlipPanel::refreshButtons() {
    const bool issued = m_presenter.isIssued();
    const auto why = m_presenter.priced() ? m_presenter.whyNoOtherPrice() : m_presenter.whyNoPrice();
    const bool priced = m_presenter.priced() && why.isEmpty();
    m_issue->setText(issued                  ? tr("Order a&gain")
                     : m_presenter.revised() ? tr("&Give the revision")
                                             : tr("&Give this quote"));
    const bool readOnly = m_presenter.session().isReadOnly();
    m_revise->setVisible(issued);
    m_revise->setEnabled(!readOnly);
    m_revise->setToolTip(readOnly ? words::sentence(*m_presenter.session().book().readOnlyBecause())
                                  : tr("Changes what was ordered, at today’s prices; this quote is kept as it is"));
    m_issue->setEnabled(!readOnly && (issued || priced));
    m_print->setEnabled(priced || issued);
    m_print->setToolTip(priced ? tr("Shows the quote sheet to print or save (Ctrl+P)") : why);
    m_issue->setToolTip(readOnly ? words::sentence(*m_presenter.session().book().readOnlyBecause())
                        : issued ? tr("Starts a new order with what this quote holds, at today’s prices")
                        : priced ? tr("Numbers the quote and keeps it as it is (Ctrl+Enter)")
                                 : why);
}

} // namespace sp::counter

#include "moc_slip_panel.cpp"
