// SPDX-License-Identifier: MIT
#include "db/book/book.h"

#include "core/base/ensure.h"
#include "db/book/action.h"
#include "db/book/labels.h"
#include "db/book/older_book.h"
#include "db/book/price_list.h"
#include "db/migrations/migrations.h"
#include "db/records/record.h"

#include <fmt/format.h>

#include <algorithm>
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
using stores::Change;
using stores::Stamp;

Book::Inside::Inside(Opened file, Environment world)
    : opened(std::move(file))
    , stores(*opened.connection)
    , environment(std::move(world)) {
    if (opened.wasCutShort) cutShortAfter = stores.log.newestMoment();
}

Book::Book(std::unique_ptr<Inside> inside)
    : m_in(std::move(inside)) {}
Book::~Book() = default;

const std::filesystem::path& Book::file() const { return m_in->file(); }
const Environment& Book::environment() const { return m_in->environment; }
const std::optional<base::Error>& Book::readOnlyBecause() const { return m_in->opened.readOnlyBecause; }

Id Book::Inside::newId() const {
    std::array<std::uint8_t, 10> random{};
    if (::getentropy(random.data(), random.size()) != 0) throwError(Fault::NoRandomNumbers, {});
    const auto since = environment.now().time_since_epoch();
    const auto ms = std::chrono::duration_cast<std::chrono::milliseconds>(since).count();
    return Id::fromTime(static_cast<std::uint64_t>(ms < 0 ? 0 : ms), random);
}

std::string Book::Inside::momentNow() const {
    const auto now = std::chrono::floor<std::chrono::milliseconds>(environment.now());
    const auto day = std::chrono::floor<std::chrono::days>(now);
    const std::chrono::hh_mm_ss time(now - day);
    return fmt::format("{}T{:02}:{:02}:{:02}.{:03}Z", units::Date::fromDays(day).iso(), time.hours().count(),
                       time.minutes().count(), time.seconds().count(), time.subseconds().count());
}

Stamp Book::Inside::record(std::string_view kind, std::optional<base::Message> what, Change change) {
    base::ensure(action.has_value(), "a change is part of an action");
    const Stamp stamp{stores.log.add(action->command, ++action->steps, action->at, environment.actor, kind, change),
                      action->at};
    if (!action->step.what) action->step.what = std::move(what);
    if (change.entity != "paper") action->step.changes.push_back(std::move(change)); // what is issued stays
    return stamp;
}

template<class T, class Store>
Id Book::Inside::saveTo(Store& store, std::string_view entity, T value) {
    std::optional<T> before;
    if (value.id.isNone()) {
        value.id = newId();
    } else {
        before = store.find(value.id);
        if (!before) throwError(Fault::ThingGone, value.name, sortOf(entity), value.name);
    }
    valueOrThrow(catalogue::fields::check(value));
    if (before == value) return value.id;
    const Change change{std::string(entity), value.id, before ? records::write(*before) : std::string(),
                        records::write(value)};
    const auto stamp = record(before ? "change" : "make", changeOf(before, value), change);
    try {
        store.write(value, stamp);
    } catch (const DbError& refusal) {
        if (refusal.error().code == Code::Conflict)
            throwError(Fault::NameOfAnother, value.name, sortOf(entity), value.name);
        if (refusal.error().code == Code::Invalid) throwError(Fault::RefersToNothing, value.name, value.name);
        throw;
    }
    return value.id;
}

template<class Store>
void Book::Inside::removeFrom(Store& store, std::string_view entity, const Id& id) {
    const auto before = store.find(id);
    if (!before) throwError(Fault::NothingToRemove, id.text(), sortOf(entity));
    const auto stamp = record("remove", base::say(Note::Removing, before->name),
                              {std::string(entity), id, records::write(*before), {}});
    store.remove(id, stamp);
}

