// SPDX-License-Identifier: MIT
#include "app/shop/shop_page.h"

#include "app/desk/card.h"
#include "app/desk/long_text.h"
#include "app/desk/scroll_page.h"
#include "app/desk/tab_order.h"
#include "app/shop/bench_grid.h"
#include "app/shop/customer_card.h"
#include "app/shop/step_rows.h"

#include <QCheckBox>

#include <algorithm>

namespace sp::shop {

using catalogue::MaterialKind;
using desk::Role;
using desk::TextSize;

namespace {

constexpr int kColumns = 4;

} // namespace

ShopPage::ShopPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(session)
    , m_formatter(formatter) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(desk::pageMargins());
    outer->setSpacing(12);
    outer->addWidget(desk::pageTitle(tr("Shop"), this));
    auto* scroll = new desk::ScrollPage({0, 0, 20, 0}, this);
    m_column = scroll->column();
    outer->addWidget(scroll, 1);
    buildLetterhead();
    buildMoney();
    buildRates();
    buildLadder();
    buildPrices();
    buildTax();
    buildCustomers();
    buildSupplies();
    buildBench();
    buildMachines();
    m_column->addStretch(1);
    connect(&m_presenter, &ShopPresenter::changed, this, &ShopPage::loadAll);
    loadAll();
}

QGridLayout* ShopPage::card(const QString& title, const QString& remark) {
    auto* ground = new desk::Card(this);
    auto* inside = new QVBoxLayout(ground);
    inside->setContentsMargins(desk::cardMargins());
    inside->setSpacing(8);
    inside->addWidget(desk::sectionTitle(title, ground));
    if (!remark.isEmpty()) {
        auto* note = new desk::TextLabel(remark, TextSize::Small, Role::Muted, desk::Weight::Plain, ground);
        note->setWordWrap(true);
        inside->addWidget(note);
    }
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    for (int i = 0; i < kColumns; ++i) grid->setColumnStretch(i, 1);
    inside->addLayout(grid);
    m_column->addWidget(ground);
    m_placed = 0;
    return grid;
}

void ShopPage::put(QGridLayout* grid, QWidget* field, const QString& label, const char* name, const QString& remark,
                   int span) {
    field->setObjectName(QLatin1String(name));
    auto* box = new desk::FieldBox(label, field, this);
    if (!remark.isEmpty()) box->setRemark(remark);
    if (m_placed % kColumns + span > kColumns) m_placed += kColumns - m_placed % kColumns;
    grid->addWidget(box, m_placed / kColumns, m_placed % kColumns, 1, span, Qt::AlignTop);
    m_placed += span;
}

template<class Field, class Member>
Field* ShopPage::shopField(QGridLayout* grid, const QString& label, const char* name, Member member,
                           const QString& remark) {
    auto* field = new Field(m_formatter, this);
    put(grid, field, label, name, remark);
    m_loads.push_back([this, field, member] {
        if (!field->isHeld()) field->setValue(member(const_cast<Shop&>(m_presenter.shop())));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, member] {
        const auto value = field->value();
        if (!value) return; // it stays as typed, with its sentence
        field->setOuterProblem(m_presenter.editShop([&](Shop& shop) { member(shop) = *value; }));
    });
    return field;
}

template<class Field, class Member>
Field* ShopPage::benchField(QGridLayout* grid, const QString& label, const char* name, Member member) {
    auto* field = new Field(m_formatter, this);
    put(grid, field, label, name);
    m_loads.push_back([this, field, member] {
        if (!field->isHeld()) field->setValue(member(const_cast<Bench&>(m_presenter.bench())));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, member] {
        const auto value = field->value();
        if (!value) return;
        field->setOuterProblem(m_presenter.editBench([&](Bench& bench) { member(bench) = *value; }));
    });
    return field;
}

