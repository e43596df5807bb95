// SPDX-License-Identifier: MIT
#include "app/designs/designs_page.h"

#include "app/artwork/design_pictures.h"
#include "app/artwork/design_view.h"
#include "app/artwork/made_design.h"
#include "app/designs/design_stones.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/empty_state.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/desk/kept_picture.h"
#include "app/desk/scroll_page.h"
#include "app/desk/stone_painter.h"
#include "app/desk/tab_order.h"
#include "app/plans/plan_dialog.h"
#include "app/words/proof_sheet.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/needs/sheet_use.h"
#include "core/pricing/paid_off_sets.h"

#include <QGridLayout>
#include <QLabel>

namespace sp::designs {

using desk::Role;
using desk::TextSize;

DesignsPage::DesignsPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : ListPage(parent)
    , m_pictures(new artwork::DesignPictures(session, this))
    , m_presenter(session)
    , m_formatter(formatter) {
    buildActions(*buildList(tr("Designs"), {tr("Designs"), tr("&Find by name"), tr("No design is called that.")},
                            "designs", "findDesign", m_formatter));
    setPictures([this](const base::Id& design, QSize room, const QColor& ground, double ratio) {
        return m_pictures->small(design, room, ground, ratio);
    });
    auto* card = new desk::Card(this);
    buildCard(card);
    addCard(card);
    connectFields();
    connect(&m_presenter, &DesignsPresenter::opened, this, &DesignsPage::refresh);
    connect(&m_presenter, &DesignsPresenter::changed, this, &DesignsPage::refresh);
    connect(m_pictures, &artwork::DesignPictures::changed, this, [this] {
        showDrawing();
        list().repaintPictures();
    });
    refresh();
}

void DesignsPage::buildActions(desk::FlowGrid& below) {
    auto* add = new QPushButton(tr("&New design"), this);
    add->setObjectName(QStringLiteral("newDesign"));
    desk::makePrimary(*add);
    below.add(add);
    auto* cutFile = new QPushButton(tr("&Count a cut file…"), this);
    cutFile->setObjectName(QStringLiteral("countCutFile"));
    below.add(cutFile);
    auto* estimate = new QPushButton(tr("Esti&mate stones…"), this);
    estimate->setObjectName(QStringLiteral("estimateStones"));
    below.add(estimate);
    connect(cutFile, &QPushButton::clicked, this, &DesignsPage::cutFileAsked);
    connect(estimate, &QPushButton::clicked, this, &DesignsPage::estimateAsked);
    connect(add, &QPushButton::clicked, this, [this] {
        m_presenter.create();
        desk::focusOn(*m_name);
    });
}

void DesignsPage::buildCard(QWidget* card) {
    auto* outer = new QVBoxLayout(card);
    outer->setContentsMargins(1, 1, 1, 1);
    auto* empty = new desk::EmptyState(desk::Icon::Designs, tr("No design is here yet."), tr("New design"), card);
    connect(empty, &desk::EmptyState::acted, &m_presenter, &DesignsPresenter::create);
    m_empty = empty;
    outer->addWidget(m_empty);
    auto* scroll = new desk::ScrollPage(desk::cardMargins(), card);
    m_content = scroll;
    outer->addWidget(scroll);
    auto* column = scroll->column();
    auto* head = new QHBoxLayout;
    m_heading = desk::pageTitle({}, this);
    head->addWidget(m_heading, 1);
    auto* copy = new QPushButton(tr("&Duplicate"), this);
    auto* remove = new QPushButton(tr("&Remove"), this);
    copy->setObjectName(QStringLiteral("duplicateDesign"));
    remove->setObjectName(QStringLiteral("removeDesign"));
    head->addWidget(copy);
    head->addWidget(remove);
    column->addLayout(head);
    connect(copy, &QPushButton::clicked, &m_presenter, &DesignsPresenter::duplicate);
    connect(remove, &QPushButton::clicked, this, &DesignsPage::removed);

    m_name = new desk::WordField(m_formatter, tr("Give the design a name."), this);
    m_width = new desk::LengthField(m_formatter, this);
    m_height = new desk::LengthField(m_formatter, this);
    m_base = new desk::ChoiceField(m_formatter, this);
    m_planned = new desk::CountField(m_formatter, this);
    m_planned->setEmptyAllowed(true);
    m_art = new desk::DurationField(m_formatter, this);
    m_art->setEmptyAllowed(true);
    m_note = new desk::WordField(m_formatter, {}, this);
    m_note->setEmptyAllowed(true);
    m_base->setEmptyAllowed(true);
    m_onWall = new QCheckBox(tr("&Templates on the wall"), this);
    m_onWall->setObjectName(QStringLiteral("designOnWall"));
    using catalogue::Design;
    using catalogue::fields::fieldOf;
    desk::standsFor(*m_name, fieldOf<&Design::name>());
    desk::standsFor(*m_width, fieldOf<&Design::width>());
    desk::standsFor(*m_height, fieldOf<&Design::height>());
    desk::standsFor(*m_base, fieldOf<&Design::usualBase>());
    desk::standsFor(*m_planned, fieldOf<&Design::plannedPieces>());
    desk::standsFor(*m_art, fieldOf<&Design::artTime>());
    desk::standsFor(*m_note, fieldOf<&Design::note>());
    desk::standsFor(*m_onWall, fieldOf<&Design::templatesOnWall>());
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(8);
    desk::place(*grid, 0, 0, 2, tr("N&ame"), m_name, "designName");
    desk::place(*grid, 0, 2, 1, tr("&Width"), m_width, "designWidth");
    desk::place(*grid, 0, 3, 1, tr("&Height"), m_height, "designHeight");
    desk::place(*grid, 1, 0, 2, tr("Goes &on, as a rule"), m_base, "designBase");
    desk::place(*grid, 1, 2, 1, tr("Art t&ime"), m_art, "designArt", tr("empty: the bench standard"));
    desk::place(*grid, 1, 3, 1, tr("&Planned pieces"), m_planned, "designPlanned",
                tr("the set of templates is paid off over them"));
    desk::place(*grid, 2, 0, 3, tr("Not&e"), m_note, "designNote");
    grid->addWidget(new desk::BesideFields(m_onWall, this), 2, 3, Qt::AlignTop);
    for (int i = 0; i < 4; ++i) grid->setColumnStretch(i, 1);
    column->addLayout(grid);
    m_paidOff = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    m_paidOff->setObjectName(QStringLiteral("designPaidOff"));
    m_paidOff->setWordWrap(true);
    column->addWidget(m_paidOff);
    m_picture = new artwork::DesignView(this);
    m_picture->setObjectName(QStringLiteral("designPicture"));
    column->addWidget(m_picture);
    m_otherCounts = new desk::TextLabel(tr("The picture is of other counts than this design has."), TextSize::Small,
                                        Role::Muted, desk::Weight::Plain, this);
    m_otherCounts->setObjectName(QStringLiteral("designPictureOfOtherCounts"));
    m_otherCounts->setWordWrap(true);
    column->addWidget(m_otherCounts);
    m_stones = new DesignStones(m_presenter, m_formatter, this);
    column->addWidget(m_stones);
    m_total = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    column->addWidget(m_total);
    buildPacking(column);
    m_sheet = new desk::SheetPicture(this);
    m_sheet->setObjectName(QStringLiteral("designSheet"));
    m_sheet->setMaximumWidth(desk::scaled(280));
    auto* pictures = new QHBoxLayout;
    pictures->setSpacing(20);
    pictures->addWidget(m_sheet, 1, Qt::AlignTop);
    pictures->addLayout(buildDrawing());
    pictures->addStretch(1);
    column->addLayout(pictures);
    auto* plan = new QPushButton(tr("&Sheet plan…"), this);
    plan->setObjectName(QStringLiteral("designPlan"));
    plan->setToolTip(tr("How templates, tape and backing of this design lie on their sheets"));
    column->addWidget(plan, 0, Qt::AlignLeft);
    connect(plan, &QPushButton::clicked, this, &DesignsPage::showPlan);
    column->addStretch(1);
}

void DesignsPage::buildPacking(QVBoxLayout* column) {
    const auto& field = catalogue::fields::fieldOf<&catalogue::Design::packing>();
    m_ownPacking = new QCheckBox(tr("Its own pac&king, instead of the shop’s"), this);
    m_ownPacking->setObjectName(QStringLiteral("designOwnPacking"));
    desk::standsFor(*m_ownPacking, field);
    column->addWidget(m_ownPacking);
    m_packing = new desk::PackingRows(m_formatter, QStringLiteral("designPacking"), field, this);
    column->addWidget(m_packing);
    connect(m_ownPacking, &QCheckBox::clicked, this, [this](bool own) {
        m_presenter.edit([&](catalogue::Design& design) {
            design.packing = own ? std::optional(m_presenter.session().shop().packing) : std::nullopt;
        });
    });
    connect(m_packing, &desk::PackingRows::edited, this, [this] {
        m_packing->setRefusal(
            m_presenter.edit([this](catalogue::Design& design) { design.packing = m_packing->rows(); }));
    });
}

QLayout* DesignsPage::buildDrawing() {
    auto* column = new QVBoxLayout;
    column->setSpacing(4);
    m_drawing = new QLabel(this);
    m_drawing->setObjectName(QStringLiteral("designDrawing"));
    m_drawingWords = new desk::TextLabel({}, TextSize::Small, Role::Muted, desk::Weight::Plain, this);
    column->addWidget(m_drawing);
    column->addWidget(m_drawingWords);
    column->addStretch(1);
    return column;
}

void DesignsPage::showDrawing() {
    const auto* design = m_presenter.current();
    if (!design) return;
    const auto drawing = m_presenter.session().artwork(design->id);
    const auto picture = m_pictures->stones(design->id);
    m_picture->showDesign(QString::fromStdString(design->name), picture, design->width, design->height, m_formatter);
    m_otherCounts->setVisible(picture && !artwork::showsTheCounts(*picture, design->stones));
    // What was estimated from has no stones of its own, but a picture of where they would sit.
    m_picture->setVisible(picture || !drawing);
    m_drawing->setVisible(drawing && !picture);
    m_drawingWords->setVisible(drawing.has_value());
    if (!drawing) return;
    const auto name = QString::fromStdString(drawing->fileName);
    m_drawing->setPixmap(QPixmap::fromImage(desk::keptPicture(drawing->thumbnail)));
    const bool isEstimated = words::isEstimated(*drawing);
    m_drawing->setAccessibleName(isEstimated ? tr("Where stones would sit in %1").arg(name)
                                             : tr("What was counted in %1").arg(name));
    m_drawingWords->setText(isEstimated ? tr("Estimated from %1, kept with the design.").arg(name)
                                        : tr("Counted from %1, kept with the design.").arg(name));
}

template<class Field, class Put>
void DesignsPage::saveWith(Field* field, Put put) {
    desk::saveWhenGood(*field, [this, put] { return m_presenter.edit(put); });
}

void DesignsPage::connectFields() {
    saveWith(m_name, [this](catalogue::Design& design) { design.name = m_name->words(); });
    saveWith(m_width, [this](catalogue::Design& design) { design.width = *m_width->value(); });
    saveWith(m_height, [this](catalogue::Design& design) { design.height = *m_height->value(); });
    saveWith(m_planned, [this](catalogue::Design& design) { design.plannedPieces = *m_planned->optionalValue(); });
    saveWith(m_art, [this](catalogue::Design& design) { design.artTime = *m_art->optionalValue(); });
    saveWith(m_note, [this](catalogue::Design& design) { design.note = m_note->words(); });
    connect(m_base, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        const auto base = chosen.isValid() ? chosen.value<base::Id>() : base::Id{};
        m_presenter.edit([&](catalogue::Design& design) { design.usualBase = base; });
    });
    connect(m_onWall, &QCheckBox::clicked, this,
            [this](bool on) { m_presenter.edit([&](catalogue::Design& design) { design.templatesOnWall = on; }); });
}

