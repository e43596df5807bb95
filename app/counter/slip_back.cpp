// SPDX-License-Identifier: MIT
#include "app/counter/slip_back.h"

#include "app/buying/kit_choice_words.h"
#include "app/buying/plan_rows.h"
#include "app/counter/typed_entries.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/field_binding.h"
#include "app/plans/plan_dialog.h"
#include "app/session/settings.h"
#include "app/words/owner_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/costing/per_piece.h"
#include "core/quoting/owner_figures.h"

#include <QGridLayout>
#include <QVBoxLayout>

namespace sp::counter {

using desk::Role;
using desk::TextSize;
using desk::Weight;

SlipBack::SlipBack(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    build();
    connect(&m_presenter, &CounterPresenter::changed, this, &SlipBack::refresh);
    connect(&m_presenter, &CounterPresenter::lineShown, this, &SlipBack::loadAsk);
    loadAsk();
    refresh();
}

QLayout* SlipBack::buildHead() {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(0);
    const auto figure = [&](int column, const QString& label, const QString& name) {
        grid->addWidget(new desk::TextLabel(label, TextSize::Small, Role::Muted, Weight::Plain, this), 0, column);
        auto* shown = new desk::FigureLabel({}, TextSize::Title, Role::Ink, Weight::Strong, this);
        shown->setObjectName(name);
        shown->setMeaning(label);
        shown->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        grid->addWidget(shown, 1, column, Qt::AlignLeft);
        grid->setColumnStretch(column, 1);
        return shown;
    };
    m_cost = figure(0, tr("Cost each"), QStringLiteral("costEach"));
    m_markUp = figure(1, tr("Mark-up"), QStringLiteral("markUp"));
    m_margin = figure(2, tr("Margin"), QStringLiteral("margin"));
    return grid;
}

void SlipBack::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::pageTitle(tr("Owner’s side"), this), 1);
    m_what = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    head->addWidget(m_what);
    column->addLayout(head);
    column->addLayout(buildHead());
    auto* hour = new QHBoxLayout;
    hour->addWidget(new desk::TextLabel(tr("Earned per bench hour"), TextSize::Body, Role::Muted, Weight::Plain, this),
                    1);
    m_perHour = new desk::FigureLabel({}, TextSize::Title, Role::Good, Weight::Strong, this);
    m_perHour->setObjectName(QStringLiteral("perHour"));
    m_perHour->setMeaning(tr("Earned per bench hour"));
    hour->addWidget(m_perHour);
    column->addLayout(hour);
    m_shares = new desk::ShareBar(this);
    m_shares->setLabelled(false);
    column->addWidget(m_shares);
    m_model = new CostTreeModel(this);
    m_tree = new desk::RuleTree(this);
    m_tree->setObjectName(QStringLiteral("costTree"));
    m_tree->setAccessibleName(tr("What one piece costs, part by part"));
    m_tree->setModel(m_model);
    column->addWidget(m_tree, 1);
    for (QWidget* figure : {static_cast<QWidget*>(m_shares), static_cast<QWidget*>(m_tree)}) {
        auto policy = figure->sizePolicy();
        policy.setRetainSizeWhenHidden(true); // keeps the layout steady while there is no price
        figure->setSizePolicy(policy);
    }
    column->addWidget(new desk::Hairline(this));
    auto* ask = new QHBoxLayout;
    ask->setSpacing(12);
    m_ask = new desk::MoneyField(m_formatter, this);
    m_ask->setObjectName(QStringLiteral("askInstead"));
    m_ask->setEmptyAllowed(true);
    desk::standsFor(*m_ask, catalogue::fields::fieldOf<&catalogue::OrderLine::overrideEach>());
    m_askBox = new desk::FieldBox(tr("As&k for instead"), m_ask, this);
    m_askBox->setMaximumWidth(desk::scaled(150));
    ask->addWidget(m_askBox, 0, Qt::AlignTop);
    m_leaves = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_leaves->setObjectName(QStringLiteral("leaves"));
    m_leaves->setWordWrap(true);
    ask->addWidget(m_leaves, 1);
    column->addLayout(ask);
    m_cardFee = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_cardFee->setObjectName(QStringLiteral("cardFeeTaken"));
    m_cardFee->setWordWrap(true);
    column->addWidget(m_cardFee);
    m_ownTax = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_ownTax->setObjectName(QStringLiteral("ownTax"));
    m_ownTax->setWordWrap(true);
    column->addWidget(m_ownTax);
    m_coverage = new desk::TextLabel({}, TextSize::Small, Role::Warn, Weight::Strong, this);
    m_coverage->setObjectName(QStringLiteral("footing"));
    m_coverage->setWordWrap(true);
    m_coverage->setTextFormat(Qt::RichText);
    m_coverage->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    connect(m_coverage, &QLabel::linkActivated, this, [this] {
        if (const auto missing = m_presenter.missingPrice()) Q_EMIT mendAsked(*missing);
    });
    column->addWidget(m_coverage);
    m_leftOutWords = new desk::TextLabel({}, TextSize::Small, Role::Warn, Weight::Plain, this);
    m_leftOutWords->setObjectName(QStringLiteral("leftOut"));
    m_leftOutWords->setTextFormat(Qt::RichText);
    m_leftOutWords->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    m_leftOutWords->setWordWrap(true);
    column->addWidget(m_leftOutWords);
    connect(m_leftOutWords, &QLabel::linkActivated, this, &SlipBack::followLink);
    m_ladder = new desk::TextLabel({}, TextSize::Small, Role::Ink, Weight::Plain, this);
    m_ladder->setWordWrap(true);
    column->addWidget(m_ladder);
    m_moreForLess = new desk::TextLabel({}, TextSize::Small, Role::Ink, Weight::Strong, this);
    m_moreForLess->setObjectName(QStringLiteral("moreForLess"));
    m_moreForLess->setWordWrap(true);
    column->addWidget(m_moreForLess);
    m_order = new desk::TextLabel({}, TextSize::Small, Role::Muted, Weight::Plain, this);
    m_order->setObjectName(QStringLiteral("wholeOrder"));
    m_order->setWordWrap(true);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(12);
    auto* whole = new QVBoxLayout;
    whole->setSpacing(2);
    whole->addWidget(m_order);
    m_orderCoverage = new desk::TextLabel({}, TextSize::Small, Role::Warn, Weight::Strong, this);
    m_orderCoverage->setObjectName(QStringLiteral("orderFooting"));
    m_orderCoverage->setWordWrap(true);
    whole->addWidget(m_orderCoverage);
    foot->addLayout(whole, 1);
    m_plan = new QPushButton(tr("&Sheet plan"), this);
    m_plan->setObjectName(QStringLiteral("orderPlan"));
    m_plan->setToolTip(tr("How everything this order needs cut lies on its sheets"));
    desk::makeQuiet(*m_plan);
    foot->addWidget(m_plan, 0, Qt::AlignBottom);
    column->addLayout(foot);
    connect(m_plan, &QPushButton::clicked, this, &SlipBack::showPlan);
    m_buy = new QPushButton(this);
    m_buy->setObjectName(QStringLiteral("buy"));
    m_buy->setToolTip(tr("The cheapest packs for the whole order; opens Buying"));
    desk::makeQuiet(*m_buy);
    column->addWidget(m_buy, 0, Qt::AlignLeft);
    m_kits = new desk::TextLabel({}, TextSize::Small, Role::Ink, Weight::Plain, this);
    m_kits->setObjectName(QStringLiteral("kitsBesideBulk"));
    m_kits->setWordWrap(true);
    column->addWidget(m_kits);
    connect(m_buy, &QPushButton::clicked, this, &SlipBack::buyingAsked);
    connect(&m_planner, &buying::Planner::kitsCompared, this,
            [this](const std::shared_ptr<const std::vector<supply::KitChoice>>& kits) {
                const auto pieces = m_presenter.line().quantity.value();
                m_kits->setText(buying::kitLines(*kits, pieces, m_formatter).join(QLatin1Char('\n')));
                m_kits->setVisible(!kits->empty());
            });
    connect(&m_planner, &buying::Planner::answered, this, [this](const std::shared_ptr<const buying::Answer>& answer) {
        m_buy->setText(buying::buyLine(*answer, m_formatter));
    });
    connect(&m_planner, &buying::Planner::refused, this, [this] { m_buy->setText(tr("Buy…")); });
    connect(m_ask, &desk::TypedField::edited, this, &SlipBack::askTyped);
    connect(m_ask, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
}

