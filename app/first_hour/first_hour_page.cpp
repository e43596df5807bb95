// SPDX-License-Identifier: MIT
#include "app/first_hour/first_hour_page.h"

#include "app/desk/bench_style.h"
#include "app/desk/folding_columns.h"
#include "app/desk/tab_order.h"
#include "app/first_hour/first_design.h"
#include "app/first_hour/price_today.h"
#include "app/first_hour/step_list.h"
#include "app/first_hour/supply_rows.h"
#include "app/shop/shop_fields.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::first_hour {

using catalogue::Letterhead;
using catalogue::MeantAsNothing;
using catalogue::PriceRules;
using catalogue::Shop;
using catalogue::ShopRates;
using catalogue::TaxRule;
using desk::kAt;

FirstHourPage::FirstHourPage(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_shopPresenter(presenter.session())
    , m_shop(
          [this]() -> auto& { return m_shopPresenter.shop(); },
          [this](const auto& change) { return m_shopPresenter.editShop(change); }, m_formatter, this)
    , m_columns(new desk::FoldingColumns(this)) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(desk::pageMargins());
    outer->addWidget(m_columns);
    m_columns->addColumn(makeSteps(), tr("Ste&ps"), 300, false);
    m_columns->addColumn(makeMiddle(), tr("This step"), 560, true);
    m_price = new PriceToday(m_presenter, m_formatter, this);
    m_columns->addColumn(m_price, tr("A price today"), 320, false);
    connect(m_price, &PriceToday::mendAsked, this, &FirstHourPage::mendAsked);
    connect(&m_presenter, &FirstHourPresenter::changed, this, [this] {
        if (isVisible()) load(); // it tries a price each time
    });
    load();
    m_columns->showColumn(1);
}

QWidget* FirstHourPage::makeSteps() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(desk::pageTitle(tr("Setting up"), side));
    m_soFar = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, side);
    m_soFar->setObjectName(QStringLiteral("firstSoFar"));
    m_soFar->setWordWrap(true);
    column->addWidget(m_soFar);
    m_steps = new StepList(side);
    column->addWidget(m_steps);
    connect(m_steps, &StepList::chosen, this, [this](Step step) { m_presenter.go(step); });
    column->addStretch(1);
    auto* away = new QPushButton(tr("Put t&his place away"), side);
    away->setObjectName(QStringLiteral("putFirstAway"));
    away->setToolTip(tr("Shop brings it back, under Letterhead"));
    desk::makeQuiet(*away);
    column->addWidget(away, 0, Qt::AlignLeft);
    connect(away, &QPushButton::clicked, this, &FirstHourPage::putAway);
    return side;
}

QWidget* FirstHourPage::makeMiddle() {
    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    m_middle = column;
    addLetterhead();
    addMoney();
    addHour();
    addEveryLine();
    addStones();
    addDesign();
    addQuote();
    auto* foot = new QHBoxLayout;
    auto* keys =
        new desk::TextLabel(tr("Enter goes to the next field, Ctrl+Enter to the next step. What you leave open can "
                               "be done later."),
                            desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, middle);
    keys->setWordWrap(true);
    foot->addWidget(keys, 1);
    m_next = new QPushButton(middle);
    m_next->setObjectName(QStringLiteral("firstNext"));
    desk::makePrimary(*m_next);
    foot->addWidget(m_next);
    column->addLayout(foot);
    column->addStretch(1);
    connect(m_next, &QPushButton::clicked, this, &FirstHourPage::goOn);
    return middle;
}

shop::FieldCard* FirstHourPage::addStep(Step step, const QString& remark) {
    auto* card = new shop::FieldCard(StepList::titleOf(step), remark, m_middle->parentWidget());
    m_cards[step] = card;
    m_middle->addWidget(card);
    return card;
}

void FirstHourPage::addLetterhead() {
    auto* card = addStep(Step::Letterhead, tr("It stands at the head of every quote sheet. More of it is at Shop."));
    m_shop.words(card, tr("Name of the &shop"), "firstShopName", kAt<&Shop::letterhead, &Letterhead::name>, 4);
    m_shop.text(card, tr("&Address, and how to reach the shop"), "firstShopLines",
                kAt<&Shop::letterhead, &Letterhead::lines>);
}