template<class Member>
desk::CountField* ShopPage::shopNumber(QGridLayout* grid, const QString& label, const char* name, Member member,
                                       std::int64_t least, std::int64_t most, const QString& remark) {
    auto* field = new desk::CountField(m_formatter, this);
    field->setRange(units::Count::of(least), units::Count::of(most));
    put(grid, field, label, name, remark);
    m_loads.push_back([this, field, member] {
        if (!field->isHeld()) field->setValue(units::Count::of(member(const_cast<Shop&>(m_presenter.shop()))));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, member] {
        const auto value = field->value();
        if (!value) return;
        field->setOuterProblem(m_presenter.editShop([&](Shop& shop) { member(shop) = value->value(); }));
    });
    return field;
}

template<class Member>
void ShopPage::benchNumber(QGridLayout* grid, const QString& label, const char* name, Member member) {
    auto* field = new desk::CountField(m_formatter, this);
    put(grid, field, label, name);
    m_loads.push_back([this, field, member] {
        if (!field->isHeld()) field->setValue(units::Count::of(member(const_cast<Bench&>(m_presenter.bench()))));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, member] {
        const auto value = field->value();
        if (!value) return;
        field->setOuterProblem(m_presenter.editBench([&](Bench& bench) { member(bench) = value->value(); }));
    });
}

template<class Member>
void ShopPage::shopWords(QGridLayout* grid, const QString& label, const char* name, Member member, int span) {
    auto* field = new desk::WordField(m_formatter, {}, this);
    field->setEmptyAllowed(true);
    put(grid, field, label, name, {}, span);
    if (!m_first) m_first = field;
    m_loads.push_back([this, field, member] {
        if (!field->isHeld()) field->setRaw(QString::fromStdString(member(const_cast<Shop&>(m_presenter.shop()))));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, member] {
        field->setOuterProblem(m_presenter.editShop([&](Shop& shop) { member(shop) = field->words(); }));
    });
}

template<class Member>
void ShopPage::shopText(QGridLayout* grid, const QString& label, const char* name, Member member) {
    auto* field = new desk::LongText(this);
    put(grid, field, label, name, {}, 2);
    m_loads.push_back([this, field, member] {
        if (!field->hasFocus()) field->setText(QString::fromStdString(member(const_cast<Shop&>(m_presenter.shop()))));
    });
    connect(field, &desk::LongText::committed, this, [this, field, member] {
        m_presenter.editShop([&](Shop& shop) { member(shop) = field->toPlainText().trimmed().toStdString(); });
    });
}

template<class Enum, class Member>
void ShopPage::shopChoice(QGridLayout* grid, const QString& label, const char* name,
                          std::vector<std::pair<QString, Enum>> choices, Member member) {
    auto* field = new QComboBox(this);
    for (const auto& [word, value] : choices) field->addItem(word, static_cast<int>(value));
    put(grid, field, label, name);
    m_loads.push_back([this, field, member] {
        field->setCurrentIndex(field->findData(static_cast<int>(member(const_cast<Shop&>(m_presenter.shop())))));
    });
    connect(field, &QComboBox::activated, this, [this, field, member] {
        const auto value = static_cast<Enum>(field->currentData().toInt());
        m_presenter.editShop([&](Shop& shop) { member(shop) = value; });
    });
}

template<class Member>
void ShopPage::shopTick(QGridLayout* grid, const QString& label, const char* name, Member member) {
    auto* field = new QCheckBox(label, this);
    field->setObjectName(QLatin1String(name));
    grid->addWidget(field, m_placed / kColumns, m_placed % kColumns, 1, 1, Qt::AlignBottom);
    ++m_placed;
    m_loads.push_back([this, field, member] { field->setChecked(member(const_cast<Shop&>(m_presenter.shop()))); });
    connect(field, &QCheckBox::clicked, this,
            [this, member](bool on) { m_presenter.editShop([&](Shop& shop) { member(shop) = on; }); });
}

