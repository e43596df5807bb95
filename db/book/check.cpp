// SPDX-License-Identifier: MIT
#include "db/book/check.h"

#include "db/book/book.h"
#include "db/book/opening.h"
#include "db/book/stores.h"
#include "db/db_error.h"
#include "db/records/record.h"
#include "db/sqlite/transaction.h"

#include <fmt/format.h>

#include <array>
#include <cctype>
#include <map>
#include <set>

namespace sp::db {

using base::Id;

namespace {

constexpr std::size_t kMaxDamage = 100;

/// What went wrong with the machine; the book may be whole.
bool saysNothingOfTheBook(const base::Error& error) {
    return error.fault == idOf(Fault::NotEnoughMemory) || error.fault == idOf(Fault::NotReadFromDisk);
}

/// Goes through a book and notes everything that does not hold.
class Inspection {
  public:
    Inspection(sqlite::Connection& db, const Watch& watch)
        : m_db(db)
        , m_stores(db)
        , m_watch(watch) {
        m_db.heed(watch.stop);
    }

    CheckReport run() {
        m_report.damage = structureDamage(m_db, Depth::Full);
        trailing();
        throwIfStopped();
        const sqlite::ReadTransaction reading(m_db);
        // Reckoned in what is read: a quote, its seal and the rows of the log that led to it.
        m_steps = rowsIn("job") + rowsIn("seal") + rowsIn("change");
        guarded(Note::TheLists, [&] { lists(); });
        guarded(Note::TheDrawings, [&] { drawings(); });
        guarded(Note::TheShelf, [&] { ledger(); });
        guarded(Note::TheQuotes, [&] { quotes(); });
        underSeal();
        guarded(Note::TheChangeLog, [&] { log(); });
        guarded(Note::TheChangeLog, [&] { writers(); });
        return std::move(m_report);
    }
    std::vector<base::Message> runSeals() {
        const sqlite::ReadTransaction reading(m_db);
        guarded(Note::TheQuotes, [&] {
            for (const auto& id : keys("SELECT id FROM job WHERE number <> '' AND deleted_at IS NULL ORDER BY id"))
                if (const auto row = m_stores.jobs.find(id)) m_issued.emplace(id, *row);
        });
        underSeal();
        return std::move(m_report.damage);
    }

  private:
    void underSeal() {
        guarded(Note::TheSeals, [&] { seals(); });
        guarded(Note::TheNumbers, [&] { numbers(); });
        guarded(Note::TheRecords, [&] { m_stores.records.expectAll(); });
    }

    void throwIfStopped() {
        if (m_watch.stop.stop_requested()) throwError(Fault::Stopped, m_db.file().string());
    }
    std::int64_t rowsIn(std::string_view table) { return m_db.numberOf(fmt::format("SELECT count(*) FROM {}", table)); }
    void tick() {
        constexpr std::int64_t kTold = 200;
        if (++m_done % kTold != 0 || m_steps == 0) return;
        throwIfStopped();
        // The structure is about a third of the work.
        if (m_watch.progress)
            m_watch.progress((1.0 + 2.0 * static_cast<double>(m_done) / static_cast<double>(m_steps)) / 3.0);
    }

    /// What lies behind the last page belongs to nobody.
    void trailing() {
        if (const auto bytes = m_db.bytesBehindTheEnd(); bytes > 0) say(Note::BytesBehindTheEnd, bytes);
    }

    template<class Work>
    void guarded(Note where, Work&& work) {
        const auto done = catchToResult(work);
        throwIfStopped();
        if (!done && saysNothingOfTheBook(done.error())) throw DbError(done.error());
        if (!done) say(Note::FoundIn, where, done.error().message());
    }
    template<class... Values>
    void say(Note found, const Values&... values) {
        if (m_report.damage.size() < kMaxDamage) m_report.damage.push_back(base::say(found, values...));
    }

