// SPDX-License-Identifier: MIT
#include "app/supplies/material_card.h"

#include "app/desk/card.h"
#include "app/desk/field_binding.h"
#include "app/desk/stone_painter.h"
#include "app/supplies/colour_button.h"
#include "app/supplies/colour_words.h"
#include "app/supplies/pack_rows.h"
#include "app/supplies/size_rows.h"
#include "app/words/names.h"
#include "app/words/shelf_words.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/catalogue/stone_size.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace sp::supplies {

using catalogue::Material;
using catalogue::MaterialKind;
using catalogue::SheetTraits;
using catalogue::StoneTraits;
using catalogue::fields::fieldOf;
using db::records::MoveKind;

MaterialCard::MaterialCard(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    m_name = new desk::WordField(m_formatter, tr("Give the material a name."), this);
    m_name->setObjectName(QStringLiteral("materialName"));
    column->addWidget(new desk::FieldBox(tr("N&ame"), m_name, this));
    desk::standsFor(*m_name, fieldOf<&Material::name>());
    saveWith(m_name, [this](Material& m) { m.name = m_name->words(); });
    column->addWidget(m_stone = buildStone());
    column->addWidget(m_sheet = buildSheet());
    column->addWidget(m_sizes = new SizeRows(m_presenter, m_formatter, this));
    m_packs = new PackRows(m_presenter, m_formatter, this);
    column->addWidget(m_packs);
    column->addWidget(buildPrice());
    column->addWidget(buildShelf());
}

desk::FieldBox* MaterialCard::box(desk::FlowGrid* grid, const QString& label, QWidget* field, const char* name,
                                  int span) {
    field->setObjectName(QLatin1String(name));
    auto* made = new desk::FieldBox(label, field, this);
    grid->add(made, span);
    return made;
}

template<class Field, class Put>
void MaterialCard::saveWith(Field* field, Put put) {
    desk::saveWhenGood(*field, [this, put] { return m_presenter.edit(put); });
}

template<class Put>
void MaterialCard::saveChoice(QComboBox* combo, Put put) {
    connect(combo, &QComboBox::activated, this,
            [this, combo, put] { m_presenter.edit([&](Material& m) { put(m, combo->currentData().toInt()); }); });
}

QWidget* MaterialCard::buildStone() {
    auto* part = new QWidget(this);
    auto* grid = new desk::FlowGrid(4);
    part->setLayout(grid);
    m_colour = new desk::WordField(m_formatter, tr("Give the colour as the trade says it."), this);
    m_size = new QComboBox(this);
    for (const auto& size : catalogue::stoneSizes())
        m_size->addItem(QString::fromUtf8(size.name.data(), static_cast<qsizetype>(size.name.size())));
    m_picture = new ColourButton(this);
    m_loss = new desk::RateField(m_formatter, this);
    m_loss->setUnitText(QStringLiteral("%"));
    desk::standsFor(*m_colour, fieldOf<&StoneTraits::colour>());
    desk::standsFor(*m_size, fieldOf<&StoneTraits::size>());
    desk::standsFor(*m_picture, fieldOf<&StoneTraits::rgb>());
    desk::standsFor(*m_loss, fieldOf<&StoneTraits::loss>());
    box(grid, tr("&Colour"), m_colour, "stoneColour");
    box(grid, tr("&Size"), m_size, "stoneSize");
    box(grid, tr("&Picture’s colour"), m_picture, "stonePicture");
    box(grid, tr("&Lost"), m_loss, "stoneLoss")->setRemark(tr("of the stones taken out"));
    saveWith(m_colour, [this](Material& m) {
        // A known name brings its picture along, unless another one was chosen.
        const auto before = colourCalled(QString::fromStdString(m.stone.colour));
        const auto now = colourCalled(m_colour->text());
        if (now && (m.stone.rgb == 0 || m.stone.rgb == before)) m.stone.rgb = *now;
        m.stone.colour = m_colour->words();
    });
    saveWith(m_loss, [this](Material& m) { m.stone.loss = *m_loss->value(); });
    connect(m_size, &QComboBox::activated, this,
            [this] { m_presenter.edit([&](Material& m) { m.stone.size = m_size->currentText().toStdString(); }); });
    connect(m_picture, &ColourButton::chosen, this,
            [this](quint32 rgb) { m_presenter.edit([&](Material& m) { m.stone.rgb = rgb; }); });
    return part;
}

