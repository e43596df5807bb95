// SPDX-License-Identifier: MIT
#include "app/buying/buying_page.h"

#include "app/buying/kit_panel.h"
#include "app/buying/shopping_list.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/empty_state.h"
#include "app/desk/field_box.h"
#include "app/desk/scroll_page.h"
#include "app/desk/stone_painter.h"
#include "app/paper/preview_dialog.h"
#include "app/session/settings.h"
#include "app/words/words.h"

#include <QDir>

namespace sp::buying {

using desk::Role;
using desk::TextSize;
using supply::Strategy;

BuyingPage::BuyingPage(session::BookSession& session, BuyingPresenter::OrderReader order,
                       const desk::Formatter& formatter, desk::Prompter& prompter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(session, std::move(order))
    , m_formatter(formatter)
    , m_prompter(prompter) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new desk::ScrollPage(desk::pageMargins(), this);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    outer->addWidget(scroll);
    m_content = scroll;
    auto* empty = new desk::EmptyState(
        desk::Icon::Buying, tr("Here stands the cheapest way to buy for a design or an order, once there is a design."),
        tr("Go to Designs"), this);
    connect(empty, &desk::EmptyState::acted, this, &BuyingPage::designsAsked);
    m_empty = empty;
    outer->addWidget(m_empty);
    auto* column = scroll->column();
    m_messages = new desk::MessageBar(this);
    column->addWidget(m_messages);
    buildHead(column);
    m_unpriced = new desk::TextLabel({}, TextSize::Body, desk::Role::Warn, desk::Weight::Plain, this);
    m_unpriced->setObjectName(QStringLiteral("unpricedPacks"));
    m_unpriced->setTextFormat(Qt::RichText);
    m_unpriced->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    m_unpriced->setWordWrap(true);
    column->addWidget(m_unpriced);
    connect(m_unpriced, &QLabel::linkActivated, this, [this](const QString& number) {
        const auto answer = m_presenter.answer();
        if (const auto at = number.toULongLong(); answer && at < answer->job.unpriced.size())
            Q_EMIT priceAsked(answer->job.unpriced[at].of);
    });
    buildStrategies(column);
    m_lower = new QBoxLayout(QBoxLayout::LeftToRight);
    m_lower->setSpacing(12);
    auto* curvePanel = new CostCurvePanel(m_presenter, m_formatter, this);
    m_lower->addWidget(new KitPanel(m_presenter, m_formatter, this), 2);
    m_lower->addWidget(curvePanel, 3);
    column->addLayout(m_lower);
    connect(curvePanel, &CostCurvePanel::printAsked, this, &BuyingPage::showCostCurve);
    connectAll();
    loadFields();
    refresh();
}

void BuyingPage::buildHead(QVBoxLayout* column) {
    auto* title = new QHBoxLayout;
    title->setSpacing(8);
    title->addWidget(desk::pageTitle(tr("Buying"), this), 1);
    m_csv = new QPushButton(tr("List as &CSV…"), this);
    m_csv->setObjectName(QStringLiteral("listCsv"));
    m_list = new QPushButton(tr("Shopping &list…"), this);
    m_list->setObjectName(QStringLiteral("shoppingList"));
    m_list->setToolTip(tr("The packs of the cheapest way, supplier by supplier, as a PDF to print"));
    desk::makePrimary(*m_list);
    title->addWidget(m_csv);
    title->addWidget(m_list);
    column->addLayout(title);
    m_head = new QBoxLayout(QBoxLayout::LeftToRight);
    m_head->setSpacing(12);
    m_design = new desk::ChoiceField(m_formatter, this);
    m_design->setObjectName(QStringLiteral("buyDesign"));
    auto* design = new desk::FieldBox(tr("&Design"), m_design, this);
    design->setMinimumWidth(desk::scaled(220));
    m_pieces = new desk::CountField(m_formatter, this);
    m_pieces->setObjectName(QStringLiteral("buyPieces"));
    m_pieces->setRange(units::Count::of(1), units::Count::of(catalogue::kMaxPieces));
    auto* pieces = new desk::FieldBox(tr("&Pieces"), m_pieces, this);
    pieces->setMaximumWidth(desk::scaled(140));
    m_head->addWidget(design, 2, Qt::AlignTop);
    m_head->addWidget(pieces, 1, Qt::AlignTop);
    auto* checks = new QVBoxLayout;
    checks->setSpacing(4);
    m_order = new QCheckBox(tr("The &order at the Counter instead"), this);
    m_order->setObjectName(QStringLiteral("buyOrder"));
    m_shelf = new QCheckBox(tr("Use &up what is on the shelf"), this);
    m_shelf->setObjectName(QStringLiteral("buyShelf"));
    m_cuts = new QCheckBox(tr("This shop cuts its own te&mplates"), this);
    m_cuts->setObjectName(QStringLiteral("buyCuts"));
    m_cuts->setToolTip(tr("Otherwise templates come ready cut with a kit"));
    for (auto* check : {m_order, m_shelf, m_cuts}) checks->addWidget(check);
    m_head->addLayout(checks, 2);
    column->addLayout(m_head);
}

void BuyingPage::buildStrategies(QVBoxLayout* column) {
    m_row = new QBoxLayout(QBoxLayout::LeftToRight);
    m_row->setSpacing(12);
    for (const Strategy strategy : {Strategy::Kits, Strategy::Bulk, Strategy::Mix}) {
        auto* card = new StrategyColumn(strategy, m_formatter, this);
        card->setMinimumHeight(desk::scaled(312));
        m_strategies[static_cast<std::size_t>(strategy)] = card;
        m_row->addWidget(card, 1);
        connect(card, &StrategyColumn::takeInAsked, this, [this, strategy] { takeIn(strategy); });
    }
    column->addLayout(m_row, 1);
}

void BuyingPage::connectAll() {
    connect(&m_presenter, &BuyingPresenter::changed, this, &BuyingPage::refresh);
    connect(&m_presenter.session(), &session::BookSession::changed, this, &BuyingPage::loadFields);
    connect(m_design, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        m_presenter.setDesign(chosen.isValid() ? chosen.value<base::Id>() : base::Id{});
    });
    // While a name is half typed there is nothing to buy for.
    connect(m_design, &desk::TypedField::edited, this, [this] {
        if (!m_design->current().isValid()) m_presenter.setDesign({});
    });
    connect(m_pieces, &desk::TypedField::edited, this, [this] {
        const auto pieces = m_pieces->value();
        m_presenter.setPieces(pieces ? std::optional(pieces->value()) : std::nullopt);
    });
    connect(m_order, &QCheckBox::toggled, this, [this](bool on) {
        m_design->setEnabled(!on);
        m_pieces->setEnabled(!on);
        m_presenter.setForOrder(on);
    });
    connect(m_shelf, &QCheckBox::toggled, &m_presenter, &BuyingPresenter::setUsesShelf);
    connect(m_cuts, &QCheckBox::toggled, &m_presenter, &BuyingPresenter::setCutsTemplates);
    connect(m_list, &QPushButton::clicked, this, &BuyingPage::showList);
    connect(m_csv, &QPushButton::clicked, this, &BuyingPage::saveCsv);
}

