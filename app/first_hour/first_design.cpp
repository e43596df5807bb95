// SPDX-License-Identifier: MIT
#include "app/first_hour/first_design.h"

#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/desk/flow_grid.h"
#include "app/desk/stone_swatches.h"
#include "core/catalogue/fields/tables.h"

#include <algorithm>

namespace sp::first_hour {

using catalogue::Design;
using catalogue::fields::fieldOf;

FirstDesign::FirstDesign(FirstHourPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_presenter(presenter)
    , m_formatter(formatter)
    , m_name(new desk::WordField(formatter, tr("Give the design a name."), this))
    , m_width(new desk::LengthField(formatter, this))
    , m_height(new desk::LengthField(formatter, this)) {
    desk::standsFor(*m_name, fieldOf<&Design::name>());
    desk::standsFor(*m_width, fieldOf<&Design::width>());
    desk::standsFor(*m_height, fieldOf<&Design::height>());
    auto* fields = new desk::FlowGrid(4);
    const auto put = [&](desk::TypedField* field, const QString& label, const char* name, int span) {
        field->setObjectName(QLatin1String(name));
        field->setEmptyAllowed(true); // until it is made
        fields->add(new desk::FieldBox(label, field, this), span);
    };
    put(m_name, tr("Na&me"), "firstDesignName", 2);
    put(m_width, tr("&Width"), "firstDesignWidth", 1);
    put(m_height, tr("Hei&ght"), "firstDesignHeight", 1);
    static_cast<QBoxLayout*>(layout())->insertLayout(0, fields);
    problem()->setObjectName(QStringLiteral("firstDesignProblem"));
}

void FirstDesign::load() {
    const auto stones = m_presenter.stones();
    const bool same = std::ranges::equal(stones, m_rows, {}, &catalogue::Material::id, &Row::material);
    if (same && !m_rows.empty()) return;
    m_rows.clear();
    grid()->restart();
    grid()->cells()->setColumnStretch(1, 1);
    if (!stones.empty()) grid()->addHeads({{}, tr("stone"), tr("on one piece")});
    for (const auto* stone : stones) addRow(static_cast<int>(m_rows.size()), *stone);
    std::vector<desk::TypedField*> watched;
    for (const auto& row : m_rows) watched.push_back(row.count);
    problem()->watch(watched);
    if (stones.empty()) problem()->setRefusal(noStoneYet());
    grid()->finish();
}

QString FirstDesign::noStoneYet() { return tr("No stone has a price yet: give one first, or count a cut file."); }

void FirstDesign::addRow(int at, const catalogue::Material& stone) {
    auto* body = grid()->body();
    const auto name = QString::fromStdString(stone.name);
    auto* swatch = new desk::StoneSwatches(body);
    swatch->setStones({QColor(QRgb(0xFF000000U | stone.stone.rgb))});
    auto* count = new desk::CountField(m_formatter, body);
    count->setObjectName(QStringLiteral("firstDesignStone%1").arg(at));
    count->setAccessibleName(tr("%1 on one piece").arg(name));
    count->setEmptyAllowed(true);
    count->setAlignment(Qt::AlignRight);
    count->setMinimumWidth(desk::scaled(96));
    desk::standsFor(*count, fieldOf<&catalogue::StoneCount::count>());
    grid()->cells()->addWidget(swatch, at + 1, 0);
    grid()->cells()->addWidget(
        new desk::TextLabel(name, desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, body), at + 1, 1);
    grid()->cells()->addWidget(count, at + 1, 2);
    m_rows.push_back({stone.id, count});
}

bool FirstDesign::isBegun() const {
    return !m_name->isBlank() || !m_width->isBlank() || !m_height->isBlank() ||
           std::ranges::any_of(m_rows, [](const Row& row) { return !row.count->isBlank(); });
}

bool FirstDesign::make() {
    Design design;
    design.name = m_name->words();
    const auto width = m_width->value();
    const auto height = m_height->value();
    for (const auto& row : m_rows) {
        const auto count = row.count->optionalValue();
        if (!count) { // its own sentence stands under the rows
            row.count->showError();
            return false;
        }
        if (*count && !(**count).isZero()) design.stones.push_back({row.material, **count});
    }
    const auto missing = m_rows.empty()          ? noStoneYet()
                         : design.name.empty()   ? tr("Give the design a name.")
                         : !width || !height     ? tr("Give the width and the height of the design.")
                         : design.stones.empty() ? tr("Give how many stones are on one piece.")
                                                 : QString();
    setRefusal(missing);
    if (!missing.isEmpty()) return false;
    design.width = *width;
    design.height = *height;
    const auto refusal = m_presenter.makeDesign(design);
    setRefusal(refusal);
    if (!refusal.isEmpty()) return false;
    for (desk::TypedField* field : {static_cast<desk::TypedField*>(m_name), static_cast<desk::TypedField*>(m_width),
                                    static_cast<desk::TypedField*>(m_height)})
        field->setRaw({});
    for (const auto& row : m_rows) row.count->setRaw({});
    return true;
}

} // namespace sp::first_hour

#include "moc_first_design.cpp"