template<class T, class Store>
void Book::Inside::saveSingleton(Store& store, std::string_view entity, const T& value) {
    valueOrThrow(catalogue::fields::check(value));
    const auto before = store.find();
    if (before == value) return;
    const auto stamp =
        record(before ? "change" : "make", before ? changeOf(*before, value) : base::say(sortOf(entity)),
               {std::string(entity), Id(), before ? records::write(*before) : std::string(), records::write(value)});
    try {
        store.write(value, stamp);
    } catch (const DbError& refusal) {
        if (refusal.error().code != Code::Invalid) throw;
        throwError(Fault::OnlyRefersToNothing, std::string(entity), sortOf(entity));
    }
}

void Book::Inside::initialise() {
    valueOrThrow(write([&] {
        action->isUndone = false;
        // A starting point that passes its own checks: 100 bench hours a month, double the cost. Common practice, no
        // source; the owner sets both.
        Shop shop;
        shop.rates.productivePerMonth = units::Duration::fromMinutes(100 * 60);
        shop.rules.ladder = {{units::Count::of(1), units::Rate::fromPercent(100)}};
        saveSingleton(stores.shop, "shop", shop);
        saveSingleton(stores.bench, "bench", BenchStandards{});
    }));
}

// ---------------------------------------------------------------------------------------------- what the shop knows

Result<Shop> Book::shop() {
    return m_in->read([&] { return m_in->stores.shop.find().value(); });
}
Done Book::save(const Shop& shop) {
    return m_in->write([&] { m_in->saveSingleton(m_in->stores.shop, "shop", shop); });
}
Result<BenchStandards> Book::bench() {
    return m_in->read([&] { return m_in->stores.bench.find().value(); });
}
Done Book::save(const BenchStandards& bench) {
    return m_in->write([&] { m_in->saveSingleton(m_in->stores.bench, "bench", bench); });
}

Result<std::vector<Material>> Book::materials() {
    return m_in->read([&] { return m_in->stores.materials.all(); });
}
Result<Id> Book::save(const Material& material) {
    return m_in->write([&] {
        const auto saved = m_in->saveTo(m_in->stores.materials, "material", material);
        if (material.id.isNone()) m_in->makeUsualIfFirst(material.kind, saved);
        return saved;
    });
}

/// The first tape and the first template sheet of a book are what every line takes, where the shop has not chosen.
void Book::Inside::makeUsualIfFirst(catalogue::MaterialKind kind, const Id& material) {
    const bool isTape = kind == catalogue::MaterialKind::Tape;
    if (!isTape && kind != catalogue::MaterialKind::Template) return;
    const auto isAnother = [&](const Material& one) { return one.kind == kind && one.id != material; };
    if (std::ranges::any_of(stores.materials.all(), isAnother)) return;
    auto shop = stores.shop.find().value();
    const bool isMeant = isTape ? shop.meantAsNothing.tape : shop.meantAsNothing.templates;
    auto& usual = isTape ? shop.usualTape : shop.usualTemplate;
    if (isMeant || !usual.isNone()) return;
    usual = material;
    saveSingleton(stores.shop, "shop", shop);
}
Done Book::removeMaterial(const Id& id) {
    return m_in->write([&] {
        m_in->stores.materials.expectUnused(id);
        if (const auto kit = m_in->stores.kits.nameOfUser(id); !kit.empty()) throwError(Fault::MaterialOfKit, kit, kit);
        m_in->removeFrom(m_in->stores.materials, "material", id);
    });
}

Result<std::vector<Supplier>> Book::suppliers() {
    return m_in->read([&] { return m_in->stores.suppliers.all(); });
}
Result<Id> Book::save(const Supplier& supplier) {
    return m_in->write([&] { return m_in->saveTo(m_in->stores.suppliers, "supplier", supplier); });
}
Done Book::removeSupplier(const Id& id) {
    return m_in->write([&] {
        if (const auto kit = m_in->stores.kits.nameOfUser(id); !kit.empty()) throwError(Fault::SupplierOfKit, kit, kit);
        m_in->removeFrom(m_in->stores.suppliers, "supplier", id);
    });
}

