// SPDX-License-Identifier: MIT
#include "app/demo/demo_book.h"
#include "core/base/ensure.h"
#include "db/book/book.h"
#include "db/stores/find_index.h"
#include "tests/support/seed.h"
#include "tests/support/shop_year.h"
#include "tests/support/temp_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <chrono>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>

// A book of 100,000 jobs with 1.2 million lines. Figures to hold against: opening it until its list is read, each key
// of a search, and what today asks, within 100 ms each; a search within 1.5 times the same SQL in SQLite's own shell,
// which is asked side by side. Some hundred jobs are made as the program makes them, the old ones from these by SQL:
// closed, and without seals, which nothing here reads. STONEPENNY_LARGE_BOOK names a file in which the book is kept for
// the next time, STONEPENNY_JOBS says how many jobs.

using namespace sp;

namespace {

constexpr int kJobs = 100'000;
constexpr int kMade = 200; ///< by the program
constexpr int kLines = 12;
constexpr int kCustomers = 300;
constexpr std::uint64_t kSeed = 16;
constexpr std::int64_t kShown = 200; ///< as Jobs reads at first
constexpr int kShellRounds = 40;

/// The closed jobs once more, years ago: each round with words and numbers of its own.
constexpr const char* kPrepare =
    "PRAGMA foreign_keys = OFF; PRAGMA synchronous = OFF; PRAGMA journal_mode = OFF; PRAGMA cache_size = -400000; "
    "BEGIN;"
    "CREATE TEMP TABLE closed AS SELECT id AS old, row_number() OVER (ORDER BY started_seq) AS n FROM job j "
    "WHERE number <> '' AND (stage IN ('declined', 'quoted') OR (stage = 'collected' AND "
    "(SELECT sum(amount_micros) FROM payment WHERE job_id = j.id) = "
    "(SELECT total_micros FROM paper WHERE job_id = j.id AND kind = 'quote')));"
    "CREATE TEMP TABLE copy (old BLOB PRIMARY KEY, new BLOB, seq INTEGER, n INTEGER) WITHOUT ROWID;"
    "CREATE TEMP TABLE paying (old BLOB PRIMARY KEY, new BLOB, seq INTEGER) WITHOUT ROWID;";
constexpr const char* kRound =
    "DELETE FROM temp.copy; DELETE FROM temp.paying;"
    "INSERT INTO temp.copy SELECT old, randomblob(16), n + (SELECT max(seq) FROM change), n FROM temp.closed;"
    "INSERT INTO change (seq, command_id, step, at, actor, kind, entity, entity_id) "
    "SELECT seq, randomblob(16), 1, '2019-05-06T09:00:00.000Z', 'bench', 'make', 'quote', new FROM temp.copy;"
    "INSERT INTO temp.paying SELECT y.id, randomblob(16), row_number() OVER (ORDER BY y.id) + "
    "(SELECT max(seq) FROM change) FROM payment y JOIN temp.copy c ON c.old = y.job_id;"
    "INSERT INTO change (seq, command_id, step, at, actor, kind, entity, entity_id) "
    "SELECT seq, randomblob(16), 1, '2019-05-06T09:00:00.000Z', 'bench', 'make', 'payment', new FROM temp.paying;"
    "INSERT INTO job (id, started_seq, number, stage, customer_id, quoted_on, wanted_by, revision, row_version, "
    "change_seq) SELECT c.new, c.seq, printf('%04d-%04d', 1000 + {0}, c.n), j.stage, j.customer_id, "
    "date('2010-01-01', ({0} * 13) || ' days'), NULL, 1, 1, c.seq FROM temp.copy c JOIN job j ON j.id = c.old;"
    "INSERT INTO revision (job_id, number, order_digest) SELECT c.new, 1, r.order_digest FROM temp.copy c "
    "JOIN revision r ON r.job_id = c.old AND r.number = 1;"
    "INSERT INTO job_line (job_id, revision, choice, line, place, title, design_id, onto_id, quantity) "
    "SELECT c.new, 1, l.choice, l.line, l.place, l.title || ' ' || ({0} * 7 + l.line), l.design_id, l.onto_id, "
    "l.quantity FROM temp.copy c JOIN job_line l ON l.job_id = c.old AND l.revision = 1;"
    "INSERT INTO paper (id, job_id, revision, kind, series, number, issued_on, until_on, total_micros, result) "
    "SELECT randomblob(16), c.new, 1, 'quote', 'quote', printf('%04d-%04d', 1000 + {0}, c.n), '2019-05-06', "
    "'2019-06-06', p.total_micros, 'open' FROM temp.copy c JOIN paper p ON p.job_id = c.old AND p.kind = 'quote';"
    "INSERT INTO payment (id, change_seq, job_id, kind, amount_micros, paid_on, note) "
    "SELECT g.new, g.seq, c.new, y.kind, y.amount_micros, '2019-05-06', y.note FROM temp.paying g "
    "JOIN payment y ON y.id = g.old JOIN temp.copy c ON c.old = y.job_id;";

void run(sqlite3* db, const std::string& sql) {
    if (sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK) return;
    std::cerr << sqlite3_errmsg(db) << '\n';
    base::ensure(false, "the benchmark's book can be written");
}

class LargeBook {
  public:
    static LargeBook& instance() {
        static LargeBook book;
        return book;
    }
    std::unique_ptr<db::Book> open() {
        auto environment = m_clock.environment();
        environment.cacheFolder = m_cache;
        return db::Book::open(m_file, environment).value();
    }
    std::filesystem::path index() const {
        for (const auto& entry : std::filesystem::directory_iterator(m_cache)) return entry.path();
        return {};
    }