void BuyingPage::loadFields() {
    std::vector<desk::Choice> choices;
    for (const auto& design : m_presenter.session().designs()) {
        auto choice = desk::choiceOf(design, m_formatter.size(design.width, design.height));
        for (const auto& stone : design.stones)
            if (const auto* material = m_presenter.session().material(stone.material))
                choice.stones.push_back(desk::stoneColour(material->stone.rgb));
        choices.push_back(std::move(choice));
    }
    m_design->setChoices(std::move(choices));
    if (!m_design->isDirty()) m_design->setCurrent(QVariant::fromValue(m_presenter.design()));
    if (!m_pieces->isDirty() && m_presenter.pieces()) m_pieces->setValue(units::Count::of(*m_presenter.pieces()));
    const QSignalBlocker blocks[] = {QSignalBlocker(m_order), QSignalBlocker(m_shelf), QSignalBlocker(m_cuts)};
    m_order->setChecked(m_presenter.isForOrder());
    m_design->setEnabled(!m_presenter.isForOrder());
    m_pieces->setEnabled(!m_presenter.isForOrder());
    m_shelf->setChecked(m_presenter.usesShelf());
    m_cuts->setChecked(m_presenter.cutsTemplates());
}

void BuyingPage::refresh() {
    const auto* answer = m_presenter.answer().get();
    const bool isEmpty = m_presenter.session().designs().empty() && !m_presenter.isForOrder();
    m_content->setVisible(!isEmpty);
    m_empty->setVisible(isEmpty);
    const auto remark = m_presenter.isWorking() ? tr("Working…") : m_presenter.whyNot();
    for (auto* strategy : m_strategies) strategy->show(answer, remark);
    QStringList packs;
    for (std::size_t i = 0; answer && i < answer->job.unpriced.size(); ++i) {
        const auto& pack = answer->job.unpriced[i];
        packs << QStringLiteral("<a href=\"%1\">%2</a>")
                     .arg(QString::number(i),
                          tr("%1, %2", "a pack, and of what")
                              .arg(QString::fromStdString(pack.name), QString::fromStdString(pack.material))
                              .toHtmlEscaped());
    }
    m_unpriced->setText(tr("Left out, because no price is given: %1").arg(packs.join(QStringLiteral(" · "))));
    m_unpriced->setVisible(!packs.isEmpty());
    const bool hasPlan = answer && answer->plans.of(Strategy::Mix).plan.has_value();
    m_list->setEnabled(hasPlan);
    m_csv->setEnabled(hasPlan);
}