std::vector<desk::StoneListRow> DesignsPage::rows(const QString& wanted, const base::Id& kept) {
    std::vector<desk::StoneListRow> rows;
    for (const auto& design : m_presenter.matching(wanted, kept)) {
        desk::StoneListRow row{
            design.id, QString::fromStdString(design.name), m_formatter.size(design.width, design.height), {}};
        if (design.templatesOnWall) row.detail += tr(" · on the wall");
        if (artwork::isEstimateNote(design.note)) row.detail += tr(" · estimated");
        for (const auto& stone : design.stones)
            if (const auto* material = m_presenter.session().material(stone.material))
                row.stones.push_back(desk::stoneColour(material->stone.rgb));
        rows.push_back(std::move(row));
    }
    return rows;
}

void DesignsPage::loadBases() {
    m_base->setChoices(desk::choicesOf(m_presenter.session().materials(),
                                       {catalogue::MaterialKind::Backing, catalogue::MaterialKind::Blank}));
}

void DesignsPage::loadPacking(const catalogue::Design& design) {
    m_ownPacking->setChecked(design.packing.has_value());
    m_packing->setVisible(design.packing.has_value());
    m_packing->setRows(desk::choicesOf(m_presenter.session().materials(), {catalogue::MaterialKind::Packing}),
                       design.packing.value_or(std::vector<catalogue::PackingUse>{}));
}