  private:
    LargeBook() {
        if (const char* kept = std::getenv("STONEPENNY_LARGE_BOOK")) m_file = kept;
        m_cache = m_file.string() + "-cache";
        if (!std::filesystem::exists(m_file)) make(test::roundsOr("STONEPENNY_JOBS", kJobs));
        if (!std::filesystem::exists(m_cache)) {
            const auto begun = std::chrono::steady_clock::now();
            const auto made = db::Book::makeIndex(m_file, m_cache);
            base::ensure(made.has_value(), "the benchmark's book has an index");
            const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
            std::cout << fmt::format("index: {} MB in {:.1f} s\n", std::filesystem::file_size(index()) / 1'000'000,
                                     took.count());
        }
    }
    void make(int jobs) {
        {
            test::HeldClock then = m_clock;
            then.now -= std::chrono::hours(24) * kMade / 25; // so that the newest are of about today
            auto book = demo::createDemoBook(m_file, then.environment()).value();
            test::ShopYear years(*book, then, kSeed);
            years.open(kCustomers);
            years.fill(kMade, kLines);
        }
        sqlite3* db = nullptr;
        base::ensure(sqlite3_open(m_file.c_str(), &db) == SQLITE_OK, "the benchmark's book can be opened");
        run(db, kPrepare);
        for (int round = 1; countIn(db) < jobs; ++round) {
            const auto sql = fmt::format(kRound, round);
            run(db, sql);
        }
        run(db, "COMMIT; PRAGMA journal_mode = DELETE");
        std::cout << fmt::format("{}: {} jobs, {} MB\n", m_file.string(), countIn(db),
                                 std::filesystem::file_size(m_file) / 1'000'000);
        sqlite3_close(db);
    }
    static int countIn(sqlite3* db) {
        sqlite3_stmt* statement = nullptr;
        sqlite3_prepare_v2(db, "SELECT count(*) FROM job", -1, &statement, nullptr);
        const int count = sqlite3_step(statement) == SQLITE_ROW ? sqlite3_column_int(statement, 0) : 0;
        sqlite3_finalize(statement);
        return count;
    }

