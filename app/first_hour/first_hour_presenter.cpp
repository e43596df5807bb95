// SPDX-License-Identifier: MIT
#include "app/first_hour/first_hour_presenter.h"

#include "app/words/words.h"
#include "db/messages.h"

#include <algorithm>

namespace sp::first_hour {

using catalogue::MaterialKind;
using quoting::FirstStep;

namespace {

template<class T>
QString refusalOf(const base::Result<T>& result) {
    return result ? QString() : words::sentence(result.error());
}

bool isNamed(const std::string& name, const std::string& wanted) {
    return QString::fromStdString(name).compare(QString::fromStdString(wanted), Qt::CaseInsensitive) == 0;
}

/// Has every line take a new one, where the shop takes none of its kind yet.
void takeUp(catalogue::Shop& shop, const base::Id& made, MaterialKind kind) {
    if (kind == MaterialKind::Tape && shop.usualTape.isNone()) shop.usualTape = made;
    if (kind == MaterialKind::Template && shop.usualTemplate.isNone()) shop.usualTemplate = made;
    if (kind == MaterialKind::Packing) shop.packing.push_back({made});
}

void leaveOut(catalogue::Shop& shop, const base::Id& gone) {
    if (shop.usualTape == gone) shop.usualTape = {};
    if (shop.usualTemplate == gone) shop.usualTemplate = {};
    std::erase_if(shop.packing, [&](const auto& use) { return use.material == gone; });
}

} // namespace

FirstHourPresenter::FirstHourPresenter(session::BookSession& session, QObject* parent)
    : QObject(parent)
    , m_session(session)
    , m_suppliers{tr("Sheet supplier"), tr("Stone supplier")} {
    connect(&m_session, &session::BookSession::changed, this, &FirstHourPresenter::changed);
}

void FirstHourPresenter::go(FirstStep step) {
    m_step = step;
    Q_EMIT changed();
}

void FirstHourPresenter::goOn() {
    const auto next = static_cast<std::size_t>(m_step) + 1;
    go(quoting::kFirstSteps[std::min(next, quoting::kFirstSteps.size() - 1)]);
}

bool FirstHourPresenter::isSettled(FirstStep step) {
    return quoting::isSettled(step, {prices(), !m_session.designs().empty(), step == FirstStep::Quote && hasQuote()});
}

bool FirstHourPresenter::isAllSettled() {
    return std::ranges::all_of(quoting::kFirstSteps, [this](FirstStep step) { return isSettled(step); });
}

FirstStep FirstHourPresenter::firstOpen() {
    const auto open = std::ranges::find_if(quoting::kFirstSteps, [this](FirstStep step) { return !isSettled(step); });
    return open == quoting::kFirstSteps.end() ? quoting::kFirstSteps.back() : *open;
}

QString FirstHourPresenter::setShown(bool shown) {
    auto shop = m_session.shop();
    shop.isBeingSetUp = shown;
    return refusalOf(m_session.attempt([&](db::Book& book) { return book.save(shop); }));
}

std::optional<base::Result<quoting::Trial>> FirstHourPresenter::trial() {
    const auto book = prices();
    const auto& designs = m_session.designs();
    const auto design = designs.empty() ? quoting::trialDesign(book) : std::optional(designs.front());
    if (!design) return std::nullopt;
    return quoting::trialOf(*design, book, m_session.today(), m_session.fits());
}

const catalogue::Material* FirstHourPresenter::made(const UsualSupply& supply) {
    const auto& all = m_session.materials();
    const auto found = std::ranges::find_if(all, [&](const catalogue::Material& material) {
        return material.kind == supply.material.kind && isNamed(material.name, supply.material.name);
    });
    return found == all.end() ? nullptr : &*found;
}

std::optional<catalogue::Pack> FirstHourPresenter::packOf(const UsualSupply& supply) {
    const auto* material = made(supply);
    if (!material) return std::nullopt;
    std::optional<catalogue::Pack> found;
    for (const auto& pack : m_session.packs())
        if (pack.material == material->id && (!found || pack.usual)) found = pack;
    return found;
}

std::vector<catalogue::Pack> FirstHourPresenter::packsOf(SupplyGroup group) {
    std::vector<catalogue::Pack> found;
    for (const auto& supply : usualSupplies(group, m_session.shop().lengthUnit))
        if (const auto pack = packOf(supply)) found.push_back(*pack);
    return found;
}

QString FirstHourPresenter::supplierOf(SupplyGroup group) {
    const auto packs = packsOf(group);
    const auto* known = packs.empty() ? nullptr : m_session.supplier(packs.front().supplier);
    return known ? QString::fromStdString(known->name) : m_suppliers[static_cast<std::size_t>(group)];
}

base::Result<base::Id> FirstHourPresenter::supplierIn(db::Book& book, SupplyGroup group) {
    catalogue::Supplier supplier;
    supplier.name = supplierOf(group).toStdString();
    for (const auto& known : m_session.suppliers())
        if (isNamed(known.name, supplier.name)) return known.id;
    return book.save(supplier);
}

base::Result<base::Id> FirstHourPresenter::makeSupplier(SupplyGroup group) {
    return m_session.change([&](db::Book& book) { return supplierIn(book, group); });
}

/// The one it stood for gets the other name, unless it sells something else too or that name is taken.
QString FirstHourPresenter::setSupplier(SupplyGroup group, const QString& name) {
    const auto wanted = name.simplified();
    auto packs = packsOf(group);
    const auto before = supplierOf(group);
    m_suppliers[static_cast<std::size_t>(group)] = wanted;
    if (packs.empty() || before == wanted) return {};
    return refusalOf(m_session.attempt([&](db::Book& book) {
        return book.batch(base::say(db::Note::Adding, wanted.toStdString()), [&]() -> base::Done {
            const auto& all = m_session.suppliers();
            const auto known = std::ranges::find_if(
                all, [&](const auto& supplier) { return isNamed(supplier.name, wanted.toStdString()); });
            auto target = known == all.end() ? *m_session.supplier(packs.front().supplier) : *known;
            const auto sold = std::ranges::count(m_session.packs(), target.id, &catalogue::Pack::supplier);
            if (known == all.end() && sold > static_cast<std::ptrdiff_t>(packs.size())) target = {};
            target.name = wanted.toStdString();
            const auto saved = book.save(target);
            if (!saved) return base::fail(saved.error());
            for (auto& pack : packs) {
                pack.supplier = *saved;
                if (auto moved = book.save(pack); !moved) return base::fail(moved.error());
            }
            return {};
        });
    }));
}

QString FirstHourPresenter::setPrice(SupplyGroup group, const UsualSupply& supply, std::optional<units::Money> price) {
    const auto pack = packOf(supply);
    if (!price) return made(supply) ? takeOut(supply) : QString();
    return pack ? priceKnown(*pack, *price) : addPriced(group, supply, *price);
}

QString FirstHourPresenter::priceKnown(const catalogue::Pack& known, units::Money price) {
    auto pack = known;
    if (pack.prices.empty()) pack.prices.emplace_back();
    pack.prices.front().each = price;
    return refusalOf(m_session.attempt([&](db::Book& book) { return book.save(pack); }));
}

QString FirstHourPresenter::addPriced(SupplyGroup group, const UsualSupply& supply, units::Money price) {
    const auto* known = made(supply);
    return refusalOf(m_session.attempt([&](db::Book& book) {
        return book.batch(base::say(db::Note::Adding, supply.material.name), [&]() -> base::Done {
            const auto material = known ? base::Result<base::Id>(known->id) : book.save(supply.material);
            if (!material) return base::fail(material.error());
            const auto supplier = supplierIn(book, group);
            if (!supplier) return base::fail(supplier.error());
            catalogue::Pack pack;
            pack.material = *material;
            pack.supplier = *supplier;
            pack.name = supply.pack;
            pack.amount = supply.amount;
            pack.prices = {{units::Count::of(1), price}};
            pack.usual = true;
            if (auto saved = book.save(pack); !saved) return base::fail(saved.error());
            auto shop = book.shop(); // saving a first tape or template has changed it
            if (!shop) return base::fail(shop.error());
            takeUp(*shop, *material, supply.material.kind);
            return book.save(*shop);
        });
    }));
}

QString FirstHourPresenter::takeOut(const UsualSupply& supply) {
    const auto gone = made(supply)->id;
    return refusalOf(m_session.attempt([&](db::Book& book) {
        return book.batch(base::say(db::Note::Removing, supply.material.name), [&]() -> base::Done {
            auto shop = book.shop();
            if (!shop) return base::fail(shop.error());
            leaveOut(*shop, gone);
            if (auto saved = book.save(*shop); !saved) return saved;
            return book.removeMaterial(gone);
        });
    }));
}

std::vector<const catalogue::Material*> FirstHourPresenter::stones() {
    const auto book = prices();
    std::vector<const catalogue::Material*> found;
    for (const auto& material : m_session.materials()) {
        const auto* priced = book.find(material.id);
        if (material.kind == MaterialKind::Stone && priced && priced->price) found.push_back(&material);
    }
    return found;
}

QString FirstHourPresenter::makeDesign(catalogue::Design design) {
    const auto& materials = m_session.materials();
    const auto backing = std::ranges::find(materials, MaterialKind::Backing, &catalogue::Material::kind);
    if (backing != materials.end()) design.usualBase = backing->id;
    return refusalOf(m_session.attempt([&](db::Book& book) { return book.save(design); }));
}

bool FirstHourPresenter::hasQuote() {
    if (m_hasQuote) return true;
    constexpr std::int64_t kLooked = 100; // drafts a new shop may have started since
    const auto found = m_session.read([](db::Book& book) { return book.quotes({}, kLooked); });
    m_hasQuote = found && std::ranges::any_of(*found, [](const auto& quote) { return !quote.number.empty(); });
    return m_hasQuote;
}

} // namespace sp::first_hour

#include "moc_first_hour_presenter.cpp"