template<class Member>
void ShopPage::shopMaterial(QGridLayout* grid, const QString& label, const char* name, MaterialKind kind,
                            Member member) {
    auto* field = new desk::ChoiceField(m_formatter, this);
    field->setEmptyAllowed(true);
    put(grid, field, label, name, {}, 2);
    m_loads.push_back([this, field, kind, member] {
        std::vector<desk::Choice> choices;
        for (const auto& material : m_presenter.session().materials())
            if (material.kind == kind)
                choices.push_back({QVariant::fromValue(material.id), QString::fromStdString(material.name), {}, {}});
        field->setChoices(std::move(choices));
        const auto id = member(const_cast<Shop&>(m_presenter.shop()));
        if (!field->isHeld()) field->setCurrent(id.isNone() ? QVariant() : QVariant::fromValue(id));
    });
    connect(field, &desk::ChoiceField::chosen, this, [this, member](const QVariant& chosen) {
        const auto id = chosen.isValid() ? chosen.value<base::Id>() : base::Id{};
        m_presenter.editShop([&](Shop& shop) { member(shop) = id; });
    });
}

void ShopPage::buildLetterhead() {
    auto* grid = card(tr("Letterhead"));
    shopWords(
        grid, tr("&Name of the shop"), "shopName", [](Shop & s) -> auto& { return s.letterhead.name; }, 4);
    shopText(
        grid, tr("&Address, and how to reach the shop"), "shopLines",
        [](Shop & s) -> auto& { return s.letterhead.lines; });
    shopText(
        grid, tr("&Terms, under the totals"), "shopTerms", [](Shop & s) -> auto& { return s.letterhead.terms; });
    shopText(
        grid, tr("&Care and safety notes"), "shopCare", [](Shop & s) -> auto& { return s.letterhead.care; });
}

void ShopPage::buildMoney() {
    auto* grid = card(tr("Money, paper and units"));
    auto* currency = new desk::WordField(m_formatter, tr("Give the currency, three letters such as USD."), this);
    put(grid, currency, tr("C&urrency"), "currency", tr("three letters, such as USD"));
    m_loads.push_back([this, currency] {
        if (!currency->isHeld()) currency->setRaw(QString::fromStdString(m_presenter.shop().currency.code()));
    });
    connect(currency, &desk::TypedField::committed, this, [this, currency] {
        const auto read = units::Currency::parse(currency->words());
        currency->setOuterProblem(read ? m_presenter.editShop([&](Shop& s) { s.currency = *read; })
                                       : QString::fromStdString(read.error().detail));
    });
    shopChoice<catalogue::Paper>(
        grid, tr("&Paper"), "paper", {{tr("Letter"), catalogue::Paper::Letter}, {tr("A4"), catalogue::Paper::A4}},
        [](Shop & s) -> auto& { return s.paper; });
    shopChoice<units::LengthUnit>(
        grid, tr("&Lengths in"), "lengthUnit",
        {{tr("inches"), units::LengthUnit::Inch},
         {tr("millimetres"), units::LengthUnit::Millimetre},
         {tr("centimetres"), units::LengthUnit::Centimetre}},
        [](Shop & s) -> auto& { return s.lengthUnit; });
    shopChoice<units::TemperatureUnit>(
        grid, tr("T&emperatures in"), "temperatureUnit",
        {{tr("Fahrenheit"), units::TemperatureUnit::Fahrenheit}, {tr("Celsius"), units::TemperatureUnit::Celsius}},
        [](Shop & s) -> auto& { return s.temperatureUnit; });
}

void ShopPage::buildRates() {
    auto* grid = card(tr("What an hour and a month cost"));
    shopField<desk::MoneyField>(
        grid, tr("Lab&our per hour"), "labour", [](Shop & s) -> auto& { return s.rates.labourPerHour; });
    shopField<desk::MoneyField>(
        grid, tr("Overhead per month"), "overhead", [](Shop & s) -> auto& { return s.rates.overheadPerMonth; });
    shopField<desk::DurationField>(
        grid, tr("Productive time per month"), "productive",
        [](Shop & s) -> auto& { return s.rates.productivePerMonth; }, tr("bench hours that carry the overhead"));
    shopField<desk::RateField>(
        grid, tr("Spoilage"), "spoilage", [](Shop & s) -> auto& { return s.rates.spoilage; },
        tr("percent of the pieces made"))
        ->setUnitText(QStringLiteral("%"));
    shopField<desk::MoneyField>(
        grid, tr("Replacing a garment"), "garmentAllowance", [](Shop & s) -> auto& { return s.rates.garmentAllowance; },
        tr("a customer’s own, spoiled"));
}

