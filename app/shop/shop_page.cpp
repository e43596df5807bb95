// SPDX-License-Identifier: MIT
#include "app/shop/shop_page.h"

#include "app/desk/field_box.h"
#include "app/desk/language_box.h"
#include "app/desk/packing_rows.h"
#include "app/desk/scroll_page.h"
#include "app/desk/tab_order.h"
#include "app/paper/care_card.h"
#include "app/paper/preview_dialog.h"
#include "app/shop/bench_grid.h"
#include "app/shop/card_index.h"
#include "app/shop/closed_rows.h"
#include "app/shop/ladder_panel.h"
#include "app/shop/named_rows.h"
#include "app/shop/pay_rows.h"
#include "app/shop/shop_fields.h"
#include "app/shop/step_rows.h"
#include "app/words/quote_sheet.h"
#include "app/words/translations.h"
#include "app/words/words.h"
#include "core/pricing/account.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace sp::shop {

using catalogue::BenchWeek;
using catalogue::CardFee;
using catalogue::Cutter;
using catalogue::HeatPress;
using catalogue::Letterhead;
using catalogue::MarkUpStep;
using catalogue::MaterialKind;
using catalogue::MeantAsNothing;
using catalogue::PlaceSurcharge;
using catalogue::PriceRules;
using catalogue::Rounding;
using catalogue::RushStep;
using catalogue::ShopRates;
using catalogue::TaxRate;
using catalogue::TaxRule;
using desk::kAt;

namespace {

constexpr int kRoomForIndex = 1480; ///< width of the page from which on its index is shown, px at 100 %

} // namespace

ShopPage::ShopPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(session)
    , m_formatter(formatter)
    , m_shop(
          [this]() -> auto& { return m_presenter.shop(); },
          [this](const auto& change) { return m_presenter.editShop(change); }, m_formatter, this)
    , m_bench(
          [this]() -> auto& { return m_presenter.bench(); },
          [this](const auto& change) { return m_presenter.editBench(change); }, m_formatter, this) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(desk::pageMargins());
    outer->setSpacing(12);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::pageTitle(tr("Shop"), this), 1, Qt::AlignTop);
    outer->addLayout(head);
    auto* scroll = new desk::ScrollPage({0, 0, 20, 0}, this);
    m_column = scroll->column();
    m_index = new CardIndex(*scroll, this);
    m_index->setObjectName(QStringLiteral("shopIndex"));
    auto* choice = m_index->makeChoice(this);
    choice->setObjectName(QStringLiteral("shopGoTo"));
    m_goTo = new desk::FieldBox(tr("&Go to"), choice, this);
    head->addWidget(m_goTo);
    auto* sides = new QHBoxLayout;
    sides->setSpacing(12);
    sides->addWidget(m_index, 0, Qt::AlignTop);
    sides->addWidget(scroll, 1);
    outer->addLayout(sides, 1);
    buildLetterhead();
    buildMoney();
    buildRates();
    buildLadder();
    buildPlaces();
    buildPrices();
    buildPayments();
    buildTax();
    buildSupplies();
    buildHours();
    buildBench();
    buildMachines();
    m_column->addStretch(1);
    connect(&m_presenter, &ShopPresenter::changed, this, &ShopPage::load);
    load();
}

FieldCard* ShopPage::addCard(const QString& title, const QString& remark) {
    auto* made = new FieldCard(title, remark, this);
    m_column->addWidget(made);
    m_index->add(title, *made);
    return made;
}

/// The cards keep the room they need: in a narrow window the index goes above them.
void ShopPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool isBeside = width() >= desk::scaled(kRoomForIndex);
    m_index->setVisible(isBeside);
    m_goTo->setVisible(!isBeside);
}

/// A 0, or nothing chosen, is meant: the owner's side then no longer says that it is not in the price.
void ShopPage::explainMeant(QCheckBox* tick) {
    tick->setToolTip(tr("Then nobody is told any more that it is not in the price"));
}