    test::TempFolder m_folder;
    std::filesystem::path m_file = m_folder / "large.jobbook";
    std::filesystem::path m_cache;
    test::HeldClock m_clock;
};

void openToAList(benchmark::State& state) {
    auto& large = LargeBook::instance();
    for ([[maybe_unused]] auto round : state) {
        const auto book = large.open();
        benchmark::DoNotOptimize(book->quotes({}, kShown).value());
    }
}
BENCHMARK(openToAList)->Unit(benchmark::kMillisecond)->UseRealTime();

void whatTodayAsks(benchmark::State& state) {
    const auto book = LargeBook::instance().open();
    for ([[maybe_unused]] auto round : state) benchmark::DoNotOptimize(book->askedToday().value());
    state.counters["rows"] = static_cast<double>(book->askedToday()->jobs.size());
}
BENCHMARK(whatTodayAsks)->Unit(benchmark::kMillisecond)->UseRealTime();

std::string shellText(const db::stores::FindIndex::Asked& asked) {
    std::string sql;
    auto text = asked.texts.begin();
    for (const char c : asked.sql) {
        if (c != '?') {
            sql += c;
            continue;
        }
        sql += '\'';
        for (const char of : *text++) sql += of == '\'' ? std::string("''") : std::string(1, of);
        sql += '\'';
    }
    return sql + ";\n";
}

/// Milliseconds that SQLite's own shell takes for the statement, of many in one process.
double inTheShell(const std::filesystem::path& index, const std::string& sql, const std::filesystem::path& script) {
    {
        std::ofstream out(script);
        out << ".output /dev/null\n";
        for (int i = 0; i < kShellRounds; ++i) out << sql;
    }
    const auto command = fmt::format("sqlite3 -readonly '{}' < '{}'", index.string(), script.string());
    const auto begun = std::chrono::steady_clock::now();
    if (std::system(command.c_str()) != 0) return 0;
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begun;
    return took.count() / kShellRounds;
}

/// One key of a search: what is found, and the rows that are shown.
void find(benchmark::State& state, const db::Wanted& asked) {
    auto wanted = asked;
    wanted.limit = kShown;
    const auto book = LargeBook::instance().open();
    std::size_t found = 0;
    for ([[maybe_unused]] auto round : state) found = book->find(wanted)->jobs.size();
    state.counters["found"] = static_cast<double>(found);
    const auto today = book->environment().today();
    const auto file = LargeBook::instance().index();
    const auto index = db::stores::FindIndex::open(file);
    const auto begun = std::chrono::steady_clock::now();
    for (int i = 0; i < kShellRounds; ++i) benchmark::DoNotOptimize(index->find(wanted, today, kShown + 1));
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begun;
    state.counters["index_ms"] = took.count() / kShellRounds;
    const test::TempFolder folder;
    state.counters["shell_ms"] =
        inTheShell(file, shellText(db::stores::FindIndex::asked(wanted, today, kShown + 1)), folder / "asked.sql");
}
#define SP_FIND(name, ...)                                                                                             \
    BENCHMARK_CAPTURE(find, name, db::Wanted{__VA_ARGS__})->Unit(benchmark::kMillisecond)->UseRealTime()
SP_FIND(oneLetter, .text = "l", .stage = {});
SP_FIND(twoLetters, .text = "la", .stage = {});
SP_FIND(twoRareLetters, .text = "zq", .stage = {});
SP_FIND(threeLetters, .text = "lan", .stage = {});
SP_FIND(aWord, .text = "lantern", .stage = {});
SP_FIND(someWords, .text = "lantern captain winter", .stage = {});
SP_FIND(aCustomer, .text = "juniper quay", .stage = {});
SP_FIND(aNumber, .text = "1042-0017", .stage = {});
SP_FIND(digits, .text = "0017", .stage = {});
SP_FIND(aSum, .text = "1,234.50", .stage = {});
SP_FIND(nothing, .text = "no such title", .stage = {});
SP_FIND(unpaid, .text = "", .stage = {}, .isUnpaid = true);
SP_FIND(collectedLantern, .text = "lantern", .stage = db::Stage::Collected);
SP_FIND(byTotal, .text = "", .stage = {}, .by = db::FoundBy::Total);
SP_FIND(lanternByCustomer, .text = "lantern", .stage = {}, .by = db::FoundBy::Customer, .isAscending = true);

/// While there is no index: as Jobs asks then.
void lookThroughTheNewest(benchmark::State& state) {
    auto environment = db::systemEnvironment();
    const auto file = LargeBook::instance().open()->file();
    const auto book = db::Book::open(file, environment).value();
    for ([[maybe_unused]] auto round : state)
        benchmark::DoNotOptimize(
            book->find({.text = "no such title", .stage = {}, .limit = kShown, .lookThrough = 1'000}));
}
BENCHMARK(lookThroughTheNewest)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
