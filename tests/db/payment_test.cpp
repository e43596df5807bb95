// SPDX-License-Identifier: MIT
//
// The ledger of payments. A job comes to 412.50; what is paid is made up.
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"
#include "tests/support/child.h"
#include "tests/support/described.h"
#include "tests/support/seed.h"

#include <sqlite3.h>

#include <map>
#include <random>

namespace {

using namespace sp;
using base::Code;
using catalogue::Payment;
using pricing::Beyond;
using pricing::Tender;
using test::valueOf;
using units::Money;

using sp::support::cents;

class PaymentTest : public test::BookTest {
  protected:
    Payment of(const db::Quote& quote, Money amount) {
        Payment payment;
        payment.job = quote.id;
        payment.amount = amount;
        payment.kind = "Cash";
        payment.paidOn = clock.environment().today();
        payment.note = "at the counter";
        return payment;
    }
    pricing::Account account(const db::Quote& quote) { return valueOf(book->account(quote.id)); }
    void setCoin(Money coin) {
        auto shop = valueOf(book->shop());
        shop.smallestCoin = coin;
        ASSERT_TRUE(book->save(shop));
    }
    /// The ledger of a quote in cents, each row with the letter of its role, "-" before one that takes back.
    std::string ledger(const db::Quote& quote) {
        std::string text;
        for (const auto& row : valueOf(book->payments(quote.id)))
            text += (text.empty() ? "" : " ") + std::string(row.reverses ? "-" : "") +
                    "mcr"[static_cast<int>(row.role)] + std::to_string(row.amount.micros() / 10'000);
        return text;
    }
};

TEST_F(PaymentTest, areKeptInTheOrderTheyWereMadeIn) {
    stock();
    const auto quote = issued();
    ASSERT_TRUE(book->pay(of(quote, cents(20'000)), Beyond::Refused));
    ASSERT_TRUE(book->pay(of(quote, -cents(1'000)), Beyond::Refused));
    reopen();
    const auto payments = valueOf(book->payments(quote.id));
    ASSERT_EQ(payments.size(), 2U);
    EXPECT_EQ(payments[0].amount, cents(20'000));
    EXPECT_EQ(payments[0].note, "at the counter");
    EXPECT_EQ(payments[1].amount, -cents(1'000));
    EXPECT_EQ(account(quote).paid, cents(19'000));
    EXPECT_EQ(account(quote).left, cents(22'250));
    EXPECT_EQ(book->quotes({}, 1)->at(0).paid, cents(19'000));
    expectSound();
}

TEST_F(PaymentTest, areFoundByWhatIsNotedAndByTheSum) {
    stock();
    const auto quote = issued(); // 412.50
    draft();
    auto paid = of(quote, cents(20'000));
    paid.kind = "Transfer";
    paid.note = "brought by her Étienne";
    ASSERT_TRUE(book->pay(paid, Beyond::Refused));
    for (const auto* text : {"étienne", "transf", "412.50", "412,5", "200", "212.50"}) {
        const auto found = valueOf(book->quotes(text, 10));
        ASSERT_EQ(found.size(), 1U) << text;
        EXPECT_EQ(found[0].id, quote.id) << text;
    }
    for (const auto* text : {"412.51", "2026-9999", "41250"})
        EXPECT_TRUE(valueOf(book->quotes(text, 10)).empty()) << text;
}

TEST_F(PaymentTest, areRefusedWhereTheyCannotBe) {
    stock();
    EXPECT_EQ(book->pay(of(draft(), cents(1)), Beyond::Refused).error().code, Code::Invalid) << "a draft";
    const auto quote = issued();
    EXPECT_EQ(book->pay(of(quote, {}), Beyond::Refused).error().code, Code::Invalid);
    EXPECT_EQ(book->pay(of(quote, cents(41'251)), Beyond::Refused).error().code, Code::Invalid);
    EXPECT_EQ(book->pay(of(quote, -cents(1)), Beyond::Refused).error().code, Code::Invalid);
    auto later = of(quote, cents(1));
    later.paidOn = later.paidOn.plusDays(1);
    EXPECT_EQ(book->pay(later, Beyond::Refused).error().code, Code::Invalid);
    auto nameless = of(quote, cents(1));
    nameless.kind.clear();
    EXPECT_EQ(book->pay(nameless, Beyond::Refused).error().code, Code::Invalid);
    EXPECT_EQ(book->pay(of({}, cents(1)), Beyond::Refused).error().code, Code::NotFound);
    EXPECT_TRUE(valueOf(book->payments(quote.id)).empty());
    expectSound();
}

TEST_F(PaymentTest, aMistakeIsTakenBackByAnother) {
    stock();
    const auto quote = issued();
    const auto first = valueOf(book->pay(of(quote, cents(20'000)), Beyond::Refused));
    ASSERT_TRUE(book->takeBackPayment(first));
    const auto payments = valueOf(book->payments(quote.id));
    ASSERT_EQ(payments.size(), 2U) << "nothing is taken out of a ledger";
    EXPECT_EQ(payments[1].reverses, first);
    EXPECT_EQ(payments[1].amount, -cents(20'000));
    EXPECT_EQ(account(quote).paid, Money{});
    EXPECT_EQ(book->takeBackPayment(first).error().code, Code::Conflict) << "once is enough";
    EXPECT_EQ(book->takeBackPayment(payments[1].id).error().code, Code::Conflict);
    EXPECT_EQ(book->takeBackPayment({}).error().code, Code::NotFound);
    const auto second = valueOf(book->pay(of(quote, cents(100)), Beyond::Refused));
    ASSERT_TRUE(book->pay(of(quote, -cents(60)), Beyond::Refused));
    EXPECT_EQ(book->takeBackPayment(second).error().code, Code::Conflict) << "a part of it was given back";
    expectSound();
}

TEST_F(PaymentTest, undoAndRedoAreMovementsToo) {
    stock();
    const auto quote = issued();
    ASSERT_TRUE(book->pay(of(quote, cents(20'000)), Beyond::Refused));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(account(quote).paid, Money{});
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(account(quote).paid, cents(20'000));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(account(quote).paid, Money{});
    EXPECT_EQ(valueOf(book->payments(quote.id)).size(), 4U);
    expectSound();
}

TEST_F(PaymentTest, undoneAndDoneAgainCountsOnItsDay) {
    stock();
    const auto quote = issued();
    const auto onDays = [&] {
        std::map<std::string, Money> days;
        for (const auto& row : valueOf(book->payments(quote.id))) days[row.paidOn.iso()] += row.amount;
        std::erase_if(days, [](const auto& day) { return day.second.isZero(); });
        return days;
    };
    auto earlier = of(quote, cents(20'000));
    earlier.paidOn = earlier.paidOn.plusDays(-40); // in another month
    const std::map<std::string, Money> once{{earlier.paidOn.iso(), cents(20'000)}};
    const auto paid = valueOf(book->pay(earlier, Beyond::Refused));
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(onDays().empty());
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(onDays(), once);
    const auto rows = valueOf(book->payments(quote.id));
    EXPECT_NE(rows.back().id, paid);
    ASSERT_TRUE(book->takeBackPayment(rows.back().id)); // a slip, today
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(onDays(), once) << "nothing moved today";
    expectSound();
}

TEST_F(PaymentTest, cashIsRoundedToTheSmallestCoin) {
    stock();
    const auto quote = issued(); // 412.50
    setCoin(Money::fromMicros(1'000'000));
    EXPECT_EQ(account(quote).coin, Money::fromMicros(1'000'000));
    EXPECT_EQ(book->pay(of(quote, cents(1'050)), Beyond::Refused, Tender::Cash).error().code, Code::Invalid);
    ASSERT_TRUE(book->pay(of(quote, cents(1'050)), Beyond::Refused)) << "by card";
    const auto rest = valueOf(book->pay(of(quote, account(quote).next(Tender::Cash)), Beyond::Refused, Tender::Cash));
    EXPECT_EQ(ledger(quote), "m1050 m40200");
    ASSERT_TRUE(book->takeBackPayment(rest));
    ASSERT_TRUE(book->takeBackPayment(valueOf(book->payments(quote.id)).front().id));
    ASSERT_TRUE(book->pay(of(quote, cents(41'250)), Beyond::Refused, Tender::Cash)); // half a coin is rounded up
    EXPECT_EQ(ledger(quote), "m1050 m40200 -m-40200 -m-1050 m41300 r-50");
    EXPECT_EQ(account(quote).left, Money{});
    EXPECT_EQ(account(quote).credit, Money{});
    EXPECT_EQ(account(quote).money(), cents(41'300)) << "what is in the drawer";
    EXPECT_EQ(book->quotes({}, 1)->at(0).paid, cents(41'250)) << "it is paid to the last part";
    reopen();
    EXPECT_EQ(account(quote).rounded, -cents(50));
    expectSound();
}

TEST_F(PaymentTest, changeAndRoundingGoWithTheirMoney) {
    stock();
    const auto quote = issued();
    setCoin(Money::fromMicros(1'000'000));
    auto note = of(quote, cents(50'000));
    ASSERT_TRUE(book->pay(note, Beyond::Change, Tender::Cash));
    EXPECT_EQ(ledger(quote), "m50000 c-8700 r-50");
    EXPECT_EQ(account(quote).left, Money{});
    // Undone and done again, it can be taken back like any other, by any of its rows.
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(account(quote).paid, Money{});
    EXPECT_EQ(account(quote).rounded, Money{});
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(account(quote).left, Money{});
    auto rows = valueOf(book->payments(quote.id));
    ASSERT_EQ(rows.size(), 9U);
    EXPECT_EQ(rows[6].role, catalogue::PaymentRole::Money);
    EXPECT_EQ(rows[7].partOf, rows[6].id);
    EXPECT_EQ(rows[8].partOf, rows[6].id);
    EXPECT_EQ(book->takeBackPayment(rows[1].id).error().code, Code::Conflict) << "undone before";
    ASSERT_TRUE(book->takeBackPayment(rows[8].id)) << "its rounding stands for all of it";
    EXPECT_EQ(account(quote).paid, Money{});
    EXPECT_EQ(book->takeBackPayment(rows[6].id).error().code, Code::Conflict);
    ASSERT_TRUE(book->undo()) << "taken back by mistake";
    EXPECT_EQ(account(quote).left, Money{});
    rows = valueOf(book->payments(quote.id));
    ASSERT_EQ(rows.size(), 15U);
    EXPECT_EQ(rows[12].role, catalogue::PaymentRole::Money);
    EXPECT_EQ(rows[13].partOf, rows[12].id);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(account(quote).paid, Money{});
    expectSound();
}

TEST_F(PaymentTest, aQuoteInAnotherCurrencyHasNoCoinOfThisOne) {
    stock();
    const auto quote = issued();
    auto shop = valueOf(book->shop());
    shop.currency = *units::Currency::parse("SEK");
    shop.smallestCoin = Money::fromMicros(1'000'000);
    ASSERT_TRUE(book->save(shop));
    EXPECT_EQ(account(quote).coin, Money{});
    shop.currency = *units::Currency::parse("JPY");
    shop.smallestCoin = Money::fromMicros(500'000);
    EXPECT_EQ(book->save(shop).error().fault, idOf(catalogue::fields::Fault::NotWholeMinor)) << "half a yen";
}

// Two windows on one job: the second is told, changes nothing and sees what the first does.
TEST_F(PaymentTest, ofASecondWindowAreRefusedAndNothingIsLost) {
    stock();
    const auto quote = issued();
    ASSERT_TRUE(book->pay(of(quote, cents(10'000)), Beyond::Refused));
    {
        test::Child second({BOOK_CHILD, "meet", file.string()});
        const auto why = second.line();
        EXPECT_TRUE(why.starts_with("HeldBy")) << why;
        EXPECT_EQ(second.line(), "100000000") << "what the first took";
        EXPECT_EQ(second.line(), why) << "its payment is refused, and why";
        EXPECT_EQ(second.line(), why) << "and its stage";
        ASSERT_TRUE(book->pay(of(quote, cents(5'000)), Beyond::Refused)) << "the first is not held up";
        EXPECT_EQ(second.finish(), std::vector<std::string>{"150000000"}) << "the second reads it anew";
    }
    EXPECT_EQ(ledger(quote), "m10000 m5000");
    book.reset();
    test::Child first({BOOK_CHILD, "meet", file.string()});
    EXPECT_EQ(first.line(), "held");
    EXPECT_EQ(first.line(), "150000000");
    EXPECT_EQ(first.line(), "done");
    EXPECT_EQ(first.line(), "done");
    book = valueOf(db::Book::open(file, clock.environment()));
    EXPECT_TRUE(test::described(book->readOnlyBecause()).starts_with("HeldBy"));
    EXPECT_EQ(book->pay(of(quote, cents(100)), Beyond::Refused).error(), *book->readOnlyBecause());
    EXPECT_EQ(account(quote).paid, cents(15'100)) << "what the other took is seen all the same";
    EXPECT_EQ(first.finish(), std::vector<std::string>{"151000000"});
    reopen();
    ASSERT_TRUE(book->pay(of(quote, cents(100)), Beyond::Refused)) << "now it is the only one";
    EXPECT_EQ(ledger(quote), "m10000 m5000 m100 m100");
    EXPECT_EQ(valueOf(book->quote(quote.id)).stage, db::Stage::Agreed);
    expectSound();
}

TEST_F(PaymentTest, areMissedAndSeenWhenAltered) {
    stock();
    const auto quote = issued();
    ASSERT_TRUE(book->pay(of(quote, cents(20'000)), Beyond::Refused));
    book.reset();
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(db, "UPDATE payment SET amount_micros = 1", nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    EXPECT_FALSE(valueOf(db::Book::check(file)).damage.empty());
}

// A season of payments, given back, taken back, undone: what the lists say is the sum of the ledger.
TEST_F(PaymentTest, theListsSayTheSumOfTheLedger) {
    stock();
    std::vector<db::Quote> quotes;
    for (int i = 0; i < 5; ++i) quotes.push_back(issued());
    std::mt19937_64 random(test::printedSeed());
    std::map<base::Id, Money> expected;
    std::vector<Payment> made;
    for (int step = 0; step < 200; ++step) {
        const auto& quote = quotes[random() % quotes.size()];
        switch (random() % 6) {
        case 0: {
            if (made.empty()) break;
            const auto& mistake = made[random() % made.size()];
            if (book->takeBackPayment(mistake.id)) expected[mistake.job] += -mistake.amount;
            break;
        }
        case 1: {
            const auto back = of(quote, -cents(static_cast<std::int64_t>(random() % 5'000) + 1));
            if (book->pay(back, Beyond::Refused)) expected[quote.id] += back.amount;
            break;
        }
        default: {
            auto payment = of(quote, cents(static_cast<std::int64_t>(random() % 10'000) + 1));
            const auto id = book->pay(payment, random() % 8 == 0 ? Beyond::Kept : Beyond::Refused);
            if (!id) break;
            payment.id = *id;
            made.push_back(payment);
            expected[quote.id] += payment.amount;
            if (random() % 5 == 0) {
                ASSERT_TRUE(book->undo());
                expected[quote.id] += -payment.amount;
                made.pop_back();
            }
        }
        }
        if (step % 50 == 0) reopen();
    }
    for (const auto& listed : valueOf(book->quotes({}, 100))) {
        EXPECT_EQ(listed.paid, expected[listed.id]);
        Money sum;
        for (const auto& payment : valueOf(book->payments(listed.id))) sum += payment.amount;
        EXPECT_EQ(listed.paid, sum);
        EXPECT_FALSE(sum.isNegative());
    }
    expectSound();
}

} // namespace