void ShopPage::buildLetterhead() {
    auto* card = addCard(tr("Letterhead"));
    m_shop.words(card, tr("&Name of the shop"), "shopName", kAt<&Shop::letterhead, &Letterhead::name>, 4);
    m_shop.text(card, tr("&Address, and how to reach the shop"), "shopLines",
                kAt<&Shop::letterhead, &Letterhead::lines>);
    m_shop.text(card, tr("&Terms, under the totals"), "shopTerms", kAt<&Shop::letterhead, &Letterhead::terms>);
    m_shop.text(card, tr("&Care and safety notes"), "shopCare", kAt<&Shop::letterhead, &Letterhead::care>);
    auto* cards = new QPushButton(tr("Care car&ds"), card);
    cards->setObjectName(QStringLiteral("careCards"));
    cards->setToolTip(tr("A page of cards to cut, for what is handed over: care, how a decal is applied, cautions"));
    connect(cards, &QPushButton::clicked, this, &ShopPage::showCareCards);
    card->fillLeft(cards);
    m_shop.tick(card, tr("Show the first steps of a new shop"), "beingSetUp", kAt<&Shop::isBeingSetUp>);
}

void ShopPage::showCareCards() {
    const auto& shop = m_presenter.shop();
    auto pages = [&] {
        const words::LanguageScope language(
            words::paperLanguages(shop, {})); // of the cards, not of the window they are seen in
        return paper::careCards(shop, paper::careWords(shop, m_presenter.bench().press, m_formatter));
    }();
    const auto name = QString::fromStdString(pages.title);
    paper::showPreview(std::move(pages), shop.paper, name, "carePreview", this);
}

void ShopPage::buildMoney() {
    auto* card = addCard(tr("Money, paper and units"));
    putCurrency(m_shop, card, m_formatter, "currency");
    m_shop.choice<catalogue::Paper>(card, tr("&Paper"), "paper",
                                    {{tr("Letter"), catalogue::Paper::Letter}, {tr("A4"), catalogue::Paper::A4}},
                                    kAt<&Shop::paper>);
    m_shop.choice<units::LengthUnit>(card, tr("&Lengths in"), "lengthUnit",
                                     {{tr("inches"), units::LengthUnit::Inch},
                                      {tr("millimetres"), units::LengthUnit::Millimetre},
                                      {tr("centimetres"), units::LengthUnit::Centimetre}},
                                     kAt<&Shop::lengthUnit>);
    m_shop.choice<units::TemperatureUnit>(
        card, tr("T&emperatures in"), "temperatureUnit",
        {{tr("Fahrenheit"), units::TemperatureUnit::Fahrenheit}, {tr("Celsius"), units::TemperatureUnit::Celsius}},
        kAt<&Shop::temperatureUnit>);
    auto* language = new desk::LanguageBox(tr("as this window"), card);
    desk::standsFor(*language, kAt<&Shop::paperLanguage>.field());
    card->put(language, tr("Papers &in"), "paperLanguage", tr("for customers with no language of their own"));
    m_shop.onLoad([this, language] { language->setLanguage(QString::fromStdString(m_shop.record().paperLanguage)); });
    connect(language, &QComboBox::activated, this, [this, language] {
        m_shop.edit([language](Shop& shop) { shop.paperLanguage = language->language().toStdString(); });
    });
}

void ShopPage::buildRates() {
    auto* card = addCard(tr("What an hour and a month cost"));
    m_shop.value<desk::MoneyField>(card, tr("Lab&our per hour"), "labour",
                                   kAt<&Shop::rates, &ShopRates::labourPerHour>);
    explainMeant(
        m_shop.tick(card, tr("No labour is meant"), "noLabour", kAt<&Shop::meantAsNothing, &MeantAsNothing::labour>));
    m_shop.value<desk::MoneyField>(card, tr("Overhead per month"), "overhead",
                                   kAt<&Shop::rates, &ShopRates::overheadPerMonth>);
    explainMeant(m_shop.tick(card, tr("No overhead is meant"), "noOverhead",
                             kAt<&Shop::meantAsNothing, &MeantAsNothing::overhead>));
    m_shop.value<desk::DurationField>(card, tr("Productive time per month"), "productive",
                                      kAt<&Shop::rates, &ShopRates::productivePerMonth>,
                                      tr("bench hours that carry the overhead"));
    m_shop.percent(card, tr("Spoilage"), "spoilage", kAt<&Shop::rates, &ShopRates::spoilage>,
                   tr("percent of the pieces made"));
    m_shop.choice<catalogue::Spares>(card, tr("Spares are planned"), "spares",
                                     {{tr("where half a piece may spoil"), catalogue::Spares::WhereExpected},
                                      {tr("always, one at least"), catalogue::Spares::Always},
                                      {tr("never"), catalogue::Spares::Never}},
                                     kAt<&Shop::rates, &ShopRates::spares>);
    m_shop.choice<catalogue::UsedWhen>(card, tr("Supplies leave the shelf"), "usedWhen",
                                       {{tr("when a job is ready"), catalogue::UsedWhen::Ready},
                                        {tr("when it is begun"), catalogue::UsedWhen::Making},
                                        {tr("when I book it"), catalogue::UsedWhen::ByHand}},
                                       kAt<&Shop::usedWhen>);
    m_shop.value<desk::MoneyField>(card, tr("Replacing a garment"), "garmentAllowance",
                                   kAt<&Shop::rates, &ShopRates::garmentAllowance>, tr("a customer’s own, spoiled"));
}