    /// What a thing is now must be what the change log says it became last.
    template<class T>
    void compare(std::string_view entity, const Id& id, const T& value, const base::Value& name) {
        if (!isSaved(entity, id, value)) say(Note::NotAsLastSaved, name);
    }
    /// Values are compared, not texts: what an earlier version wrote says the same in other words.
    template<class T>
    bool isSaved(std::string_view entity, const Id& id, const T& value) {
        const auto saved = m_stores.log.newest(entity, id);
        return !saved.empty() && valueOrThrow(records::read<T>(saved)) == value;
    }

    void lists() {
        const auto materials = m_stores.materials.all();
        m_report.materials = static_cast<std::int64_t>(materials.size());
        for (const auto& material : materials) compare("material", material.id, material, base::asValue(material.name));
        for (const auto& supplier : m_stores.suppliers.all())
            compare("supplier", supplier.id, supplier, base::asValue(supplier.name));
        for (const auto& pack : m_stores.packs.all()) compare("pack", pack.id, pack, base::asValue(pack.name));
        for (const auto& kit : m_stores.kits.all()) compare("kit", kit.id, kit, base::asValue(kit.name));
        for (const auto& list : m_stores.priceLists.all())
            compare("columns", list.supplier, list, base::asValue(Note::ColumnsOfAPriceList));
        const auto designs = m_stores.designs.all();
        m_report.designs = static_cast<std::int64_t>(designs.size());
        for (const auto& design : designs) compare("design", design.id, design, base::asValue(design.name));
        for (const auto& customer : m_stores.customers.all()) {
            compare("customer", customer.id, customer, base::asValue(customer.name));
            for (const auto& merged : m_stores.customers.mergedInto(customer.id))
                compare("customer", merged.id, merged, base::asValue(merged.name));
        }
        if (const auto shop = m_stores.shop.find())
            compareShop(*shop);
        else
            say(Note::ShopMissing);
        if (const auto bench = m_stores.bench.find())
            compare("bench", Id(), *bench, base::asValue(Note::TheBench));
        else
            say(Note::BenchMissing);
    }

    void compareShop(const catalogue::Shop& shop) {
        compare("shop", Id(), shop, base::asValue(Note::TheShop));
        m_stores.shop.expectColumns(shop);
    }

    void drawings() {
        for (const auto& artwork : m_stores.artworks.all())
            compare("artwork", artwork.design, artwork, base::asValue(artwork.fileName));
        for (const auto& colour : m_stores.colours.all())
            compare("colour", colour.id, colour, base::asValue(Note::StoneOfAColour));
        m_stores.artworks.expectFiles();
    }

    void ledger() {
        for (const auto& id : keys("SELECT id FROM stock_move ORDER BY id"))
            if (const auto move = m_stores.stock.find(id))
                compare("movement", id, *move, base::asValue(Note::AMovement));
        for (const auto& id : keys("SELECT id FROM payment ORDER BY id"))
            if (const auto payment = m_stores.payments.find(id))
                compare("payment", id, *payment, base::asValue(Note::APayment));
        for (const auto& [material, amount] : m_stores.stock.shelf())
            if (amount < 0) say(Note::ShelfBelowNothing);
    }

    void quotes() {
        for (const auto& id : keys("SELECT id FROM job WHERE deleted_at IS NULL ORDER BY id")) {
            ++m_report.quotes;
            tick();
            guarded(Note::AQuote, [&] {
                const auto row = m_stores.jobs.find(id);
                if (!row) return say(Note::OrderMissing);
                m_stores.jobs.expectColumns(*row);
                const auto name = row->number.empty() ? base::asValue(Note::ADraft) : base::asValue(row->number);
                compare("quote", id, row->order, name);
                const bool hasStage = !m_stores.log.newest("stage", id).empty();
                if (hasStage ? !isSaved("stage", id, row->mark()) : row->stage != Stage::Enquiry)
                    say(Note::StageNotAsLastSaved, name);
                if (!row->number.empty()) m_issued.emplace(id, *row);
            });
        }
    }

