// SPDX-License-Identifier: MIT
#include "db/book/action.h"
#include "db/book/export_tables.h"
#include "db/records/json.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>
#include <unistd.h>

namespace sp::db {

namespace fs = std::filesystem;
using base::CsvCell;
using base::Done;
using base::Id;
using records::Json;

namespace {

constexpr std::int64_t kAllJobs = 1'000'000'000;

/// The folder that an export is made in, and that gets the name asked for when all of it is there.
class NewFolder {
  public:
    explicit NewFolder(const fs::path& asked)
        : m_target(resolvedFolder(asked))
        , m_folder(m_target.parent_path() / fmt::format(".{}.export-{}", m_target.filename().string(), ::getpid())) {
        std::error_code error;
        fs::remove_all(m_folder, error);
        if (!fs::create_directory(m_folder, error)) throwSystemError(m_target, error.value());
        fs::permissions(m_folder, fs::perms::owner_all, error);
    }
    ~NewFolder() {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
    }
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;

    const fs::path& path() const { return m_folder; }
    void commit() const {
        std::error_code error;
        fs::rename(m_folder, m_target, error); // an empty folder of that name is replaced
        if (error) throwSystemError(m_target, error.value());
        syncFolderOf(m_target);
    }

  private:
    static fs::path resolvedFolder(const fs::path& asked) {
        std::error_code error;
        auto named = asked.has_filename() ? asked : asked.parent_path(); // "out/"
        const auto shown = asked.string();
        const auto parent = fs::canonical(named.has_parent_path() ? named.parent_path() : fs::path("."), error);
        if (error) throwError(Fault::NoSuchFolder, named.parent_path().string(), named.parent_path().string());
        const auto target = parent / named.filename();
        const auto status = fs::symlink_status(target, error);
        if (!fs::exists(status)) return target;
        const bool isEmptyFolder = fs::is_directory(status) && fs::is_empty(target, error) && !error;
        if (!isEmptyFolder) throwError(Fault::ExportNeedsNewFolder, shown, shown);
        return target;
    }

    fs::path m_target;
    fs::path m_folder;
};

/// One array or object of book.json, and its table.
class Exporter {
  public:
    explicit Exporter(const fs::path& folder)
        : m_folder(folder)
        , m_json(folder / "book.json") {
        m_json.append(R"({"format":1)");
    }

    template<class T>
    void one(const char* name, const T& value) {
        const auto& object = catalogue::fields::objectOf<T>();
        ExportTable table(m_folder, name, {}, object);
        table.add({}, &value);
        table.commit();
        m_json.append(fmt::format(",\n\"{}\":{}", name, records::plainJson(object, &value).dump()));
    }
    template<class T>
    void list(const char* name, const std::vector<T>& values) {
        const auto& object = catalogue::fields::objectOf<T>();
        ExportTable table(m_folder, name, {}, object);
        begin(name);
        for (const auto& value : values) {
            table.add({}, &value);
            item(records::plainJson(object, &value));
        }
        end();
        table.commit();
    }
    void begin(const char* name) {
        m_json.append(fmt::format(",\n\"{}\":[", name));
        m_isFirst = true;
    }
    void item(const Json& value) {
        m_json.append(m_isFirst ? "\n" : ",\n");
        m_json.append(value.dump());
        m_isFirst = false;
    }
    void end() { m_json.append("]"); }
    void finish() {
        m_json.append("}\n");
        m_json.commit();
    }

    const fs::path& folder() const { return m_folder; }

  private:
    fs::path m_folder;
    ExportFile m_json;
    bool m_isFirst = true;
};

CsvCell wholeCell(std::int64_t number) { return {fmt::format("{}", number), true}; }
CsvCell amountCell(units::Money amount) { return {decimalOf(amount.micros(), 1'000'000), true}; }

/// Goes through the jobs, the oldest first.
class Jobs {
  public:
    Jobs(Stores& stores, const Watch& watch)
        : m_watch(watch) {
        for (const auto& job : stores.jobs.list(kAllJobs)) m_ids.push_back(job.id);
        std::ranges::reverse(m_ids);
    }

