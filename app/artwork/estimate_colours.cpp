// SPDX-License-Identifier: MIT
#include "app/artwork/estimate_colours.h"

#include "app/artwork/colour_rows.h"
#include "app/desk/stone_swatches.h"
#include "app/words/names.h"
#include "core/artwork/colour.h"
#include "core/catalogue/stone_colour.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QVBoxLayout>

namespace sp::artwork {

EstimateColours::EstimateColours(EstimatePresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_each = new QCheckBox(tr("Each colour in a stone of its o&wn"), this);
    m_each->setObjectName(QStringLiteral("estimateByColour"));
    column->addWidget(m_each);
    m_tooMany = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, this);
    m_tooMany->setWordWrap(true);
    m_tooMany->hide();
    column->addWidget(m_tooMany);
    m_grid = new desk::RowGrid(12, this);
    m_grid->hide();
    column->addWidget(m_grid);
    connect(m_each, &QCheckBox::toggled, this, [this](bool on) {
        m_grid->setVisible(on);
        Q_EMIT edited();
    });
    loadFile();
}

bool EstimateColours::isOn() const { return m_each->isChecked() && !m_rows.empty(); }

void EstimateColours::loadFile() {
    const auto& colours = m_presenter.colours();
    m_rows.clear();
    m_grid->restart();
    m_grid->cells()->setVerticalSpacing(8);
    m_grid->cells()->setColumnStretch(1, 1);
    const bool isOffered = colours.size() > 1 && colours.size() <= kMaxRows;
    if (isOffered)
        for (const auto& colour : colours) addRow(colour);
    m_grid->finish();
    m_each->setChecked(isOffered && m_each->isChecked());
    m_grid->setVisible(m_each->isChecked());
    m_each->setVisible(isOffered);
    m_tooMany->setText(tr("It has %1 colours, too many for a stone each; all are set as one.")
                           .arg(m_formatter.count(units::Count::of(static_cast<std::int64_t>(colours.size())))));
    m_tooMany->setVisible(colours.size() > kMaxRows);
    setVisible(colours.size() > 1);
    loadChoices();
    for (auto& row : m_rows) row.stone->setCurrent(QVariant::fromValue(m_presenter.likelyStone(row.colour)));
}

void EstimateColours::addRow(const std::string& colour) {
    const auto rgb = parseColour(colour).value_or(0xB8BEC4);
    const auto name = words::nameOf(catalogue::nearestColour(rgb));
    const auto index = static_cast<int>(m_rows.size());
    auto* swatch = new desk::StoneSwatches(m_grid->body());
    swatch->setStones({desk::stoneColour(rgb)});
    swatch->setToolTip(name);
    m_grid->cells()->addWidget(swatch, index, 0, Qt::AlignTop);
    auto* field = new desk::ChoiceField(m_formatter, m_grid->body());
    field->setObjectName(QStringLiteral("colourStone%1").arg(index));
    field->setAccessibleName(tr("Stone for %1").arg(name));
    field->setPlaceholderText(tr("which stone?"));
    connect(field, &desk::ChoiceField::chosen, this, &EstimateColours::edited);
    connect(field, &desk::TypedField::edited, this, &EstimateColours::edited);
    auto* tally =
        new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, m_grid->body());
    tally->setObjectName(QStringLiteral("colourTally%1").arg(index));
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(field);
    words->addWidget(tally);
    m_grid->cells()->addLayout(words, index, 1);
    m_rows.push_back({colour, field, tally});
}

void EstimateColours::loadChoices() {
    for (auto& row : m_rows) {
        const auto before = row.stone->current();
        row.stone->setChoices(stoneChoices(m_presenter.session(), std::nullopt));
        if (before.isValid()) row.stone->setCurrent(before);
    }
}

void EstimateColours::showTallies() {
    for (auto& row : m_rows) {
        const auto name = words::nameOf(catalogue::nearestColour(parseColour(row.colour).value_or(0xB8BEC4)));
        const auto tally = m_presenter.tallyOf(row.colour);
        const auto counted = [&] {
            return tally->count.value() == 0
                       ? tr("no stone fits, or nothing of it is to be seen")
                       : tr("%1, by hand %2 to %3")
                             .arg(m_formatter.count(tally->count), m_formatter.count(tally->least),
                                  m_formatter.count(tally->most));
        };
        row.tally->setText(tally ? tr("%1: %2").arg(name, counted()) : name);
    }
}

std::optional<std::vector<ColourStone>> EstimateColours::chosen() const {
    std::vector<ColourStone> stones;
    for (const auto& row : m_rows) {
        const auto current = row.stone->current();
        if (!current.isValid()) return std::nullopt;
        stones.push_back({row.colour, current.value<base::Id>()});
    }
    return stones;
}

} // namespace sp::artwork

#include "moc_estimate_colours.cpp"
