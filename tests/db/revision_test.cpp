// SPDX-License-Identifier: MIT
//
// A given quote is revised, not changed. Amounts are made up; the laws are said beside each test.
#include "db/book/given_prices.h"
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"
#include "tests/support/plain_bill.h"
#include "tests/support/seed.h"

#include <sqlite3.h>

#include <map>
#include <random>
#include <set>

namespace {

using namespace sp;
using base::Code;
using db::Fault;
using db::Quote;
using db::Stage;
using test::plainBill;
using test::valueOf;
using units::Count;
using units::Money;

using sp::support::cents;

class RevisionTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
    }
    units::Date today() { return clock.environment().today(); }
    base::Result<Quote> give(const Quote& draft, Money total) {
        return book->issue(draft, book->priceBook(draft.order.customer).value(), test::resultOf(total),
                           draft.order.quotedOn.plusDays(21));
    }
    /// A revision of the quote with so many pieces of its first line.
    Quote revised(const Quote& quote, std::int64_t pieces, Money total) {
        auto draft = valueOf(book->startRevision(quote.id));
        draft.order.lines[0].quantity = Count::of(pieces);
        draft.version = valueOf(book->saveDraft(draft));
        return valueOf(give(draft, total));
    }
    base::Id pay(const Quote& quote, Money amount) {
        catalogue::Payment payment;
        payment.job = quote.id;
        payment.amount = amount;
        payment.kind = "Cash";
        payment.paidOn = today();
        return valueOf(book->pay(payment, pricing::Beyond::Kept));
    }
    template<class T>
    static base::MessageId faultOf(const base::Result<T>& result) {
        return result ? base::MessageId{} : result.error().fault;
    }
    void runSql(const std::string& sql) {
        book.reset();
        sqlite3* raw = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &raw), SQLITE_OK);
        ASSERT_EQ(sqlite3_exec(raw, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(raw);
        sqlite3_close(raw);
    }
    std::vector<std::string> damage() { return test::described(valueOf(db::Book::check(file)).damage); }
};