Result<std::vector<Pack>> Book::packs() {
    return m_in->read([&] { return m_in->stores.packs.all(); });
}
Result<Id> Book::save(const Pack& pack) {
    return m_in->write([&] {
        valueOrThrow(catalogue::fields::check([&] {
            Pack named = pack;
            if (named.id.isNone()) named.id = m_in->newId();
            return named;
        }()));
        m_in->action->step.what =
            m_in->depth == 1 ? changeOf(m_in->stores.packs.find(pack.id), pack) : m_in->action->step.what;
        if (pack.usual) m_in->clearOtherUsual(pack);
        return m_in->saveTo(m_in->stores.packs, "pack", pack);
    });
}
Done Book::removePack(const Id& id) {
    return m_in->write([&] { m_in->removeFrom(m_in->stores.packs, "pack", id); });
}

void Book::Inside::clearOtherUsual(const Pack& pack) {
    auto other = stores.packs.usualOf(pack.material);
    if (!other || other->id == pack.id) return;
    other->usual = false;
    saveTo(stores.packs, "pack", *other);
}

Result<std::vector<Kit>> Book::kits() {
    return m_in->read([&] { return m_in->stores.kits.all(); });
}
Result<Id> Book::save(const Kit& kit) {
    return m_in->write([&] { return m_in->saveTo(m_in->stores.kits, "kit", kit); });
}
Done Book::removeKit(const Id& id) {
    return m_in->write([&] { m_in->removeFrom(m_in->stores.kits, "kit", id); });
}

Result<std::vector<Design>> Book::designs() {
    return m_in->read([&] { return m_in->stores.designs.all(); });
}
Result<Id> Book::save(const Design& design) {
    return m_in->write([&] {
        m_in->expectPlanAboveSold(design);
        return m_in->saveTo(m_in->stores.designs, "design", design);
    });
}
/// A plan that stays as it was may have been reached.
void Book::Inside::expectPlanAboveSold(const Design& design) {
    if (!design.plannedPieces || design.id.isNone()) return;
    const auto before = stores.designs.find(design.id);
    if (before && before->plannedPieces == design.plannedPieces) return;
    const auto sold = stores.jobs.sold(design.id);
    if (design.plannedPieces->value() < sold)
        throwError(Fault::PlannedBelowSold, design.name, design.plannedPieces->value(), sold);
}

Result<std::int64_t> Book::soldPieces(const Id& design) {
    return m_in->read([&] { return m_in->stores.jobs.sold(design); });
}

Done Book::removeDesign(const Id& id) {
    return m_in->write([&] {
        if (const auto kit = m_in->stores.kits.nameOfUser(id); !kit.empty()) throwError(Fault::DesignOfKit, kit, kit);
        m_in->removeFrom(m_in->stores.designs, "design", id);
    });
}

Result<std::vector<Customer>> Book::customers() {
    return m_in->read([&] { return m_in->stores.customers.all(); });
}
Result<std::optional<Customer>> Book::customer(const Id& id) {
    return m_in->read([&] { return m_in->customerNow(id); });
}
std::optional<Customer> Book::Inside::customerNow(const Id& id) {
    auto found = stores.customers.find(id);
    return found && !found->mergedInto.isNone() ? stores.customers.find(found->mergedInto) : found;
}
Result<Id> Book::save(const Customer& customer) {
    return m_in->write([&] { return m_in->saveTo(m_in->stores.customers, "customer", customer); });
}
Done Book::removeCustomer(const Id& id) {
    return m_in->write([&] { m_in->removeFrom(m_in->stores.customers, "customer", id); });
}

namespace {

/// What `kept` lacks of what the shop knows of `gone`.
void takeOver(Customer& kept, const Customer& gone) {
    for (auto part : {&Customer::contact, &Customer::telephone, &Customer::mail, &Customer::language})
        if ((kept.*part).empty()) kept.*part = gone.*part;
    if (!gone.note.empty() && gone.note != kept.note) kept.note += (kept.note.empty() ? "" : "\n") + gone.note;
    const auto known = catalogue::certificatesOf(kept);
    for (const auto& one : catalogue::certificatesOf(gone)) {
        if (std::ranges::find(known, one) != known.end()) continue;
        if (kept.certificate)
            kept.otherCertificates.push_back(one);
        else
            kept.certificate = one;
    }
}

} // namespace