    /// The chain of seals, each naming the one before.
    void seals() {
        struct Seal {
            std::int64_t place = 0;
            Id paper;
            std::string kind;
            sqlite::Digest digest;
            sqlite::Digest previous;
        };
        std::vector<Seal> chain;
        {
            auto rows = m_db.query("SELECT place, paper_id, kind, digest, previous_digest FROM seal ORDER BY place");
            while (rows.step()) {
                auto& seal = chain.emplace_back();
                rows >> seal.place >> seal.paper >> seal.kind >> seal.digest >> seal.previous;
            }
        }
        sqlite::Digest before;
        std::int64_t place = 0;
        for (const auto& seal : chain) {
            tick();
            if (seal.place != ++place) say(Note::PaperMissing);
            place = seal.place;
            if (seal.previous != before) say(Note::SealsDoNotFollow);
            before = seal.digest;
            if (seal.kind == "paper" &&
                m_db.query("SELECT 1 FROM paper WHERE id = ? AND kind <> 'quote'", seal.paper).step())
                guarded(Note::ABill, [&] { bill(seal.paper); });
            else if (seal.kind == "paper")
                guarded(Note::AGivenQuote, [&] { paper(seal.paper); });
        }
        for (const auto& [id, row] : m_issued) say(Note::SealMissing, row.number);
    }

    void paper(const Id& id) {
        ++m_report.sealedQuotes;
        const auto issued = m_stores.papers.find(id);
        if (!issued) return say(Note::PaperMissing);
        m_stores.papers.expectColumns(*issued);
        if (m_priceLists.insert(issued->prices).second) m_stores.papers.prices(issued->prices);
        if (issued->result && issued->result->sheet.customer.isErased)
            expectErased(issued->number, issued->order.customer);
        const auto given = m_issued.find(issued->job);
        if (given == m_issued.end())
            say(Note::GivenNotListed, issued->number);
        else if (given->second.revision != issued->revision)
            replaced(*issued);
        else if (given->second.number != issued->number || given->second.order != issued->order)
            say(Note::GivenNotAsSealed, issued->number);
        if (given != m_issued.end() && given->second.revision <= issued->revision) m_issued.erase(given);
        chain(*issued);
    }

    /// An earlier revision is kept as it was sealed.
    void replaced(const stores::IssuedPaper& issued) {
        const auto revision = m_stores.jobs.revision(issued.job, issued.revision);
        if (!revision || revision->order != issued.order) return say(Note::GivenNotAsSealed, issued.number);
        m_stores.jobs.expectColumns(issued.job, *revision, issued.number);
    }

    /// Each revision follows the one before, under the first one's number; the first took it from the series.
    void chain(const stores::IssuedPaper& issued) {
        auto& [first, revision] = m_revisions[issued.job];
        const bool isFirst = issued.revision == 1;
        if (isFirst) first = issued.number;
        const auto number = isFirst ? issued.number : fmt::format("{}-{}", first, issued.revision);
        if (issued.revision != ++revision || issued.number != number) say(Note::RevisionsDoNotFollow, issued.number);
        revision = issued.revision;
        if (isFirst) m_numbers.insert(issued.number);
    }

    /// Who a paper was for is taken out by an action, and not behind the program's back.
    void expectErased(const std::string& number, const Id& customer) {
        auto erasing =
            m_db.query("SELECT 1 FROM change WHERE entity = 'customer' AND entity_id = ? AND kind = 'erase'", customer);
        if (!erasing.step()) say(Note::PersonTakenOut, number);
    }

    /// Seals follow each other, so what a bill is for was issued before it.
    void bill(const Id& id) {
        const auto issued = m_stores.bills.find(id);
        if (!issued) return say(Note::PaperMissing);
        ++m_report.bills;
        m_stores.bills.expectColumns(*issued);
        m_numbers.insert(issued->number);
        const auto& result = issued->result;
        if (issued->kind == catalogue::PaperKind::Invoice) m_left[id] = issued->total;
        if (issued->kind == catalogue::PaperKind::Receipt) {
            const auto payment = result.payment ? m_stores.payments.find(*result.payment) : std::nullopt;
            if (!payment || payment->job != issued->job ||
                pricing::receivedOf(*payment, m_stores.payments.ofJob(issued->job)) != issued->total)
                say(Note::BillOfNothing, issued->number);
        }
        if (issued->kind != catalogue::PaperKind::Credit) return;
        const auto invoice = result.invoice ? m_left.find(*result.invoice) : m_left.end();
        if (invoice == m_left.end()) return say(Note::BillOfNothing, issued->number);
        invoice->second += issued->total;
        if (invoice->second.isNegative()) say(Note::CreditedBeyond, issued->number);
    }

