// SPDX-License-Identifier: MIT
#include "app/counter/line_panel.h"

#include "app/artwork/design_pictures.h"
#include "app/artwork/design_view.h"
#include "app/artwork/made_design.h"
#include "app/counter/design_choices.h"
#include "app/counter/sheet_row.h"
#include "app/counter/stone_rows.h"
#include "app/counter/typed_entries.h"
#include "app/desk/bench_style.h"
#include "app/desk/choices.h"
#include "app/desk/empty_state.h"
#include "app/desk/field_binding.h"
#include "app/desk/icons.h"
#include "app/desk/scroll_page.h"
#include "app/words/names.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/needs/line_check.h"
#include "core/needs/material_need.h"
#include "core/needs/spares.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QToolButton>

#include <algorithm>

namespace sp::counter {

using Owner = CounterPresenter::Owner;

namespace {

using desk::Role;
using desk::TextSize;

/// Stands for "the customer's own garment" among the bases.
QVariant customersGarment() { return QVariant(QStringLiteral("customer")); }

/// The stones of a piece over all its places, each material once.
std::vector<catalogue::StoneCount> stonesOf(const catalogue::OrderLine& line) {
    std::vector<catalogue::StoneCount> stones;
    for (const auto& place : line.places)
        for (const auto& stone : place.stones) {
            const auto known = std::ranges::find(stones, stone.material, &catalogue::StoneCount::material);
            if (known == stones.end())
                stones.push_back(stone);
            else
                known->count += stone.count;
        }
    return stones;
}

} // namespace

LinePanel::LinePanel(CounterPresenter& presenter, const desk::Formatter& formatter, artwork::DesignPictures& pictures,
                     QWidget* parent)
    : Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_pictures(pictures) {
    build();
    connectAll();
    loadLine();
}

QLayout* LinePanel::buildHead() {
    auto* head = new QHBoxLayout;
    m_heading = desk::pageTitle({}, this);
    m_heading->setObjectName(QStringLiteral("lineHeading"));
    head->addWidget(m_heading, 1);
    m_number = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    head->addWidget(m_number);
    m_remove = new QToolButton(this);
    m_remove->setObjectName(QStringLiteral("removeLine"));
    m_remove->setIcon(desk::icon(desk::Icon::Remove, Role::Muted));
    m_remove->setAutoRaise(true);
    m_remove->setAccessibleName(tr("Take this line out of the order"));
    m_remove->setToolTip(m_remove->accessibleName());
    connect(m_remove, &QToolButton::clicked, this, &LinePanel::removeAsked);
    head->addWidget(m_remove);
    return head;
}

/// What is of the whole line.
QLayout* LinePanel::buildLine() {
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    m_pieces = new desk::CountField(m_formatter, this);
    m_pieces->setObjectName(QStringLiteral("pieces"));
    m_baseMaterial = new desk::ChoiceField(m_formatter, this);
    m_baseMaterial->setObjectName(QStringLiteral("onto"));
    m_title = new desk::WordField(m_formatter, tr("Give the line a name; the customer reads it on the sheet."), this);
    m_title->setObjectName(QStringLiteral("title"));
    m_price = new desk::MoneyField(m_formatter, this);
    m_price->setObjectName(QStringLiteral("chargeEach"));
    m_price->setEmptyAllowed(true);
    using catalogue::OrderLine;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_pieces, fieldOf<&OrderLine::quantity>());
    desk::standsFor(*m_baseMaterial, fieldOf<&OrderLine::baseMaterial>());
    desk::standsFor(*m_baseMaterial, fieldOf<&OrderLine::customersGarment>());
    desk::standsFor(*m_title, fieldOf<&OrderLine::title>());
    desk::standsFor(*m_price, fieldOf<&OrderLine::overrideEach>());
    row->addWidget(new desk::FieldBox(tr("&Pieces"), m_pieces, this), 2, Qt::AlignTop);
    row->addWidget(new desk::FieldBox(tr("&On"), m_baseMaterial, this), 4, Qt::AlignTop);
    row->addWidget(new desk::FieldBox(tr("&Name on the sheet"), m_title, this), 4, Qt::AlignTop);
    m_priceBox = new desk::FieldBox(tr("Pr&ice each"), m_price, this);
    row->addWidget(m_priceBox, 2, Qt::AlignTop);
    return row;
}