void SlipBack::showPlan() {
    const auto& number = m_presenter.quote().number;
    const auto title = number.empty() ? tr("this order") : tr("quote %1").arg(QString::fromStdString(number));
    plans::PlanQuestion question{title, m_presenter.order().lines, false, m_presenter.session().today()};
    auto* dialog = new plans::PlanDialog(std::move(question), m_presenter.prices(), m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void SlipBack::askTyped() {
    const auto price = m_ask->optionalValue();
    noteEntry(m_presenter, CounterPresenter::Owner::Line, *m_ask);
    if (price) m_presenter.editLine([&](catalogue::OrderLine& line) { line.overrideEach = *price; });
}

void SlipBack::loadAsk() {
    m_ask->setEnabled(m_presenter.hasLine() && m_presenter.canChange());
    if (!m_presenter.hasLine()) return;
    m_ask->setOptionalValue(m_presenter.line().overrideEach);
    restoreUnread(*this, m_presenter, CounterPresenter::Owner::Line);
}

void SlipBack::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void SlipBack::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    refresh();
}

/// The buying line stays empty until the answer for the current order arrives, and while this side is hidden.
void SlipBack::planBuying() {
    m_planner.drop();
    m_buy->setText({});
    m_kits->hide();
    const bool isWanted = isVisible() && m_presenter.pricedLine() != nullptr;
    m_buy->setVisible(m_presenter.pricedLine() != nullptr);
    if (!isWanted) return;
    m_buy->setText(tr("Buy…"));
    const bool cuts = session::kept(session::kCutsTemplates);
    m_planner.ask({buying::suppliesOf(m_presenter.session(), cuts, true), m_presenter.order().lines, 0, askedKits()});
}

/// The kits for the line looked at, as it is ordered. A kit holds what one design takes.
std::optional<buying::KitQuestion> SlipBack::askedKits() {
    const auto& line = m_presenter.line();
    if (line.places.size() != 1) return std::nullopt;
    const auto* known = m_presenter.session().design(line.first().design);
    if (!known || m_presenter.session().kits().empty()) return std::nullopt;
    auto design = *known;
    design.width = line.first().width;
    design.height = line.first().height;
    design.stones = line.first().stones;
    design.templatesOnWall = line.first().templatesOnWall;
    design.usualBase = line.customersGarment ? base::Id{} : line.baseMaterial;
    const auto pieces = line.quantity.value();
    return buying::KitQuestion{std::move(design), std::make_shared<const catalogue::PriceBook>(m_presenter.prices()),
                               pieces, buying::horizonOf(pieces)};
}

void SlipBack::refresh() {
    planBuying();
    // The owner's figures are nowhere while this side is turned away, not even for a screen reader.
    const bool isTurnedAway = !isVisibleTo(window());
    const auto* line = isTurnedAway ? nullptr : m_presenter.pricedLine();
    const bool there = line != nullptr;
    m_shares->setVisible(there);
    m_plan->setVisible(m_presenter.hasLine());
    m_tree->setVisible(there);
    refreshLeftOut();
    if (!there) {
        m_askBox->setRemark({});
        for (auto* figure : {m_cost, m_markUp, m_margin, m_perHour}) figure->setFigure(QStringLiteral("—"));
        m_what->setText({});
        m_shares->setShares({});
        m_model->clear();
        const bool isSaidAbove = m_presenter.isUnread(m_presenter.current(), m_ask->objectName());
        const auto why = isSaidAbove ? QString() : m_presenter.whyNoPrice();
        m_coverage->setText(m_presenter.missingPrice() ? QStringLiteral("<a href=\"0\">%1</a>").arg(why.toHtmlEscaped())
                                                       : why.toHtmlEscaped());
        for (auto* label : {m_leaves, m_cardFee, m_ownTax, m_ladder, m_moreForLess, m_order, m_orderCoverage})
            label->setText({});
        return;
    }
    refreshFigures(*line);
    refreshOrder();
    refreshTree();
}

void SlipBack::refreshFigures(const pricing::PricedLine& line) {
    const auto& ordered = m_presenter.line();
    const auto pieces = ordered.quantity;
    const auto percent = [&](const std::optional<units::Rate>& rate) {
        return rate ? m_formatter.rate(*rate) : QStringLiteral("—");
    };
    m_what->setText(QStringLiteral("%1 × %2").arg(QString::fromStdString(ordered.title), m_formatter.count(pieces)));
    const auto figures = quoting::ownerFigures(line, pieces);
    m_cost->setFigure(m_formatter.money(figures.costEach));
    m_markUp->setFigure(percent(line.earnings.markUp));
    m_margin->setFigure(percent(line.earnings.margin));
    const auto perHour = line.earnings.perBenchHour;
    m_perHour->setFigure(perHour ? m_formatter.money(*perHour) : QStringLiteral("—"));
    m_perHour->setRole(perHour && perHour->isNegative() ? Role::Warn : Role::Good);
    const auto leaves = m_formatter.money(figures.profitEach);
    const auto onTheLine = m_formatter.money(line.earnings.profit);
    const auto calculated = m_formatter.money(line.calculatedEach);
    const auto ladder = m_formatter.rate(line.ladderMarkUp);
    m_leaves->setText(line.adjusted.isZero()
                          ? tr("leaves %1 a piece, %2 on the line; the ladder asks %3 (%4)")
                                .arg(leaves, onTheLine, calculated, ladder)
                          : tr("leaves %1 a piece, %2 on the line, %5 of discount, rush and minimum counted in; the "
                               "ladder asks %3 (%4)")
                                .arg(leaves, onTheLine, calculated, ladder, m_formatter.money(line.adjusted)));
    m_cardFee->setText(
        words::cardFee(m_formatter.money(figures.cardFeeEach), m_formatter.money(line.earnings.cardFee)));
    m_cardFee->setVisible(!line.earnings.cardFee.isZero());
    m_ownTax->setText(words::ownTax(m_formatter.money(line.earnings.ownTax)));
    m_ownTax->setVisible(!line.earnings.ownTax.isZero());
    m_askBox->setRemark(line.typedWithTax ? tr("%1 without tax").arg(m_formatter.money(line.each)) : QString());
    m_coverage->setText(words::lineCoverage(line.earnings.coverage, m_formatter.money(figures.floorEach)));
    m_coverage->setVisible(!m_coverage->text().isEmpty());
    QStringList steps;
    for (const auto& step : m_presenter.ladder())
        steps << tr("%1: %2").arg(m_formatter.count(step.quantity), m_formatter.money(step.each));
    m_ladder->setText(tr("More or fewer, each — %1").arg(steps.join(QStringLiteral(" · "))));
    m_ladder->setVisible(m_presenter.ladder().size() > 1);
    const auto& offer = m_presenter.moreForLess();
    m_moreForLess->setText(offer ? words::moreForLess(m_formatter.count(offer->quantity), m_formatter.count(pieces),
                                                      m_formatter.money(offer->charged),
                                                      m_formatter.money(offer->ordered))
                                 : QString());
    m_moreForLess->setVisible(offer.has_value());
}

/// Of an order with one line the figures above are all there is to warn of.
void SlipBack::refreshOrder() {
    const auto& whole = m_presenter.priced()->earnings;
    const auto margin = whole.margin ? m_formatter.rate(*whole.margin) : QStringLiteral("—");
    m_order->setText(whole.perBenchHour
                         ? tr("Whole order: costs %1, leaves %2, margin %3, %4 a bench hour.")
                               .arg(m_formatter.money(whole.cost), m_formatter.money(whole.profit), margin,
                                    m_formatter.money(*whole.perBenchHour))
                         : tr("Whole order: costs %1, leaves %2, margin %3.")
                               .arg(m_formatter.money(whole.cost), m_formatter.money(whole.profit), margin));
    const bool hasMore = m_presenter.order().lines.size() > 1;
    m_orderCoverage->setText(hasMore ? words::orderCoverage(whole.coverage, m_formatter.money(whole.floor))
                                     : QString());
    m_orderCoverage->setVisible(!m_orderCoverage->text().isEmpty());
}

/// Each is a link to what mends it, by its number in the list.
void SlipBack::refreshLeftOut() {
    const auto& priced = m_presenter.priced();
    m_leftOut = priced && isVisibleTo(window()) ? pricing::leftOutOf(m_presenter.order(), m_presenter.prices(), *priced)
                                                : std::vector<pricing::LeftOut>();
    QStringList links;
    for (std::size_t i = 0; i < m_leftOut.size(); ++i)
        links << QStringLiteral("<a href=\"%1\">%2</a>")
                     .arg(QString::number(i), words::sentence(m_leftOut[i].what).toHtmlEscaped());
    m_leftOutWords->setText(tr("Not in the price: %1").arg(links.join(QStringLiteral(" · "))));
    m_leftOutWords->setVisible(!m_leftOut.empty());
}

void SlipBack::followLink(const QString& number) {
    const auto at = number.toULongLong();
    if (at >= m_leftOut.size()) return;
    Q_EMIT mendAsked(pricing::LeftOut(m_leftOut[at])); // a copy: what is typed there makes the list anew
}

void SlipBack::refreshTree() {
    const auto sheet = m_presenter.costSheet();
    if (!sheet) return m_model->clear();
    auto& book = m_presenter.session();
    const supply::PackOffers offers{book.packs(), book.suppliers()}; // today's: of a quote given they say nothing
    auto tree = words::explain(m_presenter.line(), m_presenter.prices(), *sheet, m_formatter.style(),
                               m_presenter.isIssued() ? nullptr : &offers);
    std::vector<desk::Share> shares;
    for (const auto& part : tree.children)
        shares.push_back({QString::fromStdString(part.label), part.amount.micros(), m_formatter.money(part.amount)});
    m_shares->setShares(std::move(shares));
    const auto pieces = m_presenter.line().quantity;
    m_model->setTree(tree, costing::shownForOneOf(*sheet, pieces, m_formatter.currency()), pieces, m_formatter);
}

} // namespace sp::counter

#include "moc_slip_back.cpp"
