// SPDX-License-Identifier: MIT
//
// The laws of money and papers over a shop at work, made up from a seed: checked after every hundredth thing that
// happens, and after the program was killed at any instant. They are those of bookkeeping (double entry, an unbroken
// series of numbers) and of the book's own promises; no figure here is the book's word against itself alone: what was
// received and what was printed is counted along by the test.
#include "app/demo/demo_book.h"
#include "core/pricing/bill.h"
#include "tests/db/bench_book.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"
#include "tests/support/shop_year.h"

#include <sqlite3.h>

#include <cctype>
#include <map>
#include <set>

namespace {

using namespace sp;
using catalogue::PaperKind;
using test::Child;
using test::Happened;
using test::saidOf;
using test::valueOf;
using units::Money;

constexpr int kChecked = 100; ///< things that happen between two checks

/// What was counted along, apart from the book.
struct Tally {
    std::map<base::Id, Money> money;   ///< received less given back, by job
    std::map<base::Id, Money> rounded; ///< what cash could not be paid to, by job
    std::map<std::string, quoting::SheetContent> papers;

    void add(db::Book& book, const Happened& happened) {
        if (happened.job) money[*happened.job] += happened.money;
        if (happened.job) rounded[*happened.job] += happened.rounded;
        for (const auto& number : happened.papers)
            if (std::isalpha(static_cast<unsigned char>(number.front())) != 0) {
                // What a paper says was paid is what was counted, at the time.
                EXPECT_EQ(valueOf(book.billNumbered(number)).result.paid, money[*happened.job] + rounded[*happened.job])
                    << number;
            }
        for (auto& [number, sheet] : test::sheetsOf(book, happened.papers)) {
            EXPECT_FALSE(papers.contains(number)) << number << " was given twice";
            papers.emplace(number, std::move(sheet));
        }
    }
};

class ShopLaws : public test::BookTest {
  protected:
    void SetUp() override {
        auto made = demo::createDemoBook(file, clock.environment());
        ASSERT_TRUE(made) << describe(made.error());
        book = std::move(*made);
        auto shop = valueOf(book->shop());
        shop.smallestCoin = Money::fromMicros(50'000);
        ASSERT_TRUE(book->save(shop));
    }
    std::vector<base::Id> jobs() {
        std::vector<base::Id> given;
        for (const auto& job : valueOf(book->quotes({}, 1'000'000)))
            if (!job.number.empty()) given.push_back(job.id);
        return given;
    }

    /// Money is taken back with its change and rounding, or not at all.
    static void expectWhole(const std::vector<catalogue::Payment>& rows) {
        const auto isTakenBack = [&](const base::Id& id) {
            return std::ranges::any_of(rows, [&](const catalogue::Payment& row) { return row.reverses == id; });
        };
        for (const auto& row : rows)
            if (row.partOf && !row.reverses) { EXPECT_EQ(isTakenBack(row.id), isTakenBack(*row.partOf)); }
    }

    /// Money and papers of one job, and what they say of each other.
    void expectJob(const base::Id& job, std::map<std::string, std::set<int>>& numbers, pricing::TaxReport& taxes) {
        Money ledger;
        std::map<base::Id, catalogue::Payment> payments;
        const auto rows = valueOf(book->payments(job));
        for (const auto& payment : rows) {
            EXPECT_FALSE(payment.amount.isZero());
            ledger += payment.amount;
            payments[payment.id] = payment;
            if (payment.reverses) {
                EXPECT_EQ(payments.at(*payment.reverses).amount, -payment.amount);
                EXPECT_EQ(payments.at(*payment.reverses).role, payment.role);
            }
            if (payment.partOf) { EXPECT_EQ(payments.at(*payment.partOf).kind, payment.kind) << "made with its money"; }
        }
        expectWhole(rows);
        const auto account = valueOf(book->account(job));
        EXPECT_EQ(account.paid, ledger);
        EXPECT_EQ(account.paid + account.left - account.credit, account.total);
        Money invoiced;
        bool hasInvoice = false;
        for (const auto& bill : valueOf(book->billing(job)).bills) {
            numbers[bill.number.substr(0, 7)].insert(std::stoi(bill.number.substr(7)));
            Money parts;
            for (const auto& part : bill.result.parts) parts += part.whole();
            switch (bill.kind) {
            case PaperKind::Invoice:
                hasInvoice = true;
                invoiced += bill.total;
                EXPECT_EQ(parts, bill.total) << bill.number;
                taxes.addInvoice(bill.result.parts, false);
                break;
            case PaperKind::Credit:
                invoiced += bill.total;
                EXPECT_EQ(parts, -bill.total) << bill.number;
                taxes.addCreditNote(bill.result.parts, false);
                break;
            case PaperKind::Receipt:
                ASSERT_TRUE(bill.result.payment);
                EXPECT_EQ(pricing::receivedOf(payments.at(*bill.result.payment), rows), bill.total) << bill.number;
                break;
            case PaperKind::Quote: break;
            }
            EXPECT_EQ(bill.result.sheet.toPay.value.micros() < 0, false) << bill.number;
        }
        // What the job comes to is what its invoices less its credit notes say, unless more was agreed to since.
        if (hasInvoice) { EXPECT_GE(account.total, invoiced); }
    }

    void expectLaws(const Tally& tally) {
        std::map<std::string, std::set<int>> numbers;
        pricing::TaxReport taxes;
        Money ledger;
        for (const auto& job : jobs()) {
            ASSERT_NO_FATAL_FAILURE(expectJob(job, numbers, taxes));
            for (const auto& given : valueOf(book->givenOf(job)))
                if (given.revision == 1) numbers[given.number.substr(0, 5)].insert(std::stoi(given.number.substr(5)));
            const auto account = valueOf(book->account(job));
            ledger += account.money();
            const auto counted = [&](const std::map<base::Id, Money>& sums) {
                const auto sum = sums.find(job);
                return sum == sums.end() ? Money{} : sum->second;
            };
            EXPECT_EQ(account.money(), counted(tally.money));
            EXPECT_EQ(account.rounded, counted(tally.rounded));
        }
        for (const auto& [series, taken] : numbers)
            EXPECT_EQ(static_cast<int>(taken.size()), *taken.rbegin()) << series << ": none twice, none missing";
        Money counted;
        for (const auto& [job, money] : tally.money) counted += money;
        EXPECT_EQ(ledger, counted);
        std::vector<std::string> all;
        for (const auto& [number, sheet] : tally.papers) all.push_back(number);
        for (const auto& [number, sheet] : test::sheetsOf(*book, all)) {
            const auto& printed = tally.papers.at(number);
            EXPECT_EQ(saidOf(sheet), saidOf(printed)) << number << " prints as it was";
            if (!sheet.customer.isErased) { EXPECT_EQ(sheet.customer, printed.customer) << number; }
        }
        const auto report = valueOf(
            book->taxReport(units::Date::parse("2000-01-01").value(), units::Date::parse("2100-01-01").value()));
        EXPECT_EQ(report.tax(), taxes.tax()) << "the tax on the invoices";
        EXPECT_EQ(report.total(), taxes.total());
        expectStagesLogged();
        expectSound(); // every seal, every value; every thing is what the log says it became last
    }

    /// Counts along what a child said before it was killed. What it did last may be on disk though nobody heard of it:
    /// that much is taken from the book.
    void countAlong(const std::vector<std::string>& said, Tally& tally) {
        for (const auto& line : said) {
            ASSERT_FALSE(line.starts_with("!")) << line;
            if (line.starts_with("money ")) {
                const auto job = base::Id::parse(line.substr(6, 36));
                ASSERT_TRUE(job) << line;
                std::size_t end = 0;
                tally.money[*job] += Money::fromMicros(std::stoll(line.substr(43), &end));
                tally.rounded[*job] += Money::fromMicros(std::stoll(line.substr(43 + end)));
            }
            if (!line.starts_with("paper ")) continue;
            ASSERT_NO_THROW({
                for (auto& [number, sheet] : test::sheetsOf(*book, {line.substr(6)}))
                    EXPECT_TRUE(tally.papers.emplace(number, std::move(sheet)).second) << number << " was given twice";
            }) << line;
        }
        int unheard = 0;
        for (const auto& job : jobs()) {
            const auto account = valueOf(book->account(job));
            if (account.money() == tally.money[job] && account.rounded == tally.rounded[job]) continue;
            ++unheard;
            tally.money[job] = account.money();
            tally.rounded[job] = account.rounded;
        }
        EXPECT_LE(unheard, 1) << "a program does one thing at a time";
    }

    /// What a query of one column gives, asked beside the book.
    std::vector<std::string> column(const std::string& sql) {
        sqlite3* raw = nullptr;
        EXPECT_EQ(sqlite3_open_v2(file.c_str(), &raw, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
        std::vector<std::string> values;
        sqlite3_stmt* statement = nullptr;
        EXPECT_EQ(sqlite3_prepare_v2(raw, sql.c_str(), -1, &statement, nullptr), SQLITE_OK) << sqlite3_errmsg(raw);
        while (sqlite3_step(statement) == SQLITE_ROW) {
            const auto* text = sqlite3_column_text(statement, 0);
            values.emplace_back(text == nullptr ? "" : static_cast<const char*>(static_cast<const void*>(text)));
        }
        sqlite3_finalize(statement);
        sqlite3_close(raw);
        return values;
    }
    /// A job that went beyond Quoted has a change of its stage in the log; that it is the one it became last is told by
    /// expectSound.
    void expectStagesLogged() {
        EXPECT_EQ(column("SELECT hex(j.id) FROM job j WHERE j.number <> '' AND j.stage <> 'quoted' AND NOT EXISTS "
                         "(SELECT 1 FROM change c WHERE c.entity = 'stage' AND c.entity_id = j.id)"),
                  std::vector<std::string>{});
    }
    /// Everything that an undone action must leave as it was: all but the log and what counts its rows. A payment that
    /// is undone is a movement back, so money is compared by its sums.
    std::vector<std::string> state() {
        std::vector<std::string> all;
        for (const auto* sql :
             {"SELECT hex(id) || number || stage || coalesce(hex(customer_id), '') || quoted_on || "
              "coalesce(wanted_by, '') || revision || coalesce(deleted_at, '') FROM job ORDER BY id",
              "SELECT hex(job_id) || number || hex(order_digest) || coalesce(choice_taken, '') FROM revision "
              "ORDER BY job_id, number",
              "SELECT hex(job_id) || revision || choice || line || place || title || quantity FROM job_line "
              "ORDER BY job_id, revision, choice, line, place",
              "SELECT hex(id) || number || total_micros FROM paper ORDER BY id",
              "SELECT hex(job_id) || (role = 'rounding') || sum(amount_micros) FROM payment "
              "GROUP BY job_id, role = 'rounding' HAVING sum(amount_micros) <> 0 ORDER BY job_id, role = 'rounding'",
              "SELECT hex(id) || name || telephone || mail FROM customer WHERE deleted_at IS NULL ORDER BY id",
              "SELECT name || year || last_number FROM series ORDER BY name, year"})
            for (auto& row : column(sql)) all.push_back(std::move(row));
        return all;
    }
};

TEST_F(ShopLaws, holdAfterEveryHundredthThingThatHappens) {
    const auto seed = test::printedSeed();
    test::ShopYear year(*book, clock, seed);
    year.open(8);
    Tally tally;
    std::mt19937_64 random(seed);
    const int acts = test::roundsOr("STONEPENNY_ACTS", 100);
    int done = 0;
    int refused = 0;
    int undone = 0;
    int redone = 0;
    for (int i = 1; i <= acts; ++i) {
        const bool triesUndo = random() % 12 == 0;
        const auto before = triesUndo ? state() : std::vector<std::string>();
        Happened happened;
        switch (triesUndo ? random() % 5 : 5) {
        case 0: happened = year.move(); break;
        case 1: happened = year.pay(); break;
        case 2: happened = year.giveBack(); break;
        case 3: happened = year.rename(); break;
        case 4: happened = year.takeBack(); break;
        default: happened = year.act(); break;
        }
        ++(happened.isRefused ? refused : done);
        if (triesUndo && happened.isRefused) { EXPECT_EQ(state(), before) << "refused: " << happened.what; }
        if (triesUndo && !happened.isRefused) {
            const auto after = state();
            ASSERT_TRUE(book->undo()) << happened.what;
            EXPECT_EQ(state(), before) << "undone: " << happened.what;
            ++undone;
            if (random() % 2 == 0) {
                ASSERT_TRUE(book->redo()) << happened.what;
                EXPECT_EQ(state(), after) << "done again: " << happened.what;
                ++redone;
                ASSERT_NO_FATAL_FAILURE(tally.add(*book, happened));
            }
        } else {
            ASSERT_NO_FATAL_FAILURE(tally.add(*book, happened));
        }
        if (i % kChecked == 0) {
            ASSERT_NO_FATAL_FAILURE(expectLaws(tally)) << "after " << i;
            if (HasFailure()) FAIL() << "after " << i << ", " << happened.what;
        }
    }
    std::cout << done << " things done, " << refused << " refused, " << undone << " undone, " << redone
              << " of them done again, " << tally.papers.size() << " papers\n";
}

/// What was acknowledged is there, and the laws hold, whenever the program was killed.
TEST_F(ShopLaws, holdAfterAKillAtAnyInstant) {
    {
        test::ShopYear year(*book, clock, 1);
        year.open(6);
        for (int i = 0; i < 12; ++i) year.act();
    }
    book.reset();
    const auto seed = test::printedSeed();
    std::mt19937_64 random(seed);
    const int cycles = test::roundsOr("STONEPENNY_YEAR_KILLS", 2);
    reopen();
    Tally tally;
    for (const auto& job : jobs()) {
        const auto account = valueOf(book->account(job));
        tally.money[job] = account.money();
        tally.rounded[job] = account.rounded;
    }
    book.reset();
    std::size_t acknowledged = 0;
    for (int cycle = 0; cycle < cycles; ++cycle) {
        std::vector<std::string> said;
        {
            Child child({YEAR_CHILD, file.string(), std::to_string(random())});
            said.push_back(child.line());
            ASSERT_FALSE(said.front().empty());
            for (auto& line :
                 child.killAfter(std::chrono::microseconds(std::uniform_int_distribution<int>(200, 900'000)(random))))
                said.push_back(std::move(line));
        }
        acknowledged += said.size();
        reopen();
        ASSERT_NO_FATAL_FAILURE(countAlong(said, tally)) << "cycle " << cycle;
        ASSERT_NO_FATAL_FAILURE(expectLaws(tally)) << "cycle " << cycle;
        book.reset();
        if (HasFailure()) FAIL() << "cycle " << cycle;
    }
    std::cout << cycles << " kills, " << acknowledged << " things acknowledged\n";
}

} // namespace