/// What is of the place that is looked at, and the tick that a charge has too.
QLayout* LinePanel::buildPlace() {
    m_placeFields = new QWidget(this);
    auto* fields = new QHBoxLayout(m_placeFields);
    fields->setContentsMargins(0, 0, 0, 0);
    fields->setSpacing(12);
    m_where = new desk::WordField(m_formatter, {}, this);
    m_where->setObjectName(QStringLiteral("where"));
    m_where->setEmptyAllowed(true);
    m_where->setPlaceholderText(tr("Front", "where on the piece"));
    // A surcharge goes by the very name that the shop gave the place.
    m_knownPlaces = new QStringListModel(this);
    auto* known = new QCompleter(m_knownPlaces, m_where);
    known->setCaseSensitivity(Qt::CaseInsensitive);
    known->setFilterMode(Qt::MatchContains);
    m_where->setCompleter(known);
    // The field shows the one that is marked in the list, and the price goes by what the field shows.
    connect(known, qOverload<const QString&>(&QCompleter::highlighted), this, [this](const QString& name) {
        m_presenter.editPlace([&](catalogue::Placement& place) { place.place = name.trimmed().toStdString(); });
    });
    m_width = new desk::LengthField(m_formatter, this);
    m_width->setObjectName(QStringLiteral("width"));
    m_height = new desk::LengthField(m_formatter, this);
    m_height->setObjectName(QStringLiteral("height"));
    for (auto* side : {m_width, m_height}) side->setMinimumWidth(desk::scaled(88)); // so that "3 1/2" can be read
    m_onWall = new QCheckBox(tr("&Templates on the wall"), this);
    m_onWall->setObjectName(QStringLiteral("onWall"));
    m_taxable = new QCheckBox(tr("Taxab&le"), this);
    m_taxable->setObjectName(QStringLiteral("taxable"));
    using catalogue::Placement;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_where, fieldOf<&Placement::place>());
    desk::standsFor(*m_width, fieldOf<&Placement::width>());
    desk::standsFor(*m_height, fieldOf<&Placement::height>());
    desk::standsFor(*m_onWall, fieldOf<&Placement::templatesOnWall>());
    desk::standsFor(*m_taxable, fieldOf<&catalogue::OrderLine::taxable>());
    fields->addWidget(new desk::FieldBox(tr("&Where on it"), m_where, this), 3, Qt::AlignTop);
    fields->addWidget(new desk::FieldBox(tr("Wi&dth"), m_width, this), 2, Qt::AlignTop);
    fields->addWidget(new desk::FieldBox(tr("&Height"), m_height, this), 2, Qt::AlignTop);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(m_placeFields, 7);
    auto* ticks = new QVBoxLayout;
    ticks->setSpacing(4);
    ticks->addWidget(m_onWall);
    ticks->addWidget(m_taxable);
    m_taxRate = new QComboBox(this);
    m_taxRate->setObjectName(QStringLiteral("taxRateOfLine"));
    m_taxRate->setAccessibleDescription(tr("Tax rate"));
    // Not as wide as the longest name there is: its column keeps its width.
    m_taxRate->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_taxRate->setMinimumContentsLength(12);
    desk::standsFor(*m_taxRate, fieldOf<&catalogue::OrderLine::taxRate>());
    ticks->addWidget(m_taxRate);
    m_atNoCharge = new QCheckBox(tr("At no charge"), this);
    m_atNoCharge->setObjectName(QStringLiteral("lineAtNoCharge"));
    m_atNoCharge->setToolTip(tr("Done again, a sample, a gift: no price, its cost counts in the figures"));
    desk::standsFor(*m_atNoCharge, fieldOf<&catalogue::OrderLine::atNoCharge>());
    ticks->addWidget(m_atNoCharge);
    row->addLayout(ticks, 3);
    return row;
}

