// SPDX-License-Identifier: MIT
#include "app/counter/stone_rows.h"

#include "app/counter/typed_entries.h"
#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/stone_painter.h"
#include "app/desk/stone_swatches.h"
#include "core/catalogue/fields/tables.h"
#include "core/needs/material_need.h"

#include <QVBoxLayout>

namespace sp::counter {

namespace {

using desk::Role;
using desk::TextSize;

enum Column { Swatch, Name, Size, PerPiece, ToBrush, OnShelf, Remove };

} // namespace

StoneRows::StoneRows(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    m_grid = new desk::RowGrid(12, this);
    column->addWidget(m_grid);
    m_add = new desk::ChoiceField(m_formatter, this);
    m_add->setObjectName(QStringLiteral("addColour"));
    m_add->setPlaceholderText(tr("Type part of its name"));
    m_add->setEmptyAllowed(true);
    m_add->setEnterMovesOn(false); // a chosen colour leads to its count
    m_addBox = new desk::FieldBox(tr("Add a colo&ur"), m_add, this);
    m_adding = new QHBoxLayout;
    m_adding->setSpacing(12);
    m_adding->addWidget(m_addBox, 1, Qt::AlignTop);
    column->addLayout(m_adding);
    connect(m_add, &desk::ChoiceField::chosen, this, [this](const QVariant& id) {
        if (!id.isValid()) return;
        const auto material = id.value<base::Id>(); // the field forgets what `id` refers to
        m_add->setCurrent({});
        m_presenter.addStone(material);
        if (!m_rows.empty()) m_rows.back().perPiece->setFocus(Qt::OtherFocusReason);
    });
}

void StoneRows::addHead() {
    m_grid->cells()->addWidget(desk::sectionTitle(tr("Stones"), m_grid->body()), 0, Swatch, 1, 3);
    const auto head = [&](int column, const QString& text) {
        auto* label = new desk::TextLabel(text, TextSize::Small, Role::Muted, desk::Weight::Plain, m_grid->body());
        label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        m_grid->cells()->addWidget(label, 0, column);
    };
    head(PerPiece, tr("per piece"));
    head(ToBrush, tr("to brush"));
    head(OnShelf, tr("on the shelf"));
}

void StoneRows::addRow(int row, const catalogue::StoneCount& stone) {
    const auto* priced = m_presenter.prices().find(stone.material);
    const auto traits = priced ? priced->material.stone : catalogue::StoneTraits{};
    const auto name = priced ? QString::fromStdString(priced->material.name) : tr("a stone that is gone");
    const int at = row + 1;
    auto* swatch = new desk::StoneSwatches(m_grid->body());
    swatch->setStones({desk::stoneColour(traits.rgb)});
    m_grid->cells()->addWidget(swatch, at, Swatch);
    m_grid->cells()->addWidget(new desk::TextLabel(priced ? QString::fromStdString(traits.colour) : name,
                                                   TextSize::Body, Role::Ink, desk::Weight::Plain, m_grid->body()),
                               at, Name);
    m_grid->cells()->addWidget(new desk::TextLabel(QString::fromStdString(traits.size), TextSize::Small, Role::Muted,
                                                   desk::Weight::Plain, m_grid->body()),
                               at, Size);
    Row entry;
    entry.material = stone.material;
    entry.perPiece = new desk::CountField(m_formatter, m_grid->body());
    entry.perPiece->setObjectName(QStringLiteral("stone%1").arg(row));
    entry.perPiece->setAccessibleName(tr("%1 per piece").arg(name));
    entry.perPiece->setAlignment(Qt::AlignRight);
    desk::standsFor(*entry.perPiece, catalogue::fields::fieldOf<&catalogue::StoneCount::count>());
    entry.perPiece->setMinimumWidth(desk::scaled(76));
    entry.perPiece->setMaximumWidth(desk::scaled(110));
    if (!stone.count.isZero()) entry.perPiece->setValue(stone.count);
    entry.perPiece->setEnabled(m_presenter.canChange());
    m_grid->cells()->addWidget(entry.perPiece, at, PerPiece);
    entry.toBrush = new desk::FigureLabel({}, TextSize::Body, Role::Ink, desk::Weight::Plain, m_grid->body());
    entry.toBrush->setMeaning(tr("%1 to brush").arg(name));
    m_grid->cells()->addWidget(entry.toBrush, at, ToBrush);
    entry.onShelf = new desk::FigureLabel({}, TextSize::Body, Role::Ink, desk::Weight::Plain, m_grid->body());
    entry.onShelf->setMeaning(tr("%1 on the shelf").arg(name));
    m_grid->cells()->addWidget(entry.onShelf, at, OnShelf);
    auto* remove = m_grid->addRemove(at, Remove, tr("Take %1 out").arg(name));
    remove->setVisible(m_presenter.canChange());
    connect(remove, &QToolButton::clicked, this, [this, row] { m_presenter.removeStone(row); });
    connect(entry.perPiece, &desk::TypedField::edited, this, [this, row] { typed(row); });
    connect(entry.perPiece, &desk::TypedField::committed, &m_presenter, &CounterPresenter::saveDraft);
    m_rows.push_back(entry);
}

void StoneRows::load() {
    m_rows.clear();
    m_grid->restart();
    m_grid->cells()->setColumnStretch(Name, 2);
    m_grid->cells()->setColumnStretch(ToBrush, 1);
    m_grid->cells()->setColumnStretch(OnShelf, 1);
    addHead();
    if (m_presenter.hasLine()) {
        const auto* place = m_presenter.place();
        const auto stones = place ? place->stones : std::vector<catalogue::StoneCount>();
        for (std::size_t i = 0; i < stones.size(); ++i) addRow(static_cast<int>(i), stones[i]);
    }
    m_addBox->setVisible(m_presenter.canChange());
    offerColours();
    m_grid->finish();
    refresh();
}

void StoneRows::offerColours() {
    m_add->setChoices(desk::choicesOf(m_presenter.session().materials(), {catalogue::MaterialKind::Stone}));
}

void StoneRows::typed(int row) {
    const auto& field = *m_rows[static_cast<std::size_t>(row)].perPiece;
    noteEntry(m_presenter, CounterPresenter::Owner::Place, field);
    const auto count = field.value();
    if (!count) return;
    m_presenter.editPlace([&](catalogue::Placement& place) {
        if (static_cast<std::size_t>(row) < place.stones.size())
            place.stones[static_cast<std::size_t>(row)].count = *count;
    });
}

void StoneRows::refresh() {
    const auto* place = m_presenter.place();
    setVisible(place != nullptr);
    if (!place) return;
    const auto& line = m_presenter.line();
    const auto& stones = place->stones;
    const auto& shelf = m_presenter.session().shelf();
    const auto made = line.quantity.value() + m_presenter.spares().pieces;
    for (std::size_t i = 0; i < m_rows.size() && i < stones.size(); ++i) {
        const auto* priced = m_presenter.prices().find(stones[i].material);
        const auto found = shelf.find(stones[i].material);
        const std::int64_t there = found == shelf.end() ? 0 : found->second;
        const bool known = m_presenter.priced().has_value() && priced;
        const auto need = known ? needs::wholeFor(needs::needOfStone(stones[i].count, priced->material), made) : 0;
        m_rows[i].toBrush->setFigure(known ? m_formatter.count(units::Count::of(need)) : QStringLiteral("—"));
        m_rows[i].onShelf->setFigure(m_formatter.count(units::Count::of(there)));
        m_rows[i].onShelf->setRole(known && need > there && m_presenter.canChange() ? Role::Warn : Role::Ink);
    }
}

} // namespace sp::counter

#include "moc_stone_rows.cpp"