void ShopPage::buildLadder() {
    auto* card = addCard(tr("Mark-up ladder"), tr("From so many pieces of a line on, so much on top of the cost."));
    auto* ladder = new StepRows(m_formatter, {tr("from pieces"), tr("mark-up"), tr("margin")}, QStringLiteral("ladder"),
                                kAt<&MarkUpStep::from>.field(), kAt<&MarkUpStep::markUp>.field(), true, this);
    desk::standsFor(*ladder, kAt<&PriceRules::ladder>.field());
    card->fill(ladder);
    auto* picture = new LadderPanel(m_presenter, m_formatter, this);
    card->fill(picture);
    m_shop.onLoad([picture] { picture->refresh(); });
    m_shop.onLoad([this, ladder] {
        std::vector<StepRow> rows;
        for (const auto& step : m_shop.record().rules.ladder) rows.push_back({step.from.value(), step.markUp});
        ladder->setRows(rows);
    });
    connect(ladder, &StepRows::edited, this, [this, ladder] {
        ladder->setRefusal(m_shop.edit([&](Shop& s) {
            s.rules.ladder.clear();
            for (const auto& row : ladder->rows()) s.rules.ladder.push_back({units::Count::of(row.from), row.rate});
        }));
    });
    auto* rushCard = addCard(tr("Rush"), tr("Wanted within so many days of the quote: so much on top of the goods."));
    auto* rush = new StepRows(m_formatter, {tr("within days"), tr("surcharge"), {}}, QStringLiteral("rush"),
                              kAt<&RushStep::days>.field(), kAt<&RushStep::surcharge>.field(), false, this);
    desk::standsFor(*rush, kAt<&PriceRules::rush>.field());
    rushCard->fill(rush);
    m_shop.onLoad([this, rush] {
        std::vector<StepRow> rows;
        for (const auto& step : m_shop.record().rules.rush) rows.push_back({step.days, step.surcharge});
        rush->setRows(rows);
    });
    connect(rush, &StepRows::edited, this, [this, rush] {
        rush->setRefusal(m_shop.edit([&](Shop& s) {
            s.rules.rush.clear();
            for (const auto& row : rush->rows()) s.rules.rush.push_back({row.from, row.rate});
        }));
    });
}

/// Rows of a name and a value, which are a list of the shop's.
template<class List>
void ShopPage::bindRows(NamedRows* rows, List list) {
    m_shop.onLoad([this, rows, list] {
        std::vector<NamedRow> shown;
        auto shop = m_shop.record();
        for (const auto& [name, value] : list(shop)) shown.push_back({name, value});
        rows->setRows(shown);
    });
    connect(rows, &NamedRows::edited, this, [this, rows, list] {
        rows->setRefusal(m_shop.edit([&](Shop& shop) {
            auto& kept = list(shop);
            kept.clear();
            for (const auto& row : rows->rows()) {
                auto& [name, value] = kept.emplace_back();
                name = row.name;
                value = std::get<std::remove_reference_t<decltype(value)>>(row.value);
            }
        }));
    });
}

void ShopPage::buildPlaces() {
    auto* card = addCard(tr("Surcharges by place"), tr("With a design at one of these places the customer pays so much "
                                                       "more for each piece, under its name on the sheet."));
    auto* rows = new NamedRows(m_formatter,
                               {tr("+ place"),
                                {tr("place on the piece"), tr("for each piece")},
                                tr("Sleeve"),
                                tr("Sleeve %1"),
                                tr("Give the place a name, as a line of an order has it."),
                                tr("name of place %1"),
                                tr("surcharge of place %1"),
                                tr("Take place %1 out")},
                               {kAt<&PriceRules::places>.field(),
                                kAt<&PlaceSurcharge::place>.field(),
                                kAt<&PlaceSurcharge::surcharge>.field(),
                                {"placeAdd", "placeName", "placeSurcharge"}},
                               units::Money(), this);
    card->fill(rows);
    bindRows(
        rows, [](Shop & shop) -> auto& { return shop.rules.places; });
}

