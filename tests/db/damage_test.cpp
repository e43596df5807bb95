// SPDX-License-Identifier: MIT
// A damaged file is never taken for a sound one: it never crashes the program, and damage to what was given is always
// reported.
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"

#include <sqlite3.h>

#include <random>

namespace {

using namespace sp;
using test::BookTest;

class DamageTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        for (int i = 0; i < 3; ++i) numbers.push_back(issued().number);
        draft();
        ASSERT_TRUE(book->moveStock(tape, 12, units::Money::fromMicros(50'000'000), "delivery"));
        for (const auto& number : numbers) sealed.push_back(book->quoteNumbered(number).value());
        book.reset();
        good = test::bytesOf(file);
        damaged = folder / "damaged.jobbook";
    }

    /// Opens the damaged file and reads all there is. What was given reads as it was, or is refused.
    enum class Outcome { Refused, SomeRefused, AllRight, Altered };
    Outcome readAll() {
        auto opened = db::Book::open(damaged, clock.environment());
        refusal.clear();
        if (!opened) {
            refusal = describe(opened.error());
            return Outcome::Refused;
        }
        auto& held = **opened;
        const auto look = [&](const auto& result) {
            if (!result) refusal = describe(result.error());
        };
        look(held.shop());
        look(held.bench());
        look(held.materials());
        look(held.packs());
        look(held.suppliers());
        look(held.designs());
        look(held.customers());
        look(held.shelf());
        look(held.priceBook({}));
        look(held.quotes("lantern", 50));
        look(held.lastDraft());
        for (const auto& was : sealed) {
            const auto is = held.quoteNumbered(was.number);
            look(is);
            if (is && (is->order != was.order || is->frozen != was.frozen || is->sealedTotal != was.sealedTotal))
                return Outcome::Altered;
        }
        return refusal.empty() ? Outcome::AllRight : Outcome::SomeRefused;
    }
    /// Every value in every table, read with the plain library; without who made a change, when and in what action,
    /// and the count of a row's changes, which no seal covers.
    static std::string contentsOf(const std::filesystem::path& path) {
        sqlite3* db = nullptr;
        sqlite3_open_v2(path.c_str(), &db, SQLITE_OPEN_READONLY, nullptr);
        const auto ask = [&](const std::string& sql) {
            std::vector<std::string> values;
            const auto take = [](void* to, int, char** row, char**) {
                static_cast<std::vector<std::string>*>(to)->emplace_back(row[0] == nullptr ? "NULL" : row[0]);
                return 0;
            };
            sqlite3_exec(db, sql.c_str(), take, &values, nullptr);
            return values;
        };
        std::string contents;
        for (const auto& table : ask("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
            const auto columns =
                ask("SELECT group_concat('quote(' || name || ')', '||') FROM pragma_table_info('" + table +
                    "') WHERE name NOT IN ('at', 'actor', 'kind', 'command_id', 'step', "
                    "'row_version', 'position') OR '" +
                    table + "' = 'material' AND name = 'kind'");
            // A position only says what comes before what.
            const auto key = ask("SELECT group_concat(name) FROM (SELECT name FROM pragma_table_info('" + table +
                                 "') WHERE pk > 0 ORDER BY pk)");
            for (const auto& row : ask("SELECT " + columns.at(0) + " FROM " + table + " ORDER BY " + key.at(0)))
                contents += row + "\n";
        }
        sqlite3_close(db);
        return contents;
    }
    bool isReported() const {
        const auto report = db::Book::check(damaged);
        return !report || !report->damage.empty();
    }

    /// Whether the library's own checks find nothing.
    bool isWholeForSqlite() const {
        sqlite3* db = nullptr;
        sqlite3_open_v2(damaged.c_str(), &db, SQLITE_OPEN_READONLY, nullptr);
        std::string found;
        const auto take = [](void* to, int, char** row, char**) {
            *static_cast<std::string*>(to) += row[0] == nullptr ? "NULL" : row[0];
            return 0;
        };
        int code = sqlite3_exec(db, "PRAGMA integrity_check", take, &found, nullptr);
        if (code == SQLITE_OK) code = sqlite3_exec(db, "PRAGMA foreign_key_check", take, &found, nullptr);
        sqlite3_close(db);
        return code == SQLITE_OK && found == "ok";
    }

    std::vector<std::string> numbers;
    std::vector<db::Quote> sealed;
    std::string good;
    std::string refusal; ///< the last sentence that reading met
    std::filesystem::path damaged;
};

