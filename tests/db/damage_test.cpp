// SPDX-License-Identifier: MIT
// Promises P7 and P8: a damaged file never crashes the program, and damage to what was given is always reported.
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
        materials = book->materials().value();
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
                    "'row_version') OR '" +
                    table + "' = 'material' AND name = 'kind'");
            for (const auto& row : ask("SELECT " + columns.at(0) + " AS r FROM " + table + " ORDER BY r"))
                contents += row + "\n";
        }
        sqlite3_close(db);
        return contents;
    }
    bool isReported() const {
        const auto report = db::Book::check(damaged);
        return !report || !report->damage.empty();
    }

    std::vector<std::string> numbers;
    std::vector<db::Quote> sealed;
    std::vector<catalogue::Material> materials;
    std::string good;
    std::string refusal; ///< the last sentence that reading met
    std::filesystem::path damaged;
};

TEST_F(DamageTest, refusesABookCutOffAnywhere) {
    for (std::size_t length = 0; length < good.size(); length += 512) {
        test::writeBytes(damaged, std::string_view(good).substr(0, length));
        ASSERT_EQ(readAll(), Outcome::Refused) << "cut to " << length << " bytes";
        ASSERT_TRUE(isReported()) << "cut to " << length << " bytes";
    }
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
    for (int i = 0; i < flips; ++i) {
        const auto bit = std::uniform_int_distribution<std::size_t>(0, good.size() * 8 - 1)(random);
        std::string bytes = good;
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
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
    }
    std::cout << flips << " flips: " << refused << " refused at opening, " << partly << " when read, " << reported
              << " by check alone, " << unseen << " that alter nothing\n";
}

} // namespace
