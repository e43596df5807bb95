// SPDX-License-Identifier: MIT
#include "app/supplies/pack_rows.h"

#include "app/desk/bench_style.h"
#include "app/desk/choices.h"
#include "app/desk/field_binding.h"
#include "app/supplies/price_text.h"
#include "core/catalogue/fields/tables.h"
#include "core/supply/pack_price.h"

#include <QPushButton>

#include <algorithm>
#include <initializer_list>

namespace sp::supplies {

namespace {

constexpr int kRemoveColumn = 6;

} // namespace

PackRows::PackRows(SuppliesPresenter& presenter, const desk::Formatter& formatter, QWidget* parent)
    : RowsPanel(8, tr("Packs and prices"), parent)
    , m_presenter(presenter)
    , m_formatter(formatter) {
    problem()->setObjectName(QStringLiteral("packProblem"));
    auto* add = addButton(tr("+ pac&k"), QStringLiteral("addPack"));
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

QString PackRows::whichIs(const catalogue::Pack& pack, units::Money each) const {
    if (each.isZero()) return {};
    constexpr std::int64_t kGross = 144;
    constexpr std::int64_t kTenThousandth = 100; // of a unit: a stone costs less than a cent
    auto bought = pack;
    bought.prices = {{units::Count::of(1), each}};
    const auto* material = m_presenter.material();
    if (material && material->kind == catalogue::MaterialKind::Stone)
        return QStringLiteral("%1 · %2").arg(m_formatter.money(supply::priceOf(bought, kGross, 1)),
                                             m_formatter.moneyExact(supply::priceOf(bought, 1, kTenThousandth)));
    return m_formatter.money(supply::priceOf(bought, 1, 1));
}

std::vector<desk::TypedField*> PackRows::fieldsOf(const Row& row) {
    std::vector<desk::TypedField*> fields{row.supplier, row.name, row.amount, row.price, row.item};
    for (const auto& further : row.breaks) fields.insert(fields.end(), {further.from, further.each});
    return fields;
}

bool PackRows::isShown(const std::vector<catalogue::Pack>& packs) const {
    return std::equal(
        packs.begin(), packs.end(), m_rows.begin(), m_rows.end(), [](const catalogue::Pack& pack, const Row& row) {
            return pack.id == row.pack && std::max<std::size_t>(pack.prices.size(), 1) == row.breaks.size() + 1;
        });
}

void PackRows::load() {
    auto packs = m_presenter.packs();
    if (m_presenter.session().suppliers().empty() && m_firstOf == m_presenter.currentId() && !m_firstOf.isNone())
        packs.emplace_back();
    if (!isShown(packs) || packs.empty()) rebuild(packs);
    for (std::size_t i = 0; i < m_rows.size(); ++i) fill(m_rows[i], packs[i]);
}

void PackRows::fill(const Row& row, const catalogue::Pack& pack) {
    row.supplier->setChoices(desk::choicesOf(m_presenter.session().suppliers()));
    if (!row.supplier->isDirty()) row.supplier->setCurrent(QVariant::fromValue(pack.supplier));
    if (!row.name->isDirty()) row.name->setRaw(QString::fromStdString(pack.name));
    if (!row.amount->isDirty()) row.amount->setValue(pack.amount);
    if (!row.item->isDirty()) row.item->setRaw(QString::fromStdString(pack.item));
    row.usual->setChecked(pack.usual);
    if (pack.prices.empty()) return;
    if (!row.price->isDirty()) row.price->setValue(pack.prices.front().each);
    row.whichIs->setText(whichIs(pack, pack.prices.front().each));
    for (std::size_t i = 0; i < row.breaks.size(); ++i) {
        const auto& step = pack.prices[i + 1];
        if (!row.breaks[i].from->isDirty()) row.breaks[i].from->setValue(step.from);
        if (!row.breaks[i].each->isDirty()) row.breaks[i].each->setValue(step.each);
        row.breaks[i].whichIs->setText(whichIs(pack, step.each));
    }
}

void PackRows::rebuild(const std::vector<catalogue::Pack>& packs) {
    std::vector<Unsaved> unsaved;
    for (const auto& row : m_rows) {
        const auto fields = fieldsOf(row);
        for (std::size_t i = 0; i < fields.size(); ++i)
            if (fields[i]->isDirty()) unsaved.push_back({row.pack, i, fields[i]->text(), fields[i]->problem()});
    }
    m_rows.clear();
    grid()->restart();
    if (!packs.empty()) addHeads();
    int line = 1;
    for (const auto& pack : packs) line = addRow(line, pack);
    std::vector<desk::TypedField*> fields;
    for (const auto& row : m_rows)
        for (auto* field : fieldsOf(row)) fields.push_back(field);
    problem()->watch(fields);
    for (std::size_t i = 0; i < m_rows.size(); ++i) fill(m_rows[i], packs[i]);
    for (const auto& kept : unsaved) {
        const auto row = std::ranges::find(m_rows, kept.pack, &Row::pack);
        if (row == m_rows.end() || kept.at >= fieldsOf(*row).size()) continue;
        auto* field = fieldsOf(*row)[kept.at];
        field->setRaw(kept.text);
        if (field->problem().isEmpty()) field->setOuterProblem(kept.problem);
    }
    grid()->finish();
}

void PackRows::addHeads() {
    const auto* material = m_presenter.material();
    const bool isStone = material && material->kind == catalogue::MaterialKind::Stone;
    grid()->addHeads({tr("supplier; item no."), tr("pack"), tr("holds"), tr("price of one"),
                      isStone ? tr("a gross · a stone") : tr("one"), tr("usual")});
    const int stretches[] = {3, 3, 1, 2, 2};
    for (int i = 0; i < 5; ++i) grid()->cells()->setColumnStretch(i, stretches[i]);
}

int PackRows::addRow(int line, const catalogue::Pack& pack) {
    auto* body = grid()->body();
    const auto at = static_cast<int>(m_rows.size());
    Row row{pack.id,
            new desk::ChoiceField(m_formatter, body),
            new desk::WordField(m_formatter, tr("Give the pack a name, such as bag of 10 gross."), body),
            new desk::CountField(m_formatter, body),
            new desk::MoneyField(m_formatter, body),
            new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, body),
            new QCheckBox(body),
            new desk::WordField(m_formatter, {}, body)};
    const auto name = [&](QWidget* widget, const char* object, const QString& words) {
        widget->setObjectName(QStringLiteral("%1%2").arg(QLatin1String(object)).arg(at));
        widget->setAccessibleName(tr("%1 of pack %2").arg(words).arg(at + 1));
    };
    name(row.supplier, "packSupplier", tr("supplier"));
    name(row.name, "packName", tr("name"));
    name(row.amount, "packAmount", tr("contents"));
    name(row.price, "packPrice", tr("price"));
    name(row.usual, "packUsual", tr("usual tick"));
    name(row.item, "packItem", tr("item number"));
    using catalogue::Pack;
    using catalogue::fields::fieldOf;
    desk::standsFor(*row.supplier, fieldOf<&Pack::supplier>());
    desk::standsFor(*row.name, fieldOf<&Pack::name>());
    desk::standsFor(*row.amount, fieldOf<&Pack::amount>());
    desk::standsFor(*row.price, fieldOf<&catalogue::PriceBreak::each>());
    desk::standsFor(*row.usual, fieldOf<&Pack::usual>());
    desk::standsFor(*row.item, fieldOf<&Pack::item>());
    row.amount->setMinimumWidth(desk::scaled(80));
    row.whichIs->setObjectName(QStringLiteral("packWhichIs%1").arg(at));
    row.whichIs->setElides(true);
    row.supplier->setNewWording(tr("Add “%1” as a supplier"));
    row.supplier->setPlaceholderText(tr("who sells it"));
    row.item->setEmptyAllowed(true);
    row.item->setPlaceholderText(tr("item number"));
    row.item->setToolTip(tr("What the supplier’s price list calls this pack"));
    int column = 0;
    for (QWidget* widget :
         std::initializer_list<QWidget*>{row.supplier, row.name, row.amount, row.price, row.whichIs, row.usual})
        grid()->cells()->addWidget(widget, line, column++);
    auto* remove = grid()->addRemove(line, kRemoveColumn, tr("Take pack %1 out").arg(at + 1));
    connect(remove, &QToolButton::clicked, this, [this, id = pack.id] {
        m_firstOf = {};
        if (id.isNone())
            load();
        else
            m_presenter.removePack(id);
    });
    m_rows.push_back(row);
    const int next = addLowerLines(line + 1, m_rows.back(), pack);
    if (pack.id.isNone()) // nothing is kept of it before its supplier is
        for (QWidget* entry : std::initializer_list<QWidget*>{row.name, row.amount, row.price, row.usual, row.item})
            entry->setEnabled(false);
    connectRow(m_rows.back());
    return next;
}

/// Below a pack: its item number, what adds a price, and the further prices, the first of them beside these.
int PackRows::addLowerLines(int line, Row& row, const catalogue::Pack& pack) {
    const auto at = static_cast<int>(m_rows.size()) - 1;
    grid()->cells()->addWidget(row.item, line, 0);
    auto* add = new QPushButton(tr("+ price"), grid()->body());
    add->setObjectName(QStringLiteral("packAddBreak%1").arg(at));
    add->setAccessibleName(tr("%1 from so many packs on, of pack %2").arg(add->text()).arg(at + 1));
    add->setEnabled(!pack.id.isNone());
    desk::makeQuiet(*add);
    grid()->cells()->addWidget(add, line, 1, Qt::AlignLeft);
    connect(add, &QPushButton::clicked, this, [this, id = pack.id] { addBreak(id); });
    for (int further = 0; further + 1 < static_cast<int>(pack.prices.size()); ++further)
        row.breaks.push_back(addBreakRow(line + further, pack.id, further));
    return line + std::max(1, static_cast<int>(row.breaks.size()));
}

PackRows::Break PackRows::addBreakRow(int line, const base::Id& pack, int at) {
    auto* body = grid()->body();
    const auto number = static_cast<int>(m_rows.size());
    Break made{new desk::CountField(m_formatter, body), new desk::MoneyField(m_formatter, body),
               new desk::TextLabel({}, desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, body)};
    const auto object = [&](const char* stem) {
        return QStringLiteral("%1%2_%3").arg(QLatin1String(stem)).arg(number - 1).arg(at);
    };
    made.from->setObjectName(object("packFrom"));
    made.each->setObjectName(object("packEach"));
    made.from->setAccessibleName(tr("from how many packs, price %1 of pack %2").arg(at + 2).arg(number));
    made.each->setAccessibleName(tr("price %1 of pack %2").arg(at + 2).arg(number));
    desk::standsFor(*made.from, catalogue::fields::fieldOf<&catalogue::PriceBreak::from>());
    desk::standsFor(*made.each, catalogue::fields::fieldOf<&catalogue::PriceBreak::each>());
    made.from->setMinimumWidth(desk::scaled(80));
    made.whichIs->setElides(true);
    auto* word =
        new desk::TextLabel(tr("packs from"), desk::TextSize::Small, desk::Role::Muted, desk::Weight::Plain, body);
    grid()->cells()->addWidget(word, line, 1, Qt::AlignRight | Qt::AlignVCenter);
    grid()->cells()->addWidget(made.from, line, 2);
    grid()->cells()->addWidget(made.each, line, 3);
    grid()->cells()->addWidget(made.whichIs, line, 4);
    auto* remove = grid()->addRemove(line, kRemoveColumn, tr("Take price %1 of pack %2 out").arg(at + 2).arg(number));
    remove->setObjectName(object("packRemoveBreak"));
    connect(remove, &QToolButton::clicked, this, [this, pack, at] { removeBreak(pack, at); });
    for (auto* field : std::initializer_list<desk::TypedField*>{made.from, made.each})
        connect(field, &desk::TypedField::committed, this, [this, pack] { pricesCommitted(pack); });
    return made;
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
    connect(row.name, &desk::TypedField::committed, this, [this, tell, id = row.pack, name = row.name] {
        if (name->problem().isEmpty())
            tell(m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.name = name->words(); }));
    });
    connect(row.amount, &desk::TypedField::committed, this, [this, tell, id = row.pack, field = row.amount] {
        const auto amount = field->value();
        if (amount) tell(m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.amount = *amount; }));
    });
    connect(row.price, &desk::TypedField::committed, this, [this, id = row.pack] { pricesCommitted(id); });
    desk::saveWhenGood(*row.item, [this, id = row.pack, item = row.item] {
        return m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.item = item->words(); });
    });
    connect(row.usual, &QCheckBox::clicked, this, [this, tell, id = row.pack](bool on) {
        tell(m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.usual = on; }));
    });
}