QWidget* MaterialCard::buildSheet() {
    auto* part = new QWidget(this);
    auto* grid = new desk::FlowGrid(4);
    part->setLayout(grid);
    m_form = new QComboBox(this);
    m_form->addItem(tr("sheets"), static_cast<int>(catalogue::SheetForm::Sheet));
    m_form->addItem(tr("a roll"), static_cast<int>(catalogue::SheetForm::Roll));
    m_share = new QComboBox(this);
    m_share->addItem(tr("whole sheets"), static_cast<int>(catalogue::ShareBasis::WholeSheets));
    m_share->addItem(tr("its share; offcuts are kept"), static_cast<int>(catalogue::ShareBasis::ByPosition));
    for (auto** length : {&m_width, &m_height, &m_margin, &m_border, &m_gap})
        *length = new desk::LengthField(m_formatter, this);
    m_lifts = new desk::CountField(m_formatter, this);
    m_oneWay = new QCheckBox(tr("&Has a direction: no turning"), this);
    m_oneWay->setObjectName(QStringLiteral("oneWay"));
    desk::standsFor(*m_form, fieldOf<&SheetTraits::form>());
    desk::standsFor(*m_share, fieldOf<&SheetTraits::basis>());
    desk::standsFor(*m_width, fieldOf<&SheetTraits::width>());
    desk::standsFor(*m_height, fieldOf<&SheetTraits::height>());
    desk::standsFor(*m_margin, fieldOf<&SheetTraits::margin>());
    desk::standsFor(*m_border, fieldOf<&SheetTraits::border>());
    desk::standsFor(*m_gap, fieldOf<&SheetTraits::gap>());
    desk::standsFor(*m_lifts, fieldOf<&SheetTraits::lifts>());
    desk::standsFor(*m_oneWay, fieldOf<&SheetTraits::oneWay>());
    box(grid, tr("Comes &in"), m_form, "sheetForm");
    box(grid, tr("&Width"), m_width, "sheetWidth");
    m_heightBox = box(grid, tr("Hei&ght"), m_height, "sheetHeight");
    box(grid, tr("&Margin"), m_margin, "sheetMargin")->setRemark(tr("unusable, all round"));
    box(grid, tr("A piece pays for"), m_share, "shareBasis");
    box(grid, tr("B&order round the design"), m_border, "sheetBorder");
    box(grid, tr("Gap &between pieces"), m_gap, "sheetGap");
    m_liftsBox = box(grid, tr("A pi&ece lifts"), m_lifts, "lifts");
    m_liftsBox->setRemark(tr("times"));
    grid->add(m_oneWay, 4);
    saveWith(m_width, [this](Material& m) { m.sheet.width = *m_width->value(); });
    saveWith(m_height, [this](Material& m) { m.sheet.height = *m_height->value(); });
    saveWith(m_margin, [this](Material& m) { m.sheet.margin = *m_margin->value(); });
    saveWith(m_border, [this](Material& m) { m.sheet.border = *m_border->value(); });
    saveWith(m_gap, [this](Material& m) { m.sheet.gap = *m_gap->value(); });
    saveWith(m_lifts, [this](Material& m) { m.sheet.lifts = m_lifts->value()->value(); });
    saveChoice(m_form, [](Material& m, int value) { m.sheet.form = static_cast<catalogue::SheetForm>(value); });
    saveChoice(m_share, [](Material& m, int value) { m.sheet.basis = static_cast<catalogue::ShareBasis>(value); });
    connect(m_oneWay, &QCheckBox::clicked, this,
            [this](bool on) { m_presenter.edit([&](Material& m) { m.sheet.oneWay = on; }); });
    return part;
}

QWidget* MaterialCard::buildPrice() {
    auto* part = new QWidget(this);
    auto* grid = new desk::FlowGrid(4);
    part->setLayout(grid);
    m_basis = new QComboBox(this);
    m_basis->addItem(tr("what the usual pack costs today"), static_cast<int>(catalogue::PriceBasis::Replacement));
    m_basis->addItem(tr("the average of the shelf"), static_cast<int>(catalogue::PriceBasis::ShelfAverage));
    m_basis->addItem(tr("a fixed price"), static_cast<int>(catalogue::PriceBasis::Fixed));
    m_fixed = new desk::MoneyField(m_formatter, this);
    desk::standsFor(*m_basis, fieldOf<&Material::basis>());
    desk::standsFor(*m_fixed, fieldOf<&Material::fixedPrice>());
    box(grid, tr("The cost sheet &uses"), m_basis, "priceBasis", 2);
    box(grid, tr("Fi&xed price of one"), m_fixed, "fixedPrice");
    m_nothing = new QCheckBox(tr("0.00 is meant"), this);
    m_nothing->setObjectName(QStringLiteral("nothingMeant"));
    m_nothing->setToolTip(tr("Then nobody is told any more that it costs nothing, and Buying takes a pack at 0.00"));
    desk::standsFor(*m_nothing, fieldOf<&Material::meantAsNothing>());
    grid->add(new desk::BesideFields(m_nothing, this));
    connect(m_nothing, &QCheckBox::clicked, this,
            [this](bool on) { m_presenter.edit([&](Material& m) { m.meantAsNothing = on; }); });
    saveChoice(m_basis, [](Material& m, int value) { m.basis = static_cast<catalogue::PriceBasis>(value); });
    saveWith(m_fixed, [this](Material& m) { m.fixedPrice = *m_fixed->value(); });
    return part;
}