desk::MoneyField* ShopPage::roundingStep(FieldCard* card) {
    const auto coin = [this] { return m_shop.record().currency.microsPerMinor(); };
    const auto coins = [this, coin](int n) { return m_formatter.money(units::Money::fromMicros(n * coin())); };
    auto* field = new desk::MoneyField(m_formatter, this);
    const auto& row = kAt<&Shop::rules, &PriceRules::rounding, &Rounding::step>.field();
    desk::standsFor(static_cast<QWidget&>(*field), row);
    card->put(field, tr("Step"), "roundingStep", tr("such as %1 or %2").arg(coins(5), coins(25)));
    m_shop.onLoad([this, field, coin] {
        if (!field->isDirty()) field->setValue(units::Money::fromMicros(m_shop.record().rules.rounding.step * coin()));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, coin, coins, range = row.entryRange()] {
        const auto value = field->value();
        if (!value) return;
        const auto micros = value->micros();
        const bool isWhole = micros % coin() == 0 && range.holds(micros / coin());
        field->setOuterProblem(isWhole ? m_shop.edit([&](Shop& shop) { shop.rules.rounding.step = micros / coin(); })
                                       : tr("A step is made of whole coins, such as %1; type another.").arg(coins(5)));
    });
    return field;
}

void ShopPage::buildPrices() {
    auto* card = addCard(tr("Rounding, set-up, deposit"));
    m_shop.choice<catalogue::RoundingKind>(card, tr("Piece prices are rounded"), "roundingKind",
                                           {{tr("to the nearest step"), catalogue::RoundingKind::Nearest},
                                            {tr("up to the next step"), catalogue::RoundingKind::Up},
                                            {tr("up to an ending"), catalogue::RoundingKind::Ending}},
                                           kAt<&Shop::rules, &PriceRules::rounding, &Rounding::kind>);
    auto* step = roundingStep(card);
    auto* ending =
        m_shop.number(card, tr("Ending"), "roundingEnding", kAt<&Shop::rules, &PriceRules::rounding, &Rounding::ending>,
                      tr("95 for prices like 6.95"));
    m_shop.onLoad([this, step, ending] {
        const bool endsSo = m_shop.record().rules.rounding.kind == catalogue::RoundingKind::Ending;
        step->setEnabled(!endsSo);
        ending->setEnabled(endsSo);
    });
    m_shop.choice<catalogue::SetUpCharge>(card, tr("Art and set-up"), "setUp",
                                          {{tr("spread over the pieces"), catalogue::SetUpCharge::Spread},
                                           {tr("a line of its own"), catalogue::SetUpCharge::OwnLine}},
                                          kAt<&Shop::rules, &PriceRules::setUp>);
    m_shop.value<desk::MoneyField>(card, tr("Smallest order"), "minimumOrder",
                                   kAt<&Shop::rules, &PriceRules::minimumOrder>);
    m_shop.percent(card, tr("Deposit"), "depositRate", kAt<&Shop::rules, &PriceRules::depositRate>,
                   tr("share of the total, before work starts"));
    m_shop.value<desk::MoneyField>(card, tr("Deposit rounded up to"), "depositStep",
                                   kAt<&Shop::rules, &PriceRules::depositStep>);
    m_shop.number(card, tr("A quote holds for"), "validDays", kAt<&Shop::rules, &PriceRules::validDays>, tr("days"));
    m_shop.number(card, tr("An invoice is due after"), "daysToPay", kAt<&Shop::rules, &PriceRules::daysToPay>,
                  tr("days"));
}

