// SPDX-License-Identifier: MIT
#include "app/demo/demo_book.h"
#include "app/session/book_session.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

using namespace sp;

namespace {

/// As another program would, past the book's own checks.
void alter(const std::filesystem::path& file, const char* sql) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db, "PRAGMA ignore_check_constraints = ON", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    sqlite3_close(db);
}

TEST(BookSession, neverSavesOverWhatItCouldNotRead) {
    test::TempFolder folder;
    const auto file = folder / "demo.jobbook";
    auto book = demo::createDemoBook(file, db::systemSurroundings());
    ASSERT_TRUE(book.has_value());
    session::BookSession session(std::move(*book));
    const auto name = session.shop().letterhead.name;
    ASSERT_FALSE(name.empty());
    ASSERT_TRUE(session.change([&](db::Book& open) { return open.save(session.shop()); })); // forgets what was read

    int troubles = 0;
    QObject::connect(&session, &session::BookSession::troubled, [&troubles](const base::Error& error) { ++troubles; EXPECT_NE(error.detail.find("paper"), std::string::npos) << error.detail; });
    alter(file, "UPDATE shop SET paper = 'a5'");
    EXPECT_TRUE(session.shop().letterhead.name.empty());
    EXPECT_EQ(troubles, 1);
    auto blank = session.shop();
    blank.letterhead.name = "Another";
    const auto refused = session.change([&](db::Book& open) { return open.save(blank); });
    EXPECT_FALSE(refused.has_value());
    EXPECT_EQ(troubles, 2);

    alter(file, "UPDATE shop SET paper = 'letter'");
    EXPECT_EQ(session.shop().letterhead.name, name);
    auto renamed = session.shop();
    renamed.letterhead.name = "Another";
    EXPECT_TRUE(session.change([&](db::Book& open) { return open.save(renamed); }));
    EXPECT_EQ(session.shop().letterhead.name, "Another");
}

} // namespace
