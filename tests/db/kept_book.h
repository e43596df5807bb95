// SPDX-License-Identifier: MIT
#pragma once

#include "db/migrations/migrations.h"
#include "tests/db/bench_book.h"
#include "tests/support/test_data.h"

#include <sqlite3.h>

#include <string>
#include <vector>

namespace sp::test {

/// The version of a book that this program makes.
inline int newestBook() { return static_cast<int>(db::migrations::all().size()); }

/// A book of an earlier version as the program of its time wrote it (tests/data/books), in a folder of its own.
class KeptBook : public testing::TestWithParam<int> {
  protected:
    void SetUp() override { make(file); }

    void make(const std::filesystem::path& where) const {
        const auto number = std::to_string(GetParam());
        run(where, bytesOf(dataFile("books/version_" + number + ".sql")));
        run(where, "PRAGMA application_id = 1397770818; PRAGMA user_version = " + number);
    }
    static void run(const std::filesystem::path& book, const std::string& sql) {
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(book.c_str(), &db), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
    }
    /// The first column of what is asked, as SQLite writes it.
    static std::vector<std::string> ask(const std::filesystem::path& book, const std::string& sql) {
        sqlite3* db = nullptr;
        EXPECT_EQ(sqlite3_open_v2(book.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
        std::vector<std::string> values;
        const auto take = [](void* to, int, char** row, char**) {
            static_cast<std::vector<std::string>*>(to)->emplace_back(row[0] == nullptr ? "NULL" : row[0]);
            return 0;
        };
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), take, &values, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
        return values;
    }

    TempFolder folder;
    std::filesystem::path file = folder / "Old Bench.jobbook";
    HeldClock clock;
};

inline std::string nameOfVersion(const testing::TestParamInfo<int>& version) {
    return "version" + std::to_string(version.param);
}

} // namespace sp::test