TEST_F(RevisionTest, takesTheFirstNumberAndKeepsWhatWasGiven) {
    const auto first = issued();
    auto draft = valueOf(book->startRevision(first.id));
    EXPECT_EQ(draft.number, "");
    EXPECT_EQ(draft.revises, (db::RevisedQuote{first.id, 1, first.number}));
    EXPECT_EQ(draft.order.lines, first.order.lines);
    EXPECT_EQ(draft.order.customer, customer);
    EXPECT_EQ(draft.order.quotedOn, today());
    EXPECT_EQ(valueOf(book->quotes({}, 10)).size(), 2U) << "the draft beside it";
    const auto second = revised(first, 30, cents(50'000));
    EXPECT_EQ(second.id, first.id) << "one job";
    EXPECT_EQ(second.number, first.number + "-2");
    EXPECT_EQ(second.revision, 2);
    EXPECT_EQ(second.sealedTotal, cents(50'000));
    EXPECT_FALSE(second.revises);
    const auto third = revised(second, 31, cents(51'000));
    EXPECT_EQ(third.number, first.number + "-3");
    EXPECT_EQ(valueOf(book->quotes({}, 10)).size(), 1U) << "the drafts are gone";
    EXPECT_FALSE(valueOf(book->lastDraft()));
    reopen();
    const auto kept = valueOf(book->quoteAsGiven(first.number));
    EXPECT_EQ(kept.order, first.order);
    EXPECT_EQ(kept.result, first.result);
    EXPECT_EQ(kept.sealedTotal, first.sealedTotal);
    EXPECT_EQ(kept.replacedBy, (db::ReplacedBy{second.number, today()}));
    EXPECT_EQ(valueOf(book->quoteAsGiven(second.number)).replacedBy, (db::ReplacedBy{third.number, today()}));
    EXPECT_FALSE(valueOf(book->quoteAsGiven(third.number)).replacedBy);
    EXPECT_EQ(valueOf(book->quoteNumbered(third.number)).order, third.order);
    const auto refused = book->quoteNumbered(first.number);
    EXPECT_EQ(faultOf(refused), idOf(Fault::QuoteReplaced));
    EXPECT_EQ(test::described(refused.error()), "QuoteReplaced(" + first.number + ", " + third.number + ")");
    const auto given = valueOf(book->givenOf(first.id));
    ASSERT_EQ(given.size(), 3U);
    EXPECT_EQ(given[0], (db::GivenQuote{1, first.number, first.order.quotedOn, *first.sealedTotal}));
    EXPECT_EQ(given[2].number, third.number);
    expectSound();
}

TEST_F(RevisionTest, isFoundByEveryNumberAndListedByTheNewest) {
    const auto first = issued();
    const auto second = revised(first, 30, cents(50'000));
    for (const auto& text : {first.number, second.number, std::string("412.50"), std::string("500.00")}) {
        const auto found = valueOf(book->quotes(text, 10));
        ASSERT_EQ(found.size(), 1U) << text;
        EXPECT_EQ(found[0].number, second.number);
        EXPECT_EQ(found[0].total, cents(50'000));
    }
    const auto draft = valueOf(book->startRevision(first.id));
    EXPECT_EQ(valueOf(book->quotes({}, 1)).at(0).revises, second.number);
}

TEST_F(RevisionTest, takesNoNumberOfTheSeries) {
    const auto first = issued();
    revised(first, 30, cents(50'000));
    const auto next = issued();
    EXPECT_TRUE(first.number.ends_with("-0001"));
    EXPECT_TRUE(next.number.ends_with("-0002"));
    clock.now += std::chrono::years(1);
    EXPECT_EQ(revised(next, 5, cents(100)).number, next.number + "-2") << "in a later year too";
    expectSound();
}

TEST_F(RevisionTest, ofAnAgreedJobIsAgreedAnewAndKeepsWhatWasPaid) {
    const auto first = issued();
    ASSERT_TRUE(book->setStage(first.id, Stage::InProduction));
    pay(first, cents(10'000));
    const auto second = revised(first, 30, cents(50'000));
    EXPECT_EQ(second.stage, Stage::Quoted);
    const auto account = valueOf(book->account(second.id));
    EXPECT_EQ(account.total, cents(50'000));
    EXPECT_EQ(account.paid, cents(10'000));
    EXPECT_EQ(account.left, cents(40'000));
    EXPECT_TRUE(book->setStage(second.id, Stage::InProduction));
    expectSound();
}

TEST_F(RevisionTest, ofALapsedQuoteIsInForceAgain) {
    const auto first = issued();
    clock.now += std::chrono::days(60);
    ASSERT_TRUE(valueOf(book->quotes({}, 1)).at(0).isLapsed);
    const auto draft = valueOf(book->startRevision(first.id));
    EXPECT_FALSE(draft.order.wantedBy) << "that day is past";
    const auto again = valueOf(give(draft, cents(45'000)));
    EXPECT_EQ(again.number, first.number + "-2");
    EXPECT_FALSE(valueOf(book->quotes({}, 1)).at(0).isLapsed);
    EXPECT_EQ(again.validUntil, today().plusDays(21));
    expectSound();
}

TEST_F(RevisionTest, isRefusedWhereNothingIsLeftToRevise) {
    EXPECT_EQ(faultOf(book->startRevision(draft().id)), idOf(Fault::NotGivenYet));
    EXPECT_EQ(faultOf(book->startRevision({})), idOf(Fault::QuoteUnknown));
    const auto quote = issued();
    const auto begun = valueOf(book->startRevision(quote.id));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    EXPECT_EQ(faultOf(book->startRevision(quote.id)), idOf(Fault::RevisesLetGo));
    EXPECT_EQ(faultOf(book->mayRevise(quote.id)), idOf(Fault::RevisesLetGo));
    EXPECT_EQ(faultOf(give(begun, cents(1))), idOf(Fault::RevisesLetGo)) << "let go since the draft was begun";
    EXPECT_EQ(valueOf(book->quote(begun.id)).order, begun.order) << "nothing of it is lost";
    ASSERT_TRUE(book->setStage(quote.id, Stage::Quoted));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Collected));
    EXPECT_EQ(faultOf(book->startRevision(quote.id)), idOf(Fault::RevisesCollected));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    EXPECT_TRUE(give(begun, cents(1)));
    expectSound();
}

TEST_F(RevisionTest, begunTwiceIsOneDraftAndTheOlderOfTwoIsRefused) {
    const auto quote = issued();
    const auto one = valueOf(book->startRevision(quote.id));
    EXPECT_EQ(valueOf(book->startRevision(quote.id)).id, one.id) << "it is gone on with";
    // Another place gives a revision meanwhile, without that draft.
    const auto order = db::revisionOf(quote, today());
    const auto second = valueOf(book->issueRevision(quote.id, order, book->priceBook(customer).value(),
                                                    test::resultOf(cents(43'000)), today().plusDays(9)));
    const auto refused = give(one, cents(44'000));
    EXPECT_EQ(test::described(refused.error()), "RevisedMeanwhile(" + quote.number + ", " + second.number + ")");
    EXPECT_EQ(valueOf(book->quote(one.id)).order, one.order) << "nothing of it is lost";
    EXPECT_EQ(valueOf(book->givenOf(quote.id)).size(), 2U);
    const auto next = valueOf(book->startRevision(quote.id));
    EXPECT_NE(next.id, one.id) << "of the newest now";
    EXPECT_EQ(valueOf(give(next, cents(44'000))).number, quote.number + "-3");
    expectSound();
}

TEST_F(RevisionTest, isNeverUndone) {
    const auto quote = issued();
    auto draft = valueOf(book->startRevision(quote.id));
    draft.order.lines[0].quantity = Count::of(30);
    draft.version = valueOf(book->saveDraft(draft));
    ASSERT_TRUE(book->undoState()->undo);
    const auto second = valueOf(give(draft, cents(50'000)));
    while (book->undoState()->undo) ASSERT_TRUE(book->undo());
    EXPECT_EQ(valueOf(book->quote(quote.id)).number, second.number);
    EXPECT_EQ(valueOf(book->givenOf(quote.id)).size(), 2U);
    expectSound();
    while (book->undoState()->redo) ASSERT_TRUE(book->redo());
    expectSound();
}

TEST_F(RevisionTest, whatFailsInBetweenLeavesEverythingAsItWas) {
    const auto quote = issued();
    const auto draft = valueOf(book->startRevision(quote.id));
    const auto done = book->batch(base::say(db::Note::Adding, "a revision"), [&]() -> base::Done {
        EXPECT_TRUE(give(draft, cents(50'000)));
        return base::fail(Fault::Stopped, "here");
    });
    ASSERT_FALSE(done);
    EXPECT_EQ(valueOf(book->quote(quote.id)).number, quote.number);
    EXPECT_EQ(valueOf(book->quote(draft.id)).order, draft.order);
    EXPECT_EQ(valueOf(book->givenOf(quote.id)).size(), 1U);
    expectSound();
    // An order that cannot be given leaves no draft behind either.
    auto empty = quote.order;
    empty.lines.clear();
    EXPECT_EQ(faultOf(book->issueRevision(quote.id, empty, book->priceBook(customer).value(), test::resultOf(cents(1)),
                                          today().plusDays(9))),
              idOf(Fault::NothingOnQuote));
    EXPECT_EQ(valueOf(book->quotes({}, 10)).size(), 2U) << "the quote and the draft of before";
    expectSound();
}

TEST_F(RevisionTest, ofAnInvoicedJobIsSettledByACreditNoteAndAnotherInvoice) {
    const auto first = issued(); // 412.50
    ASSERT_TRUE(book->setStage(first.id, Stage::Agreed));
    const auto invoice = valueOf(book->issueInvoice(first.id, plainBill));
    const auto second = revised(first, 30, cents(30'000));
    const auto listed = [&] { return valueOf(book->quotes({}, 1)).at(0); };
    EXPECT_EQ(valueOf(book->account(second.id)).total, cents(41'250)) << "what is invoiced is owed";
    EXPECT_EQ(listed().total, cents(41'250));
    EXPECT_TRUE(listed().isOwed()) << "whether or not the revision is agreed to";
    EXPECT_EQ(faultOf(book->setStage(second.id, Stage::Declined)), idOf(Fault::InvoiceStands));
    ASSERT_TRUE(book->setStage(second.id, Stage::Agreed));
    EXPECT_EQ(faultOf(book->issueInvoice(second.id, plainBill)), idOf(Fault::CreditFirst));
    ASSERT_TRUE(book->issueCredit(invoice.id, {}, plainBill));
    EXPECT_EQ(valueOf(book->issueInvoice(second.id, plainBill)).total, cents(30'000));
    EXPECT_EQ(valueOf(book->account(second.id)).total, cents(30'000));
    const auto third = revised(second, 31, cents(35'000));
    EXPECT_EQ(valueOf(book->account(third.id)).total, cents(30'000)) << "nobody has agreed to more yet";
    ASSERT_TRUE(book->setStage(third.id, Stage::Agreed));
    EXPECT_EQ(valueOf(book->account(third.id)).total, cents(35'000)) << "more than is invoiced, and owed";
    EXPECT_EQ(listed().total, cents(35'000));
    EXPECT_EQ(valueOf(book->issueInvoice(third.id, plainBill)).total, cents(5'000)) << "what came to it";
    EXPECT_EQ(valueOf(book->account(third.id)).total, cents(35'000));
    EXPECT_EQ(listed().total, cents(35'000));
    expectSound();
}

// Revised from 412.50 to 300.00 for somebody else: the credit note is for whom the invoice was for, and while it is not
// written the invoice is owed.
TEST_F(RevisionTest, aCreditNoteIsForWhomItsInvoiceWasFor) {
    const auto first = issued();
    ASSERT_TRUE(book->setStage(first.id, Stage::Agreed));
    const auto invoice = valueOf(book->issueInvoice(first.id, plainBill));
    catalogue::Customer other;
    other.name = "Tern Lane Choir";
    auto draft = valueOf(book->startRevision(first.id));
    draft.order.customer = valueOf(book->save(other));
    draft.version = valueOf(book->saveDraft(draft));
    const auto second = valueOf(give(draft, cents(30'000)));
    ASSERT_TRUE(book->setStage(second.id, Stage::Agreed));
    EXPECT_EQ(valueOf(book->account(second.id)).total, cents(41'250));
    const auto credit = valueOf(book->issueCredit(invoice.id, {}, plainBill));
    EXPECT_EQ(credit.result.sheet.customer.name, invoice.result.sheet.customer.name);
    EXPECT_NE(credit.result.sheet.customer.name, other.name);
    EXPECT_EQ(credit.revision, 1);
    EXPECT_EQ(credit.result.comesTo, cents(30'000)) << "the revision, once the invoice is taken back";
    EXPECT_EQ(valueOf(book->account(second.id)).total, cents(30'000));
    const auto again = valueOf(book->issueInvoice(second.id, plainBill));
    EXPECT_EQ(again.result.sheet.customer.name, other.name);
    EXPECT_EQ(again.total, cents(30'000));
    expectSound();
}

TEST_F(RevisionTest, begunOnAnotherDayGoesByToday) {
    const auto first = issued();
    auto draft = valueOf(book->startRevision(first.id));
    const auto begun = today();
    draft.order.wantedBy = begun.plusDays(5);
    draft.version = valueOf(book->saveDraft(draft));
    clock.now += std::chrono::days(60);
    const auto again = valueOf(book->startRevision(first.id));
    EXPECT_EQ(again.id, draft.id);
    EXPECT_EQ(again.order.quotedOn, begun.plusDays(60));
    EXPECT_FALSE(again.order.wantedBy) << "past";
    EXPECT_EQ(again.order.lines, draft.order.lines);
}

TEST_F(RevisionTest, hasTheChoiceThatWasTakenAlone) {
    auto quote = draft();
    catalogue::addChoice(quote.order);
    quote.order.lines[0].quantity = Count::of(7);
    quote.version = valueOf(book->saveDraft(quote));
    auto result = test::resultOf(cents(41'250));
    result.others.push_back(result.priced);
    const auto plain = result.sheetFor;
    result.sheetFor = [plain](const std::string& number) {
        auto sheet = plain(number);
        sheet.others.emplace_back();
        sheet.others[0].toPay = sheet.toPay;
        sheet.choice = 1;
        return sheet;
    };
    quote = valueOf(book->issue(quote, book->priceBook(customer).value(), result, quote.order.quotedOn.plusDays(9)));
    EXPECT_EQ(catalogue::choiceCount(valueOf(book->startRevision(quote.id)).order), 2U);
    ASSERT_TRUE(book->takeChoice(quote.id, 1));
    const auto taken = db::revisionOf(valueOf(book->quote(quote.id)), today());
    EXPECT_EQ(catalogue::choiceCount(taken), 1U);
    EXPECT_EQ(taken.lines[0].quantity, Count::of(7));
    const auto second = valueOf(book->issueRevision(quote.id, taken, book->priceBook(customer).value(),
                                                    test::resultOf(cents(100)), today().plusDays(9)));
    EXPECT_FALSE(second.choiceTaken);
    EXPECT_EQ(valueOf(book->quoteAsGiven(quote.number)).choiceTaken, 1) << "of the first it is kept";
    expectSound();
}

TEST_F(RevisionTest, saysWhatIsAnotherLineByLine) {
    layout::FitMemo fits;
    auto sheet = test::sampleTape();
    sheet.name = "Template sheet";
    sheet.kind = catalogue::MaterialKind::Template;
    auto shop = valueOf(book->shop());
    shop.usualTemplate = valueOf(book->save(sheet));
    shop.packing.clear();
    ASSERT_TRUE(book->save(shop));
    for (auto material : valueOf(book->materials())) {
        material.basis = catalogue::PriceBasis::Fixed;
        material.fixedPrice = cents(90);
        ASSERT_TRUE(book->save(material));
    }
    auto quote = draft();
    quote.order.others.clear();
    quote.order.choice = 0;
    for (auto& line : quote.order.lines) line.sizes.clear();
    quote.version = valueOf(book->saveDraft(quote));
    const auto prices = valueOf(book->priceBook(customer));
    const auto priced = pricing::priceOrder(quote.order, prices, fits);
    ASSERT_TRUE(priced) << test::described(priced.error());
    auto result = test::resultOf(priced->total);
    result.priced = *priced;
    const auto first = valueOf(book->issue(quote, prices, result, quote.order.quotedOn.plusDays(9)));
    auto order = db::revisionOf(first, today());
    order.lines[0].quantity = Count::of(order.lines[0].quantity.value() + 6);
    const auto difference = db::differenceOf(first, order, prices, fits);
    ASSERT_TRUE(difference) << test::described(difference.error());
    EXPECT_EQ(difference->totalWas, first.sealedTotal);
    ASSERT_EQ(difference->lines.size(), order.lines.size());
    EXPECT_EQ(difference->lines[0].fate, pricing::LineFate::Changed);
    EXPECT_EQ(difference->lines[0].was->charged, first.result->figures.lines[0].charged);
    const auto again = valueOf(book->startRevision(first.id));
    const auto repriced = pricing::priceOrder(order, prices, fits);
    auto more = test::resultOf(repriced->total);
    more.priced = *repriced;
    const auto second = valueOf(book->issueRevision(first.id, order, prices, more, order.quotedOn.plusDays(9)));
    const auto between = db::differenceOf(valueOf(book->quoteAsGiven(first.number)), second, fits);
    EXPECT_EQ(between.lines, difference->lines) << "afterwards it is said as it was before";
    EXPECT_EQ(between.totalIs, second.sealedTotal);
}

TEST_F(RevisionTest, isExportedWithWhatWasBefore) {
    const auto first = issued();
    const auto second = revised(first, 30, cents(50'000));
    const auto out = folder / "out";
    ASSERT_TRUE(book->exportTo(out));
    const auto has = [&](const char* table, const std::string& text) {
        return test::bytesOf(out / table).find(text) != std::string::npos;
    };
    EXPECT_TRUE(has("revisions.csv", first.number + ",1,"));
    EXPECT_FALSE(has("revisions.csv", second.number)) << "the newest is the job itself";
    EXPECT_TRUE(has("jobs.csv", second.number + ",2,"));
    EXPECT_TRUE(has("papers.csv", first.number + ",1,"));
    EXPECT_TRUE(has("papers.csv", second.number + ",2,"));
    EXPECT_TRUE(has("book.json", "\"revisions\":["));
}

TEST_F(RevisionTest, aCheckTellsWhatIsMissingOrChanged) {
    const auto first = issued();
    const auto second = revised(first, 30, cents(50'000));
    expectSound();
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE job_line SET quantity = quantity + 1 WHERE revision = 1"));
    EXPECT_FALSE(damage().empty()) << "of the one that was replaced too";
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE job_line SET quantity = quantity - 1 WHERE revision = 1"));
    EXPECT_TRUE(damage().empty());
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE paper SET number = '2026-0009' WHERE revision = 1"));
    EXPECT_FALSE(damage().empty());
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE paper SET number = '" + first.number +
                                   "' WHERE revision = 1;"
                                   "UPDATE revision SET choice_taken = 3 WHERE number = 1"));
    EXPECT_FALSE(damage().empty());
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE revision SET choice_taken = NULL WHERE number = 1;"
                                   "UPDATE job SET number = '" +
                                   first.number + "', revision = 1 WHERE number <> ''"));
    EXPECT_FALSE(damage().empty()) << "as if the second had never been";
}

// Over random jobs, whatever is done with them in whatever order: what was given is kept to the letter under its own
// number; the account is the newest revision's total (or its invoices less credits, and what was agreed to since if
// that is more) and the sum of the ledger; no number is given twice and none of the series is missing; a refused step
// leaves the job as it was.
TEST_F(RevisionTest, lawsOverRandomJobs) {
    reopen(); // what stands in stock is not undone
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    std::vector<Quote> given; // every one, as it was when it was given
    std::map<base::Id, std::vector<std::string>> chains;
    std::map<base::Id, Money> paid;
    const auto keep = [&](const base::Result<Quote>& quote) {
        if (!quote) return;
        given.push_back(*quote);
        chains[quote->id].push_back(quote->number);
    };
    const auto anyJob = [&] {
        auto job = chains.begin();
        std::advance(job, upTo(static_cast<std::int64_t>(chains.size()) - 1));
        return job->first;
    };
    for (int step = 0; step < 250; ++step) {
        if (chains.empty() || upTo(9) == 0) {
            keep(issued());
            continue;
        }
        const auto id = anyJob();
        const auto before = valueOf(book->quote(id));
        switch (upTo(7)) {
        case 0:
        case 1: {
            auto begun = book->startRevision(id);
            const bool may = before.stage != Stage::Declined && before.stage != Stage::Collected;
            ASSERT_EQ(begun.has_value(), may);
            if (!begun || upTo(3) == 0) break; // it stays a draft for a while
            begun->order.lines[0].quantity = Count::of(1 + upTo(99));
            begun->version = valueOf(book->saveDraft(*begun));
            keep(give(*begun, cents(1 + upTo(90'000))));
            break;
        }
        case 2:
            keep(book->issueRevision(id, db::revisionOf(before, today()), book->priceBook(customer).value(),
                                     test::resultOf(cents(1 + upTo(90'000))), today().plusDays(upTo(30))));
            break;
        case 3: book->setStage(id, static_cast<Stage>(upTo(6))).has_value(); break;
        case 4: {
            const auto amount = cents(1 + upTo(9'000));
            pay(before, amount);
            paid[id] += amount;
            break;
        }
        case 5:
            if (book->issueInvoice(id, plainBill)) break;
            if (const auto billing = valueOf(book->billing(id)); !billing.openInvoices.empty()) {
                EXPECT_TRUE(book->issueCredit(billing.openInvoices[0].id, {}, plainBill));
            }
            break;
        case 6: clock.now += std::chrono::days(upTo(20)); break;
        default:
            if (valueOf(book->undoState()).undo) { EXPECT_TRUE(book->undo()); }
            for (auto& [job, amount] : paid) { // a payment may have been taken back
                amount = {};
                for (const auto& payment : valueOf(book->payments(job))) amount += payment.amount;
            }
        }
        const auto after = valueOf(book->quote(id));
        if (after.number == before.number) { EXPECT_EQ(after.result, before.result); }
    }
    expectSound();
    reopen();
    std::set<std::string> numbers;
    for (const auto& quote : given) {
        EXPECT_TRUE(numbers.insert(quote.number).second) << quote.number << " twice";
        const auto kept = valueOf(book->quoteAsGiven(quote.number));
        EXPECT_EQ(kept.order, quote.order) << quote.number;
        EXPECT_EQ(kept.result, quote.result) << quote.number;
        EXPECT_EQ(kept.frozen->customer, quote.frozen->customer) << quote.number;
        EXPECT_EQ(kept.validUntil, quote.validUntil) << quote.number;
        EXPECT_EQ(kept.replacedBy.has_value(), chains[quote.id].back() != quote.number) << quote.number;
    }
    for (const auto& [id, chain] : chains) {
        for (std::size_t i = 1; i < chain.size(); ++i) EXPECT_EQ(chain[i], chain[0] + "-" + std::to_string(i + 1));
        const auto newest = valueOf(book->quote(id));
        EXPECT_EQ(newest.number, chain.back());
        const auto account = valueOf(book->account(id));
        EXPECT_EQ(account.paid, paid[id]);
        std::optional<Money> billed;
        bool newestIsInvoiced = false;
        for (const auto& bill : valueOf(book->billing(id)).bills) {
            if (bill.kind == catalogue::PaperKind::Receipt) continue;
            billed = billed.value_or(Money{}) + bill.total;
            newestIsInvoiced |= bill.kind == catalogue::PaperKind::Invoice && bill.revision == newest.revision;
        }
        auto owed = billed.value_or(*newest.sealedTotal);
        if (catalogue::isAgreedTo(newest.stage) && !newestIsInvoiced) owed = std::max(owed, *newest.sealedTotal);
        EXPECT_EQ(account.total, owed) << newest.number;
    }
    const auto jobs = std::ranges::count_if(numbers, [](const auto& number) { return number.size() == 9; });
    EXPECT_EQ(jobs, static_cast<std::ptrdiff_t>(chains.size()));
}

} // namespace