void ShopPage::buildPayments() {
    auto* card = addCard(tr("How you are paid"),
                         tr("Without ways of your own: cash, card, transfer and other. Cash is rounded to the smallest "
                            "coin that is in use, and change is given of it."));
    m_shop.value<desk::MoneyField>(card, tr("Smallest coin"), "smallestCoin", kAt<&Shop::smallestCoin>)
        ->setToolTip(tr("What is left to pay is rounded to it in cash; 0: to the last part of the currency"));
    auto* said = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, this);
    said->setObjectName(QStringLiteral("coinExample"));
    said->setWordWrap(true);
    card->fill(said);
    // A coin of 5 where 5 cents are meant is seen here before a customer is.
    m_shop.onLoad([this, said] {
        const auto coin = m_shop.record().smallestCoin;
        const auto many = std::max<std::int64_t>(1, coin.micros() / 10'000'000); // of 100 something like 123 coins
        const auto left = units::Money::fromMicros(many * 12'340'000);
        said->setVisible(!coin.isZero());
        said->setText(tr("Of %1 that are left to pay, %2 are paid in cash.")
                          .arg(m_formatter.money(left), m_formatter.money(pricing::countedOut(left, coin))));
    });
    auto* ways = new PayRows(m_formatter, this);
    card->fill(ways);
    m_shop.onLoad([this, ways] { ways->setRows(m_shop.record().waysToPay); });
    connect(ways, &PayRows::edited, this,
            [this, ways] { ways->setRefusal(m_shop.edit([&](Shop& shop) { shop.waysToPay = ways->rows(); })); });
}

void ShopPage::buildTax() {
    auto* card = addCard(tr("Tax and card fee"),
                         tr("Rates and rules are yours to confirm with your tax authority or an "
                            "accountant; tax on what is given away differs by place. A card fee comes off the price, a "
                            "share of all that is paid, tax included; whether it may be passed on differs by place "
                            "and card."));
    m_shop.words(card, tr("Tax is called"), "taxName", kAt<&Shop::rules, &PriceRules::tax, &TaxRule::name>, 1);
    m_shop.percent(card, tr("Tax rate"), "taxRate", kAt<&Shop::rules, &PriceRules::tax, &TaxRule::rate>);
    m_shop.choice<catalogue::TaxRounding>(card, tr("Rounded"), "taxRounding",
                                          {{tr("once, on the whole order"), catalogue::TaxRounding::PerInvoice},
                                           {tr("on every line"), catalogue::TaxRounding::PerLine}},
                                          kAt<&Shop::rules, &PriceRules::tax, &TaxRule::rounding>);
    m_shop.choice<catalogue::TaxOnGifts>(card, tr("On what is given away"), "taxOnGifts",
                                         {{tr("no tax"), catalogue::TaxOnGifts::None},
                                          {tr("tax on its cost, ours to pay"), catalogue::TaxOnGifts::OnCost}},
                                         kAt<&Shop::rules, &PriceRules::tax, &TaxRule::onGifts>);
    m_shop.tick(card, tr("Prices hold the tax"), "taxInclusive",
                kAt<&Shop::rules, &PriceRules::tax, &TaxRule::inclusive>);
    m_shop.tick(card, tr("No tax is meant"), "noTax", kAt<&Shop::meantAsNothing, &MeantAsNothing::tax>)
        ->setToolTip(tr("Then setting up counts it as decided"));
    auto* rates = new NamedRows(m_formatter,
                                {tr("+ tax rate"),
                                 {tr("a line may name another rate"), tr("rate")},
                                 tr("Other rate"),
                                 tr("Other rate %1"),
                                 tr("Give the rate a name, as it is printed."),
                                 tr("name of further rate %1"),
                                 tr("further rate %1"),
                                 tr("Take further rate %1 out")},
                                {kAt<&TaxRule::others>.field(),
                                 kAt<&TaxRate::name>.field(),
                                 kAt<&TaxRate::rate>.field(),
                                 {"taxRateAdd", "otherTaxName", "otherTaxRate"}},
                                units::Rate(), this);
    card->fill(rates);
    bindRows(
        rates, [](Shop & shop) -> auto& { return shop.rules.tax.others; });
    m_shop.tick(card, tr("Reckon with a card fee"), "cardFee",
                kAt<&Shop::rules, &PriceRules::cardFee, &CardFee::charged>);
    m_shop.percent(card, tr("Card fee"), "cardRate", kAt<&Shop::rules, &PriceRules::cardFee, &CardFee::rate>);
    m_shop.value<desk::MoneyField>(card, tr("and for each payment"), "cardFixed",
                                   kAt<&Shop::rules, &PriceRules::cardFee, &CardFee::fixed>);
}