    void numbers() {
        auto rows = m_db.query("SELECT name, year, last_number FROM series ORDER BY name, year");
        while (rows.step()) {
            const auto kind = catalogue::fields::namedBy<catalogue::PaperKind>(rows.takeText());
            if (!kind) {
                say(Note::NumbersOfNobody);
                continue;
            }
            const bool isQuote = *kind == catalogue::PaperKind::Quote;
            const auto year = rows.takeInteger();
            const auto last = rows.takeInteger();
            for (std::int64_t n = 1; n <= last && m_report.damage.size() < kMaxDamage; ++n) {
                const auto number = fmt::format("{}{:04}-{:04}", stores::prefixOf(*kind), year, n);
                if (m_numbers.erase(number) == 0)
                    say(isQuote ? Note::NumberUnreadable : Note::BillNumberMissing, number);
            }
        }
        for (const auto& number : m_numbers)
            say(std::isdigit(static_cast<unsigned char>(number.front())) != 0 ? Note::NumberLost : Note::BillNumberLost,
                number);
    }

    /// The log has no gaps, and each record of a thing begins with what the record before it ended with. A thing's
    /// first record begins with nothing; only a stage begins with that of every new quote.
    void log() {
        auto rows =
            m_db.query("SELECT seq, substr(at, 1, 10), entity, entity_id, before, after FROM change ORDER BY seq");
        std::int64_t last = 0;
        std::map<std::pair<std::string, Id>, std::optional<sqlite::Digest>> afters;
        const auto newStage = records::write(records::StageMark{Stage::Enquiry, {}});
        const auto isNewStage = [&](const std::optional<sqlite::Digest>& digest) {
            return digest && valueOrThrow(records::saySame(*records::kindNamed("stage"), m_stores.records.find(*digest),
                                                           newStage));
        };
        while (rows.step()) {
            std::int64_t seq = 0;
            units::Date day; // the list of quotes shows it; a day that cannot be read is reported
            std::pair<std::string, Id> thing;
            std::optional<sqlite::Digest> before;
            std::optional<sqlite::Digest> after;
            tick();
            rows >> seq >> day >> thing.first >> thing.second >> before >> after;
            if (seq != ++last) say(Note::LogRowMissing);
            last = seq;
            const auto was = afters.find(thing);
            const bool fits = was != afters.end()      ? saysSame(thing.first, before, was->second)
                              : thing.first == "stage" ? isNewStage(before)
                                                       : !before;
            if (!fits) say(Note::LogDoesNotFollow, seq);
            afters[thing] = after;
        }
    }
    /// Whether two records of one entity say the same, each in the version it was written in. Nothing is only nothing.
    bool saysSame(const std::string& entity, const std::optional<sqlite::Digest>& one,
                  const std::optional<sqlite::Digest>& other) {
        if (one == other) return true;
        if (entity == "customer" && one && other && m_stores.records.isErased(*one) &&
            m_stores.records.isErased(*other))
            return true;
        const auto* kind = records::kindNamed(entity == "quote" ? "order" : entity);
        return kind != nullptr && one && other &&
               valueOrThrow(records::saySame(*kind, m_stores.records.find(*one), m_stores.records.find(*other)));
    }

