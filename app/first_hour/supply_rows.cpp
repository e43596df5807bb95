// SPDX-License-Identifier: MIT
#include "app/first_hour/supply_rows.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/desk/field_box.h"
#include "app/desk/stone_swatches.h"
#include "core/catalogue/fields/tables.h"
#include "core/supply/pack_price.h"

#include <QHBoxLayout>

#include <algorithm>

namespace sp::first_hour {

using catalogue::MaterialKind;

SupplyRows::SupplyRows(FirstHourPresenter& presenter, SupplyGroup group, const desk::Formatter& formatter,
                       QWidget* parent)
    : RowsPanel(12, {}, parent)
    , m_presenter(presenter)
    , m_group(group)
    , m_formatter(formatter) {
    addSupplier();
    grid()->addHeads({{}, tr("supply"), tr("size"), tr("pack"), tr("price of a pack"), tr("which is")});
    grid()->cells()->setColumnStretch(1, 3);
    grid()->cells()->setColumnStretch(4, 1);
    grid()->cells()->setColumnStretch(5, 2);
    std::vector<desk::TypedField*> fields{m_supplier};
    for (const auto& supply : usualSupplies(group, formatter.lengthUnit()))
        addRow(static_cast<int>(m_rows.size()), supply);
    for (const auto& row : m_rows) fields.push_back(row.price);
    problem()->setObjectName(group == SupplyGroup::Stones ? QStringLiteral("stoneProblem")
                                                          : QStringLiteral("sheetProblem"));
    problem()->watch(fields);
    grid()->finish();
}

void SupplyRows::addSupplier() {
    m_supplier = new desk::ChoiceField(m_formatter, this);
    m_supplier->setObjectName(m_group == SupplyGroup::Sheets ? QStringLiteral("sheetSupplier")
                                                             : QStringLiteral("firstStoneSupplier"));
    m_supplier->setTakesNew(true);
    m_supplier->setNewWording(tr("Call them “%1”"));
    auto* box = new desk::FieldBox(tr("Bought &from"), m_supplier, this);
    auto* row = new QHBoxLayout;
    row->addWidget(box, 1);
    row->addStretch(1);
    static_cast<QBoxLayout*>(layout())->insertLayout(0, row);
    const auto take = [this](const QString& name) { setRefusal(m_presenter.setSupplier(m_group, name)); };
    connect(m_supplier, &desk::ChoiceField::typedNew, this, take);
    connect(m_supplier, &desk::ChoiceField::chosen, this, [this, take](const QVariant& chosen) {
        if (chosen.isValid()) take(m_supplier->text());
    });
}

void SupplyRows::addRow(int at, const UsualSupply& supply) {
    const auto name = QString::fromStdString(supply.material.name);
    const bool isStone = m_group == SupplyGroup::Stones;
    auto* body = grid()->body();
    auto* cells = grid()->cells();
    const int line = at + 1;
    const auto muted = [body](const QString& text) {
        return new desk::TextLabel(text, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, body);
    };
    if (isStone) {
        auto* swatch = new desk::StoneSwatches(body);
        swatch->setStones({QColor(QRgb(0xFF000000U | supply.material.stone.rgb))});
        cells->addWidget(swatch, line, 0);
    }
    cells->addWidget(new desk::TextLabel(isStone ? QString::fromStdString(supply.material.stone.colour) : name,
                                         desk::TextSize::Body, desk::Role::Ink, desk::Weight::Plain, body),
                     line, 1);
    const bool hasSize = !isStone && supply.material.kind != MaterialKind::Packing;
    cells->addWidget(muted(isStone   ? QString::fromStdString(supply.material.stone.size)
                           : hasSize ? m_formatter.size(supply.material.sheet.width, supply.material.sheet.height)
                                     : QString()),
                     line, 2);
    cells->addWidget(muted(QString::fromStdString(supply.pack)), line, 3);
    auto* price = new desk::MoneyField(m_formatter, body);
    price->setObjectName(
        QStringLiteral("%1Price%2").arg(isStone ? QStringLiteral("stone") : QStringLiteral("sheet")).arg(at));
    price->setAccessibleName(tr("Price of %1, %2").arg(name, QString::fromStdString(supply.pack)));
    price->setEmptyAllowed(true);
    price->setAlignment(Qt::AlignRight);
    price->setMinimumWidth(desk::scaled(80));
    desk::standsFor(*price, catalogue::fields::fieldOf<&catalogue::PriceBreak::each>());
    cells->addWidget(price, line, 4);
    auto* one = muted({});
    one->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    cells->addWidget(one, line, 5);
    m_rows.push_back({supply, price, one});
    connect(price, &desk::TypedField::edited, this, [this, at] {
        auto& row = m_rows[static_cast<std::size_t>(at)];
        row.whichIs->setText(whichIs(row));
    });
    connect(price, &desk::TypedField::committed, this, [this, at] {
        const auto& row = m_rows[static_cast<std::size_t>(at)];
        const auto value = row.price->optionalValue();
        if (value) setRefusal(m_presenter.setPrice(m_group, row.supply, *value));
    });
}

/// By what is typed, so that it answers at once.
QString SupplyRows::whichIs(const Row& row) const {
    const auto price = row.price->optionalValue();
    if (!price || !price->has_value()) return {};
    catalogue::Pack pack;
    pack.amount = row.supply.amount;
    pack.prices = {{units::Count::of(1), **price}};
    constexpr std::int64_t kGross = 144;
    if (m_group == SupplyGroup::Stones)
        return tr("%1 a gross").arg(m_formatter.money(supply::priceOf(pack, kGross, 1)));
    const auto one = m_formatter.money(supply::priceOf(pack, 1, 1));
    return row.supply.material.kind == MaterialKind::Packing ? tr("%1 a piece").arg(one) : tr("%1 a sheet").arg(one);
}

void SupplyRows::load() {
    auto suppliers = desk::choicesOf(m_presenter.session().suppliers());
    const auto name = m_presenter.supplierOf(m_group);
    const bool isKnown = std::ranges::find(suppliers, name, &desk::Choice::text) != suppliers.end();
    if (!isKnown) suppliers.push_back({name, name, {}, {}}); // the first price makes it
    m_supplier->setChoices(std::move(suppliers));
    if (!m_supplier->isDirty()) m_supplier->setRaw(name);
    for (auto& row : m_rows) {
        const auto pack = m_presenter.packOf(row.supply);
        if (!row.price->isDirty())
            row.price->setOptionalValue(pack && !pack->prices.empty() ? std::optional(pack->prices.front().each)
                                                                      : std::nullopt);
        row.whichIs->setText(whichIs(row));
    }
}

QWidget* SupplyRows::firstOpen() const {
    for (const auto& row : m_rows)
        if (row.price->isBlank()) return row.price;
    return nullptr;
}

} // namespace sp::first_hour

#include "moc_supply_rows.cpp"