void ShopPage::buildLadder() {
    auto* grid = card(tr("Mark-up ladder"), tr("From so many pieces of a line on, so much on top of the cost."));
    auto* ladder = new StepRows(m_formatter, {tr("from pieces"), tr("mark-up"), tr("margin")}, QStringLiteral("ladder"),
                                true, this);
    grid->addWidget(ladder, 0, 0, 1, kColumns);
    m_loads.push_back([this, ladder] {
        std::vector<StepRow> rows;
        for (const auto& step : m_presenter.shop().rules.ladder) rows.push_back({step.from.value(), step.markUp});
        ladder->setRows(rows);
    });
    connect(ladder, &StepRows::edited, this, [this, ladder] {
        ladder->setRefusal(m_presenter.editShop([&](Shop& s) {
            s.rules.ladder.clear();
            for (const auto& row : ladder->rows()) s.rules.ladder.push_back({units::Count::of(row.from), row.rate});
        }));
    });
    auto* rushGrid = card(tr("Rush"), tr("Wanted within so many days of the quote: so much on top of the goods."));
    auto* rush =
        new StepRows(m_formatter, {tr("within days"), tr("surcharge"), {}}, QStringLiteral("rush"), false, this);
    rushGrid->addWidget(rush, 0, 0, 1, kColumns);
    m_loads.push_back([this, rush] {
        std::vector<StepRow> rows;
        for (const auto& step : m_presenter.shop().rules.rush) rows.push_back({step.days, step.surcharge});
        rush->setRows(rows);
    });
    connect(rush, &StepRows::edited, this, [this, rush] {
        rush->setRefusal(m_presenter.editShop([&](Shop& s) {
            s.rules.rush.clear();
            for (const auto& row : rush->rows()) s.rules.rush.push_back({row.from, row.rate});
        }));
    });
}

desk::MoneyField* ShopPage::roundingStep(QGridLayout* grid) {
    constexpr std::int64_t kMostCoins = 1'000'000;
    const auto coin = [this] { return m_presenter.shop().currency.microsPerMinor(); };
    const auto coins = [this, coin](int n) { return m_formatter.money(units::Money::fromMicros(n * coin())); };
    auto* field = new desk::MoneyField(m_formatter, this);
    put(grid, field, tr("Step"), "roundingStep", tr("such as %1 or %2").arg(coins(5), coins(25)));
    m_loads.push_back([this, field, coin] {
        if (!field->isHeld())
            field->setValue(units::Money::fromMicros(m_presenter.shop().rules.rounding.step * coin()));
    });
    connect(field, &desk::TypedField::committed, this, [this, field, coin, coins] {
        const auto value = field->value();
        if (!value) return;
        const auto micros = value->micros();
        const bool isWhole = micros > 0 && micros % coin() == 0 && micros / coin() <= kMostCoins;
        field->setOuterProblem(
            isWhole ? m_presenter.editShop([&](Shop& shop) { shop.rules.rounding.step = micros / coin(); })
                    : tr("A step is made of whole coins, such as %1; type another.").arg(coins(5)));
    });
    return field;
}