QWidget* MaterialCard::buildShelf() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->addWidget(desk::sectionTitle(tr("Shelf"), part));
    m_onHand = new desk::TextLabel({}, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, part);
    m_onHand->setObjectName(QStringLiteral("onHand"));
    head->addWidget(m_onHand, 1);
    column->addLayout(head);
    m_shelfRemarks = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Warn, desk::Weight::Plain, part);
    m_shelfRemarks->setObjectName(QStringLiteral("shelfRemarks"));
    m_shelfRemarks->setWordWrap(true);
    column->addWidget(m_shelfRemarks);
    auto* grid = new desk::FlowGrid(4);
    column->addLayout(grid);
    m_amount = new desk::CountField(m_formatter, this);
    m_amount->setEmptyAllowed(true);
    m_amount->setRange(units::Count::of(0), units::Count::of(1'000'000'000));
    m_cost = new desk::MoneyField(m_formatter, this);
    m_cost->setEmptyAllowed(true);
    box(grid, tr("How man&y"), m_amount, "shelfAmount");
    box(grid, tr("Paid for &them"), m_cost, "shelfCost")->setRemark(tr("for the average; may stay empty"));
    auto* in = new QPushButton(tr("Count in"), part);
    auto* out = new QPushButton(tr("Take out"), part);
    in->setObjectName(QStringLiteral("countIn"));
    out->setObjectName(QStringLiteral("takeOut"));
    auto* all = new QPushButton(tr("That is all there is"), part);
    all->setObjectName(QStringLiteral("countShelf"));
    all->setToolTip(tr("So many were counted; the difference is booked"));
    grid->add(new desk::BesideFields(in, part));
    grid->add(new desk::BesideFields(all, part));
    m_outAs = new QComboBox(part);
    m_outAs->addItem(tr("used"), static_cast<int>(MoveKind::Used));
    m_outAs->addItem(tr("lost"), static_cast<int>(MoveKind::Lost));
    m_outAs->addItem(tr("spoiled"), static_cast<int>(MoveKind::Spoiled));
    m_outAs->addItem(tr("returned"), static_cast<int>(MoveKind::Returned));
    box(grid, tr("What goes out is"), m_outAs, "outAs");
    m_reason = new desk::WordField(m_formatter, {}, part);
    m_reason->setEmptyAllowed(true);
    box(grid, tr("Reason"), m_reason, "shelfReason", 2)->setRemark(tr("as you say it; may stay empty"));
    m_forJob = new desk::ChoiceField(m_formatter, part);
    m_forJob->setEmptyAllowed(true);
    m_forJob->setUnknownWording(tr("No job at work is called “%1”; choose from the list."));
    box(grid, tr("For the &job"), m_forJob, "outForJob", 2)
        ->setRemark(tr("what goes out for it or comes back from it; may stay empty"));
    grid->add(new desk::BesideFields(out, part));
    connect(in, &QPushButton::clicked, this, &MaterialCard::countIn);
    connect(out, &QPushButton::clicked, this, &MaterialCard::takeOut);
    connect(all, &QPushButton::clicked, this, [this] {
        moveShelf([this](std::int64_t amount) { return m_presenter.count(amount, m_reason->words()); });
    });
    connect(m_outAs, &QComboBox::currentIndexChanged, this, &MaterialCard::jobFollowsKind);
    return part;
}

void MaterialCard::jobFollowsKind() {
    const bool isReturned = outAs() == MoveKind::Returned;
    if (isReturned) m_forJob->setCurrent({});
    m_forJob->setEnabled(!isReturned);
}

MoveKind MaterialCard::outAs() const { return static_cast<MoveKind>(m_outAs->currentData().toInt()); }

bool MaterialCard::settlesJob() {
    m_forJob->closeList(); // only a whole name is taken, not the row that happens to be marked
    m_forJob->finish();
    if (m_forJob->problem().isEmpty()) return true;
    m_forJob->showError();
    return false;
}

void MaterialCard::countIn() {
    if (!settlesJob()) return;
    const auto job = m_forJob->current();
    moveShelf([this, job](std::int64_t amount) {
        const auto cost = *m_cost->optionalValue();
        if (!job.isValid())
            return m_presenter.move(amount, cost ? MoveKind::Bought : MoveKind::Counted, cost, m_reason->words());
        if (cost) return tr("What comes back from a job was not paid for again: leave out the sum, or the job.");
        const auto problem = m_presenter.move(amount, MoveKind::Returned, {}, m_reason->words(), job.value<base::Id>());
        if (problem.isEmpty()) m_forJob->setCurrent({});
        return problem;
    });
}

void MaterialCard::takeOut() {
    if (!settlesJob()) return;
    const auto job = m_forJob->current();
    moveShelf([this, job](std::int64_t amount) {
        const auto problem = m_presenter.move(-amount, outAs(), *m_cost->optionalValue(), m_reason->words(),
                                              job.isValid() ? std::optional(job.value<base::Id>()) : std::nullopt);
        if (problem.isEmpty()) m_forJob->setCurrent({});
        return problem;
    });
}

void MaterialCard::moveShelf(const std::function<QString(std::int64_t)>& work) {
    const auto amount = m_amount->value();
    if (!amount || !m_cost->optionalValue()) {
        m_amount->setOuterProblem(amount ? QString() : tr("Type how many first."));
        return;
    }
    const auto problem = work(amount->value());
    m_amount->setRaw(problem.isEmpty() ? QString() : m_amount->text());
    if (problem.isEmpty()) {
        m_cost->setRaw({});
        m_reason->setRaw({});
    }
    m_amount->setOuterProblem(problem);
}

void MaterialCard::loadStone(const Material& material) {
    if (!m_colour->isDirty()) m_colour->setRaw(QString::fromStdString(material.stone.colour));
    m_size->setCurrentText(QString::fromStdString(material.stone.size));
    if (!m_loss->isDirty()) m_loss->setValue(material.stone.loss);
    m_picture->setColour(material.stone.rgb);
}

void MaterialCard::loadSheet(const Material& material) {
    const auto& sheet = material.sheet;
    m_form->setCurrentIndex(m_form->findData(static_cast<int>(sheet.form)));
    m_share->setCurrentIndex(m_share->findData(static_cast<int>(sheet.basis)));
    const std::pair<desk::LengthField*, units::Length> lengths[] = {{m_width, sheet.width},
                                                                    {m_height, sheet.height},
                                                                    {m_margin, sheet.margin},
                                                                    {m_border, sheet.border},
                                                                    {m_gap, sheet.gap}};
    for (const auto& [field, value] : lengths)
        if (!field->isDirty()) field->setValue(value);
    m_heightBox->setLabel(sheet.form == catalogue::SheetForm::Roll ? tr("Len&gth") : tr("Hei&ght"));
    if (!m_lifts->isDirty()) m_lifts->setValue(units::Count::of(sheet.lifts));
    m_liftsBox->setVisible(material.kind == MaterialKind::Tape);
    m_oneWay->setChecked(sheet.oneWay);
}

void MaterialCard::load() {
    const auto* material = m_presenter.material();
    if (!material) return;
    if (m_shown != material->id) {
        m_shown = material->id;
        desk::discardAllEdits(*this);
        m_amount->setRaw({});
        m_cost->setRaw({});
        m_reason->setRaw({});
        m_forJob->setCurrent({});
    }
    const auto kind = material->kind;
    m_stone->setVisible(kind == MaterialKind::Stone);
    m_sheet->setVisible(kind == MaterialKind::Tape || kind == MaterialKind::Template || kind == MaterialKind::Backing);
    m_sizes->setVisible(kind == MaterialKind::Blank);
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(material->name));
    loadStone(*material);
    loadSheet(*material);
    m_sizes->load();
    m_basis->setCurrentIndex(m_basis->findData(static_cast<int>(material->basis)));
    if (!m_fixed->isDirty()) m_fixed->setValue(material->fixedPrice);
    m_nothing->setChecked(material->meantAsNothing);
    m_fixed->setEnabled(material->basis == catalogue::PriceBasis::Fixed);
    m_packs->load();
    loadShelf(*material);
}

void MaterialCard::loadShelf(const Material& material) {
    m_onHand->setText(words::shelfSentence(m_presenter.onShelf(material.id), [this](std::int64_t count) {
        return m_formatter.count(units::Count::of(count));
    }));
    const auto remarks = m_presenter.remarksOnShelf(material.id);
    m_shelfRemarks->setText(remarks.join(QLatin1Char(' ')));
    m_shelfRemarks->setVisible(!remarks.isEmpty());
    if (m_forJob->isDirty()) return; // the list under what is typed stays
    std::vector<desk::Choice> jobs;
    for (const auto& job : m_presenter.jobsToTakeFor())
        jobs.push_back({QVariant::fromValue(job.id), QString::fromStdString(job.number), words::titleOf(job), {}});
    m_forJob->setChoices(std::move(jobs));
}

} // namespace sp::supplies

#include "moc_material_card.cpp"