void DesignsPage::load() {
    const auto* design = m_presenter.current();
    m_content->setVisible(design != nullptr);
    m_empty->setVisible(design == nullptr && m_presenter.session().designs().empty());
    if (!design) return;
    m_heading->setText(QString::fromStdString(design->name));
    if (m_shown != design->id) {
        m_shown = design->id;
        desk::discardAllEdits(*m_content);
    }
    if (!m_name->isDirty()) m_name->setRaw(QString::fromStdString(design->name));
    if (!m_width->isDirty()) m_width->setValue(design->width);
    if (!m_height->isDirty()) m_height->setValue(design->height);
    if (!m_planned->isDirty()) m_planned->setOptionalValue(design->plannedPieces);
    if (!m_art->isDirty()) m_art->setOptionalValue(design->artTime);
    if (!m_note->isDirty()) m_note->setRaw(QString::fromStdString(design->note));
    loadBases();
    m_base->setCurrent(design->usualBase.isNone() ? QVariant() : QVariant::fromValue(design->usualBase));
    m_onWall->setChecked(design->templatesOnWall);
    showPaidOff(*design);
    m_stones->load();
    loadPacking(*design);
    std::int64_t holes = 0;
    for (const auto& stone : design->stones) holes += stone.count.value();
    m_total->setText(
        words::counted("sp::designs::DesignsPage",
                       QT_TRANSLATE_N_NOOP("sp::designs::DesignsPage",
                                           "%1 stones a piece, as many holes to cut; one template for each colour."),
                       "%1 stone a piece, one hole to cut; one template for each colour.", holes)
            .arg(m_formatter.count(units::Count::of(holes))));
    showSheet();
    showDrawing();
}

