// SPDX-License-Identifier: MIT
#include "app/artwork/colour_rows.h"

#include "app/desk/choices.h"
#include "app/desk/figures.h"
#include "app/desk/stone_painter.h"
#include "app/desk/stone_swatches.h"
#include "core/artwork/colour.h"

#include <QVBoxLayout>

#include <algorithm>

namespace sp::artwork {

namespace {

QString sizeWord(const ColourRow& row) {
    return row.size ? QString::fromStdString(publishedStoneSizes()[*row.size].name) : ColourRows::tr("no size");
}

QString colourWord(const ColourRow& row) {
    if (row.colour.empty()) return ColourRows::tr("no colour");
    return colourWords(row.colour);
}

/// What a row is told apart by, so that its field is kept.
QString keyOf(const ColourRow& row) {
    return QString::fromStdString(row.colour) + sizeWord(row) + QString::number(row.count.value());
}

} // namespace

std::vector<desk::Choice> stonesToChoose(session::BookSession& session, std::optional<std::size_t> size) {
    const auto wanted = size ? publishedStoneSizes()[*size].name : std::string();
    std::vector<desk::Choice> choices;
    for (const bool ofSize : {true, false})
        for (const auto& material : session.materials())
            if (material.kind == catalogue::MaterialKind::Stone && (material.stone.size == wanted) == ofSize)
                choices.push_back(desk::choiceOf(material));
    return choices;
}

std::vector<desk::Choice> stoneChoices(session::BookSession& session, std::optional<std::size_t> size) {
    auto choices = stonesToChoose(session, size);
    choices.push_back({QVariant::fromValue(base::Id{}), ColourRows::tr("Leave out"), ColourRows::tr("no stone"), {}});
    return choices;
}

ColourRows::ColourRows(ArtworkPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_grid = new desk::RowGrid(12, this);
    column->addWidget(m_grid);
    m_oneByOne = new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Ink, desk::Weight::Plain, this);
    m_oneByOne->setObjectName(QStringLiteral("setOneByOne"));
    m_oneByOne->setWordWrap(true);
    m_oneByOne->hide();
    column->addWidget(m_oneByOne);
}

void ColourRows::load() {
    const auto& rows = m_presenter.rows();
    std::vector<QString> keys;
    for (const auto& row : rows) keys.push_back(keyOf(row));
    if (keys != m_shown) {
        m_shown = std::move(keys);
        rebuild();
    }
    const auto counts = m_presenter.stonesOfRows();
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        m_counts[i]->setFigure(m_formatter.count(units::Count::of(counts[i])));
        m_far[i]->setVisible(rows[i].isFar);
        m_fields[i]->setChoices(stoneChoices(m_presenter.session(), rows[i].size));
        const auto& material = rows[i].material;
        if (!m_fields[i]->isDirty() || material)
            m_fields[i]->setCurrent(material ? QVariant::fromValue(*material) : QVariant());
    }
    QStringList alone;
    for (const auto& [id, count] : m_presenter.setOneByOne()) {
        const auto* material = m_presenter.session().material(id);
        const auto number = m_formatter.count(units::Count::of(count));
        alone << (material ? tr("%1 %2").arg(number, QString::fromStdString(material->name))
                           : tr("%1 left out").arg(number));
    }
    m_oneByOne->setText(tr("Set one by one: %1").arg(alone.join(QStringLiteral(", "))));
    m_oneByOne->setVisible(!alone.isEmpty());
}

void ColourRows::rebuild() {
    m_fields.clear();
    m_far.clear();
    m_counts.clear();
    m_grid->restart();
    auto* grid = m_grid->cells();
    grid->setVerticalSpacing(8); // a row has two lines
    grid->setColumnStretch(2, 1);
    const auto number = static_cast<int>(m_presenter.rows().size());
    for (int i = 0; i < std::min(number, kMaxRows); ++i) addRow(i);
    if (number > kMaxRows) {
        std::int64_t rest = 0;
        for (int i = kMaxRows; i < number; ++i) rest += m_presenter.rows()[static_cast<std::size_t>(i)].count.value();
        auto* words =
            new desk::TextLabel(tr("Further colours: %1, stones: %2. They go to the stone whose colour is nearest.")
                                    .arg(number - kMaxRows)
                                    .arg(m_formatter.count(units::Count::of(rest))),
                                desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, m_grid->body());
        words->setWordWrap(true);
        grid->addWidget(words, kMaxRows, 0, 1, 4);
    }
    m_grid->finish();
}

void ColourRows::addRow(int index) {
    auto* grid = m_grid->cells();
    const auto& row = m_presenter.rows()[static_cast<std::size_t>(index)];
    auto* swatch = new desk::StoneSwatches(m_grid->body());
    swatch->setStones({desk::stoneColour(parseColour(row.colour).value_or(0xB8BEC4))});
    swatch->setToolTip(colourWord(row));
    grid->addWidget(swatch, index, 0, Qt::AlignVCenter);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    auto* size = new desk::TextLabel(sizeWord(row), desk::TextSize::Body, row.size ? desk::Role::Ink : desk::Role::Warn,
                                     desk::Weight::Plain, m_grid->body());
    words->addWidget(size);
    words->addWidget(new desk::TextLabel(colourWord(row), desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain,
                                         m_grid->body()));
    grid->addLayout(words, index, 1);
    auto* field = new desk::ChoiceField(m_formatter, m_grid->body());
    field->setObjectName(QStringLiteral("rowStone%1").arg(index));
    field->setAccessibleName(tr("Stone for %1 %2").arg(colourWord(row), sizeWord(row)));
    field->setPlaceholderText(tr("which stone?"));
    connect(field, &desk::ChoiceField::chosen, this, [this, index](const QVariant& chosen) {
        if (chosen.isValid()) m_presenter.assign(index, chosen.value<base::Id>());
    });
    auto* choice = new QVBoxLayout;
    choice->setSpacing(2);
    choice->addWidget(field);
    auto* far = new desk::TextLabel(tr("looks different; the nearest there is"), desk::TextSize::Small,
                                    desk::Role::Warn, desk::Weight::Plain, m_grid->body());
    far->setObjectName(QStringLiteral("rowFar%1").arg(index));
    choice->addWidget(far);
    m_far.push_back(far);
    grid->addLayout(choice, index, 2);
    auto* count = new desk::FigureLabel(m_formatter.count(row.count), desk::TextSize::Body, desk::Role::Ink,
                                        desk::Weight::Strong, m_grid->body());
    count->setMeaning(tr("Stones"));
    count->setFigure(m_formatter.count(row.count));
    grid->addWidget(count, index, 3, Qt::AlignVCenter | Qt::AlignRight);
    m_counts.push_back(count);
    m_fields.push_back(field);
}

} // namespace sp::artwork

#include "moc_colour_rows.cpp"