void ShopPage::buildPrices() {
    auto* grid = card(tr("Rounding, set-up, deposit"));
    shopChoice<catalogue::RoundingKind>(
        grid, tr("Piece prices are rounded"), "roundingKind",
        {{tr("to the nearest step"), catalogue::RoundingKind::Nearest},
         {tr("up to the next step"), catalogue::RoundingKind::Up},
         {tr("up to an ending"), catalogue::RoundingKind::Ending}},
        [](Shop & s) -> auto& { return s.rules.rounding.kind; });
    auto* step = roundingStep(grid);
    auto* ending = shopNumber(
        grid, tr("Ending"), "roundingEnding", [](Shop & s) -> auto& { return s.rules.rounding.ending; }, 0, 99,
        tr("95 for prices like 6.95"));
    m_loads.push_back([this, step, ending] {
        const bool endsSo = m_presenter.shop().rules.rounding.kind == catalogue::RoundingKind::Ending;
        step->setEnabled(!endsSo);
        ending->setEnabled(endsSo);
    });
    shopChoice<catalogue::SetUpCharge>(
        grid, tr("Art and set-up"), "setUp",
        {{tr("spread over the pieces"), catalogue::SetUpCharge::Spread},
         {tr("a line of its own"), catalogue::SetUpCharge::OwnLine}},
        [](Shop & s) -> auto& { return s.rules.setUp; });
    shopField<desk::MoneyField>(
        grid, tr("Smallest order"), "minimumOrder", [](Shop & s) -> auto& { return s.rules.minimumOrder; });
    shopField<desk::RateField>(
        grid, tr("Deposit"), "depositRate", [](Shop & s) -> auto& { return s.rules.depositRate; },
        tr("share of the total, before work starts"))
        ->setUnitText(QStringLiteral("%"));
    shopField<desk::MoneyField>(
        grid, tr("Deposit rounded up to"), "depositStep", [](Shop & s) -> auto& { return s.rules.depositStep; });
    shopNumber(
        grid, tr("A quote holds for"), "validDays", [](Shop & s) -> auto& { return s.rules.validDays; }, 0, 3650,
        tr("days"));
}

void ShopPage::buildTax() {
    auto* grid =
        card(tr("Tax and card fee"), tr("Rates and rules are yours to confirm with your tax authority or an "
                                        "accountant. Whether a card fee may be passed on differs by place and card."));
    shopWords(
        grid, tr("Tax is called"), "taxName", [](Shop & s) -> auto& { return s.rules.tax.name; }, 1);
    shopField<desk::RateField>(
        grid, tr("Tax rate"), "taxRate", [](Shop & s) -> auto& { return s.rules.tax.rate; })
        ->setUnitText(QStringLiteral("%"));
    shopChoice<catalogue::TaxRounding>(
        grid, tr("Rounded"), "taxRounding",
        {{tr("once, on the whole order"), catalogue::TaxRounding::PerInvoice},
         {tr("on every line"), catalogue::TaxRounding::PerLine}},
        [](Shop & s) -> auto& { return s.rules.tax.rounding; });
    shopTick(
        grid, tr("Prices hold the tax"), "taxInclusive", [](Shop & s) -> auto& { return s.rules.tax.inclusive; });
    shopTick(
        grid, tr("Reckon with a card fee"), "cardFee", [](Shop & s) -> auto& { return s.rules.cardFee.charged; });
    shopField<desk::RateField>(
        grid, tr("Card fee"), "cardRate", [](Shop & s) -> auto& { return s.rules.cardFee.rate; })
        ->setUnitText(QStringLiteral("%"));
    shopField<desk::MoneyField>(
        grid, tr("and for each payment"), "cardFixed", [](Shop & s) -> auto& { return s.rules.cardFee.fixed; });
}

void ShopPage::buildSupplies() {
    auto* grid = card(tr("What every line takes"));
    shopMaterial(
        grid, tr("Tape"), "usualTape", MaterialKind::Tape, [](Shop & s) -> auto& { return s.usualTape; });
    shopMaterial(
        grid, tr("Template sheet"), "usualTemplate", MaterialKind::Template,
        [](Shop & s) -> auto& { return s.usualTemplate; });
    auto* more = new desk::WordField(m_formatter, {}, this);
    more->setEmptyAllowed(true);
    put(grid, more, tr("More or fewer: prices shown for"), "ladderQuantities",
        tr("numbers of pieces, such as 12 24 48 96"), 2);
    m_loads.push_back([this, more] {
        QStringList words;
        for (const auto quantity : m_presenter.shop().ladderQuantities) words << QString::number(quantity.value());
        if (!more->isHeld()) more->setRaw(words.join(QLatin1Char(' ')));
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
        more->setOuterProblem(m_presenter.editShop([&](Shop& s) { s.ladderQuantities = quantities; }));
    });
    shopTick(
        grid, tr("Print them on the sheet"), "ladderOnSheet", [](Shop & s) -> auto& { return s.ladderOnSheet; });
}