void LinePanel::buildAddPlace() {
    m_addPlace = new desk::ChoiceField(m_formatter, this);
    m_addPlace->setObjectName(QStringLiteral("addPlace"));
    desk::standsFor(*m_addPlace, catalogue::fields::fieldOf<&catalogue::OrderLine::places>());
    m_addPlace->setPlaceholderText(tr("Type part of a design’s name"));
    m_addPlace->setEmptyAllowed(true);
    m_addPlace->setEnterMovesOn(false); // a chosen design leads to where it goes
    m_addPlaceBox = new desk::FieldBox(tr("Add a design els&ewhere on it"), m_addPlace, this);
    m_stones->addBesideAdding(m_addPlaceBox);
    connect(m_addPlace, &desk::ChoiceField::chosen, this, [this](const QVariant& id) {
        if (!id.isValid()) return;
        const auto design = id.value<base::Id>(); // the field forgets what `id` refers to
        m_addPlace->setCurrent({});
        m_presenter.addPlace(design);
        m_where->setFocus(Qt::OtherFocusReason);
    });
}

void LinePanel::buildBench(QVBoxLayout* column) {
    m_bench = new QWidget(this);
    auto* bench = new QVBoxLayout(m_bench);
    bench->setContentsMargins(0, 0, 0, 0);
    bench->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::sectionTitle(tr("Bench"), this), 1);
    m_benchTime = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_benchTime->setObjectName(QStringLiteral("benchTime"));
    head->addWidget(m_benchTime);
    bench->addLayout(head);
    m_benchBar = new desk::ShareBar(this);
    bench->addWidget(m_benchBar);
    column->addWidget(m_bench);
}

void LinePanel::build() {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(1, 1, 1, 1);
    auto* empty = new desk::EmptyState(desk::Icon::Counter, tr("Nothing is ordered yet."), tr("Type a design"), this);
    connect(empty, &desk::EmptyState::acted, this, &LinePanel::designsWanted);
    m_empty = empty;
    outer->addWidget(m_empty, 1);
    auto* scroll = new desk::ScrollPage(desk::cardMargins(), this);
    outer->addWidget(scroll, 1);
    m_content = scroll;
    auto* column = scroll->column();

    column->addLayout(buildHead());
    column->addLayout(buildLine());
    m_sizes = new QWidget(this);
    column->addWidget(m_sizes);
    m_places = new desk::TabRow(this);
    m_places->setObjectName(QStringLiteral("places"));
    column->addWidget(m_places);
    column->addLayout(buildPlace());
    m_picture = new artwork::DesignView(this);
    m_picture->setObjectName(QStringLiteral("linePicture"));
    column->addWidget(m_picture);
    m_otherCounts = new desk::TextLabel(tr("The picture is of other counts than this line has."), TextSize::Small,
                                        Role::Muted, desk::Weight::Plain, this);
    m_otherCounts->setObjectName(QStringLiteral("pictureOfOtherCounts"));
    m_otherCounts->setWordWrap(true);
    column->addWidget(m_otherCounts);
    m_stones = new StoneRows(m_presenter, m_formatter, this);
    column->addWidget(m_stones);
    buildAddPlace();
    m_sheets = new SheetRow(m_presenter, m_formatter, this);
    column->addWidget(m_sheets);
    buildBench(column);
    m_short = new desk::MessageBar(this);
    m_short->setClosable(false);
    m_short->setStandsApart(true);
    column->addWidget(m_short);
    m_note = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_note->setObjectName(QStringLiteral("benchNote"));
    m_note->setWordWrap(true);
    column->addWidget(m_note);
    column->addStretch(1);
}

