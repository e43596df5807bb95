// SPDX-License-Identifier: MIT
#include "app/supplies/pack_rows.h"

#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/supplies/price_text.h"
#include "app/words/words.h"
#include "core/catalogue/fields/tables.h"
#include "core/supply/pack_price.h"

#include <QPushButton>

#include <algorithm>

namespace sp::supplies {

PackRows::PackRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(8, tr("Packs and prices"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    problem()->setObjectName(QStringLiteral("packProblem"));
    auto* add = addButton(tr("+ pa&ck"), QStringLiteral("addPack"));
    connect(add, &QPushButton::clicked, this, &PackRows::addPack);
}

/// The new row is gone into at its supplier, who may be a new one.
void PackRows::addPack() {
    const auto before = m_presenter.packs();
    if (m_presenter.session().suppliers().empty()) {
        m_firstOf = m_presenter.currentId();
        load();
    } else {
        setRefusal(m_presenter.addPack());
    }
    for (const auto& row : m_rows) {
        if (std::ranges::find(before, row.pack, &catalogue::Pack::id) != before.end()) continue;
        row.supplier->setTakesNew(true);
        row.supplier->setFocus(Qt::OtherFocusReason);
        return;
    }
}

void PackRows::nameSupplier(const base::Id& pack, const QString& name) {
    const auto refusal = m_presenter.addSupplierOf(pack, name);
    setRefusal(refusal);
    if (!refusal.isEmpty() || !pack.isNone()) return;
    m_firstOf = {};
    // The row was made anew, and the key that named the supplier has still to go its way.
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (!m_rows.empty()) m_rows.back().name->setFocus(Qt::OtherFocusReason);
        },
        Qt::QueuedConnection);
}

QString PackRows::whichIs(const catalogue::Pack& pack) const {
    if (pack.prices.empty() || pack.prices.front().each.isZero()) return {};
    constexpr std::int64_t kGross = 144;
    constexpr std::int64_t kTenThousandth = 100; // of a unit: a stone costs less than a cent
    const auto* material = m_presenter.material();
    if (material && material->kind == catalogue::MaterialKind::Stone)
        return QStringLiteral("%1 · %2").arg(m_formatter.money(supply::priceOf(pack, kGross, 1)),
                                             m_formatter.moneyExact(supply::priceOf(pack, 1, kTenThousandth)));
    return m_formatter.money(supply::priceOf(pack, 1, 1));
}

void PackRows::load() {
    auto packs = m_presenter.packs();
    if (m_presenter.session().suppliers().empty() && m_firstOf == m_presenter.currentId() && !m_firstOf.isNone())
        packs.emplace_back();
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
        if (!row.prices->isDirty() && !pack.prices.empty()) row.prices->setRaw(writePrices(pack.prices, m_formatter));
        row.whichIs->setText(whichIs(pack));
        row.usual->setChecked(pack.usual);
    }
}

void PackRows::rebuild(const std::vector<catalogue::Pack>& packs) {
    m_rows.clear();
    grid()->restart();
    const auto* material = m_presenter.material();
    const bool isStone = material && material->kind == catalogue::MaterialKind::Stone;
    if (!packs.empty())
        grid()->addHeads({tr("supplier"), tr("pack"), tr("holds"), tr("price; from so many: price"),
                          isStone ? tr("a gross · a stone") : tr("one"), tr("usual")});
    const int stretches[] = {3, 3, 1, 2, 2};
    for (int i = 0; i < 5; ++i) grid()->cells()->setColumnStretch(i, stretches[i]);
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
            new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, grid()->body()),
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
    row.whichIs->setObjectName(QStringLiteral("packWhichIs%1").arg(at));
    row.whichIs->setElides(true);
    row.supplier->setNewWording(tr("Add “%1” as a supplier"));
    row.supplier->setPlaceholderText(tr("who sells it"));
    if (pack.id.isNone()) // nothing is kept of it before its supplier is
        for (desk::TypedField* field :
             {static_cast<desk::TypedField*>(row.name), static_cast<desk::TypedField*>(row.amount),
              static_cast<desk::TypedField*>(row.prices)})
            field->setEnabled(false);
    row.usual->setEnabled(!pack.id.isNone());
    int column = 0;
    for (QWidget* widget :
         {static_cast<QWidget*>(row.supplier), static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.amount),
          static_cast<QWidget*>(row.prices), static_cast<QWidget*>(row.whichIs), static_cast<QWidget*>(row.usual)})
        grid()->cells()->addWidget(widget, at + 1, column++);
    auto* remove = grid()->addRemove(at + 1, column, tr("Take pack %1 out").arg(at + 1));
    connect(remove, &QToolButton::clicked, this, [this, id = pack.id] {
        m_firstOf = {};
        if (id.isNone())
            load();
        else
            m_presenter.removePack(id);
    });
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
    connect(row.supplier, &desk::ChoiceField::typedNew, this,
            [this, id = row.pack](const QString& name) { nameSupplier(id, name); });
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