void FirstHourPage::addMoney() {
    auto* card = addStep(Step::MoneyAndTax, tr("Rates and rules are yours to confirm with your tax authority or an "
                                               "accountant. Where prices are told with the tax in them, tick it."));
    shop::putCurrency(m_shop, card, m_formatter, "firstCurrency");
    m_shop.words(card, tr("&Tax is called"), "firstTaxName", kAt<&Shop::rules, &PriceRules::tax, &TaxRule::name>, 1);
    m_shop.percent(card, tr("Tax &rate"), "firstTaxRate", kAt<&Shop::rules, &PriceRules::tax, &TaxRule::rate>);
    m_shop.tick(card, tr("Prices hold the tax"), "firstTaxInclusive",
                kAt<&Shop::rules, &PriceRules::tax, &TaxRule::inclusive>);
    m_shop.tick(card, tr("No tax is meant"), "firstNoTax", kAt<&Shop::meantAsNothing, &MeantAsNothing::tax>);
}

void FirstHourPage::addHour() {
    auto* card =
        addStep(Step::HoursWorth, tr("What an hour at the bench is to earn for whoever works there, and what a month "
                                     "costs before a single piece is made: rent, power, insurance."));
    m_shop.value<desk::MoneyField>(card, tr("Lab&our per hour"), "firstLabour",
                                   kAt<&Shop::rates, &ShopRates::labourPerHour>);
    m_shop.value<desk::MoneyField>(card, tr("O&verhead per month"), "firstOverhead",
                                   kAt<&Shop::rates, &ShopRates::overheadPerMonth>);
    m_shop.value<desk::DurationField>(card, tr("Bench &time per month"), "firstProductive",
                                      kAt<&Shop::rates, &ShopRates::productivePerMonth>, tr("hours that carry it"));
    m_shop.tick(card, tr("No labour is meant"), "firstNoLabour", kAt<&Shop::meantAsNothing, &MeantAsNothing::labour>);
    m_shop.tick(card, tr("No overhead is meant"), "firstNoOverhead",
                kAt<&Shop::meantAsNothing, &MeantAsNothing::overhead>);
}

void FirstHourPage::addEveryLine() {
    auto* card = addStep(Step::EveryLine, tr("Type what a pack costs you; leave empty what you do not buy. What has a "
                                             "price goes into every line from then on."));
    m_sheets = new SupplyRows(m_presenter, SupplyGroup::Sheets, m_formatter, card);
    card->fill(m_sheets);
    m_shop.tick(card, tr("No tape is meant"), "firstNoTape", kAt<&Shop::meantAsNothing, &MeantAsNothing::tape>);
    m_shop.tick(card, tr("No template is meant"), "firstNoTemplate",
                kAt<&Shop::meantAsNothing, &MeantAsNothing::templates>);
}

void FirstHourPage::addStones() {
    auto* card = addStep(Step::Stones, tr("Type what a pack costs you; leave empty what you do not buy. Two of a "
                                          "hundred are reckoned as spilled or flawed: Supplies has the rest."));
    m_stones = new SupplyRows(m_presenter, SupplyGroup::Stones, m_formatter, card);
    card->fill(m_stones);
    auto* list = new QPushButton(tr("Take them from a supplier’s list…"), card);
    list->setObjectName(QStringLiteral("firstPriceList"));
    desk::makeQuiet(*list);
    card->fillLeft(list);
    connect(list, &QPushButton::clicked, this, &FirstHourPage::priceListAsked);
}

void FirstHourPage::addDesign() {
    auto* card = addStep(Step::Design, tr("Drop a cut file on the window to have its stones counted, or type one in."));
    auto* file = new QPushButton(tr("Count a cut file…"), card);
    file->setObjectName(QStringLiteral("firstCutFile"));
    desk::makeQuiet(*file);
    m_design = new FirstDesign(m_presenter, m_formatter, card);
    card->fill(m_design);
    card->fillLeft(file);
    connect(file, &QPushButton::clicked, this, &FirstHourPage::cutFileAsked);
}

void FirstHourPage::addQuote() {
    addStep(Step::Quote, tr("At the Counter the first design lies ready: type how many, and whom it is for. Ctrl+Enter "
                            "there gives the quote and saves its sheet. This place leaves once all is done."));
}

void FirstHourPage::goOn() {
    if (auto* field = focusWidget()) field->clearFocus(); // what is typed is kept first
    const auto step = m_presenter.step();
    if (step == Step::Design && m_design->isBegun() && !m_design->make()) return;
    if (step == Step::Quote) {
        const auto& designs = m_presenter.session().designs();
        Q_EMIT orderAsked(designs.empty() ? base::Id{} : designs.front().id);
        return;
    }
    m_presenter.goOn();
    focusStart();
}

