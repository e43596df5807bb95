// SPDX-License-Identifier: MIT
#include "app/counter/line_panel.h"

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
#include "core/needs/material_need.h"

#include <QHBoxLayout>
#include <QToolButton>

namespace sp::counter {

using Owner = CounterPresenter::Owner;

namespace {

using desk::Role;
using desk::TextSize;

/// Stands for "the customer's own garment" among the bases.
QVariant customersGarment() { return QVariant(QStringLiteral("customer")); }

} // namespace

LinePanel::LinePanel(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : Card(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    build();
    connectAll();
    loadLine();
}

QLayout* LinePanel::buildMeasures() {
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    m_pieces = new desk::CountField(m_formatter, this);
    m_pieces->setObjectName(QStringLiteral("pieces"));
    m_baseMaterial = new desk::ChoiceField(m_formatter, this);
    m_baseMaterial->setObjectName(QStringLiteral("onto"));
    m_width = new desk::LengthField(m_formatter, this);
    m_width->setObjectName(QStringLiteral("width"));
    m_height = new desk::LengthField(m_formatter, this);
    m_height->setObjectName(QStringLiteral("height"));
    using catalogue::OrderLine;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_pieces, fieldOf<&OrderLine::quantity>());
    desk::standsFor(*m_baseMaterial, fieldOf<&OrderLine::baseMaterial>());
    desk::standsFor(*m_baseMaterial, fieldOf<&OrderLine::customersGarment>());
    desk::standsFor(*m_width, fieldOf<&OrderLine::width>());
    desk::standsFor(*m_height, fieldOf<&OrderLine::height>());
    row->addWidget(new desk::FieldBox(tr("&Pieces"), m_pieces, this), 2, Qt::AlignTop);
    row->addWidget(new desk::FieldBox(tr("&On"), m_baseMaterial, this), 4, Qt::AlignTop);
    row->addWidget(new desk::FieldBox(tr("&Width"), m_width, this), 2, Qt::AlignTop);
    row->addWidget(new desk::FieldBox(tr("&Height"), m_height, this), 2, Qt::AlignTop);
    return row;
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

    auto* head = new QHBoxLayout;
    m_heading = desk::pageTitle({}, this);
    m_heading->setObjectName(QStringLiteral("lineHeading"));
    head->addWidget(m_heading, 1);
    m_place = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    head->addWidget(m_place);
    m_remove = new QToolButton(this);
    m_remove->setObjectName(QStringLiteral("removeLine"));
    m_remove->setIcon(desk::icon(desk::Icon::Remove, Role::Muted));
    m_remove->setAutoRaise(true);
    m_remove->setAccessibleName(tr("Take this line out of the order"));
    m_remove->setToolTip(m_remove->accessibleName());
    connect(m_remove, &QToolButton::clicked, this, &LinePanel::removeAsked);
    head->addWidget(m_remove);
    column->addLayout(head);
    column->addLayout(buildMeasures());
    auto* second = new QHBoxLayout;
    second->setSpacing(12);
    m_title = new desk::WordField(m_formatter, tr("Give the line a name; the customer reads it on the sheet."), this);
    m_title->setObjectName(QStringLiteral("title"));
    second->addWidget(new desk::FieldBox(tr("&Name on the sheet"), m_title, this), 3, Qt::AlignTop);
    auto* ticks = new QVBoxLayout;
    ticks->setSpacing(4);
    m_onWall = new QCheckBox(tr("&Templates on the wall"), this);
    m_onWall->setObjectName(QStringLiteral("onWall"));
    m_taxable = new QCheckBox(tr("Taxab&le"), this);
    m_taxable->setObjectName(QStringLiteral("taxable"));
    desk::standsFor(*m_title, catalogue::fields::fieldOf<&catalogue::OrderLine::title>());
    desk::standsFor(*m_onWall, catalogue::fields::fieldOf<&catalogue::OrderLine::templatesOnWall>());
    desk::standsFor(*m_taxable, catalogue::fields::fieldOf<&catalogue::OrderLine::taxable>());
    ticks->addWidget(m_onWall);
    ticks->addWidget(m_taxable);
    m_taxRate = new QComboBox(this);
    m_taxRate->setObjectName(QStringLiteral("taxRateOfLine"));
    m_taxRate->setAccessibleName(tr("Tax rate"));
    desk::standsFor(*m_taxRate, catalogue::fields::fieldOf<&catalogue::OrderLine::taxRate>());
    ticks->addWidget(m_taxRate);
    second->addLayout(ticks, 2);
    column->addLayout(second);
    m_sizes = new QWidget(this);
    column->addWidget(m_sizes);
    m_stones = new StoneRows(m_presenter, m_formatter, this);
    column->addWidget(m_stones);
    m_sheets = new SheetRow(m_presenter, m_formatter, this);
    column->addWidget(m_sheets);
    buildBench(column);
    m_short = new desk::MessageBar(this);
    m_short->setClosable(false);
    column->addWidget(m_short);
    m_note = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_note->setWordWrap(true);
    column->addWidget(m_note);
    column->addStretch(1);
}

template<class T>
void LinePanel::typed(desk::ValueField<T>* field, std::function<void(catalogue::OrderLine&, const T&)> put) {
    connect(field, &desk::TypedField::edited, this, [this, field, put = std::move(put)] {
        noteEntry(m_presenter, Owner::Line, *field);
        const auto value = field->value();
        if (!value) return;
        m_presenter.editLine([&](catalogue::OrderLine& line) { put(line, *value); });
    });
    connect(field, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
}

void LinePanel::connectAll() {
    typed<units::Count>(m_pieces, [](auto& line, const units::Count& pieces) { line.quantity = pieces; });
    typed<units::Length>(m_width, [](auto& line, const units::Length& width) { line.width = width; });
    typed<units::Length>(m_height, [](auto& line, const units::Length& height) { line.height = height; });
    connect(m_title, &desk::TypedField::edited, this,
            [this] { m_presenter.editLine([&](catalogue::OrderLine& line) { line.title = m_title->words(); }); });
    connect(m_title, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
    connect(m_baseMaterial, &desk::ChoiceField::chosen, this, [this](const QVariant& id) {
        noteEntry(m_presenter, Owner::Line, *m_baseMaterial);
        for (auto* field : m_sizeFields) m_presenter.setProblem(Owner::Line, field->objectName(), {}, {});
        m_presenter.editLine([&](catalogue::OrderLine& line) {
            line.customersGarment = id == customersGarment();
            line.baseMaterial = id.isValid() && !line.customersGarment ? id.value<base::Id>() : base::Id{};
            line.sizes.clear();
        });
        m_presenter.saveDraft();
        loadSizes();
    });
    connect(m_baseMaterial, &desk::TypedField::edited, this,
            [this] { noteEntry(m_presenter, Owner::Line, *m_baseMaterial); });
    connect(m_onWall, &QCheckBox::clicked, this, [this](bool on) {
        m_presenter.editLine([&](catalogue::OrderLine& line) { line.templatesOnWall = on; });
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
}

void LinePanel::offerBases() {
    auto choices = desk::choicesOf(m_presenter.session().materials(),
                                   {catalogue::MaterialKind::Backing, catalogue::MaterialKind::Blank});
    choices.push_back({customersGarment(), tr("The customer’s own garment"), {}, {}});
    m_baseMaterial->setChoices(std::move(choices));
}

/// Which rate a line is taxed at is asked where the shop has several. A name that is gone stays in the list.
void LinePanel::loadTax() {
    const auto& line = m_presenter.line();
    const auto& rule = m_presenter.prices().shop.rules.tax;
    m_taxable->setChecked(line.taxable);
    m_taxRate->clear();
    m_taxRate->addItem(tr("%1 %2").arg(QString::fromStdString(rule.name), m_formatter.rate(rule.rate)), QString());
    for (const auto& other : rule.others) {
        const auto name = QString::fromStdString(other.name);
        m_taxRate->addItem(tr("%1 %2").arg(name, m_formatter.rate(other.rate)), name);
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
    const auto& line = m_presenter.line();
    const bool blank = line.width.isZero() && line.height.isZero();
    m_pieces->setValue(line.quantity);
    m_title->setRaw(QString::fromStdString(line.title));
    if (blank) {
        m_width->setRaw({});
        m_height->setRaw({});
    } else {
        m_width->setValue(line.width);
        m_height->setValue(line.height);
    }
    m_baseMaterial->setCurrent(line.customersGarment ? customersGarment() : QVariant::fromValue(line.baseMaterial));
    m_onWall->setChecked(line.templatesOnWall);
    loadTax();
    for (QWidget* input :
         {static_cast<QWidget*>(m_pieces), static_cast<QWidget*>(m_title), static_cast<QWidget*>(m_width),
          static_cast<QWidget*>(m_height), static_cast<QWidget*>(m_baseMaterial), static_cast<QWidget*>(m_onWall),
          static_cast<QWidget*>(m_taxable)})
        input->setEnabled(m_presenter.canChange());
    m_remove->setVisible(m_presenter.canChange());
    loadSizes();
    m_stones->load();
    restoreUnread(*this, m_presenter, Owner::Line);
    refresh();
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
    m_place->setText(tr("line %1 of %2").arg(m_presenter.current() + 1).arg(m_presenter.order().lines.size()));
    m_onWall->setChecked(line.templatesOnWall);
    m_stones->refresh();
    m_sheets->refresh();
    refreshBench();
    refreshShortage();
}

void LinePanel::refreshBench() {
    const auto* priced = m_presenter.pricedLine();
    m_bench->setVisible(priced != nullptr);
    m_note->setVisible(priced != nullptr);
    if (!priced) return;
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
    if (m_presenter.line().templatesOnWall) notes << tr("Templates on the wall: no set-up charged.");
    const auto& press = m_presenter.prices().bench.press;
    if (!press.secondPressShare.isZero())
        notes << tr("A second press of %1 in %2 of the pieces.")
                     .arg(m_formatter.duration(press.secondDwell), m_formatter.rate(press.secondPressShare));
    m_note->setText(notes.join(QLatin1Char(' ')));
}

void LinePanel::refreshShortage() {
    const auto* priced = m_presenter.pricedLine();
    QStringList shortages;
    if (priced && !m_presenter.isIssued()) {
        const auto& shelf = m_presenter.session().shelf();
        const auto& line = m_presenter.line();
        for (const auto& stone : line.stones) {
            const auto* material = m_presenter.prices().find(stone.material);
            const auto found = shelf.find(stone.material);
            const auto there = found == shelf.end() ? 0 : found->second;
            const auto need =
                needs::wholeFor(needs::needOfStone(stone.count, material->material), needs::piecesToMake(line));
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
    m_pieces->setFocus(Qt::OtherFocusReason);
    m_pieces->selectAll();
}

} // namespace sp::counter