TEST_F(DamageTest, refusesABookCutOffAnywhere) {
    std::mt19937_64 random(test::printedSeed());
    std::vector<std::size_t> lengths;
    for (std::size_t length = 0; length < good.size(); length += 512) lengths.push_back(length);
    const int more = test::roundsOr("STONEPENNY_CUT_LENGTHS", 50);
    for (int i = 0; i < more; ++i)
        lengths.push_back(std::uniform_int_distribution<std::size_t>(0, good.size() - 1)(random));
    for (const auto length : lengths) {
        test::writeBytes(damaged, std::string_view(good).substr(0, length));
        ASSERT_EQ(readAll(), Outcome::Refused) << "cut to " << length << " bytes";
        ASSERT_TRUE(isReported()) << "cut to " << length << " bytes";
    }
    std::cout << lengths.size() << " lengths, all refused\n";
}

TEST_F(DamageTest, neverShowsAGivenQuoteOtherThanItWasAndReportsWhatIsLost) {
    std::mt19937_64 random(test::printedSeed());
    const int flips = test::roundsOr("STONEPENNY_FLIPS", 1'000);
    const auto contents = contentsOf(file);
    ASSERT_NE(contents.find("Aquamarine"), std::string::npos);
    int refused = 0;
    int partly = 0;
    int reported = 0;
    int unseen = 0;
    int bySealsAlone = 0;
    for (int i = 0; i < flips; ++i) {
        const auto bit = std::uniform_int_distribution<std::size_t>(0, good.size() * 8 - 1)(random);
        std::string bytes = good;
        // One in four hits a run of bytes.
        const std::size_t run = i % 4 == 0 ? std::min<std::size_t>(64, good.size() - bit / 8) : 0;
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
        for (std::size_t at = 1; at < run; ++at) bytes[bit / 8 + at] = static_cast<char>(random());
        test::writeBytes(damaged, bytes);
        const auto outcome = readAll();
        ASSERT_NE(outcome, Outcome::Altered) << "bit " << bit;
        // Opening may have rewritten nothing; check the flipped bytes themselves.
        test::writeBytes(damaged, bytes);
        const bool isSeen = isReported();
        ASSERT_TRUE(isSeen || outcome == Outcome::AllRight) << "bit " << bit << ": " << refusal;
        if (!isSeen) { ASSERT_EQ(contentsOf(damaged), contents) << "bit " << bit << " altered the book unseen"; }
        refused += outcome == Outcome::Refused ? 1 : 0;
        partly += outcome == Outcome::SomeRefused ? 1 : 0;
        reported += isSeen && outcome == Outcome::AllRight ? 1 : 0;
        unseen += isSeen ? 0 : 1;
        bySealsAlone += isSeen && isWholeForSqlite() ? 1 : 0;
    }
    // The control: without seals, and what the log is held against, this test would see most of it pass.
    if (flips >= 100) { EXPECT_GT(bySealsAlone, flips / 20) << "the flips hit nothing that seals are there for"; }
    std::cout << bySealsAlone << " of these SQLite's own checks pass\n";
    std::cout << flips << " flips: " << refused << " refused at opening, " << partly << " when read, " << reported
              << " by check alone, " << unseen << " that alter nothing\n";
}

// ------------------------------------------------------------------------------------------- cells that were changed

/// A file as somebody with another program leaves it: cells, rows and bytes changed by chance.
class FuzzedBook : public DamageTest {
  protected:
    void SetUp() override {
        DamageTest::SetUp();
        random.seed(test::searchSeed("STONEPENNY_FUZZED_BOOKS"));
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        for (const auto& table : ask(db, "SELECT name FROM sqlite_schema WHERE type = 'table'"))
            for (const auto& column : ask(db, "SELECT name FROM pragma_table_info('" + table + "')"))
                cells.emplace_back(table, column);
        sqlite3_close(db);
    }
    static std::vector<std::string> ask(sqlite3* db, const std::string& sql) {
        std::vector<std::string> values;
        const auto take = [](void* to, int, char** row, char**) {
            static_cast<std::vector<std::string>*>(to)->emplace_back(row[0] == nullptr ? "NULL" : row[0]);
            return 0;
        };
        sqlite3_exec(db, sql.c_str(), take, &values, nullptr);
        return values;
    }
    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random); }

    /// SQL that changes something; SQLite may refuse it.
    std::string change() {
        const auto& [table, column] = cells[below(cells.size())];
        const auto row = " (SELECT * FROM " + table + " ORDER BY random() LIMIT 1)";
        const std::string one = " WHERE (" + column + ") IN (SELECT " + column + " FROM" + row + ")";
        const std::vector<std::string> values{"NULL",
                                              "''",
                                              "0",
                                              "-1",
                                              "1",
                                              "9223372036854775807",
                                              "-9223372036854775807 - 1",
                                              column + " + 1",
                                              column + " - 1",
                                              column + " * 1000000",
                                              column + " || 'x'",
                                              "substr(" + column + ", 2)",
                                              "upper(" + column + ")",
                                              "CAST(x'C328' AS TEXT)",
                                              "hex(zeroblob(3000000))",
                                              "zeroblob(32)",
                                              "randomblob(16)",
                                              "randomblob(32)",
                                              "CAST(replace(" + column + ", '1', '2') AS TEXT)",
                                              "CAST(replace(" + column + ", '\"', '') AS TEXT)",
                                              "printf('%.*c', 20000, '[')",
                                              "(SELECT " + column + " FROM" + row + ")",
                                              "strftime('%Y-%m-%dT%H:%M:%fZ', random() % 100000000000, 'unixepoch')"};
        switch (below(12)) {
        case 0: return "DELETE FROM " + table + one;
        case 1: return "INSERT OR REPLACE INTO " + table + " SELECT * FROM" + row;
        default: return "UPDATE OR IGNORE " + table + " SET " + column + " = " + values[below(values.size())] + one;
        }
    }
    /// What was done, to tell.
    std::string spoil() {
        test::writeBytes(damaged, good);
        std::string done;
        if (below(4) != 0) {
            sqlite3* db = nullptr;
            sqlite3_open(damaged.c_str(), &db);
            sqlite3_exec(db,
                         "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA ignore_check_constraints = ON",
                         nullptr, nullptr, nullptr);
            for (auto times = below(3) + 1; times > 0; --times) {
                const auto sql = change();
                if (sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK) done += sql + "; ";
            }
            sqlite3_close(db);
            if (below(4) != 0) return done;
        }
        auto bytes = test::bytesOf(damaged);
        for (auto times = below(8) + 1; times > 0; --times) {
            const auto at = below(bytes.size());
            const auto size = std::min(below(16) + 1, bytes.size() - at);
            for (std::size_t i = 0; i < size; ++i) bytes[at + i] = static_cast<char>(random());
            done += "bytes at " + std::to_string(at) + "; ";
        }
        test::writeBytes(damaged, bytes);
        return done;
    }

    std::mt19937_64 random;
    std::vector<std::pair<std::string, std::string>> cells; ///< table and column
};

