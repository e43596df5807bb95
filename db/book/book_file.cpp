// SPDX-License-Identifier: MIT
#include "db/book/book_file.h"

#include "core/base/ensure.h"
#include "db/book/action.h"
#include "db/book/older_book.h"
#include "db/book/price_list.h"
#include "db/book/words.h"
#include "db/migrations/migrations.h"
#include "db/records/record.h"

#include <fmt/format.h>

#include <array>
#include <unistd.h>

namespace sp::db {

using base::Code;
using base::Done;
using base::Id;
using base::Result;
using catalogue::BenchStandards;
using catalogue::Customer;
using catalogue::Design;
using catalogue::Kit;
using catalogue::Material;
using catalogue::Pack;
using catalogue::PriceBook;
using catalogue::Shop;
using catalogue::Supplier;
using records::StockMove;
using stores::Change;
using stores::Stamp;

BookFile::BookFile(Opened opened, Surroundings surroundings)
    : m_opened(std::move(opened))
    , m_stores(*m_opened.connection)
    , m_surroundings(std::move(surroundings)) {}

Id BookFile::newId() const {
    std::array<std::uint8_t, 10> random{};
    if (::getentropy(random.data(), random.size()) != 0)
        refuse(Code::Failed, {}, "The computer gave no random numbers; restart it.");
    const auto since = m_surroundings.now().time_since_epoch();
    const auto ms = std::chrono::duration_cast<std::chrono::milliseconds>(since).count();
    return Id::fromTime(static_cast<std::uint64_t>(ms < 0 ? 0 : ms), random);
}

std::string BookFile::momentNow() const {
    const auto now = std::chrono::floor<std::chrono::milliseconds>(m_surroundings.now());
    const auto day = std::chrono::floor<std::chrono::days>(now);
    const std::chrono::hh_mm_ss time(now - day);
    return fmt::format("{}T{:02}:{:02}:{:02}.{:03}Z", units::Date::fromDays(day).iso(), time.hours().count(),
                       time.minutes().count(), time.seconds().count(), time.subseconds().count());
}

Stamp BookFile::record(std::string_view kind, std::string what, Change change) {
    base::ensure(m_action.has_value(), "a change is part of an action");
    auto& action = *m_action;
    const Stamp stamp{m_stores.log.add(action.command, ++action.steps, action.at, m_surroundings.actor, kind, change),
                      action.at};
    if (action.step.what.empty()) action.step.what = std::move(what);
    action.step.changes.push_back(std::move(change));
    return stamp;
}

template<class T, class Store>
Id BookFile::keep(Store& store, std::string_view entity, T value) {
    std::optional<T> before;
    if (value.id.isNone()) {
        value.id = newId();
    } else {
        before = store.find(value.id);
        if (!before)
            refuse(Code::NotFound, value.name,
                   fmt::format("The {} “{}” is no longer in the book; add it anew.", entity, value.name));
    }
    orRefuse(catalogue::fields::check(value));
    if (before == value) return value.id;
    const Change change{std::string(entity), value.id, before ? records::write(*before) : std::string(),
                        records::write(value)};
    const auto stamp = record(before ? "change" : "make", changeOf(before, value), change);
    try {
        store.write(value, stamp);
    } catch (const Refusal& refusal) {
        if (refusal.error().code == Code::Conflict)
            refuse(Code::Conflict, value.name,
                   fmt::format("There is another {} called “{}”; choose another name.", entity, value.name));
        if (refusal.error().code == Code::Invalid)
            refuse(Code::Invalid, value.name,
                   fmt::format("“{}” refers to something that is not in the book; choose it anew.", value.name));
        throw;
    }
    return value.id;
}

template<class Store>
void BookFile::drop(Store& store, std::string_view entity, const Id& id) {
    const auto before = store.find(id);
    if (!before) refuse(Code::NotFound, id.text(), fmt::format("This {} is no longer in the book.", entity));
    const auto stamp =
        record("remove", "removing " + before->name, {std::string(entity), id, records::write(*before), {}});
    store.remove(id, stamp);
}

template<class T, class Store>
void BookFile::keepOnly(Store& store, std::string_view entity, const T& value) {
    orRefuse(catalogue::fields::check(value));
    const auto before = store.find();
    if (before == value) return;
    const auto stamp =
        record(before ? "change" : "make", before ? changeOf(*before, value) : std::string(entity),
               {std::string(entity), Id(), before ? records::write(*before) : std::string(), records::write(value)});
    try {
        store.write(value, stamp);
    } catch (const Refusal& refusal) {
        if (refusal.error().code != Code::Invalid) throw;
        refuse(Code::Invalid, std::string(entity),
               fmt::format("The {} refers to something that is not in the book; choose it anew.", entity));
    }
}

void BookFile::furnish() {
    orRefuse(act([&] {
        m_action->isUndone = false;
        // A starting point that passes its own checks: 100 bench hours a month, double the cost. Common practice, no
        // source; the owner sets both.
        Shop shop;
        shop.rates.productivePerMonth = units::Duration::fromMinutes(100 * 60);
        shop.rules.ladder = {{units::Count::of(1), units::Rate::fromPercent(100)}};
        keepOnly(m_stores.shop, "shop", shop);
        keepOnly(m_stores.bench, "bench", BenchStandards{});
    }));
}

// ---------------------------------------------------------------------------------------------- what the shop knows

Result<Shop> BookFile::shop() {
    return look([&] { return m_stores.shop.find().value(); });
}
Done BookFile::save(const Shop& shop) {
    return act([&] { keepOnly(m_stores.shop, "shop", shop); });
}
Result<BenchStandards> BookFile::bench() {
    return look([&] { return m_stores.bench.find().value(); });
}
Done BookFile::save(const BenchStandards& bench) {
    return act([&] { keepOnly(m_stores.bench, "bench", bench); });
}

Result<std::vector<Material>> BookFile::materials() {
    return look([&] { return m_stores.materials.all(); });
}
Result<Id> BookFile::save(const Material& material) {
    return act([&] { return keep(m_stores.materials, "material", material); });
}
Done BookFile::removeMaterial(const Id& id) {
    return act([&] {
        if (const auto user = m_stores.materials.usedBy(id); !user.empty())
            refuse(Code::Conflict, user, fmt::format("This material is used by {}; take it out there first.", user));
        if (const auto kit = m_stores.kits.nameOfUser(id); !kit.empty())
            refuse(Code::Conflict, kit,
                   fmt::format("This material is used by the kit “{}”; take it out there first.", kit));
        drop(m_stores.materials, "material", id);
    });
}

Result<std::vector<Supplier>> BookFile::suppliers() {
    return look([&] { return m_stores.suppliers.all(); });
}
Result<Id> BookFile::save(const Supplier& supplier) {
    return act([&] { return keep(m_stores.suppliers, "supplier", supplier); });
}
Done BookFile::removeSupplier(const Id& id) {
    return act([&] {
        if (const auto kit = m_stores.kits.nameOfUser(id); !kit.empty())
            refuse(Code::Conflict, kit,
                   fmt::format("This supplier sells the kit “{}”; remove that kit or give it another supplier first.",
                               kit));
        drop(m_stores.suppliers, "supplier", id);
    });
}

Result<std::vector<Pack>> BookFile::packs() {
    return look([&] { return m_stores.packs.all(); });
}
Result<Id> BookFile::save(const Pack& pack) {
    return act([&] {
        orRefuse(catalogue::fields::check([&] {
            Pack named = pack;
            if (named.id.isNone()) named.id = newId();
            return named;
        }()));
        m_action->step.what = m_depth == 1 ? changeOf(m_stores.packs.find(pack.id), pack) : m_action->step.what;
        if (pack.usual) letGoOfUsual(pack);
        return keep(m_stores.packs, "pack", pack);
    });
}
Done BookFile::removePack(const Id& id) {
    return act([&] { drop(m_stores.packs, "pack", id); });
}

void BookFile::letGoOfUsual(const Pack& pack) {
    auto other = m_stores.packs.usualOf(pack.material);
    if (!other || other->id == pack.id) return;
    other->usual = false;
    keep(m_stores.packs, "pack", *other);
}

Result<std::vector<Kit>> BookFile::kits() {
    return look([&] { return m_stores.kits.all(); });
}
Result<Id> BookFile::save(const Kit& kit) {
    return act([&] { return keep(m_stores.kits, "kit", kit); });
}
Done BookFile::removeKit(const Id& id) {
    return act([&] { drop(m_stores.kits, "kit", id); });
}

Result<std::vector<Design>> BookFile::designs() {
    return look([&] { return m_stores.designs.all(); });
}
Result<Id> BookFile::save(const Design& design) {
    return act([&] { return keep(m_stores.designs, "design", design); });
}
Done BookFile::removeDesign(const Id& id) {
    return act([&] {
        if (const auto kit = m_stores.kits.nameOfUser(id); !kit.empty())
            refuse(Code::Conflict, kit,
                   fmt::format("The kit “{}” is made for this design; remove that kit or make it for another first.",
                               kit));
        drop(m_stores.designs, "design", id);
    });
}

Result<std::vector<Customer>> BookFile::customers() {
    return look([&] { return m_stores.customers.all(); });
}
Result<Id> BookFile::save(const Customer& customer) {
    return act([&] { return keep(m_stores.customers, "customer", customer); });
}
Done BookFile::removeCustomer(const Id& id) {
    return act([&] { drop(m_stores.customers, "customer", id); });
}

// -------------------------------------------------------------------------------------------------------- the shelf

Done BookFile::moveStock(const Id& material, std::int64_t amount, std::optional<units::Money> cost,
                         std::string_view note) {
    return act([&] {
        const auto moved = m_stores.materials.find(material);
        if (!moved) refuse(Code::NotFound, material.text(), "This material is no longer in the book; add it anew.");
        const StockMove move{newId(), material, amount, cost, std::string(note), std::nullopt};
        orRefuse(catalogue::fields::check(move));
        const auto lying = m_stores.stock.onShelf(material);
        if (lying + amount < 0)
            refuse(Code::Invalid, moved->name,
                   fmt::format("Only {} of “{}” are on the shelf; count it and book what is there first.", lying,
                               moved->name));
        if (lying + amount > catalogue::fields::kCounts.highest)
            refuse(Code::Invalid, moved->name,
                   fmt::format("There would be more than {} of “{}” on the shelf; check the amount.",
                               catalogue::fields::kCounts.highest, moved->name));
        const auto stamp =
            record("make", "movement of " + moved->name, {"movement", move.id, {}, records::write(move)});
        m_stores.stock.add(move, stamp);
    });
}

Result<std::unordered_map<Id, std::int64_t>> BookFile::shelf() {
    return look([&] { return m_stores.stock.shelf(); });
}

Result<PriceBook> BookFile::priceBook(const Id& customer) {
    return look([&] {
        PriceBook book;
        book.shop = m_stores.shop.find().value();
        book.bench = m_stores.bench.find().value();
        book.materials = pricedMaterials(m_stores);
        if (customer.isNone()) return book;
        book.customer = m_stores.customers.find(customer);
        if (!book.customer)
            refuse(Code::NotFound, customer.text(), "This customer is no longer in the book; choose another.");
        return book;
    });
}

// ---------------------------------------------------------------------------------------------------- the whole book

Done BookFile::together(std::string_view what, const std::function<Done()>& work) {
    return act([&] {
        if (m_depth == 1) m_action->step.what = std::string(what);
        orRefuse(work());
    });
}

Done BookFile::copyTo(const std::filesystem::path& target) {
    return atTheDoor([&] {
        if (m_depth > 0) refuse(Code::Busy, target.string(), "The book cannot be copied in the middle of an action.");
        copyWhole(*m_opened.connection, target);
    });
}

Result<std::unique_ptr<Book>> Book::open(const std::filesystem::path& file, Surroundings surroundings) {
    return atTheDoor([&]() -> std::unique_ptr<Book> {
        return std::make_unique<BookFile>(openBook(file, migrations::all()), std::move(surroundings));
    });
}

Result<std::unique_ptr<Book>> Book::create(const std::filesystem::path& asked, Surroundings surroundings) {
    return atTheDoor([&]() -> std::unique_ptr<Book> {
        const auto target = resolvedNew(asked);
        const Unfinished unfinished(target);
        unfinished.make([&] {
            Opened made;
            made.connection = sqlite::Connection::make(unfinished.file());
            made.connection->settle();
            made.connection->script(fmt::format("PRAGMA application_id = {}", migrations::kApplicationId));
            bringUpToDate(*made.connection, migrations::all());
            BookFile(std::move(made), surroundings).furnish();
        });
        unfinished.publish();
        return std::make_unique<BookFile>(openBook(target, migrations::all()), std::move(surroundings));
    });
}

} // namespace sp::db