Done Book::mergeCustomers(const Id& from, const Id& into) {
    return m_in->write([&] {
        auto gone = m_in->stores.customers.find(from);
        auto kept = m_in->stores.customers.find(into);
        if (!gone || !kept || !kept->mergedInto.isNone()) throwError(Fault::CustomerGone, (gone ? into : from).text());
        if (from == into) throwError(Fault::SameCustomer, gone->name, gone->name);
        if (!m_in->action->step.what) m_in->action->step.what = base::say(Note::Merging, gone->name, kept->name);
        takeOver(*kept, *gone);
        m_in->saveTo(m_in->stores.customers, "customer", *kept);
        for (const auto& draft : m_in->stores.jobs.draftsOf(from)) {
            const auto job = m_in->stores.jobs.find(draft).value();
            auto order = job.order;
            order.customer = into;
            m_in->saveOrder(job, order);
        }
        auto merged = m_in->stores.customers.mergedInto(from);
        merged.push_back(std::move(*gone));
        for (auto& one : merged) {
            one.mergedInto = into;
            m_in->saveTo(m_in->stores.customers, "customer", one);
        }
    });
}

Result<std::unordered_set<Id>> Book::setsThere() {
    return m_in->read([&] { return m_in->stores.jobs.madeOfPlanned(); });
}

Result<PriceBook> Book::priceBook(const Id& customer) {
    return m_in->read([&] {
        PriceBook book;
        book.shop = m_in->stores.shop.find().value();
        book.bench = m_in->stores.bench.find().value();
        book.materials = pricedMaterials(m_in->stores);
        book.sets = m_in->stores.designs.sets();
        if (!book.sets.empty())
            for (const auto& [design, pieces] : m_in->stores.jobs.soldOfPlanned())
                if (const auto set = book.sets.find(design); set != book.sets.end())
                    set->second.sold = units::Count::of(pieces);
        if (customer.isNone()) return book;
        book.customer = m_in->customerNow(customer);
        if (!book.customer) throwError(Fault::CustomerGone, customer.text());
        return book;
    });
}

// ---------------------------------------------------------------------------------------------------- the whole book

Done Book::batch(const base::Message& what, const std::function<Done()>& work) {
    return m_in->write([&] {
        if (m_in->depth == 1) m_in->action->step.what = what;
        valueOrThrow(work());
    });
}

Result<std::unique_ptr<Book>> Book::open(const std::filesystem::path& file, Environment environment) {
    return catchToResult([&] {
        auto book = std::unique_ptr<Book>(
            new Book(std::make_unique<Inside>(openBook(file, migrations::all()), std::move(environment))));
        if (!book->readOnlyBecause()) book->finishErasing();
        return book;
    });
}

Result<std::unique_ptr<Book>> Book::create(const std::filesystem::path& asked, Environment environment) {
    return catchToResult([&] {
        const auto target = resolvedNew(asked);
        const TempFile temp(target);
        temp.make([&] {
            Opened made;
            made.connection = sqlite::Connection::make(temp.file());
            made.connection->settle();
            made.connection->script(fmt::format("PRAGMA application_id = {}", migrations::kApplicationId));
            bringUpToDate(*made.connection, migrations::all());
            try {
                Inside(std::move(made), environment).initialise();
            } catch (const DbError& refusal) {
                // Of a book that is thrown away nothing may be done.
                if (refusal.error().fault != idOf(Fault::MayBeDone)) throw;
                throwError(Fault::DiskFullOrFailing, target.string(), target.filename().string());
            }
        });
        temp.commit();
        try {
            return std::unique_ptr<Book>(
                new Book(std::make_unique<Inside>(openBook(target, migrations::all()), std::move(environment))));
        } catch (...) {
            // Nothing is in it yet; asked for again, it does not meet itself.
            std::error_code ignored;
            std::filesystem::remove(target, ignored);
            throw;
        }
    });
}

} // namespace sp::db