void ShopPage::buildSupplies() {
    auto* card = addCard(tr("What every line takes"));
    auto& session = m_presenter.session();
    m_shop.material(card, tr("Tape"), "usualTape", session, MaterialKind::Tape, kAt<&Shop::usualTape>);
    m_shop.material(card, tr("Template sheet"), "usualTemplate", session, MaterialKind::Template,
                    kAt<&Shop::usualTemplate>);
    explainMeant(
        m_shop.tick(card, tr("No tape is meant"), "noTape", kAt<&Shop::meantAsNothing, &MeantAsNothing::tape>));
    explainMeant(m_shop.tick(card, tr("No template is meant"), "noTemplate",
                             kAt<&Shop::meantAsNothing, &MeantAsNothing::templates>));
    auto* packing = new desk::PackingRows(m_formatter, QStringLiteral("packing"), kAt<&Shop::packing>.field(), this);
    card->fill(packing);
    m_shop.onLoad([this, packing] {
        packing->setRows(desk::choicesOf(m_presenter.session().materials(), {MaterialKind::Packing}),
                         m_shop.record().packing);
    });
    connect(packing, &desk::PackingRows::edited, this,
            [this, packing] { packing->setRefusal(m_shop.edit([&](Shop& s) { s.packing = packing->rows(); })); });
    auto* more = new desk::WordField(m_formatter, {}, this);
    more->setEmptyAllowed(true);
    desk::standsFor(*more, kAt<&Shop::ladderQuantities>.field());
    card->put(more, tr("More or fewer: prices shown for"), "ladderQuantities",
              tr("numbers of pieces, such as 12 24 48 96"), 2);
    m_shop.onLoad([this, more] {
        QStringList words;
        for (const auto quantity : m_shop.record().ladderQuantities) words << QString::number(quantity.value());
        if (!more->isDirty()) more->setRaw(words.join(QLatin1Char(' ')));
    });
    connect(more, &desk::TypedField::committed, this, [this, more] {
        std::vector<units::Count> quantities;
        for (const auto& word : more->text().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
            const auto read = units::parseCount(word.toStdString(), m_formatter.style());
            if (!read || read->value() < 1)
                return more->setOuterProblem(
                    tr("“%1” is not a number of pieces; write numbers with spaces between.").arg(word));
            quantities.push_back(*read);
        }
        std::sort(quantities.begin(), quantities.end());
        more->setOuterProblem(m_shop.edit([&](Shop& s) { s.ladderQuantities = quantities; }));
    });
    m_shop.tick(card, tr("Print them on the sheet"), "ladderOnSheet", kAt<&Shop::ladderOnSheet>);
    m_shop.tick(card, tr("Count a design’s pieces over all its lines"), "countsDesignOverLines",
                kAt<&Shop::countsDesignOverLines>);
    m_shop.tick(card, tr("Planned pieces pay off art and cutting too"), "paysOffWork", kAt<&Shop::paysOffWork>);
    m_shop.tick(card, tr("Say on the sheet where more pieces cost less"), "offersMoreOnSheet",
                kAt<&Shop::offersMoreOnSheet>);
}

void ShopPage::buildHours() {
    auto* card = addCard(tr("Bench hours"),
                         tr("How long the bench is worked at, of all hands together and without the counter and the "
                            "books. Days are promised by it; while all of it is 0 none is."));
    const auto add = [&](const QString& label, const char* name, auto member) {
        m_shop.value<desk::DurationField>(card, label, name, member);
    };
    add(tr("Monday"), "benchMonday", kAt<&Shop::benchWeek, &BenchWeek::monday>);
    add(tr("Tuesday"), "benchTuesday", kAt<&Shop::benchWeek, &BenchWeek::tuesday>);
    add(tr("Wednesday"), "benchWednesday", kAt<&Shop::benchWeek, &BenchWeek::wednesday>);
    add(tr("Thursday"), "benchThursday", kAt<&Shop::benchWeek, &BenchWeek::thursday>);
    add(tr("Friday"), "benchFriday", kAt<&Shop::benchWeek, &BenchWeek::friday>);
    add(tr("Saturday"), "benchSaturday", kAt<&Shop::benchWeek, &BenchWeek::saturday>);
    add(tr("Sunday"), "benchSunday", kAt<&Shop::benchWeek, &BenchWeek::sunday>);
    auto* closed = new ClosedRows(m_formatter, m_presenter.session().today(), this);
    card->fill(closed);
    m_shop.onLoad([this, closed] { closed->setRows(m_shop.record().closedDays); });
    connect(closed, &ClosedRows::edited, this,
            [this, closed] { closed->setRefusal(m_shop.edit([&](Shop& s) { s.closedDays = closed->rows(); })); });
}