/// How far its set of templates is paid off.
void DesignsPage::showPaidOff(const catalogue::Design& design) {
    const auto& sets = m_presenter.session().prices({}).sets;
    const auto set = sets.find(design.id);
    m_paidOff->setVisible(design.plannedPieces && set != sets.end());
    if (!design.plannedPieces || set == sets.end()) return;
    const auto sold =
        tr("%1 of %2 pieces sold").arg(m_formatter.count(set->second.sold), m_formatter.count(*design.plannedPieces));
    m_paidOff->setText(set->second.cost
                           ? tr("%1; %2 of %3 paid for the set of templates.")
                                 .arg(sold, m_formatter.money(pricing::paidOf(set->second, *design.plannedPieces)),
                                      m_formatter.money(set->second.cost->total()))
                           : tr("%1; what the set of templates costs is kept once a job of it is agreed.").arg(sold));
}

void DesignsPage::showSheet() {
    const auto* design = m_presenter.current();
    const auto* material = m_presenter.session().material(design->usualBase);
    const bool isSheet = material && material->kind == catalogue::MaterialKind::Backing &&
                         material->sheet.form == catalogue::SheetForm::Sheet;
    m_sheet->setVisible(isSheet);
    if (!isSheet) return;
    const auto& sheet = material->sheet;
    const auto piece = needs::pieceOf(sheet, design->width, design->height);
    const auto fit = layout::fitSheet({sheet.width, sheet.height}, piece, needs::rulesOf(sheet));
    if (!fit) {
        m_sheet->clear();
        m_sheet->setCaption({words::sentence(fit.error())});
        return;
    }
    m_sheet->setSheet({sheet.width, sheet.height}, piece, fit->positions);
    m_sheet->setCaption({QString::fromStdString(material->name),
                         tr("%1 a sheet").arg(m_formatter.count(units::Count::of(fit->count)))});
}

void DesignsPage::removed() {
    const auto* design = m_presenter.current();
    if (!design) return;
    const auto name = QString::fromStdString(design->name);
    m_presenter.remove();
    messages().tell(desk::Tone::Jewel, tr("“%1” is removed.").arg(name), tr("Undo"),
                    [this] { m_presenter.session().undo(); });
    messages().staysUntil(&m_presenter.session(), &session::BookSession::saved);
}

void DesignsPage::showPlan() {
    const auto* design = m_presenter.current();
    if (!design) return;
    catalogue::OrderLine line;
    line.title = design->name;
    line.first().width = design->width;
    line.first().height = design->height;
    line.first().stones = design->stones;
    line.baseMaterial = design->usualBase;
    // A design's own plan shows its templates, whether or not they hang on the wall already.
    line.quantity = design->plannedPieces.value_or(units::Count::of(1));
    auto* dialog =
        new plans::PlanDialog({QString::fromStdString(design->name), {line}, true, m_presenter.session().today()},
                              m_presenter.session().prices({}), m_formatter, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace sp::designs

#include "moc_designs_page.cpp"
