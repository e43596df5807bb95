// SPDX-License-Identifier: MIT
#include "db/book/check.h"

#include "db/book/book.h"
#include "db/book/opening.h"
#include "db/book/stores.h"
#include "db/records/record.h"
#include "db/refusal.h"
#include "db/sqlite/transaction.h"

#include <fmt/format.h>

#include <array>
#include <map>
#include <set>

namespace sp::db {

using base::Id;

namespace {

constexpr std::size_t kMostDamage = 100;

/// Goes through a book and keeps a sentence for everything that does not hold.
class Inspection {
  public:
    explicit Inspection(sqlite::Connection& db)
        : m_db(db)
        , m_stores(db) {}

    CheckReport run() {
        m_report.damage = structureDamage(m_db, Depth::Full);
        const sqlite::Reading reading(m_db);
        guarded("the lists", [&] { lists(); });
        guarded("the drawings", [&] { drawings(); });
        guarded("the shelf", [&] { ledger(); });
        guarded("the quotes", [&] { quotes(); });
        underSeal();
        guarded("the change log", [&] { log(); });
        guarded("the change log", [&] { writers(); });
        return std::move(m_report);
    }
    std::vector<std::string> runSeals() {
        const sqlite::Reading reading(m_db);
        guarded("the quotes", [&] {
            for (const auto& id : keys("SELECT id FROM job WHERE number <> '' AND deleted_at IS NULL ORDER BY id"))
                if (const auto row = m_stores.jobs.find(id)) m_given.emplace(id, *row);
        });
        underSeal();
        return std::move(m_report.damage);
    }

  private:
    void underSeal() {
        guarded("the seals", [&] { seals(); });
        guarded("the numbers", [&] { numbers(); });
        guarded("the records", [&] { m_stores.records.expectAll(); });
    }

    template<class Work>
    void guarded(std::string_view what, Work&& work) {
        const auto done = atTheDoor(work);
        if (!done) say(fmt::format("In {}: {}", what, done.error().detail));
    }
    void say(std::string sentence) {
        if (m_report.damage.size() < kMostDamage) m_report.damage.push_back(std::move(sentence));
    }

    /// What a thing is now must be what the change log says it became last.
    template<class T>
    void compare(std::string_view entity, const Id& id, const T& value, const std::string& name) {
        if (!isSaved(entity, id, value))
            say(fmt::format("“{}” is not as it was last saved; compare it with a backup.", name));
    }
    /// Values are compared, not texts: what an earlier version wrote says the same in other words.
    template<class T>
    bool isSaved(std::string_view entity, const Id& id, const T& value) {
        const auto saved = m_stores.log.newest(entity, id);
        return !saved.empty() && orRefuse(records::read<T>(saved)) == value;
    }

    void lists() {
        const auto materials = m_stores.materials.all();
        m_report.materials = static_cast<std::int64_t>(materials.size());
        for (const auto& material : materials) compare("material", material.id, material, material.name);
        for (const auto& supplier : m_stores.suppliers.all()) compare("supplier", supplier.id, supplier, supplier.name);
        for (const auto& pack : m_stores.packs.all()) compare("pack", pack.id, pack, pack.name);
        for (const auto& kit : m_stores.kits.all()) compare("kit", kit.id, kit, kit.name);
        for (const auto& list : m_stores.priceLists.all())
            compare("columns", list.supplier, list, "the columns of a price list");
        const auto designs = m_stores.designs.all();
        m_report.designs = static_cast<std::int64_t>(designs.size());
        for (const auto& design : designs) compare("design", design.id, design, design.name);
        for (const auto& customer : m_stores.customers.all()) compare("customer", customer.id, customer, customer.name);
        if (const auto shop = m_stores.shop.find())
            compareShop(*shop);
        else
            say("The rates and rules of the shop are missing; open a backup.");
        if (const auto bench = m_stores.bench.find())
            compare("bench", Id(), *bench, "the bench");
        else
            say("The bench standards are missing; open a backup.");
    }

    void compareShop(const catalogue::Shop& shop) {
        compare("shop", Id(), shop, "the shop");
        m_stores.shop.expectColumns(shop);
    }

    void drawings() {
        for (const auto& artwork : m_stores.artworks.all())
            compare("artwork", artwork.design, artwork, artwork.fileName);
        for (const auto& colour : m_stores.colours.all()) compare("colour", colour.id, colour, "the stone of a colour");
        m_stores.artworks.expectFiles();
    }

    void ledger() {
        for (const auto& id : keys("SELECT id FROM stock_move ORDER BY id"))
            if (const auto move = m_stores.stock.find(id)) compare("movement", id, *move, "a movement of the shelf");
        for (const auto& [material, amount] : m_stores.stock.shelf())
            if (amount < 0) say("Less than nothing of a material is on the shelf; count it.");
    }