    /// The pass with that number, from 0, of kPasses.
    template<class Work>
    void each(int pass, Work work) const {
        for (std::size_t i = 0; i < m_ids.size(); ++i) {
            if (m_watch.stop.stop_requested()) throwError(Fault::Stopped, {});
            if (m_watch.progress && i % 100 == 0)
                m_watch.progress((pass + static_cast<double>(i) / static_cast<double>(m_ids.size())) / kPasses);
            work(m_ids[i]);
        }
    }

  private:
    static constexpr int kPasses = 5;

    const Watch& m_watch;
    std::vector<Id> m_ids;
};

void exportOrders(Exporter& to, Stores& stores, const Jobs& jobs) {
    const auto& object = catalogue::fields::objectOf<catalogue::Order>();
    ExportTable table(to.folder(), "jobs", {"id", "number", "revision", "stage", "choice_taken", "revises"}, object);
    to.begin("jobs");
    jobs.each(0, [&](const Id& id) {
        const auto job = stores.jobs.find(id).value();
        const std::string stage(catalogue::fields::wordOf(job.stage));
        const auto revises = job.revises ? job.revises->job.text() : std::string();
        table.add({{id.text()},
                   {job.number},
                   wholeCell(job.revision),
                   {stage},
                   job.choiceTaken ? wholeCell(*job.choiceTaken) : CsvCell{},
                   {revises}},
                  &job.order);
        to.item({{"id", id.text()},
                 {"number", job.number},
                 {"revision", job.revision},
                 {"revises", revises.empty() ? Json(nullptr) : Json(revises)},
                 {"stage", stage},
                 {"choice_taken", job.choiceTaken ? Json(*job.choiceTaken) : Json(nullptr)},
                 {"order", records::plainJson(object, &job.order)}});
    });
    to.end();
    table.commit();
}

/// What jobs were before they were revised.
void exportRevisions(Exporter& to, Stores& stores, const Jobs& jobs) {
    const auto& object = catalogue::fields::objectOf<catalogue::Order>();
    ExportTable table(to.folder(), "revisions", {"job", "number", "revision", "choice_taken"}, object);
    to.begin("revisions");
    jobs.each(1, [&](const Id& id) {
        const auto given = stores.papers.quotesOf(id);
        if (given.size() < 2) return;
        for (const auto& quote : std::span(given).first(given.size() - 1)) {
            const auto revision = stores.jobs.revision(id, quote.revision).value();
            const auto& choice = revision.choiceTaken;
            table.add({{id.text()}, {quote.number}, wholeCell(quote.revision), choice ? wholeCell(*choice) : CsvCell{}},
                      &revision.order);
            to.item({{"job", id.text()},
                     {"number", quote.number},
                     {"revision", quote.revision},
                     {"choice_taken", choice ? Json(*choice) : Json(nullptr)},
                     {"order", records::plainJson(object, &revision.order)}});
        }
    });
    to.end();
    table.commit();
}

/// What was given to customers, as it was sealed.
void exportPapers(Exporter& to, Stores& stores, const Jobs& jobs) {
    const auto& object = catalogue::fields::objectOf<records::PaperResult>();
    ExportTable table(to.folder(), "papers",
                      {"id", "job", "kind", "number", "revision", "issued_at", "until", "paper_total"}, object);
    to.begin("papers");
    jobs.each(2, [&](const Id& id) {
        for (const auto& given : stores.papers.quotesOf(id)) {
            const auto paper = stores.papers.find(given.paper).value();
            const auto until = paper.until ? paper.until->iso() : std::string();
            const auto* result = paper.result ? &*paper.result : nullptr;
            table.add({{paper.id.text()},
                       {id.text()},
                       {"quote"},
                       {paper.number},
                       wholeCell(paper.revision),
                       {paper.issuedAt},
                       {until},
                       amountCell(paper.total)},
                      result);
            to.item({{"id", paper.id.text()},
                     {"job", id.text()},
                     {"kind", "quote"},
                     {"number", paper.number},
                     {"revision", paper.revision},
                     {"issued_at", paper.issuedAt},
                     {"until", until.empty() ? Json(nullptr) : Json(until)},
                     {"total_micros", paper.total.micros()},
                     {"result", result ? records::plainJson(object, result) : Json(nullptr)}});
        }
    });
    to.end();
    table.commit();
}

/// Invoices, receipts and credit notes, as they were sealed.
void exportBills(Exporter& to, Stores& stores, const Jobs& jobs) {
    const auto& object = catalogue::fields::objectOf<records::BillResult>();
    ExportTable table(to.folder(), "bills", {"id", "job", "kind", "number", "issued_at", "due", "bill_total"}, object);
    to.begin("bills");
    jobs.each(3, [&](const Id& id) {
        for (const auto& bill : stores.bills.ofJob(id)) {
            const std::string kind(catalogue::fields::wordOf(bill.kind));
            const auto due = bill.due ? bill.due->iso() : std::string();
            table.add(
                {{bill.id.text()}, {id.text()}, {kind}, {bill.number}, {bill.issuedAt}, {due}, amountCell(bill.total)},
                &bill.result);
            to.item({{"id", bill.id.text()},
                     {"job", id.text()},
                     {"kind", kind},
                     {"number", bill.number},
                     {"issued_at", bill.issuedAt},
                     {"due", due.empty() ? Json(nullptr) : Json(due)},
                     {"total_micros", bill.total.micros()},
                     {"result", records::plainJson(object, &bill.result)}});
        }
    });
    to.end();
    table.commit();
}

void exportPayments(Exporter& to, Stores& stores, const Jobs& jobs) {
    const auto& object = catalogue::fields::objectOf<catalogue::Payment>();
    ExportTable table(to.folder(), "payments", {}, object);
    to.begin("payments");
    jobs.each(4, [&](const Id& id) {
        for (const auto& payment : stores.payments.ofJob(id)) {
            table.add({}, &payment);
            to.item(records::plainJson(object, &payment));
        }
    });
    to.end();
    table.commit();
}

/// The cut files that designs were counted from, each under the key of its design.
void exportDrawings(Exporter& to, Stores& stores) {
    const auto drawings = stores.artworks.all();
    to.list("drawings", drawings);
    if (drawings.empty()) return;
    const auto folder = to.folder() / "drawings";
    fs::create_directory(folder);
    for (const auto& drawing : drawings) {
        ExportFile file(folder /
                        (drawing.design.text() + "." + std::string(catalogue::fields::wordOf(drawing.format))));
        file.append(stores.artworks.file(drawing.file));
        file.commit();
    }
}

} // namespace

Done Book::exportTo(const fs::path& asked, const Watch& watch) {
    return m_in->read([&] {
        auto& stores = m_in->stores;
        const NewFolder folder(asked);
        Exporter to(folder.path());
        to.one("shop", stores.shop.find().value());
        to.one("bench", stores.bench.find().value());
        to.list("suppliers", stores.suppliers.all());
        to.list("materials", stores.materials.all());
        to.list("packs", stores.packs.all());
        to.list("kits", stores.kits.all());
        to.list("designs", stores.designs.all());
        to.list("colours", stores.colours.all());
        to.list("price_lists", stores.priceLists.all());
        to.list("customers", stores.customers.all());
        to.list("stock_moves", stores.stock.all());
        const Jobs jobs(stores, watch);
        exportOrders(to, stores, jobs);
        exportRevisions(to, stores, jobs);
        exportPapers(to, stores, jobs);
        exportBills(to, stores, jobs);
        exportPayments(to, stores, jobs);
        exportDrawings(to, stores);
        to.finish();
        folder.commit();
    });
}

} // namespace sp::db
