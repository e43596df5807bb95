// SPDX-License-Identifier: MIT
#include "app/shop/ladder_panel.h"

#include "app/desk/choices.h"
#include "app/desk/field_box.h"
#include "app/words/words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace sp::shop {

using desk::Role;
using desk::TextSize;
using desk::Weight;

LadderPanel::LadderPanel(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(8);
    m_design = new desk::ChoiceField(m_formatter, this);
    m_design->setObjectName(QStringLiteral("ladderDesign"));
    auto* box = new desk::FieldBox(tr("What it makes of the design"), m_design, this);
    auto* row = new QHBoxLayout;
    row->addWidget(box, 2);
    row->addStretch(3);
    column->addLayout(row);
    m_point = new desk::TextLabel({}, TextSize::Body, Role::Ink, Weight::Plain, this);
    m_point->setObjectName(QStringLiteral("ladderPoint"));
    m_point->setWordWrap(true);
    column->addWidget(m_point);
    m_picture = new LadderPicture(m_formatter, this);
    m_picture->setObjectName(QStringLiteral("ladderPicture"));
    column->addWidget(m_picture);
    m_cliffs = new desk::TextLabel({}, TextSize::Body, Role::Ink, Weight::Plain, this);
    m_cliffs->setObjectName(QStringLiteral("ladderCliffs"));
    m_cliffs->setWordWrap(true);
    column->addWidget(m_cliffs);
    connect(m_design, &desk::ChoiceField::chosen, this, [this](const QVariant& chosen) {
        m_chosen = chosen.isValid() ? chosen.value<base::Id>() : base::Id{};
        refresh();
    });
    connect(m_picture, &LadderPicture::moved, this, &LadderPanel::showMarked);
}

void LadderPanel::refresh() {
    if (!isVisible()) return;
    const auto& designs = m_presenter.session().designs();
    m_design->setChoices(desk::choicesOf(designs));
    if (!m_presenter.session().design(m_chosen) && !designs.empty()) m_chosen = designs.front().id;
    if (!m_design->isDirty()) m_design->setCurrent(QVariant::fromValue(m_chosen));
    m_curve.reset();
    if (designs.empty()) {
        m_cliffs->setText(tr("Once there is a design, its prices by quantity stand here."));
    } else if (auto curve = m_presenter.ladderCurve(m_chosen)) {
        m_curve = std::make_shared<const pricing::LadderCurve>(std::move(*curve));
        m_cliffs->setText(cliffWords(*m_curve, m_formatter).join(QLatin1Char(' ')));
    } else {
        m_cliffs->setText(words::sentence(curve.error()));
    }
    const bool hasCliff = m_curve && !m_curve->cliffs.empty();
    m_cliffs->setRole(hasCliff || !m_curve ? Role::Warn : Role::Muted);
    m_picture->setVisible(m_curve != nullptr);
    m_point->setVisible(m_curve != nullptr);
    m_picture->setCurve(m_curve);
    showMarked();
}

void LadderPanel::showMarked() {
    const auto* point = m_picture->marked();
    m_point->setText(point ? ladderPointWords(*m_curve, *point, m_formatter) : QString());
}

void LadderPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

} // namespace sp::shop

#include "moc_ladder_panel.cpp"
