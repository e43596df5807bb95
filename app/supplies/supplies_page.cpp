// SPDX-License-Identifier: MIT
#include "app/supplies/supplies_page.h"

#include "app/desk/bench_style.h"
#include "app/desk/card.h"
#include "app/desk/empty_state.h"
#include "app/desk/scroll_page.h"
#include "app/desk/stone_painter.h"
#include "app/desk/tab_order.h"
#include "app/desk/typed_field.h"
#include "app/supplies/kit_card.h"
#include "app/supplies/material_card.h"
#include "app/supplies/price_list_dialog.h"
#include "app/supplies/supplier_card.h"
#include "app/words/names.h"
#include "app/words/shelf_words.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>

namespace sp::supplies {

using catalogue::MaterialKind;

SuppliesPage::SuppliesPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent)
    : ListPage(parent)
    , m_presenter(session)
    , m_formatter(formatter) {
    auto* below = buildList(
        tr("Supplies"),
        {tr("Materials, kits and suppliers"), tr("&Find by name or kind"), tr("Nothing here is called that.")},
        "supplies", "findSupply", m_formatter);
    below->add(buildNew(), 3);
    auto* card = new desk::Card(this);
    auto* inside = new QVBoxLayout(card);
    inside->setContentsMargins(1, 1, 1, 1);
    auto* empty = new desk::EmptyState(
        desk::Icon::Supplies, tr("Stones, sheets, blanks and packing belong here, with what a pack of each costs."),
        tr("Add the first stone"), card);
    connect(empty, &desk::EmptyState::acted, this, [this] {
        m_presenter.addMaterial(MaterialKind::Stone);
        focusName();
    });
    m_empty = empty;
    inside->addWidget(m_empty);
    auto* scroll = new desk::ScrollPage(desk::cardMargins(), card);
    m_content = scroll;
    inside->addWidget(scroll);
    auto* body = scroll->widget();
    auto* column = scroll->column();
    auto* head = new QHBoxLayout;
    m_heading = desk::pageTitle({}, body);
    head->addWidget(m_heading, 1);
    m_remove = new QPushButton(tr("&Remove"), body);
    m_remove->setObjectName(QStringLiteral("removeSupply"));
    connect(m_remove, &QPushButton::clicked, this, &SuppliesPage::removed);
    head->addWidget(m_remove);
    column->addLayout(head);
    m_material = new MaterialCard(m_presenter, m_formatter, body);
    m_supplier = new SupplierCard(m_presenter, m_formatter, body);
    connect(m_supplier, &SupplierCard::priceListWanted, this, &SuppliesPage::readPriceList);
    column->addWidget(m_material);
    column->addWidget(m_supplier);
    m_kit = new KitCard(m_presenter, m_formatter, body);
    column->addWidget(m_kit);
    column->addStretch(1);
    addCard(card);
    connect(&m_presenter, &SuppliesPresenter::opened, this, &SuppliesPage::refresh);
    connect(&m_presenter, &SuppliesPresenter::changed, this, &SuppliesPage::refresh);
    refresh();
}

QPushButton* SuppliesPage::buildNew() {
    auto* add = new QPushButton(tr("&New"), this);
    add->setObjectName(QStringLiteral("newSupply"));
    desk::makePrimary(*add);
    auto* kinds = new QMenu(add);
    const std::pair<QString, MaterialKind> choices[] = {{tr("&Stone"), MaterialKind::Stone},
                                                        {tr("&Tape"), MaterialKind::Tape},
                                                        {tr("Te&mplate sheet"), MaterialKind::Template},
                                                        {tr("&Backing"), MaterialKind::Backing},
                                                        {tr("Blan&k"), MaterialKind::Blank},
                                                        {tr("&Packing"), MaterialKind::Packing}};
    for (const auto& [word, kind] : choices)
        connect(kinds->addAction(word), &QAction::triggered, this, [this, kind = kind] {
            m_presenter.addMaterial(kind);
            focusName();
        });
    kinds->addSeparator();
    connect(kinds->addAction(tr("Ki&t, several at one price")), &QAction::triggered, this, [this] {
        if (const auto problem = m_presenter.addKit(); !problem.isEmpty())
            messages().tell(desk::Tone::Warn, problem);
        else
            focusName();
    });
    connect(kinds->addAction(tr("S&upplier")), &QAction::triggered, this, [this] {
        m_presenter.addSupplier();
        focusName();
    });
    add->setMenu(kinds);
    return add;
}

