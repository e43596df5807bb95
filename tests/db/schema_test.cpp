// SPDX-License-Identifier: MIT
// Holds the file to the description at the heads of db/migrations/*.sql and to the rules for schemas.
#include "db/book/older_book.h"
#include "db/book/opening.h"
#include "db/migrations/migrations.h"
#include "tests/db/bench_book.h"

#include <sqlite3.h>

#include <set>

namespace {

using namespace sp;

/// A book as a stranger sees it, with the plain library.
class SchemaTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        issued();
        book.reset();
        ASSERT_EQ(sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    }
    void TearDown() override { sqlite3_close(db); }

    std::vector<std::vector<std::string>> ask(const std::string& sql) {
        std::vector<std::vector<std::string>> rows;
        const auto take = [](void* to, int count, char** values, char**) {
            auto& row = static_cast<std::vector<std::vector<std::string>>*>(to)->emplace_back();
            for (int i = 0; i < count; ++i) row.emplace_back(values[i] == nullptr ? "NULL" : values[i]);
            return 0;
        };
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), take, &rows, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        return rows;
    }
    std::string one(const std::string& sql) {
        const auto rows = ask(sql);
        return rows.empty() ? "" : rows[0][0];
    }
    std::vector<std::string> tables() {
        std::vector<std::string> names;
        for (const auto& row : ask("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"))
            names.push_back(row[0]);
        return names;
    }
    static bool endsWith(const std::string& text, std::string_view end) { return text.ends_with(end); }

    sqlite3* db = nullptr;
};