void BuyingPage::showDesign(const base::Id& design, std::int64_t pieces) {
    m_presenter.show(design, pieces);
    loadFields();
}

void BuyingPage::showOrder() {
    m_presenter.setForOrder(true);
    loadFields();
}

void BuyingPage::focusStart() {
    (m_design->isEnabled() ? static_cast<QWidget*>(m_design) : m_order)->setFocus(Qt::OtherFocusReason);
}

void BuyingPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_presenter.ask(); // the order at the Counter may be another one
}

void BuyingPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isNarrow = width() < desk::scaled(760);
    for (auto* row : {m_row, m_lower}) row->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void BuyingPage::tellSaved(const base::Done& done, const QString& path) {
    if (done)
        m_messages->tell(desk::Tone::Good, tr("Saved as %1.").arg(QDir::toNativeSeparators(path)));
    else
        m_messages->tell(desk::Tone::Warn, words::sentence(done.error()));
}

void BuyingPage::showPages(paper::Document pages, const QString& name) {
    paper::showPreview(std::move(pages), m_presenter.session().shop().paper, name, "buyingPreview", this);
}

void BuyingPage::takeIn(Strategy strategy) {
    const auto what = m_presenter.title();
    const auto problem = m_presenter.takeIn(strategy);
    if (!problem.isEmpty()) return m_messages->tell(desk::Tone::Warn, problem);
    m_messages->tell(desk::Tone::Good, tr("What was bought for %1 is on the shelf, at what it cost.").arg(what));
    m_messages->staysUntil(&m_presenter.session(), &session::BookSession::saved);
}

BuyingPaper BuyingPage::aboutPaper() {
    return {m_presenter.session().shop(), m_formatter, m_presenter.title(), m_presenter.session().today()};
}

void BuyingPage::showList() {
    const auto answer = m_presenter.answer();
    if (!answer || !answer->plans.of(Strategy::Mix).plan) return;
    showPages(shoppingPages(*answer, aboutPaper()), tr("Shopping list"));
}

void BuyingPage::showCostCurve() {
    const auto curve = m_presenter.curve();
    if (!curve || curve->points.empty()) return;
    showPages(costCurvePage(curve, m_presenter.horizon(), m_presenter.pieces().value_or(0), aboutPaper()),
              tr("Staircase"));
}

void BuyingPage::saveCsv() {
    const auto answer = m_presenter.answer();
    if (!answer || !answer->plans.of(Strategy::Mix).plan) return;
    const auto path = m_prompter.fileToSave({tr("Save the shopping list"), session::folderOf(session::kPapersIn),
                                             tr("Shopping list"), tr("Tables (*.csv)"), QStringLiteral("csv")});
    if (path) session::noteFolderOf(session::kPapersIn, *path);
    if (path) tellSaved(paper::writeText(shoppingCsv(*answer), *path), *path);
}

} // namespace sp::buying

#include "moc_buying_page.cpp"