    void quotes() {
        for (const auto& id : keys("SELECT id FROM job WHERE deleted_at IS NULL ORDER BY id")) {
            ++m_report.quotes;
            guarded("a quote", [&] {
                const auto row = m_stores.jobs.find(id);
                if (!row) return say("The order of a quote is missing; open a backup.");
                m_stores.jobs.expectColumns(*row);
                const std::string name = row->number.empty() ? "a draft" : row->number;
                compare("quote", id, row->order, name);
                const bool hasStage = !m_stores.log.newest("stage", id).empty();
                if (hasStage ? !isSaved("stage", id, records::StageMark{row->stage}) : row->stage != Stage::Enquiry)
                    say(fmt::format("The stage of {} is not as it was last saved; compare it with a backup.", name));
                if (!row->number.empty()) m_given.emplace(id, *row);
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
            if (seal.place != ++place) say("A given quote is missing from the book; open a backup.");
            place = seal.place;
            if (seal.previous != before)
                say("Between two given quotes another one was taken out or exchanged; open a backup.");
            before = seal.digest;
            if (seal.kind == "paper") guarded("a given quote", [&] { paper(seal.paper); });
        }
        for (const auto& [id, row] : m_given)
            say(fmt::format("The seal of quote {} is missing; open a backup.", row.number));
    }

    void paper(const Id& id) {
        ++m_report.sealedQuotes;
        const auto issued = m_stores.papers.find(id);
        if (!issued) return say("A given quote is missing from the book; open a backup.");
        m_stores.papers.expectColumns(*issued);
        if (m_priceLists.insert(issued->prices).second) m_stores.papers.prices(issued->prices);
        const auto given = m_given.find(issued->job);
        if (given == m_given.end())
            say(fmt::format("Quote {} was given but is no longer listed; open a backup.", issued->number));
        else if (given->second.number != issued->number || given->second.order != issued->order)
            say(fmt::format("Quote {} is not as it was sealed; open a backup.", issued->number));
        m_given.erase(issued->job);
        m_numbers.insert(issued->number);
    }

    void numbers() {
        auto rows = m_db.query("SELECT name, year, last_number FROM series ORDER BY name, year");
        while (rows.step()) {
            if (rows.takeText() != "quote") {
                say("There are numbers of papers that nobody issued; open a backup.");
                continue;
            }
            const auto year = rows.takeInteger();
            const auto last = rows.takeInteger();
            for (std::int64_t n = 1; n <= last && m_report.damage.size() < kMostDamage; ++n)
                if (m_numbers.erase(fmt::format("{:04}-{:04}", year, n)) == 0)
                    say(fmt::format("Quote {:04}-{:04} was given but cannot be read; open a backup.", year, n));
        }
        for (const auto& number : m_numbers)
            say(fmt::format("The count of quotes has lost {}; open a backup.", number));
    }

    /// The log has no gaps, and each record of a thing begins with what the record before it ended with. A thing's
    /// first record begins with nothing; only a stage begins with that of every new quote.
    void log() {
        auto rows = m_db.query("SELECT seq, entity, entity_id, before, after FROM change ORDER BY seq");
        std::int64_t last = 0;
        std::map<std::pair<std::string, Id>, std::optional<sqlite::Digest>> afters;
        const auto newStage = sqlite::digestOf(records::write(records::StageMark{Stage::Enquiry}));
        while (rows.step()) {
            std::int64_t seq = 0;
            std::pair<std::string, Id> thing;
            std::optional<sqlite::Digest> before;
            std::optional<sqlite::Digest> after;
            rows >> seq >> thing.first >> thing.second >> before >> after;
            if (seq != ++last) say("A row of the change log is missing; open a backup.");
            last = seq;
            const auto was = afters.find(thing);
            const bool fits = was != afters.end()      ? saysSame(thing.first, before, was->second)
                              : thing.first == "stage" ? before == newStage
                                                       : !before;
            if (!fits) say(fmt::format("Record {} of the change log does not follow from the one before it.", seq));
            afters[thing] = after;
        }
    }
    /// Whether two records of one entity say the same, each in the version it was written in. Nothing is only nothing.
    bool saysSame(const std::string& entity, const std::optional<sqlite::Digest>& one,
                  const std::optional<sqlite::Digest>& other) {
        if (one == other) return true;
        const auto* kind = records::kindNamed(entity == "quote" ? "order" : entity);
        return kind != nullptr && one && other &&
               orRefuse(records::saySame(*kind, m_stores.records.find(*one), m_stores.records.find(*other)));
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
        expectNone("SELECT count(*) FROM revision WHERE choice_taken IS NOT NULL");
        expectNone("SELECT count(*) FROM stock_move m WHERE change_seq <> (SELECT max(seq) FROM change "
                   "WHERE entity = 'movement' AND entity_id = m.id)");
    }
    void expectNone(const std::string& sql) {
        auto row = m_db.query(sql);
        if (row.step() && row.takeInteger() > 0)
            say("A thing and the change log do not agree on when it was last changed; compare with a backup.");
    }

    std::vector<Id> keys(std::string_view sql) {
        std::vector<Id> ids;
        auto rows = m_db.query(sql);
        while (rows.step()) rows >> ids.emplace_back();
        return ids;
    }

    sqlite::Connection& m_db;
    Stores m_stores;
    CheckReport m_report;
    std::map<Id, stores::JobRow> m_given;
    std::set<std::string> m_numbers;
    std::set<std::string> m_priceLists; ///< digests of those that were read
};

} // namespace

std::vector<std::string> sealDamage(sqlite::Connection& connection) { return Inspection(connection).runSeals(); }

base::Result<CheckReport> Book::check(const std::filesystem::path& file) {
    return atTheDoor([&] {
        const auto connection = openToRead(file);
        return Inspection(*connection).run();
    });
}

} // namespace sp::db
