// SPDX-License-Identifier: MIT
// Books of version 1 exist. This one was written by the program of that time (tests/data/books/version_1.sql) and must
// come through with nothing lost.
#include "core/pricing/price_order.h"
#include "tests/db/bench_book.h"
#include "tests/support/test_data.h"

#include <sqlite3.h>

namespace {

using namespace sp;
using base::Code;
using units::Money;

class VersionOneTest : public testing::Test {
  protected:
    void SetUp() override {
        write(test::bytesOf(test::dataFile("books/version_1.sql")));
        write("PRAGMA application_id = 1397770818; PRAGMA user_version = 1");
    }
    void write(const std::string& sql) {
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
    }
    /// Every row of every table that version 1 has, in the order of its keys, as SQLite writes it.
    std::vector<std::string> rowsOf(const std::filesystem::path& book) {
        sqlite3* db = nullptr;
        EXPECT_EQ(sqlite3_open_v2(book.c_str(), &db, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
        std::vector<std::string> rows;
        const auto take = [](void* to, int count, char** values, char**) {
            auto& row = static_cast<std::vector<std::string>*>(to)->emplace_back();
            for (int i = 0; i < count; ++i) row += values[i] == nullptr ? "|NULL" : std::string("|") + values[i];
            return 0;
        };
        for (const std::string table :
             {"change",          "material",         "blank_size",      "shop",       "mark_up_step", "rush_step",
              "ladder_quantity", "shop_packing",     "bench",           "bench_step", "supplier",     "pack",
              "pack_price",      "design",           "design_stone",    "customer",   "stock_move",   "quote",
              "quote_line",      "quote_line_stone", "quote_line_size", "counter",    "sealed_part",  "sealed"}) {
            std::vector<std::string> columns;
            const std::string ask = "SELECT 'quote(' || name || ')' FROM pragma_table_info('" + table + "')";
            EXPECT_EQ(sqlite3_exec(db, ask.c_str(), take, &columns, nullptr), SQLITE_OK);
            std::string list;
            for (const auto& column : columns) list += (list.empty() ? "" : " || ',' || ") + column.substr(1);
            rows.push_back(table);
            EXPECT_EQ(sqlite3_exec(db, ("SELECT " + list + " AS r FROM " + table + " ORDER BY r").c_str(), take, &rows,
                                   nullptr),
                      SQLITE_OK)
                << sqlite3_errmsg(db);
        }
        sqlite3_close(db);
        return rows;
    }
    void expectQuoteKept(db::Book& book, const char* number, std::int64_t micros) {
        const auto quote = book.quoteNumbered(number);
        ASSERT_TRUE(quote) << quote.error().detail;
        EXPECT_EQ(quote->sealedTotal, Money::fromMicros(micros));
        layout::FitMemo fits;
        const auto again = pricing::priceOrder(quote->order, quote->frozen.value(), fits);
        ASSERT_TRUE(again) << again.error().detail;
        EXPECT_EQ(again->total, Money::fromMicros(micros));
        // The control: its supplies cost twice as much since.
        const auto today = pricing::priceOrder(quote->order, book.priceBook(quote->order.customer).value(), fits);
        ASSERT_TRUE(today) << today.error().detail;
        EXPECT_GT(today->total, again->total);
    }

    test::TempFolder folder;
    std::filesystem::path file = folder / "Old Bench.jobbook";
    std::filesystem::path backup = folder / "Old Bench before version 2.jobbook";
    test::HeldClock clock;
};

TEST_F(VersionOneTest, isBackedUpAndBroughtUpToDateWithNothingLost) {
    const auto before = rowsOf(file);
    ASSERT_GT(before.size(), 300U);
    {
        auto book = db::Book::open(file, clock.surroundings());
        ASSERT_TRUE(book) << book.error().detail;
        EXPECT_EQ((*book)->readOnlyBecause(), "");
        // What the program of version 1 said when it gave them.
        expectQuoteKept(**book, "2026-0001", 1'551'250'000);
        expectQuoteKept(**book, "2026-0002", 316'600'000);
        EXPECT_EQ((*book)->quotes("", 10)->size(), 3U);
        EXPECT_TRUE((*book)->lastDraft()->has_value());
        EXPECT_EQ((*book)->kits()->size(), 0U);
    }
    EXPECT_EQ(rowsOf(file), before);
    EXPECT_EQ(rowsOf(backup), before);
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report) << report.error().detail;
    EXPECT_EQ(report->damage, std::vector<std::string>{});
    EXPECT_EQ(report->sealedQuotes, 2);
}

TEST_F(VersionOneTest, takesWhatIsNew) {
    auto book = db::Book::open(file, clock.surroundings()).value();
    const auto supplier = book->suppliers()->at(0).id;
    const auto design = book->designs()->at(0);
    ASSERT_TRUE(book->save(test::sampleKit(design.stones[0].material, supplier, design.id)));
    ASSERT_TRUE(book->save(test::sampleArtwork(design.id)));
    ASSERT_TRUE(book->save(test::samplePriceListColumns(supplier)));
    ASSERT_TRUE(book->save(catalogue::ColourMaterial{{}, 1, "SS10", design.stones[0].material}));
    EXPECT_EQ(db::Book::check(file)->damage, std::vector<std::string>{});
    for (int step = 0; step < 4; ++step) ASSERT_TRUE(book->undo());
    EXPECT_EQ(db::Book::check(file)->damage, std::vector<std::string>{});
}

TEST_F(VersionOneTest, isLeftAloneWhenItsReferencesAreBroken) {
    write("DELETE FROM supplier WHERE name = 'Millrace Blanks'");
    const auto before = test::bytesOf(file);
    const auto opened = db::Book::open(file, clock.surroundings());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, Code::Damaged);
    EXPECT_EQ(test::bytesOf(file), before);
}

TEST_F(VersionOneTest, isCheckedOnlyOnceItIsUpToDate) {
    const auto checked = db::Book::check(file);
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error().code, Code::ReadOnly);
    EXPECT_EQ(checked.error().detail,
              "“Old Bench.jobbook” was written by an earlier Stonepenny and has to be opened once where it can be "
              "written, to be brought up to date; close it elsewhere or move it to a folder of your own.");
}

} // namespace