/// The new price begins with twice as many packs as the last, as price lists often have it (common practice, no
/// source), and is the same until another is typed. How many is gone into.
void PackRows::addBreak(const base::Id& id) {
    const auto packs = m_presenter.packs();
    const auto pack = std::ranges::find(packs, id, &catalogue::Pack::id);
    auto row = std::ranges::find(m_rows, id, &Row::pack);
    if (pack == packs.end() || row == m_rows.end()) return;
    if (pack->prices.empty() || pack->prices.front().each.isZero()) {
        row->price->setOuterProblem(tr("Give the price of one pack first."));
        row->price->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto& last = pack->prices.back();
    const auto most = catalogue::fields::fieldOf<&catalogue::PriceBreak::from>().entryRange().highest;
    const auto from = last.from == units::Count::of(1) ? 5 : std::min(last.from.value(), most / 2) * 2;
    const auto refusal = m_presenter.editPack(id, [&](catalogue::Pack& edited) {
        edited.prices.push_back({units::Count::of(from), last.each});
    });
    setRefusal(refusal);
    row = std::ranges::find(m_rows, id, &Row::pack); // they were made anew
    if (!refusal.isEmpty() || row == m_rows.end() || row->breaks.empty()) return;
    row->breaks.back().from->setFocus(Qt::OtherFocusReason);
    row->breaks.back().from->selectAll();
}

void PackRows::removeBreak(const base::Id& id, int at) {
    const auto row = std::ranges::find(m_rows, id, &Row::pack);
    if (row == m_rows.end()) return;
    // What is typed for it and half done for those after it goes along: these are other rows from now on.
    for (std::size_t i = static_cast<std::size_t>(at); i < row->breaks.size(); ++i) {
        row->breaks[i].from->discardEdit();
        row->breaks[i].each->discardEdit();
    }
    setRefusal(m_presenter.editPack(id, [&](catalogue::Pack& pack) {
        if (at + 1 < static_cast<int>(pack.prices.size())) pack.prices.erase(pack.prices.begin() + at + 1);
    }));
}

bool PackRows::arePricesGood(const Row& row) {
    const auto free = [](const base::Result<units::Money>& each) { return each && each->isZero(); };
    const auto more = tr("A pack costs more than nothing; count in on the shelf what came free.");
    bool isGood = row.price->value().has_value() && !free(row.price->value());
    row.price->setOuterProblem(free(row.price->value()) ? more : QString());
    auto before = units::Count::of(1);
    for (const auto& further : row.breaks) {
        const auto from = further.from->value();
        const auto each = further.each->value();
        const bool follows = !from || before < *from;
        further.from->setOuterProblem(
            follows ? QString()
                    : tr("Give more than %1; the price above holds from there on.").arg(m_formatter.count(before)));
        further.each->setOuterProblem(free(each) ? more : QString());
        isGood = isGood && from && each && follows && !free(each);
        if (from) before = std::max(before, *from);
    }
    return isGood;
}

void PackRows::pricesCommitted(const base::Id& id) {
    const auto row = std::ranges::find(m_rows, id, &Row::pack);
    if (row == m_rows.end() || !arePricesGood(*row)) return;
    std::vector<catalogue::PriceBreak> prices{{units::Count::of(1), *row->price->value()}};
    for (const auto& further : row->breaks) prices.push_back({*further.from->value(), *further.each->value()});
    const auto refusal = m_presenter.editPack(id, [&](catalogue::Pack& pack) { pack.prices = prices; });
    const auto rising = risesFrom(prices);
    setRefusal(refusal.isEmpty() && rising ? tr("The price of a pack rises from %1 packs on; it is kept, but check it.")
                                                 .arg(m_formatter.count(*rising))
                                           : refusal);
}

} // namespace sp::supplies

#include "moc_pack_rows.cpp"
