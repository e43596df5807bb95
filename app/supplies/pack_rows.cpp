// SPDX-License-Identifier: MIT
#include "app/supplies/pack_rows.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/supplies/price_text.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"

#include <QPushButton>

#include <algorithm>

namespace sp::supplies {

PackRows::PackRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(8, tr("Packs and prices"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    problem()->setObjectName(QStringLiteral("packProblem"));
    auto* add = addButton(tr("+ pa&ck"), QStringLiteral("addPack"));
    connect(add, &QPushButton::clicked, this, [this] { setRefusal(m_presenter.addPack()); });
}

void PackRows::load() {
    const auto packs = m_presenter.packs();
    const bool same = std::equal(packs.begin(), packs.end(), m_rows.begin(), m_rows.end(),
                                 [](const catalogue::Pack& pack, const Row& row) { return pack.id == row.pack; });
    if (!same || packs.empty()) rebuild(packs);
    const auto suppliers = desk::choicesOf(m_presenter.session().suppliers());
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto& row = m_rows[i];
        const auto& pack = packs[i];
        row.supplier->setChoices(suppliers);
        if (!row.supplier->isDirty()) row.supplier->setCurrent(QVariant::fromValue(pack.supplier));
        if (!row.name->isDirty()) row.name->setRaw(QString::fromStdString(pack.name));
        if (!row.amount->isDirty()) row.amount->setValue(pack.amount);
        if (!row.prices->isDirty()) row.prices->setRaw(writePrices(pack.prices, m_formatter));
        row.usual->setChecked(pack.usual);
    }
}

void PackRows::rebuild(const std::vector<catalogue::Pack>& packs) {
    m_rows.clear();
    grid()->restart();
    if (!packs.empty())
        grid()->addHeads({tr("supplier"), tr("pack"), tr("holds"), tr("price; from so many: price"), tr("usual")});
    const int stretches[] = {3, 3, 1, 3};
    for (int i = 0; i < 4; ++i) grid()->cells()->setColumnStretch(i, stretches[i]);
    for (std::size_t i = 0; i < packs.size(); ++i) addRow(static_cast<int>(i), packs[i]);
    std::vector<desk::TypedField*> fields;
    for (const auto& row : m_rows) fields.insert(fields.end(), {row.supplier, row.name, row.amount, row.prices});
    problem()->watch(fields);
    grid()->finish();
}

void PackRows::addRow(int at, const catalogue::Pack& pack) {
    Row row{pack.id,
            new desk::ChoiceField(m_formatter, grid()->body()),
            new desk::WordField(m_formatter, tr("Give the pack a name, such as bag of 10 gross."), grid()->body()),
            new desk::CountField(m_formatter, grid()->body()),
            new desk::WordField(m_formatter, tr("Give the price of one pack."), grid()->body()),
            new QCheckBox(grid()->body())};
    const auto name = [&](QWidget* widget, const char* object, const QString& words) {
        widget->setObjectName(QStringLiteral("%1%2").arg(QLatin1String(object)).arg(at));
        widget->setAccessibleName(tr("%1 of pack %2").arg(words).arg(at + 1));
    };
    name(row.supplier, "packSupplier", tr("supplier"));
    name(row.name, "packName", tr("name"));
    name(row.amount, "packAmount", tr("contents"));
    name(row.prices, "packPrices", tr("prices"));
    name(row.usual, "packUsual", tr("usual tick"));
    using catalogue::Pack;
    using catalogue::fields::fieldOf;
    desk::standsFor(*row.supplier, fieldOf<&Pack::supplier>());
    desk::standsFor(*row.name, fieldOf<&Pack::name>());
    desk::standsFor(*row.amount, fieldOf<&Pack::amount>());
    desk::standsFor(*row.prices, fieldOf<&catalogue::PriceBreak::from>());
    desk::standsFor(*row.prices, fieldOf<&catalogue::PriceBreak::each>());
    desk::standsFor(*row.usual, fieldOf<&Pack::usual>());
    row.amount->setMinimumWidth(desk::scaled(80));
    int column = 0;
    for (QWidget* widget :
         {static_cast<QWidget*>(row.supplier), static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.amount),
          static_cast<QWidget*>(row.prices), static_cast<QWidget*>(row.usual)})
        grid()->cells()->addWidget(widget, at + 1, column++);
    auto* remove = grid()->addRemove(at + 1, column, tr("Take pack %1 out").arg(at + 1));
    connect(remove, &QToolButton::clicked, this, [this, id = pack.id] { m_presenter.removePack(id); });
    connectRow(row);
    m_rows.push_back(row);
}

void PackRows::connectRow(const Row& row) {
    const auto tell = [this](const QString& refusal) { setRefusal(refusal); };
    connect(row.supplier, &desk::ChoiceField::chosen, this, [this, tell, id = row.pack](const QVariant& chosen) {
        if (!chosen.isValid()) return;
        const auto supplier = chosen.value<base::Id>();
        tell(m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.supplier = supplier; }));
    });
    connect(row.name, &desk::TypedField::committed, this, [this, tell, row] {
        if (row.name->problem().isEmpty())
            tell(m_presenter.editPack(row.pack, [&](catalogue::Pack& pack) { pack.name = row.name->words(); }));
    });
    connect(row.amount, &desk::TypedField::committed, this, [this, tell, row] {
        const auto amount = row.amount->value();
        if (amount) tell(m_presenter.editPack(row.pack, [&](catalogue::Pack& pack) { pack.amount = *amount; }));
    });
    connect(row.prices, &desk::TypedField::committed, this, [this, tell, row] {
        const auto prices = parsePrices(row.prices->text(), m_formatter);
        row.prices->setOuterProblem(prices ? QString() : words::sentence(prices.error()));
        if (!prices) return;
        const auto refusal = m_presenter.editPack(row.pack, [&](catalogue::Pack& pack) { pack.prices = *prices; });
        const auto rising = risesFrom(*prices);
        tell(refusal.isEmpty() && rising ? tr("The price of a pack rises from %1 packs on; it is kept, but check it.")
                                               .arg(m_formatter.count(*rising))
                                         : refusal);
    });
    connect(row.usual, &QCheckBox::clicked, this, [this, tell, id = row.pack](bool on) {
        tell(m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.usual = on; }));
    });
}

} // namespace sp::supplies

#include "moc_pack_rows.cpp"
