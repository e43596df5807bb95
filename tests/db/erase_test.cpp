// SPDX-License-Identifier: MIT
// A person is taken out of the book: what stays, what is gone, and when it is refused.
#include "tests/db/erase_bench.h"
#include "tests/db/kept_book.h"
#include "tests/support/seed.h"

#include <algorithm>
#include <random>

namespace {

using namespace sp;
using base::Code;
using db::Stage;
using test::addSeals;
using test::bytesIn;
using test::EraseTest;
using test::isAnywhereIn;
using test::Stays;
using test::staysOf;
using test::valueOf;
using test::whyNot;
using units::Money;

TEST_F(EraseTest, takesThePersonOutAndLeavesSumsAndSeals) {
    stock();
    const auto one = person("Quillfeather");
    const auto other = person("Marrowgate");
    auto renamed = *valueOf(book->customer(one));
    renamed.telephone = "Quillfeather 2";
    ASSERT_TRUE(book->save(renamed)); // the log holds what it was before
    const auto quote = done(one);
    const auto kept = done(other);
    const auto before = stays();
    ASSERT_TRUE(isAnywhereIn(folder.path(), "Quillfeather"));
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    EXPECT_EQ(stays(), before);
    expectErased("Quillfeather");
    reopen();
    EXPECT_EQ(stays(), before);
    expectErased("Quillfeather");
    expectSound();
    const auto read = valueOf(book->quote(quote.id));
    EXPECT_FALSE(read.frozen->customer);
    EXPECT_EQ(read.result->sheet.customer, test::erasedCustomer());
    for (const auto& bill : valueOf(book->billing(quote.id)).bills)
        EXPECT_EQ(bill.result.sheet.customer, test::erasedCustomer()) << bill.number;
    EXPECT_EQ(valueOf(book->quote(kept.id)).result->sheet.customer.name, "Ottoline Marrowgate");
    EXPECT_EQ(valueOf(book->customer(one)), std::nullopt);
    EXPECT_TRUE(valueOf(book->quotes("Quillfeather", 10)).empty());
    EXPECT_EQ(valueOf(book->quotes(quote.number, 10)).front().customer, "\u2014");
    EXPECT_EQ(faultOf(book->eraseCustomer(one)), idOf(db::Fault::CustomerGone));
}

TEST_F(EraseTest, takesMergedAndRemovedEntriesOutToo) {
    stock();
    const auto one = person("Quillfeather");
    const auto twin = person("Pennythorpe");
    const auto gone = person("Sallowby");
    done(twin);
    ASSERT_TRUE(book->mergeCustomers(twin, one));
    ASSERT_TRUE(book->removeCustomer(gone));
    const auto removed = valueOf(book->removedCustomers());
    ASSERT_EQ(removed.size(), 1U);
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    expectErased("Quillfeather");
    expectErased("Pennythorpe");
    ASSERT_EQ(whyNot(book->eraseCustomer(removed.front().id)), "");
    expectErased("Sallowby");
    EXPECT_TRUE(valueOf(book->removedCustomers()).empty());
    expectSound();
}

TEST_F(EraseTest, isNeverUndone) {
    stock();
    const auto one = person("Quillfeather");
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    while (valueOf(book->undoState()).undo) ASSERT_TRUE(book->undo());
    EXPECT_EQ(valueOf(book->customer(one)), std::nullopt);
    expectErased("Quillfeather");
    expectSound();
}

// As a power cut between the parts of erasing leaves the file; what was not ours stays, and is told.
TEST_F(EraseTest, isFinishedByTheNextStartWhereItWasCutShort) {
    stock();
    const auto one = person("Quillfeather");
    const auto spoil = [this](const std::string& mark) {
        book.reset();
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        const auto sql =
            "PRAGMA secure_delete = OFF; CREATE TABLE left_over (text TEXT); INSERT INTO left_over SELECT '" + mark +
            "' || hex(zeroblob(9000)); DROP TABLE left_over";
        EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
    };
    const auto append = [this](const std::string& mark) {
        book.reset();
        std::ofstream(file, std::ios::binary | std::ios::app) << mark << std::string(4096 - mark.size(), ' ');
    };
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    spoil("Quillfeather");
    ASSERT_TRUE(isAnywhereIn(folder.path(), "Quillfeather"));
    reopen();
    expectErased("Quillfeather");
    append("Quillfeather");
    reopen();
    expectErased("Quillfeather");
    expectSound();

    ASSERT_TRUE(book->moveStock(tape, 12, std::nullopt, "delivery"));
    append("not ours");
    reopen();
    EXPECT_TRUE(isAnywhereIn(folder.path(), "not ours"));
}

TEST_F(EraseTest, refusesWhileSomethingIsOpen) {
    stock();
    const auto one = person("Quillfeather");
    const auto quote = givenTo(one);
    EXPECT_EQ(faultOf(book->eraseCustomer(one)), idOf(db::Fault::CustomerHasOpenJob));
    finish(quote);
    EXPECT_EQ(faultOf(book->eraseCustomer(one)), idOf(db::Fault::CustomerNotSettled)) << "it is owed";
    pay(quote, *quote.sealedTotal + Money::fromMicros(1'000'000));
    EXPECT_EQ(faultOf(book->eraseCustomer(one)), idOf(db::Fault::CustomerNotSettled)) << "one of it is theirs";
    EXPECT_EQ(valueOf(book->customer(one))->name, "Ottoline Quillfeather");
    auto draft = valueOf(book->startQuote());
    const auto other = person("Marrowgate");
    draft.order.customer = other;
    ASSERT_TRUE(book->saveDraft(draft));
    EXPECT_EQ(faultOf(book->eraseCustomer(other)), idOf(db::Fault::CustomerHasOpenJob)) << "an order is begun";
    EXPECT_EQ(faultOf(book->eraseCustomer(base::Id())), idOf(db::Fault::CustomerGone));
    expectSound();
}

TEST_F(EraseTest, refusesWhileAJobThatWasLetGoHoldsMoney) {
    stock();
    const auto one = person("Quillfeather");
    const auto quote = givenTo(one);
    const auto deposit = Money::fromMicros(50'000'000);
    pay(quote, deposit);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    const auto held = valueOf(book->customerFile(one));
    EXPECT_EQ(held.credit, deposit);
    EXPECT_EQ(held.owed, Money{});
    EXPECT_EQ(faultOf(book->eraseCustomer(one)), idOf(db::Fault::CustomerNotSettled));
    EXPECT_EQ(valueOf(book->customer(one))->name, "Ottoline Quillfeather");
    pay(quote, -deposit);
    EXPECT_EQ(valueOf(book->customerFile(one)).credit, Money{});
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    expectErased("Quillfeather");
    expectSound();
}

TEST_F(EraseTest, leavesNoStepThatUndoesTheirJobsOrPayments) {
    stock();
    const auto one = person("Quillfeather");
    const auto other = person("Marrowgate");
    const auto quote = givenTo(one);
    finish(quote); // no invoice, which would keep the stage by itself
    pay(quote, *quote.sealedTotal);
    const auto kept = givenTo(other);
    ASSERT_TRUE(book->setStage(kept.id, Stage::Declined));
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    const auto expectSettled = [&] {
        EXPECT_EQ(valueOf(book->quote(quote.id)).stage, Stage::Collected);
        EXPECT_EQ(valueOf(book->account(quote.id)).paid, *quote.sealedTotal);
    };
    // Down to the bottom, or to what is refused because something needs it.
    while (valueOf(book->undoState()).undo && book->undo()) expectSettled();
    expectSettled();
    EXPECT_EQ(valueOf(book->quote(kept.id)).stage, Stage::Quoted) << "what is not theirs is taken back as ever";
    while (valueOf(book->undoState()).redo && book->redo()) expectSettled();
    EXPECT_EQ(valueOf(book->quote(kept.id)).stage, Stage::Declined);
    expectSound();
}

TEST_F(EraseTest, whatIsBilledAfterwardsSaysThatTheCustomerIsGone) {
    stock();
    const auto one = person("Quillfeather");
    const auto quote = done(one);
    const auto invoice = valueOf(book->billing(quote.id)).openInvoices.front().id;
    ASSERT_EQ(whyNot(book->eraseCustomer(one)), "");
    const auto words = [](const quoting::Bill& bill, const db::Quote& of, const catalogue::Shop& shop) {
        auto sheet = test::plainBill(bill, of, shop);
        sheet.customer = of.result->sheet.customer;
        return sheet;
    };
    const auto credit = valueOf(book->issueCredit(invoice, {}, words));
    EXPECT_TRUE(credit.result.sheet.customer.isErased);
    expectSound();
}

/// Whoever is erased, in whatever order, of any number of customers with any jobs: the others and all sums stay.
TEST_F(EraseTest, lawsHoldOverARandomShop) {
    stock();
    std::mt19937_64 random(test::printedSeed());
    std::vector<base::Id> people;
    for (int i = 0; i < 6; ++i) people.push_back(person("Quill" + std::string(1, static_cast<char>('a' + i)) + "x"));
    for (int i = 0; i < 20; ++i) {
        const auto& one = people[random() % people.size()];
        if (random() % 3 == 0)
            ASSERT_TRUE(book->setStage(givenTo(one).id, Stage::Declined));
        else
            done(one);
    }
    const auto before = stays();
    std::vector<int> order{0, 1, 2, 3, 4, 5};
    std::shuffle(order.begin(), order.end(), random);
    for (const int i : order) {
        ASSERT_EQ(whyNot(book->eraseCustomer(people[static_cast<std::size_t>(i)])), "");
        EXPECT_EQ(stays(), before);
        expectErased("Quill" + std::string(1, static_cast<char>('a' + i)) + "x");
        expectSound();
    }
}

// ------------------------------------------------------------------------------------------- books of earlier versions

class OldPeople : public test::KeptBook {};

TEST_P(OldPeople, canBeErasedFromBooksOfTheirTime) {
    auto book = valueOf(db::Book::open(file, clock.environment()));
    for (const auto& job : valueOf(book->quotes({}, 1'000)))
        if (job.number.empty() || job.stage != Stage::Declined)
            static_cast<void>(book->setStage(job.id, Stage::Declined));
    Stays before = staysOf(*book);
    addSeals(before, file, 0);
    std::size_t erased = 0;
    for (const auto& customer : valueOf(book->customers())) {
        const auto done = book->eraseCustomer(customer.id);
        if (!done) {
            EXPECT_EQ(done.error().code, Code::Conflict);
            continue;
        }
        ++erased;
        EXPECT_EQ(bytesIn(file).find(customer.name), std::string::npos) << customer.name;
    }
    EXPECT_GT(erased, 0U);
    Stays after = staysOf(*book);
    addSeals(after, file, before.seals.size());
    EXPECT_EQ(after, before);
    book.reset();
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report) << describe(report.error());
    EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
}

INSTANTIATE_TEST_SUITE_P(Books, OldPeople, testing::Values(1, 2, 3, 4), test::nameOfVersion);

} // namespace
