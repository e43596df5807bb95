// SPDX-License-Identifier: MIT
#include "app/counter/sheet_row.h"

#include "app/words/names.h"
#include "core/needs/sheet_use.h"

#include <QHBoxLayout>

namespace sp::counter {

SheetRow::SheetRow(CounterPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : QWidget(parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    for (Place* place : {&m_base, &m_tape, &m_templates}) {
        place->picture = new desk::SheetPicture(this);
        row->addWidget(place->picture, 1, Qt::AlignTop);
    }
    m_base.picture->setObjectName(QStringLiteral("baseSheet"));
    m_tape.picture->setObjectName(QStringLiteral("tapeSheet"));
    m_templates.picture->setObjectName(QStringLiteral("templateSheet"));
}

QStringList SheetRow::caption(const catalogue::Material& material, const needs::SheetUse& use, bool onWall) const {
    QStringList lines{QString::fromStdString(material.name)};
    if (onWall) return lines << tr("on the wall");
    if (material.sheet.form == catalogue::SheetForm::Roll)
        return lines << tr("%1 off the roll").arg(m_formatter.length(use.rollLength));
    QString second = tr("%1 a sheet").arg(m_formatter.count(units::Count::of(use.perSheet)));
    if (material.kind == catalogue::MaterialKind::Tape) {
        const auto lifts = material.sheet.lifts;
        second += QStringLiteral(" · ");
        second += lifts == 1 ? tr("lifts once") : tr("lifts %1 times", nullptr, static_cast<int>(lifts)).arg(lifts);
    }
    return lines << second
                 << words::counted(words::Thing::Sheet, use.sheets, m_formatter.count(units::Count::of(use.sheets)));
}

void SheetRow::show(Place& place, const base::Id& id, const needs::SheetUse& use, bool onWall) {
    const auto* priced = m_presenter.prices().find(id);
    const bool isSheet = priced && priced->material.kind != catalogue::MaterialKind::Blank;
    place.picture->setVisible(isSheet);
    if (!isSheet) return;
    const auto& material = priced->material;
    const auto& traits = material.sheet;
    const auto& design = *m_presenter.place();
    const bool roll = traits.form == catalogue::SheetForm::Roll;
    const layout::Sheet sheet{traits.width, roll ? std::max(use.rollLength, design.height) : traits.height};
    const auto piece = needs::pieceOf(traits, design.width, design.height);
    const auto rules = needs::rulesOf(traits);
    place.picture->setOutlined(onWall);
    place.picture->setCaption(caption(material, use, onWall));
    if (place.sheet == sheet && place.piece == piece && place.rules == rules) return;
    place.sheet = sheet;
    place.piece = piece;
    place.rules = rules;
    const auto fit = layout::fitSheet(sheet, piece, rules);
    if (fit)
        place.picture->setSheet(sheet, piece, fit->positions);
    else
        place.picture->clear();
}

void SheetRow::refresh() {
    const auto* takes = m_presenter.requiredAtPlace();
    setVisible(takes != nullptr);
    if (!takes) return;
    const auto& line = m_presenter.line();
    const auto& shop = m_presenter.prices().shop;
    show(m_base, line.customersGarment ? base::Id{} : line.baseMaterial, takes->backing.use, false);
    show(m_tape, shop.usualTape, takes->tape.use, false);
    show(m_templates, shop.usualTemplate, takes->templates.use, m_presenter.place()->templatesOnWall);
}

} // namespace sp::counter

#include "moc_sheet_row.cpp"