/// What is new is named first.
void SuppliesPage::focusName() {
    const char* name = m_presenter.material() ? "materialName" : m_presenter.kit() ? "kitName" : "supplierName";
    if (auto* field = findChild<desk::TypedField*>(QLatin1String(name))) {
        desk::focusOn(*field);
        field->selectAll(); // it may have had the focus before
    }
}

QString SuppliesPage::detailOf(const catalogue::Material& material) {
    const auto shelf = words::shelfInShort(m_presenter.onShelf(material.id), [this](std::int64_t count) {
        return m_formatter.count(units::Count::of(count));
    });
    return tr("%1 · %2").arg(words::nameOf(material.kind), shelf);
}

std::vector<desk::StoneListRow> SuppliesPage::rows(const QString& wanted, const base::Id& kept) {
    std::vector<desk::StoneListRow> rows;
    const auto add = [&](desk::StoneListRow row) {
        if (row.id == kept || row.name.contains(wanted, Qt::CaseInsensitive) ||
            row.detail.contains(wanted, Qt::CaseInsensitive))
            rows.push_back(std::move(row));
    };
    for (const auto kind : {MaterialKind::Stone, MaterialKind::Tape, MaterialKind::Template, MaterialKind::Backing,
                            MaterialKind::Blank, MaterialKind::Packing})
        for (const auto& material : m_presenter.session().materials()) {
            if (material.kind != kind) continue;
            desk::StoneListRow row{material.id, QString::fromStdString(material.name), detailOf(material), {}};
            if (kind == MaterialKind::Stone) row.stones.push_back(desk::stoneColour(material.stone.rgb));
            add(std::move(row));
        }
    for (const auto& kit : m_presenter.session().kits()) {
        const auto* design = m_presenter.session().design(kit.design);
        desk::StoneListRow row{kit.id,
                               QString::fromStdString(kit.name),
                               design ? tr("kit · for %1").arg(QString::fromStdString(design->name)) : tr("kit"),
                               {}};
        for (const auto& item : kit.items)
            if (const auto* material = m_presenter.session().material(item.material);
                material && material->kind == MaterialKind::Stone)
                row.stones.push_back(desk::stoneColour(material->stone.rgb));
        add(std::move(row));
    }
    for (const auto& supplier : m_presenter.session().suppliers())
        add({supplier.id, QString::fromStdString(supplier.name), tr("supplier"), {}});
    return rows;
}

void SuppliesPage::load() {
    const auto* material = m_presenter.material();
    const auto* supplier = m_presenter.supplier();
    const auto* kit = m_presenter.kit();
    m_heading->setText(QString::fromStdString(material   ? material->name
                                              : supplier ? supplier->name
                                              : kit      ? kit->name
                                                         : std::string()));
    auto& session = m_presenter.session();
    const bool isEmpty = session.materials().empty() && session.suppliers().empty() && session.kits().empty();
    m_empty->setVisible(isEmpty);
    m_content->setVisible(!isEmpty);
    m_remove->setVisible(material || supplier || kit);
    m_kit->setVisible(kit != nullptr);
    if (kit) m_kit->load();
    m_material->setVisible(material != nullptr);
    m_supplier->setVisible(supplier != nullptr);
    if (material) m_material->load();
    if (supplier) m_supplier->load();
}

void SuppliesPage::removed() {
    const auto name = m_heading->text();
    const auto problem = m_presenter.remove();
    if (!problem.isEmpty()) {
        messages().tell(desk::Tone::Warn, problem);
        return;
    }
    messages().tell(desk::Tone::Jewel, tr("“%1” is removed.").arg(name), tr("Undo"),
                    [this] { m_presenter.session().undo(); });
    messages().staysUntil(&m_presenter.session(), &session::BookSession::saved);
}

void SuppliesPage::readPriceList() {
    auto* dialog = new PriceListDialog(m_presenter.session(), m_formatter, m_presenter.currentId(),
                                       m_presenter.session().today(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this] {
        messages().tell(desk::Tone::Jewel, tr("The price list is taken over."), tr("Undo"),
                        [this] { m_presenter.session().undo(); });
        messages().staysUntil(&m_presenter.session(), &session::BookSession::saved);
    });
    dialog->open();
    dialog->chooseFile();
}

} // namespace sp::supplies

#include "moc_supplies_page.cpp"