template<class T>
void LinePanel::typed(Owner owner, desk::ValueField<T>* field, std::function<void(const T&)> put) {
    connect(field, &desk::TypedField::edited, this, [this, owner, field, put = std::move(put)] {
        noteEntry(m_presenter, owner, *field);
        if (const auto value = field->value()) put(*value);
    });
    connect(field, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
}

void LinePanel::connectAll() {
    using catalogue::OrderLine;
    using catalogue::Placement;
    typed<units::Count>(Owner::Line, m_pieces, [this](const units::Count& pieces) {
        m_presenter.editLine([&](OrderLine& line) { line.quantity = pieces; });
    });
    typed<units::Length>(Owner::Place, m_width, [this](const units::Length& width) {
        m_presenter.editPlace([&](Placement& place) { place.width = width; });
    });
    typed<units::Length>(Owner::Place, m_height, [this](const units::Length& height) {
        m_presenter.editPlace([&](Placement& place) { place.height = height; });
    });
    for (const auto signal : {&desk::TypedField::edited, &desk::TypedField::committed})
        connect(m_where, signal, this,
                [this] { m_presenter.editPlace([&](Placement& place) { place.place = m_where->words(); }); });
    connect(m_price, &desk::TypedField::edited, this, [this] {
        noteEntry(m_presenter, Owner::Line, *m_price);
        if (const auto price = m_price->optionalValue())
            m_presenter.editLine([&](OrderLine& line) { line.overrideEach = *price; });
    });
    connect(m_title, &desk::TypedField::edited, this,
            [this] { m_presenter.editLine([&](OrderLine& line) { line.title = m_title->words(); }); });
    for (desk::TypedField* field : {static_cast<desk::TypedField*>(m_title), static_cast<desk::TypedField*>(m_where),
                                    static_cast<desk::TypedField*>(m_price)})
        connect(field, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
    connect(m_places, &desk::TabRow::chosen, &m_presenter, &CounterPresenter::selectPlace);
    connect(m_places, &desk::TabRow::removeAsked, &m_presenter, &CounterPresenter::removePlace);
    connect(m_baseMaterial, &desk::ChoiceField::chosen, this, [this](const QVariant& id) {
        noteEntry(m_presenter, Owner::Line, *m_baseMaterial);
        for (auto* field : m_sizeFields) m_presenter.setProblem(Owner::Line, field->objectName(), {}, {});
        m_presenter.editLine([&](catalogue::OrderLine& line) {
            line.customersGarment = id == customersGarment() && !line.isCharge();
            line.baseMaterial = id.isValid() && !line.customersGarment ? id.value<base::Id>() : base::Id{};
            line.sizes.clear();
        });
        m_presenter.saveDraft();
        loadSizes();
    });
    connect(m_baseMaterial, &desk::TypedField::edited, this,
            [this] { noteEntry(m_presenter, Owner::Line, *m_baseMaterial); });
    connect(m_onWall, &QCheckBox::clicked, this, [this](bool on) {
        m_presenter.editPlace([&](Placement& place) { place.templatesOnWall = on; });
        m_presenter.saveDraft();
    });
    connect(m_atNoCharge, &QCheckBox::clicked, this, [this](bool free) {
        m_presenter.editLine([&](catalogue::OrderLine& line) { line.atNoCharge = free; });
        m_presenter.saveDraft();
    });
    connect(m_taxable, &QCheckBox::clicked, this, [this](bool on) {
        m_presenter.editLine([&](catalogue::OrderLine& line) { line.taxable = on; });
        m_taxRate->setEnabled(on);
        m_presenter.saveDraft();
    });
    connect(m_taxRate, &QComboBox::activated, this, [this] {
        const auto name = m_taxRate->currentData().toString().toStdString();
        m_presenter.editLine([&](catalogue::OrderLine& line) { line.taxRate = name; });
        m_presenter.saveDraft();
    });
    connect(&m_presenter, &CounterPresenter::changed, this, &LinePanel::refresh);
    connect(&m_presenter, &CounterPresenter::lineShown, this, &LinePanel::loadLine);
    connect(&m_presenter.session(), &session::BookSession::changed, this, &LinePanel::offerBases);
    // The presenter hears of a change of the book before the pictures do.
    connect(&m_pictures, &artwork::DesignPictures::changed, this, &LinePanel::refreshPicture);
}

void LinePanel::offerBases() {
    using catalogue::MaterialKind;
    const auto& materials = m_presenter.session().materials();
    const bool isCharge = m_presenter.hasLine() && m_presenter.line().isCharge();
    auto choices = isCharge ? desk::choicesOf(materials, {MaterialKind::Blank, MaterialKind::Packing})
                            : desk::choicesOf(materials, {MaterialKind::Backing, MaterialKind::Blank});
    if (!isCharge) choices.push_back({customersGarment(), tr("The customer’s own garment"), {}, {}});
    m_baseMaterial->setEmptyAllowed(isCharge);
    m_baseMaterial->setChoices(std::move(choices));
    m_addPlace->setChoices(designChoices(m_presenter.session(), m_formatter, m_pictures));
}

void LinePanel::offerPlaces() {
    QStringList names;
    for (const auto& place : m_presenter.prices().shop.rules.places) names << QString::fromStdString(place.place);
    if (names != m_knownPlaces->stringList()) m_knownPlaces->setStringList(names); // it may be open
}

/// Which rate a line is taxed at is asked where the shop has several. A name that is gone stays in the list.
void LinePanel::loadTax() {
    const auto& line = m_presenter.line();
    const auto& rule = m_presenter.prices().shop.rules.tax;
    m_taxable->setChecked(line.taxable);
    m_atNoCharge->setChecked(line.atNoCharge);
    m_atNoCharge->setEnabled(m_presenter.canChange());
    m_taxRate->clear();
    m_taxRate->addItem(tr("%1 %2 %").arg(QString::fromStdString(rule.name), m_formatter.rateNumber(rule.rate)),
                       QString());
    for (const auto& other : rule.others) {
        const auto name = QString::fromStdString(other.name);
        m_taxRate->addItem(tr("%1 %2 %").arg(name, m_formatter.rateNumber(other.rate)), name);
    }
    const auto wanted = line.taxRate == rule.name ? QString() : QString::fromStdString(line.taxRate);
    if (m_taxRate->findData(wanted) < 0) m_taxRate->addItem(wanted, wanted);
    m_taxRate->setCurrentIndex(m_taxRate->findData(wanted));
    m_taxRate->setVisible(m_taxRate->count() > 1);
    m_taxRate->setEnabled(line.taxable && m_presenter.canChange());
}

void LinePanel::loadLine() {
    const bool there = m_presenter.hasLine();
    m_content->setVisible(there);
    m_empty->setVisible(!there);
    if (!there) return;
    offerBases();
    offerPlaces();
    const auto& line = m_presenter.line();
    m_pieces->setValue(line.quantity);
    m_title->setRaw(QString::fromStdString(line.title));
    m_price->setOptionalValue(line.overrideEach);
    m_priceBox->setVisible(line.isCharge());
    const bool onNothing = line.isCharge() && line.baseMaterial.isNone();
    m_baseMaterial->setCurrent(line.customersGarment ? customersGarment()
                               : onNothing           ? QVariant()
                                                     : QVariant::fromValue(line.baseMaterial));
    loadTax();
    for (QWidget* input :
         {static_cast<QWidget*>(m_pieces), static_cast<QWidget*>(m_title), static_cast<QWidget*>(m_price),
          static_cast<QWidget*>(m_where), static_cast<QWidget*>(m_width), static_cast<QWidget*>(m_height),
          static_cast<QWidget*>(m_baseMaterial), static_cast<QWidget*>(m_onWall), static_cast<QWidget*>(m_taxable)})
        input->setEnabled(m_presenter.canChange());
    m_remove->setVisible(m_presenter.canChange());
    loadSizes();
    loadPlace();
    m_stones->load();
    restoreUnread(*this, m_presenter, Owner::Line);
    restoreUnread(*this, m_presenter, Owner::Place);
    refresh();
}

void LinePanel::loadPlace() {
    const auto* place = m_presenter.place();
    m_placeFields->setVisible(place != nullptr);
    m_onWall->setVisible(place != nullptr);
    m_addPlaceBox->setVisible(place != nullptr && m_presenter.canChange());
    if (!place) return;
    m_where->setRaw(QString::fromStdString(place->place));
    if (place->width.isZero() && place->height.isZero()) {
        m_width->setRaw({});
        m_height->setRaw({});
    } else {
        m_width->setValue(place->width);
        m_height->setValue(place->height);
    }
}

void LinePanel::loadSizes() {
    m_sizeFields.clear();
    qDeleteAll(m_sizes->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    delete m_sizes->layout();
    m_sizes->hide();
    if (!m_presenter.hasLine()) return;
    const auto& line = m_presenter.line();
    const auto* baseMaterial = line.customersGarment ? nullptr : m_presenter.prices().find(line.baseMaterial);
    if (!baseMaterial || baseMaterial->material.sizes.empty()) return;
    auto* row = new QHBoxLayout(m_sizes);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    for (const auto& size : baseMaterial->material.sizes) {
        auto* field = new desk::CountField(m_formatter, m_sizes);
        const auto name = QString::fromStdString(size.name);
        field->setObjectName(QStringLiteral("size_") + name);
        desk::standsFor(*field, catalogue::fields::fieldOf<&catalogue::SizeCount::count>());
        field->setEmptyAllowed(true);
        for (const auto& chosen : line.sizes)
            if (chosen.size == size.name && !chosen.count.isZero()) field->setValue(chosen.count);
        field->setEnabled(m_presenter.canChange());
        connect(field, &desk::TypedField::edited, this, &LinePanel::sizeTyped);
        connect(field, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
        row->addWidget(new desk::FieldBox(name, field, m_sizes), 1, Qt::AlignTop);
        m_sizeFields.push_back(field);
    }
    m_sizes->show();
}

void LinePanel::sizeTyped() {
    std::vector<catalogue::SizeCount> sizes;
    bool isReadable = true;
    for (auto* field : m_sizeFields) {
        const auto count = field->optionalValue();
        noteEntry(m_presenter, Owner::Line, *field);
        isReadable = isReadable && count;
        if (count && *count && !(*count)->isZero())
            sizes.push_back({field->objectName().mid(5).toStdString(), **count});
    }
    if (isReadable) m_presenter.editLine([&](catalogue::OrderLine& line) { line.sizes = sizes; });
}

void LinePanel::refresh() {
    if (!m_presenter.hasLine()) return;
    const auto& line = m_presenter.line();
    m_heading->setText(QString::fromStdString(line.title));
    m_number->setText(tr("line %1 of %2").arg(m_presenter.current() + 1).arg(m_presenter.order().lines.size()));
    if (const auto* place = m_presenter.place()) m_onWall->setChecked(place->templatesOnWall);
    refreshPlaces();
    refreshPicture();
    m_stones->refresh();
    m_sheets->refresh();
    refreshBench();
    refreshShortage();
}

/// The design of the place that is looked at; a one-off has none.
void LinePanel::refreshPicture() {
    const auto* place = m_presenter.place();
    const auto picture = place ? m_pictures.stones(place->design) : nullptr;
    m_picture->setVisible(picture != nullptr);
    m_otherCounts->setVisible(picture && !artwork::showsTheCounts(*picture, place->stones));
    if (!picture) return;
    m_picture->showDesign(QString::fromStdString(needs::titleOf(m_presenter.line(), *place)), picture, place->width,
                          place->height, m_formatter);
}

/// Of a line with one place there is nothing to choose.
void LinePanel::refreshPlaces() {
    const auto& line = m_presenter.line();
    m_places->setVisible(line.places.size() > 1);
    if (line.places.size() < 2) return;
    QStringList names;
    for (const auto& place : line.places) {
        const auto title = QString::fromStdString(needs::titleOf(line, place));
        names << (place.place.empty()
                      ? title
                      : tr("%1: %2", "a place and its design").arg(QString::fromStdString(place.place), title));
    }
    m_places->setTabs(names, m_presenter.currentPlace());
    m_places->setRemoval(m_presenter.canChange() ? tr("Take this place off the piece") : QString());
}

void LinePanel::refreshBench() {
    const auto* priced = m_presenter.pricedLine();
    const bool isMade = priced && !m_presenter.line().isCharge();
    m_bench->setVisible(isMade);
    m_note->setVisible(isMade);
    if (!isMade) return;
    std::vector<desk::Share> shares;
    for (const auto step : catalogue::kSteps) {
        const auto time = priced->cost.bench.of(step);
        if (time.isZero()) continue;
        shares.push_back({words::nameOf(step), time.milliseconds(), m_formatter.duration(time)});
    }
    m_benchBar->setShares(std::move(shares));
    // Whole minutes are exact enough to plan a day at the bench.
    const auto total = priced->cost.bench.total();
    const auto minutes = units::Duration::fromMinutes((total.milliseconds() + 59'999) / 60'000);
    m_benchTime->setText(
        tr("%1 for %2").arg(m_formatter.duration(minutes), m_formatter.count(m_presenter.line().quantity)));
    QStringList notes;
    const auto* design = m_presenter.session().design(m_presenter.place()->design);
    if (design && artwork::isEstimateNote(design->note)) notes << tr("Its stones are estimated, not counted.");
    if (const auto first = m_presenter.sharesSetWith())
        notes << tr("Made with the set of line %1.").arg(*first + 1);
    else if (const auto beside = m_presenter.hasSetBeside())
        notes << tr("A set of its own: its size, stones or plan are not those of line %1.").arg(*beside + 1);
    if (m_presenter.place()->templatesOnWall)
        notes << (priced->cost.paidOff.isZero() ? tr("Templates on the wall: no set-up charged.")
                                                : tr("Templates on the wall: each piece bears its share of the set."));
    const auto& press = m_presenter.prices().bench.press;
    if (!press.secondPressShare.isZero())
        notes << tr("A second press of %1 in %2 of the pieces.")
                     .arg(m_formatter.duration(press.secondDwell), m_formatter.rate(press.secondPressShare));
    if (const auto spares = needs::spareNote(m_presenter.spares(), needs::spareRuleOf(m_presenter.prices().shop)))
        notes << words::sentence(*spares);
    m_note->setText(notes.join(QLatin1Char(' ')));
}

void LinePanel::refreshShortage() {
    const auto* priced = m_presenter.pricedLine();
    QStringList shortages;
    if (priced && !m_presenter.isIssued()) {
        const auto& shelf = m_presenter.session().shelf();
        const auto& line = m_presenter.line();
        const auto made = line.quantity.value() + m_presenter.spares().pieces;
        for (const auto& [id, perPiece] : stonesOf(line)) {
            const auto* material = m_presenter.prices().find(id);
            const auto found = shelf.find(id);
            const auto there = found == shelf.end() ? 0 : found->second;
            const auto need = needs::wholeFor(needs::needOfStone(perPiece, material->material), made);
            if (need > there)
                shortages << words::counted("sp::counter::LinePanel",
                                            QT_TRANSLATE_N_NOOP("sp::counter::LinePanel", "%1 is short by %2 stones."),
                                            "%1 is short by %2 stone.", need - there)
                                 .arg(QString::fromStdString(material->material.name),
                                      m_formatter.count(units::Count::of(need - there)));
        }
    }
    const auto sentence = shortages.join(QLatin1Char(' '));
    if (sentence.isEmpty())
        m_short->dismiss();
    else if (sentence != m_short->sentence())
        m_short->tell(desk::Tone::Warn, sentence);
}

void LinePanel::focusPieces() {
    if (!m_presenter.hasLine()) return;
    desk::TypedField* first = m_presenter.line().isCharge() ? static_cast<desk::TypedField*>(m_title) : m_pieces;
    first->setFocus(Qt::OtherFocusReason);
    first->selectAll();
}

} // namespace sp::counter

#include "moc_line_panel.cpp"