/// What is most likely to be missing; null: what the rows say, or the button that goes on.
const char* FirstHourPage::startOf(Step step) {
    switch (step) {
    case Step::Letterhead: return "firstShopName";
    case Step::MoneyAndTax: return "firstTaxRate";
    case Step::HoursWorth: return "firstLabour";
    case Step::Design: return "firstDesignName";
    case Step::EveryLine:
    case Step::Stones:
    case Step::Quote: break;
    }
    return nullptr;
}

void FirstHourPage::focusStart() {
    const auto step = m_presenter.step();
    m_columns->showColumn(1);
    QWidget* start = step == Step::EveryLine ? m_sheets->firstOpen()
                     : step == Step::Stones  ? m_stones->firstOpen()
                                             : m_cards[step]->findChild<QWidget*>(QLatin1String(startOf(step)));
    if (!start) start = m_next;
    desk::focusOn(*start);
}

QString FirstHourPage::wordsOf(Step next) const { return tr("&Next: %1").arg(StepList::titleOf(next)); }

void FirstHourPage::showStep() {
    const auto step = m_presenter.step();
    m_steps->setCurrent(step);
    for (const auto& [other, card] : m_cards) card->setVisible(other == step);
    const auto next = static_cast<std::size_t>(step) + 1;
    m_next->setText(step == Step::Quote ? tr("To the Cou&nter") : wordsOf(quoting::kFirstSteps[next]));
}

void FirstHourPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    load();
}

void FirstHourPage::load() {
    m_shop.load();
    m_sheets->load();
    m_stones->load();
    m_design->load();
    m_price->load();
    m_columns->setFigure(tr("A piece, so far"), m_price->each());
    const auto current = m_presenter.step();
    int done = 0;
    Step last = current;
    for (const auto step : quoting::kFirstSteps)
        if (m_presenter.isSettled(step)) {
            ++done;
            last = std::max(last, step);
        }
    for (const auto step : quoting::kFirstSteps)
        m_steps->setStep(step,
                         m_presenter.isSettled(step) ? Standing::Done
                         : step < last               ? Standing::PassedBy
                                                     : Standing::ToCome,
                         noteOf(step));
    const auto all = static_cast<int>(quoting::kFirstSteps.size());
    m_soFar->setText(done == all ? tr("All is done; this place leaves when the window is opened the next time.")
                                 : tr("%1 of %2 done. You can price at any time.").arg(done).arg(all));
    if (m_shown != current) showStep();
    m_shown = current;
}

QString FirstHourPage::noteOf(Step step) {
    const auto& shop = m_presenter.session().shop();
    const bool isDone = m_presenter.isSettled(step);
    const auto percent = m_formatter.rateNumber(shop.rules.tax.rate);
    switch (step) {
    case Step::Letterhead:
        return isDone ? QString::fromStdString(shop.letterhead.name) : tr("The sheet does not say whose it is");
    case Step::MoneyAndTax: {
        const auto code = QString::fromStdString(shop.currency.code());
        if (!isDone) return tr("%1, no tax is charged").arg(code);
        return shop.rules.tax.rate.isZero()
                   ? tr("%1, no tax").arg(code)
                   : tr("%1, %2 %3 %").arg(code, QString::fromStdString(shop.rules.tax.name), percent);
    }
    case Step::HoursWorth:
        if (isDone)
            return tr("%1 an hour, %2 a month")
                .arg(m_formatter.money(shop.rates.labourPerHour), m_formatter.money(shop.rates.overheadPerMonth));
        return shop.rates.labourPerHour.isZero() ? tr("Your time counts %1").arg(m_formatter.money({}))
                                                 : tr("A month counts %1").arg(m_formatter.money({}));
    case Step::EveryLine: return isDone ? tr("Tape and template") : tr("Tape or template is in no price");
    case Step::Stones: return isDone ? tr("%1 with a price").arg(m_presenter.stones().size()) : tr("None has a price");
    case Step::Design:
        return isDone ? QString::fromStdString(m_presenter.session().designs().front().name)
                      : tr("Drop a cut file, or type one");
    case Step::Quote: return isDone ? tr("Given") : tr("For the next one through the door");
    }
    return {};
}

} // namespace sp::first_hour

#include "moc_first_hour_page.cpp"