void ShopPage::buildCustomers() {
    auto* grid =
        card(tr("Customers and exemption"),
             tr("Whether a certificate holds is for you to confirm with your tax authority. Without one in force "
                "on file tax is charged."));
    m_customers = new CustomerCard(m_presenter, m_formatter, this);
    grid->addWidget(m_customers, 0, 0, 1, kColumns);
    m_loads.push_back([this] { m_customers->load(); });
}

void ShopPage::buildBench() {
    auto* grid =
        card(tr("Bench standards"), tr("Starting values: time your own bench. Art to set up are done once for a "
                                       "job, the other steps for every piece."));
    auto* bench = new BenchGrid(m_presenter, m_formatter, this);
    grid->addWidget(bench, 0, 0, 1, kColumns);
    m_loads.push_back([bench] { bench->load(); });
}

void ShopPage::buildMachines() {
    auto* grid =
        card(tr("Press and cutter"),
             tr("A press and freshly pressed work burn: gloves, a cover sheet, ventilation. Retract blades before "
                "loading. The makers’ data, local rules and licensed practice come first."));
    benchField<desk::MoneyField>(
        grid, tr("Press, price"), "pressPrice", [](Bench & b) -> auto& { return b.press.price; });
    benchField<desk::MoneyField>(
        grid, tr("Press, worth at the end"), "pressSalvage", [](Bench & b) -> auto& { return b.press.salvage; });
    benchNumber(
        grid, tr("Press lasts, presses"), "pressLife", [](Bench & b) -> auto& { return b.press.lifePresses; });
    benchField<desk::MoneyField>(
        grid, tr("Running it, per hour"), "pressRunning", [](Bench & b) -> auto& { return b.press.runningPerHour; });
    benchField<desk::LengthField>(
        grid, tr("Platen, width"), "platenWidth", [](Bench & b) -> auto& { return b.press.platenWidth; });
    benchField<desk::LengthField>(
        grid, tr("Platen, depth"), "platenHeight", [](Bench & b) -> auto& { return b.press.platenHeight; });
    benchField<desk::DurationField>(
        grid, tr("Dwell"), "dwell", [](Bench & b) -> auto& { return b.press.dwell; });
    benchField<desk::DurationField>(
        grid, tr("Handling, each cycle"), "handling", [](Bench & b) -> auto& { return b.press.handling; });
    benchField<desk::DurationField>(
        grid, tr("Warm-up"), "warmUp", [](Bench & b) -> auto& { return b.press.warmUp; });
    benchNumber(
        grid, tr("Test presses"), "testPresses", [](Bench & b) -> auto& { return b.press.testPresses; });
    benchField<desk::RateField>(
        grid, tr("Pressed a second time"), "secondShare", [](Bench & b) -> auto& { return b.press.secondPressShare; })
        ->setUnitText(QStringLiteral("%"));
    benchField<desk::DurationField>(
        grid, tr("Second dwell"), "secondDwell", [](Bench & b) -> auto& { return b.press.secondDwell; });
    benchField<desk::TemperatureField>(
        grid, tr("Temperature noted"), "temperature", [](Bench & b) -> auto& { return b.press.temperature; });
    benchField<desk::MoneyField>(
        grid, tr("Cutter, price"), "cutterPrice", [](Bench & b) -> auto& { return b.cutter.price; });
    benchField<desk::MoneyField>(
        grid, tr("Cutter, worth at the end"), "cutterSalvage", [](Bench & b) -> auto& { return b.cutter.salvage; });
    benchNumber(
        grid, tr("Cutter lasts, holes"), "cutterLife", [](Bench & b) -> auto& { return b.cutter.lifeHoles; });
}

void ShopPage::loadAll() {
    for (const auto& load : m_loads) load();
}

void ShopPage::focusStart() { m_first->setFocus(Qt::OtherFocusReason); }

void ShopPage::focusFind() {
    m_customers->focusFind();
    desk::scrollTo(*m_customers);
}

} // namespace sp::shop