TEST_F(SchemaTest, isMarkedAsAJobBook) {
    EXPECT_EQ(one("PRAGMA application_id"), std::to_string(('S' << 24) | ('P' << 16) | ('J' << 8) | 'B'));
    EXPECT_EQ(one("PRAGMA user_version"), std::to_string(db::migrations::all().size()));
    EXPECT_EQ(one("PRAGMA journal_mode"), "delete");
    EXPECT_EQ(one("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(ask("PRAGMA foreign_key_check").size(), 0U);
}

TEST_F(SchemaTest, hasTheDigestThatOpeningComparesWith) {
    const auto made = db::sqlite::Connection::make({});
    db::bringUpToDate(*made, db::migrations::all());
    EXPECT_EQ(db::schemaDigest(*made), db::migrations::kNewestSchema);
    const auto opened = db::sqlite::Connection::open(file, db::sqlite::Access::Read);
    EXPECT_EQ(db::schemaDigest(*opened), db::migrations::kNewestSchema);
}

TEST_F(SchemaTest, hasNoTriggersViewsOrFloats) {
    EXPECT_EQ(one("SELECT count(*) FROM sqlite_schema WHERE type NOT IN ('table', 'index')"), "0");
    for (const auto& table : tables()) {
        EXPECT_EQ(one("SELECT strict FROM pragma_table_list WHERE name = '" + table + "'"), "1") << table;
        for (const auto& column : ask("SELECT name, type FROM pragma_table_info('" + table + "')"))
            EXPECT_TRUE(column[1] == "INTEGER" || column[1] == "TEXT" || column[1] == "BLOB")
                << table << "." << column[0];
    }
}

// The description names the only columns that may be NULL, and money, lengths, shares and times carry a CHECK.
TEST_F(SchemaTest, hasACheckOnEveryFigureAndNoStrayNull) {
    const std::set<std::string> mayBeNull{"after",
                                          "before",
                                          "blank_size",
                                          "certificate_expires_on",
                                          "certificate_issued_on",
                                          "certificate_number",
                                          "certificate_place",
                                          "art_time_ms",
                                          "choice_taken",
                                          "cost_micros",
                                          "customer_id",
                                          "deleted_at",
                                          "design_id",
                                          "erased_at",
                                          "free_from_micros",
                                          "job_id",
                                          "made_for_id",
                                          "merged_into_id",
                                          "material_id",
                                          "onto_id",
                                          "planned_pieces",
                                          "priced_on",
                                          "part_of",
                                          "job_id",
                                          "reverses",
                                          "revises_id",
                                          "revises_revision",
                                          "set_templates_micros",
                                          "set_work_micros",
                                          "thumbnail_digest",
                                          "until_on",
                                          "usual_base_id",
                                          "usual_tape_id",
                                          "usual_template_id",
                                          "wanted_by",
                                          "with_templates_micros"};
    for (const auto& table : tables()) {
        const auto text = one("SELECT sql FROM sqlite_schema WHERE name = '" + table + "'");
        for (const auto& column : ask("SELECT name, type, \"notnull\" FROM pragma_table_info('" + table + "')")) {
            const auto& name = column[0];
            EXPECT_TRUE(column[2] == "1" || mayBeNull.contains(name)) << table << "." << name << " may be NULL";
            const bool isReference =
                name == "change_seq" || name == "started_seq" || name == "revision" || name == "seq";
            EXPECT_TRUE(column[1] != "INTEGER" || isReference || text.find("CHECK (" + name) != std::string::npos)
                << table << "." << name << " has no CHECK";
        }
    }
}

TEST_F(SchemaTest, describesEveryTable) {
    std::string page;
    for (const auto migration : db::migrations::all()) page += migration.substr(0, migration.find("CREATE TABLE"));
    for (const auto& table : tables()) EXPECT_NE(page.find(table), std::string::npos) << table << " is not described";
}

// What the description says, in the words of SQL.
TEST_F(SchemaTest, holdsWhatTheDescriptionSays) {
    EXPECT_EQ(
        one("SELECT count(*) FROM change WHERE length(entity_id) <> 16 OR at NOT LIKE '____-__-__T__:__:__.___Z'"),
        "0");
    EXPECT_EQ(one("SELECT count(*) FROM (SELECT after, lag(after) OVER (PARTITION BY entity, entity_id "
                  "ORDER BY seq) AS was, before FROM change WHERE entity <> 'stage') WHERE before IS NOT was"),
              "0")
        << "what a thing was is the `after` of its row before";
    EXPECT_EQ(one("SELECT count(*) FROM material m JOIN change c ON c.seq = m.change_seq WHERE c.entity_id <> m.id"),
              "0");
    EXPECT_EQ(one("SELECT count(*) FROM paper p JOIN job j ON j.id = p.job_id WHERE j.number <> p.number"), "0");
    EXPECT_EQ(one("SELECT json_extract(r.json, '$.value.total_micros') = p.total_micros FROM paper p "
                  "JOIN seal s ON s.paper_id = p.id JOIN record r ON r.digest = s.digest"),
              "1");
    EXPECT_EQ(one("SELECT count(*) FROM seal s JOIN record r ON r.digest = s.digest "
                  "JOIN record p ON upper(json_extract(r.json, '$.value.prices')) = hex(p.digest) "
                  "WHERE p.json LIKE '%\"kind\":\"price-list\"%'"),
              "1");
    EXPECT_EQ(one("SELECT count(*) FROM seal s JOIN record r ON r.digest = s.digest "
                  "JOIN record o ON upper(json_extract(r.json, '$.value.order')) = hex(o.digest) "
                  "JOIN revision v ON v.order_digest = o.digest"),
              "1");
    EXPECT_EQ(one("SELECT count(*) FROM record WHERE json LIKE '%Rowan Bakery%' AND length(salt) <> 16"), "0")
        << "what belongs to a person is salted";
}

// The lists that open with the program must not read the whole book.
TEST_F(SchemaTest, findsTheNewestQuotesAndTheLastDraftByAnIndex) {
    for (const auto* sql : {"SELECT j.id FROM job j WHERE j.deleted_at IS NULL ORDER BY j.started_seq DESC LIMIT 50",
                            "SELECT id FROM job WHERE number = '' AND deleted_at IS NULL "
                            "ORDER BY change_seq DESC, id DESC LIMIT 1",
                            "SELECT after FROM change WHERE entity = 'quote' AND entity_id = x'00' ORDER BY seq DESC "
                            "LIMIT 1"}) {
        std::string plan;
        for (const auto& row : ask(std::string("EXPLAIN QUERY PLAN ") + sql)) plan += row[3] + "\n";
        EXPECT_NE(plan.find("INDEX"), std::string::npos) << plan;
        EXPECT_EQ(plan.find("USE TEMP B-TREE"), std::string::npos) << plan;
    }
}

} // namespace