void ShopPage::buildBench() {
    auto* card =
        addCard(tr("Bench standards"), tr("Starting values: time your own bench. Art to set up are done once for a "
                                          "job, the other steps for every piece."));
    m_steps = new BenchGrid(m_presenter, m_formatter, this);
    card->fill(m_steps);
}

void ShopPage::buildMachines() {
    auto* card =
        addCard(tr("Press and cutter"),
                tr("A press and freshly pressed work burn: gloves, a cover sheet, ventilation. Retract blades before "
                   "loading. The makers’ data, local rules and licensed practice come first."));
    m_bench.value<desk::MoneyField>(card, tr("Press, price"), "pressPrice", kAt<&Bench::press, &HeatPress::price>);
    m_bench.value<desk::MoneyField>(card, tr("Press, worth at the end"), "pressSalvage",
                                    kAt<&Bench::press, &HeatPress::salvage>);
    m_bench.number(card, tr("Press lasts, presses"), "pressLife", kAt<&Bench::press, &HeatPress::lifePresses>);
    m_bench.value<desk::MoneyField>(card, tr("Running it, per hour"), "pressRunning",
                                    kAt<&Bench::press, &HeatPress::runningPerHour>);
    m_bench.value<desk::LengthField>(card, tr("Platen, width"), "platenWidth",
                                     kAt<&Bench::press, &HeatPress::platenWidth>);
    m_bench.value<desk::LengthField>(card, tr("Platen, depth"), "platenHeight",
                                     kAt<&Bench::press, &HeatPress::platenHeight>);
    m_bench.value<desk::DurationField>(card, tr("Dwell"), "dwell", kAt<&Bench::press, &HeatPress::dwell>);
    m_bench.value<desk::DurationField>(card, tr("Handling, each cycle"), "handling",
                                       kAt<&Bench::press, &HeatPress::handling>);
    m_bench.value<desk::DurationField>(card, tr("Warm-up"), "warmUp", kAt<&Bench::press, &HeatPress::warmUp>);
    m_bench.number(card, tr("Test presses"), "testPresses", kAt<&Bench::press, &HeatPress::testPresses>);
    m_bench.percent(card, tr("Pressed a second time"), "secondShare", kAt<&Bench::press, &HeatPress::secondPressShare>);
    m_bench.value<desk::DurationField>(card, tr("Second dwell"), "secondDwell",
                                       kAt<&Bench::press, &HeatPress::secondDwell>);
    m_bench.value<desk::TemperatureField>(card, tr("Temperature noted"), "temperature",
                                          kAt<&Bench::press, &HeatPress::temperature>);
    m_bench.value<desk::MoneyField>(card, tr("Cutter, price"), "cutterPrice", kAt<&Bench::cutter, &Cutter::price>);
    m_bench.value<desk::MoneyField>(card, tr("Cutter, worth at the end"), "cutterSalvage",
                                    kAt<&Bench::cutter, &Cutter::salvage>);
    m_bench.number(card, tr("Cutter lasts, holes"), "cutterLife", kAt<&Bench::cutter, &Cutter::lifeHoles>);
    explainMeant(m_shop.tick(card, tr("No running cost is meant"), "noPressRunning",
                             kAt<&Shop::meantAsNothing, &MeantAsNothing::pressRunning>));
    explainMeant(m_shop.tick(card, tr("No wear of the press is meant"), "noPressWear",
                             kAt<&Shop::meantAsNothing, &MeantAsNothing::pressWear>));
    explainMeant(m_shop.tick(card, tr("No wear of the cutter is meant"), "noCutterWear",
                             kAt<&Shop::meantAsNothing, &MeantAsNothing::cutterWear>));
}

void ShopPage::load() {
    m_shop.load();
    m_bench.load();
    m_steps->load();
}

void ShopPage::focusFind() {
    auto* first = findChild<QWidget*>(QStringLiteral("shopName"));
    first->setFocus(Qt::ShortcutFocusReason);
    desk::scrollTo(*first);
}

} // namespace sp::shop

#include "moc_shop_page.cpp"