    /// Every row names the record of the log that wrote it last; a quote also the one that began it, by which quotes
    /// are ordered.
    void writers() {
        for (const std::string_view table : {"material", "supplier", "pack", "kit", "design", "customer"})
            expectNone(fmt::format("SELECT count(*) FROM {0} t WHERE change_seq <> (SELECT max(seq) FROM change "
                                   "WHERE entity = '{0}' AND entity_id = t.id)",
                                   table));
        for (const auto& [table, entity, key] :
             {std::array<std::string_view, 3>{"design_artwork", "artwork", "design_id"},
              std::array<std::string_view, 3>{"colour_material", "colour", "id"},
              std::array<std::string_view, 3>{"csv_columns", "columns", "supplier_id"}})
            expectNone(fmt::format("SELECT count(*) FROM {} t WHERE change_seq <> (SELECT max(seq) FROM change "
                                   "WHERE entity = '{}' AND entity_id = t.{})",
                                   table, entity, key));
        for (const std::string_view table : {"shop", "bench"})
            expectNone(fmt::format(
                "SELECT count(*) FROM {0} WHERE change_seq <> (SELECT max(seq) FROM change WHERE entity = '{0}')",
                table));
        expectNone("SELECT count(*) FROM job q WHERE change_seq <> (SELECT max(seq) FROM change "
                   "WHERE entity IN ('quote', 'stage') AND entity_id = q.id) OR started_seq <> "
                   "(SELECT min(seq) FROM change WHERE entity = 'quote' AND entity_id = q.id)");
        expectNone("SELECT count(*) FROM payment p WHERE change_seq <> (SELECT max(seq) FROM change "
                   "WHERE entity = 'payment' AND entity_id = p.id)");
        // What is marked as removed was removed by an action, and not behind the program's back.
        for (const auto& [table, entity] :
             {std::array<std::string_view, 2>{"material", "material"},
              std::array<std::string_view, 2>{"supplier", "supplier"}, std::array<std::string_view, 2>{"pack", "pack"},
              std::array<std::string_view, 2>{"kit", "kit"}, std::array<std::string_view, 2>{"design", "design"},
              std::array<std::string_view, 2>{"customer", "customer"}, std::array<std::string_view, 2>{"job", "quote"}})
            expectNone(
                fmt::format("SELECT count(*) FROM {} t WHERE deleted_at IS NOT NULL AND (SELECT after FROM change "
                            "WHERE entity = '{}' AND entity_id = t.id ORDER BY seq DESC LIMIT 1) IS NOT NULL",
                            table, entity));
        expectNone("SELECT count(*) FROM stock_move m WHERE change_seq <> (SELECT max(seq) FROM change "
                   "WHERE entity = 'movement' AND entity_id = m.id)");
        // Neither is taken out but by being undone, which the log says.
        for (const auto& [table, entity] : {std::array<std::string_view, 2>{"stock_move", "movement"},
                                            std::array<std::string_view, 2>{"payment", "payment"}})
            expectNone(fmt::format("SELECT count(*) FROM change c WHERE entity = '{1}' AND after IS NOT NULL AND seq = "
                                   "(SELECT max(seq) FROM change WHERE entity = '{1}' AND entity_id = c.entity_id) "
                                   "AND NOT EXISTS (SELECT 1 FROM {0} t WHERE t.id = c.entity_id)",
                                   table, entity));
    }
    void expectNone(const std::string& sql) {
        auto row = m_db.query(sql);
        if (row.step() && row.takeInteger() > 0) say(Note::LogDisagrees);
    }

    std::vector<Id> keys(std::string_view sql) {
        std::vector<Id> ids;
        auto rows = m_db.query(sql);
        while (rows.step()) rows >> ids.emplace_back();
        return ids;
    }

    sqlite::Connection& m_db;
    Stores m_stores;
    const Watch& m_watch;
    std::int64_t m_steps = 0;
    std::int64_t m_done = 0;
    CheckReport m_report;
    std::map<Id, stores::JobRow> m_issued;
    std::map<Id, std::pair<std::string, std::int64_t>> m_revisions; ///< of jobs: the first number, the last revision
    std::map<Id, units::Money> m_left;                              ///< of invoices, less what was credited
    std::set<std::string> m_numbers;
    std::set<std::string> m_priceLists; ///< digests of those that were read
};

} // namespace

std::vector<base::Message> sealDamage(sqlite::Connection& connection) {
    const Watch nobody;
    return Inspection(connection, nobody).runSeals();
}

CheckReport inspect(sqlite::Connection& connection, const Watch& watch) { return Inspection(connection, watch).run(); }

base::Result<CheckReport> Book::check(const std::filesystem::path& file, const Watch& watch) {
    return catchToResult([&] {
        const auto connection = openToRead(file);
        return inspect(*connection, watch);
    });
}

} // namespace sp::db
