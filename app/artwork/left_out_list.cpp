// SPDX-License-Identifier: MIT
#include "app/artwork/left_out_list.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/figures.h"
#include "app/words/words.h"

#include <QPushButton>
#include <QVBoxLayout>

namespace sp::artwork {

std::optional<Classification> classificationOf(const base::Message& reason) {
    for (const auto classification : {Classification::Duplicate, Classification::Ring, Classification::Encloses,
                                      Classification::TooLarge, Classification::TooSmall, Classification::Ellipse,
                                      Classification::NotRound, Classification::Large, Classification::Open})
        if (reason == base::say(noteOf(classification))) return classification;
    return std::nullopt;
}

LeftOutList::LeftOutList(const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_grid = new desk::RowGrid(12, this);
    column->addWidget(m_grid);
}

void LeftOutList::load(const ArtworkPresenter& presenter) {
    m_grid->restart();
    m_grid->cells()->setColumnStretch(0, 1);
    const auto& counted = presenter.counted();
    if (counted.duplicates > 0 || counted.collisions > 0) {
        addHeading(tr("To look at"));
        if (counted.duplicates > 0) add(tr("drawn twice, counted once"), counted.duplicates, Classification::Duplicate);
        if (counted.collisions > 0)
            add(tr("pairs of holes that overlap and would tear"), counted.collisions, std::nullopt);
    }
    addHeading(tr("Left out"));
    for (const auto& [reason, number] : presenter.leftOut())
        add(words::sentence(leftOutBecause(reason, number)), number, classificationOf(reason));
    if (presenter.leftOut().empty())
        m_grid->cells()->addWidget(new desk::TextLabel(tr("Nothing: every outline is a stone."), desk::TextSize::Small,
                                                       desk::Role::Muted, desk::Weight::Plain, m_grid->body()),
                                   m_grid->cells()->rowCount(), 0);
    m_grid->finish();
}

void LeftOutList::addHeading(const QString& words) {
    const int row = m_grid->cells()->rowCount();
    m_grid->cells()->setRowMinimumHeight(row - 1, row > 1 ? 12 : 0);
    m_grid->cells()->addWidget(desk::sectionTitle(words, m_grid->body()), row, 0, 1, 3);
}

void LeftOutList::add(const QString& what, std::size_t number, std::optional<Classification> classification) {
    const int row = m_grid->cells()->rowCount();
    m_grid->cells()->setRowMinimumHeight(row, desk::fieldHeight());
    auto* label =
        new desk::TextLabel(what, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, m_grid->body());
    label->setWordWrap(true);
    m_grid->cells()->addWidget(label, row, 0, Qt::AlignVCenter);
    if (classification) {
        auto* show = new QPushButton(tr("show"), m_grid->body());
        show->setObjectName(QStringLiteral("showLeftOut"));
        show->setAccessibleName(tr("Show in the picture: %1").arg(what));
        show->setCheckable(true);
        desk::makeQuiet(*show);
        connect(show, &QPushButton::toggled, this, [this, show, classification](bool on) {
            if (on)
                for (auto* other : m_grid->body()->findChildren<QPushButton*>())
                    if (other != show) other->setChecked(false);
            Q_EMIT shown(on ? classification : std::nullopt);
        });
        m_grid->cells()->addWidget(show, row, 1, Qt::AlignVCenter);
    }
    auto* figure =
        new desk::FigureLabel({}, desk::TextSize::Small, desk::Role::Ink, desk::Weight::Plain, m_grid->body());
    figure->setFigure(m_formatter.count(units::Count::of(static_cast<std::int64_t>(number))));
    m_grid->cells()->addWidget(figure, row, 2, Qt::AlignVCenter | Qt::AlignRight);
}

} // namespace sp::artwork

#include "moc_left_out_list.cpp"