TEST_F(FuzzedBook, isRefusedOrReportedWhereItSaysSomethingElse) {
    const int rounds = test::roundsOr("STONEPENNY_FUZZED_BOOKS", 100);
    const auto contents = contentsOf(file);
    int refused = 0;
    int partly = 0;
    int reported = 0;
    for (int i = 0; i < rounds; ++i) {
        const auto done = spoil();
        const auto bytes = test::bytesOf(damaged);
        const auto outcome = readAll();
        ASSERT_NE(outcome, Outcome::Altered) << done;
        test::writeBytes(damaged, bytes);
        const bool isSeen = isReported();
        ASSERT_TRUE(isSeen || outcome == Outcome::AllRight) << done << refusal;
        if (!isSeen) { ASSERT_EQ(contentsOf(damaged), contents) << done << "altered the book unseen"; }
        refused += outcome == Outcome::Refused ? 1 : 0;
        partly += outcome == Outcome::SomeRefused ? 1 : 0;
        reported += isSeen && outcome == Outcome::AllRight ? 1 : 0;
    }
    std::cout << rounds << " books: " << refused << " refused at opening, " << partly << " when read, " << reported
              << " by check alone; 0 altered unseen\n";
    if (rounds >= 100) { EXPECT_GT(reported, 0); }
}

} // namespace
