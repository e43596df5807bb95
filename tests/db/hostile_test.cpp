// SPDX-License-Identifier: MIT
// Changes behind the program's back that no seal covers.
#include "tests/db/bench_book.h"

#include <sqlite3.h>

namespace {

using namespace sp;
using test::BookTest;
namespace fs = std::filesystem;

class HostileTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        issued();
    }
    /// As another program would write it, with the book closed.
    void alter(const std::string& sql) {
        book.reset();
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
        char* error = nullptr;
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, &error), SQLITE_OK)
            << (error == nullptr ? "" : error);
        sqlite3_free(error);
        sqlite3_close(db);
    }
    /// As they stand in the table, not in an index of it.
    std::vector<std::string> namesIn(const std::string& table) {
        sqlite3* db = nullptr;
        EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        std::vector<std::string> names;
        const auto take = [](void* to, int, char** row, char**) {
            static_cast<std::vector<std::string>*>(to)->emplace_back(row[0]);
            return 0;
        };
        sqlite3_exec(db, ("SELECT name FROM " + table + " WHERE +deleted_at IS NULL ORDER BY +id").c_str(), take,
                     &names, nullptr);
        sqlite3_close(db);
        return names;
    }
    std::vector<std::string> found() {
        const auto report = db::Book::check(file);
        return report ? test::described(report->damage) : std::vector<std::string>{describe(report.error())};
    }
};

// ------------------------------------------------------------------------------------- behind the program's back

TEST_F(HostileTest, seesWhatWasHiddenAsIfRemoved) {
    for (const auto* table : {"customer", "pack", "job"}) {
        const auto good = (book.reset(), test::bytesOf(file));
        alter(std::string("UPDATE ") + table + " SET deleted_at = '2026-11-25T09:00:00.000Z'");
        EXPECT_FALSE(found().empty()) << table;
        test::writeBytes(file, good);
    }
    // The control: removed by the program, it is nothing to tell.
    reopen();
    ASSERT_TRUE(book->removePack(pack));
    book.reset();
    EXPECT_EQ(found(), std::vector<std::string>{});
}

// The list of quotes shows since when each is in its stage.
TEST_F(HostileTest, seesAMovementThatIsGone) {
    reopen();
    ASSERT_TRUE(book->moveStock(tape, 3, std::nullopt, "found"));
    ASSERT_TRUE(book->moveStock(tape, 4, std::nullopt, "found"));
    ASSERT_TRUE(book->undo());
    book.reset();
    EXPECT_EQ(found(), std::vector<std::string>{}) << "what was undone is nothing to tell";
    alter("DELETE FROM stock_move WHERE id = (SELECT id FROM stock_move LIMIT 1)");
    EXPECT_FALSE(found().empty());
}

TEST_F(HostileTest, seesADayOfTheLogThatIsNone) {
    alter("UPDATE change SET at = '2026-1?-25T09:00:00.000Z' WHERE seq = (SELECT change_seq FROM job)");
    EXPECT_FALSE(found().empty());
    reopen();
    EXPECT_FALSE(book->quotes("", 50));
}

// The index of the names takes no heed of letter case, so SQLite's own check does not either; the names are to be read
// from the table.
TEST_F(HostileTest, seesALetterThatChangedItsCase) {
    const std::pair<std::string, std::string> names[] = {{"supplier", test::sampleSupplier().name},
                                                         {"pack", book->packs()->at(0).name},
                                                         {"material", book->materials()->at(0).name},
                                                         {"design", book->designs()->at(0).name},
                                                         {"customer", book->customers()->at(0).name}};
    book.reset();
    const auto bytes = test::bytesOf(file);
    for (const auto& [table, name] : names) {
        const auto kept = namesIn(table);
        int seen = 0;
        for (auto at = bytes.find(name); at != std::string::npos; at = bytes.find(name, at + 1)) {
            auto spoilt = bytes;
            spoilt[at] = static_cast<char>(spoilt[at] ^ 0x20);
            test::writeBytes(file, spoilt);
            const bool isSeen = !found().empty();
            seen += isSeen ? 1 : 0;
            EXPECT_TRUE(isSeen || namesIn(table) == kept) << table << " at " << at;
        }
        EXPECT_GE(seen, 2) << "the row and the record of the log: " << table;
    }
}

TEST_F(HostileTest, tellsWhatLiesBehindTheEnd) {
    book.reset();
    const auto size = fs::file_size(file);
    fs::resize_file(file, size + 1'000'000'000); // takes no room: there are only holes
    EXPECT_EQ(found(), std::vector<std::string>{"BytesBehindTheEnd(1000000000)"});
    fs::resize_file(file, size);
    EXPECT_EQ(found(), std::vector<std::string>{});
}

} // namespace
