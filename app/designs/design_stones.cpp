// SPDX-License-Identifier: MIT
#include "app/designs/design_stones.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/stone_painter.h"
#include "app/desk/stone_swatches.h"
#include "core/catalogue/fields/tables.h"

namespace sp::designs {

DesignStones::DesignStones(DesignsPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, tr("Stones a piece"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    m_add = new desk::ChoiceField(m_formatter, this);
    m_add->setObjectName(QStringLiteral("addDesignColour"));
    desk::standsFor(*m_add, catalogue::fields::fieldOf<&catalogue::StoneCount::material>());
    m_add->setAccessibleName(tr("Add a colour"));
    m_add->setPlaceholderText(tr("+ colour: type part of its name"));
    m_add->setEmptyAllowed(true);
    m_add->setEnterMovesOn(false);
    layout()->addWidget(m_add);
    connect(m_add, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto material = chosen.value<base::Id>(); // the field forgets what `chosen` refers to
        m_add->setCurrent({});
        m_presenter.edit([&](catalogue::Design& design) {
            for (const auto& stone : design.stones)
                if (stone.material == material) return;
            design.stones.push_back({material, units::Count::of(1)});
        });
        if (!m_counts.empty()) m_counts.back()->setFocus(Qt::OtherFocusReason);
    });
}

void DesignStones::load() {
    const auto* design = m_presenter.current();
    if (!design) return;
    std::vector<base::Id> colours;
    for (const auto& stone : design->stones) colours.push_back(stone.material);
    if (design->id != m_design || colours != m_colours) {
        m_design = design->id;
        m_colours = colours;
        rebuild(*design);
    }
    for (std::size_t i = 0; i < m_counts.size(); ++i)
        if (!m_counts[i]->isDirty()) m_counts[i]->setValue(design->stones[i].count);
    m_add->setChoices(desk::choicesOf(m_presenter.session().materials(), {catalogue::MaterialKind::Stone}));
}

void DesignStones::rebuild(const catalogue::Design& design) {
    m_counts.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(1, 1);
    for (std::size_t i = 0; i < design.stones.size(); ++i) addRow(static_cast<int>(i), design.stones[i]);
    problem()->watch({m_counts.begin(), m_counts.end()});
    grid()->finish();
}

void DesignStones::addRow(int row, const catalogue::StoneCount& stone) {
    const auto* material = m_presenter.session().material(stone.material);
    const auto name = material ? QString::fromStdString(material->name) : tr("a stone that is gone");
    auto* body = grid()->body();
    auto* cells = grid()->cells();
    auto* swatch = new desk::StoneSwatches(body);
    swatch->setStones({desk::stoneColour(material ? material->stone.rgb : 0)});
    cells->addWidget(swatch, row, 0);
    cells->addWidget(new desk::TextLabel(name, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, body), row,
                     1);
    auto* count = new desk::CountField(m_formatter, body);
    count->setObjectName(QStringLiteral("designStone%1").arg(row));
    count->setAccessibleName(tr("%1 a piece").arg(name));
    count->setAlignment(Qt::AlignRight);
    desk::standsFor(*count, catalogue::fields::fieldOf<&catalogue::StoneCount::count>());
    count->setMaximumWidth(desk::scaled(110));
    cells->addWidget(count, row, 2);
    const auto id = stone.material;
    connect(count, &desk::TypedField::committed, this, [this, count, id] {
        const auto typed = count->value();
        if (!typed) return;
        count->setOuterProblem(m_presenter.edit([&](catalogue::Design& design) {
            for (auto& known : design.stones)
                if (known.material == id) known.count = *typed;
        }));
    });
    auto* remove = grid()->addRemove(row, 3, tr("Take %1 out").arg(name));
    connect(remove, &QToolButton::clicked, this, [this, id] {
        m_presenter.edit([&](catalogue::Design& design) {
            std::erase_if(design.stones, [&](const auto& known) { return known.material == id; });
        });
    });
    m_counts.push_back(count);
}

} // namespace sp::designs

#include "moc_design_stones.cpp"
