// SPDX-License-Identifier: MIT
//
// Invoices, receipts and credit notes in the book. Amounts are made up; the laws are said beside each test.
#include "core/pricing/messages.h"
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"
#include "tests/support/plain_bill.h"
#include "tests/support/seed.h"

#include <sqlite3.h>

#include <map>
#include <random>

namespace {

using namespace sp;
using base::Code;
using catalogue::PaperKind;
using catalogue::Payment;
using db::IssuedBill;
using db::Stage;
using pricing::Beyond;
using pricing::BillPart;
using test::plainBill;
using test::valueOf;
using units::Money;
using units::Rate;

using sp::support::cents;

class BillTest : public test::BookTest {
  protected:
    /// A given quote that comes to these amounts at these rates, agreed to.
    db::Quote agreed(const std::vector<pricing::TaxAmount>& taxes, Money untaxed) {
        auto result = test::resultOf({});
        auto& priced = result.priced;
        priced.taxes = taxes;
        priced.subtotal = untaxed;
        for (const auto& tax : taxes) {
            priced.subtotal += tax.on;
            priced.tax += tax.tax;
        }
        priced.total = priced.balance = priced.subtotal + priced.tax;
        auto quote = draft();
        quote.order.asksExemption = asksExemption;
        // The sheet's words are not looked at here; what it comes to is.
        result.sheetFor = test::resultOf(priced.total).sheetFor;
        quote =
            valueOf(book->issue(quote, book->priceBook(customer).value(), result, quote.order.quotedOn.plusDays(9)));
        EXPECT_TRUE(book->setStage(quote.id, Stage::Agreed));
        return valueOf(book->quote(quote.id));
    }
    db::Quote agreed() {
        return agreed({{"Sales tax", Rate::fromPpm(88'750), cents(10'000), cents(888)}}, cents(2'000)); // 128.88
    }
    base::Id pay(const db::Quote& quote, Money amount) {
        Payment payment;
        payment.job = quote.id;
        payment.amount = amount;
        payment.kind = "Cash";
        payment.paidOn = clock.environment().today();
        return valueOf(book->pay(payment, Beyond::Kept));
    }
    bool asksExemption = false; ///< of the next order
    IssuedBill invoice(const db::Quote& quote) { return valueOf(book->issueInvoice(quote.id, plainBill)); }
    std::vector<IssuedBill> bills(const db::Quote& quote) { return valueOf(book->billing(quote.id)).bills; }
    template<class T>
    static base::MessageId faultOf(const base::Result<T>& result) {
        return result ? base::MessageId{} : result.error().fault;
    }
    void runSql(const char* sql) {
        book.reset();
        sqlite3* raw = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &raw), SQLITE_OK);
        ASSERT_EQ(sqlite3_exec(raw, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(raw);
        sqlite3_close(raw);
    }
    std::vector<std::string> damage() { return test::described(valueOf(db::Book::check(file)).damage); }
};

TEST_F(BillTest, anInvoiceIsOfWhatWasAgreedToAndIsKept) {
    stock();
    const auto quote = agreed();
    pay(quote, cents(5'000));
    const auto made = invoice(quote);
    const auto today = clock.environment().today();
    EXPECT_EQ(made.number, "I-" + today.iso().substr(0, 4) + "-0001");
    EXPECT_EQ(made.total, cents(12'888));
    EXPECT_EQ(made.due, today.plusDays(10)) << "the sample shop's days to pay";
    EXPECT_EQ(made.result.day, today);
    EXPECT_EQ(made.result.paid, cents(5'000));
    EXPECT_EQ(pricing::taxOf(made.result.parts), cents(888));
    EXPECT_EQ(made.result.sheet.balance.value, cents(7'888)) << "what is left";
    EXPECT_EQ(made.result.sheet.customer.name, "Rowan Bakery");
    const auto account = valueOf(book->account(quote.id));
    EXPECT_EQ(account.total, made.total);
    EXPECT_EQ(account.left, cents(7'888));
    reopen();
    EXPECT_EQ(bills(quote), std::vector{made});
    EXPECT_EQ(valueOf(book->billNumbered(made.number)), made);
    expectSound();
}

TEST_F(BillTest, anInvoicedJobIsFoundByWhatItComesToNow) {
    stock();
    const auto quote = agreed(); // 128.88
    ASSERT_TRUE(book->issueCredit(invoice(quote).id, cents(2'888), plainBill));
    pay(quote, cents(4'000));
    for (const auto* text : {"100.00", "60.00", "40.00", "128.88", "C-2026"}) {
        const auto found = valueOf(book->quotes(text, 10));
        ASSERT_EQ(found.size(), 1U) << text;
        EXPECT_EQ(found[0].id, quote.id);
    }
    EXPECT_TRUE(valueOf(book->quotes("88.88", 10)).empty()) << "128.88 less 40.00 is owed no more";
}

TEST_F(BillTest, whatCannotBeIssuedIsRefusedAndTakesNoNumber) {
    stock();
    EXPECT_EQ(faultOf(book->issueInvoice(draft().id, plainBill)), idOf(db::Fault::NotGivenYet));
    EXPECT_EQ(faultOf(book->issueInvoice(issued().id, plainBill)), idOf(db::Fault::NotAgreedYet));
    EXPECT_EQ(faultOf(book->issueInvoice({}, plainBill)), idOf(db::Fault::QuoteUnknown));
    EXPECT_EQ(faultOf(book->issueInvoice(agreed({}, {}).id, plainBill)), idOf(db::Fault::NothingToInvoice));
    EXPECT_EQ(faultOf(book->issueReceipt({}, plainBill)), idOf(db::Fault::PaymentMissing));
    EXPECT_EQ(faultOf(book->issueCredit({}, {}, plainBill)), idOf(db::Fault::NoInvoice));
    const auto quote = agreed();
    const auto taken = pay(quote, cents(100));
    ASSERT_TRUE(book->takeBackPayment(taken));
    EXPECT_EQ(faultOf(book->issueReceipt(taken, plainBill)), idOf(db::Fault::NoReceiptFor));
    EXPECT_EQ(faultOf(book->issueReceipt(valueOf(book->payments(quote.id)).back().id, plainBill)),
              idOf(db::Fault::NoReceiptFor));
    const auto first = invoice(quote);
    EXPECT_TRUE(first.number.ends_with("-0001")) << "what was refused took no number";
    EXPECT_EQ(faultOf(book->issueInvoice(quote.id, plainBill)), idOf(db::Fault::InvoicedAlready));
    EXPECT_EQ(faultOf(book->issueCredit(first.id, cents(12'889), plainBill)), idOf(pricing::Fault::CreditBeyond));
    EXPECT_EQ(faultOf(book->issueCredit(first.id, Money{}, plainBill)), idOf(pricing::Fault::NothingCredited));
    const auto credit = valueOf(book->issueCredit(first.id, {}, plainBill));
    EXPECT_TRUE(credit.number.ends_with("-0001"));
    EXPECT_EQ(faultOf(book->issueCredit(first.id, cents(1), plainBill)), idOf(db::Fault::CreditedAlready));
    EXPECT_EQ(faultOf(book->issueCredit(credit.id, cents(1), plainBill)), idOf(db::Fault::NoInvoice));
    EXPECT_EQ(faultOf(book->billNumbered("I-1999-0001")), idOf(db::Fault::NoPaperNumbered));
    expectSound();
}

TEST_F(BillTest, aJobWithAnOpenChoiceIsNotInvoiced) {
    stock();
    auto quote = draft();
    catalogue::addChoice(quote.order);
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
    EXPECT_EQ(faultOf(book->issueInvoice(quote.id, plainBill)), idOf(db::Fault::NoChoiceTaken));
    ASSERT_TRUE(book->takeChoice(quote.id, 0));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    EXPECT_EQ(invoice(quote).total, cents(41'250));
    EXPECT_EQ(faultOf(book->takeChoice(quote.id, 1)), idOf(db::Fault::InvoiceStands));
    expectSound();
}

TEST_F(BillTest, aReceiptIsForOnePayment) {
    stock();
    const auto quote = agreed();
    const auto first = pay(quote, cents(5'000));
    const auto second = pay(quote, cents(1'000));
    ASSERT_EQ(valueOf(book->billing(quote.id)).withoutReceipt.size(), 2U);
    const auto receipt = valueOf(book->issueReceipt(first, plainBill));
    EXPECT_TRUE(receipt.number.starts_with("R-"));
    EXPECT_EQ(receipt.total, cents(5'000));
    EXPECT_EQ(receipt.result.payment, first);
    EXPECT_EQ(receipt.result.paid, cents(6'000)) << "in all";
    EXPECT_EQ(faultOf(book->issueReceipt(first, plainBill)), idOf(db::Fault::ReceiptMade));
    const auto without = valueOf(book->billing(quote.id)).withoutReceipt;
    ASSERT_EQ(without.size(), 1U);
    EXPECT_EQ(without[0].payment.id, second);
    expectSound();
}

TEST_F(BillTest, aReceiptIsForWhatWasKeptOfTheMoney) {
    stock();
    const auto quote = agreed(); // 128.88
    auto shop = valueOf(book->shop());
    shop.smallestCoin = cents(5);
    ASSERT_TRUE(book->save(shop));
    Payment note;
    note.job = quote.id;
    note.amount = cents(15'000);
    note.kind = "Cash";
    note.paidOn = clock.environment().today();
    const auto paid = valueOf(book->pay(note, Beyond::Change, pricing::Tender::Cash));
    const auto without = valueOf(book->billing(quote.id)).withoutReceipt;
    ASSERT_EQ(without.size(), 1U) << "change and rounding have none";
    EXPECT_EQ(without[0].received, cents(12'890));
    for (const auto& row : valueOf(book->payments(quote.id)))
        if (row.id != paid) {
            EXPECT_EQ(faultOf(book->issueReceipt(row.id, plainBill)), idOf(db::Fault::NoReceiptFor));
        }
    const auto receipt = valueOf(book->issueReceipt(paid, plainBill));
    EXPECT_EQ(receipt.total, cents(12'890));
    EXPECT_EQ(receipt.result.paid, receipt.result.comesTo) << "nothing is left";
    reopen();
    expectSound();
}

TEST_F(BillTest, aPaymentUndoneAndDoneAgainCanHaveItsReceipt) {
    stock();
    const auto quote = agreed();
    pay(quote, cents(5'000));
    ASSERT_TRUE(book->undo());
    EXPECT_TRUE(valueOf(book->billing(quote.id)).withoutReceipt.empty());
    ASSERT_TRUE(book->redo());
    const auto without = valueOf(book->billing(quote.id)).withoutReceipt;
    ASSERT_EQ(without.size(), 1U);
    EXPECT_EQ(valueOf(book->issueReceipt(without[0].payment.id, plainBill)).total, cents(5'000));
    expectSound();
}

TEST_F(BillTest, whatIsIssuedIsNeverUndone) {
    stock();
    const auto quote = agreed();
    ASSERT_TRUE(book->undoState()->undo) << "the stage could be undone";
    const auto made = invoice(quote);
    while (book->undoState()->undo) ASSERT_TRUE(book->undo());
    EXPECT_EQ(bills(quote), std::vector{made});
    EXPECT_EQ(valueOf(book->quote(quote.id)).stage, Stage::Agreed) << "its order stands as it was billed";
    EXPECT_EQ(book->setStage(quote.id, Stage::Quoted).error().fault, idOf(db::Fault::InvoiceStands));
    EXPECT_EQ(book->setStage(quote.id, Stage::Declined).error().fault, idOf(db::Fault::InvoiceStands));
    ASSERT_TRUE(book->issueCredit(made.id, {}, plainBill));
    EXPECT_TRUE(book->setStage(quote.id, Stage::Declined));
    expectSound();
}

TEST_F(BillTest, anUndonePaymentKeepsItsReceipt) {
    stock();
    const auto quote = agreed();
    const auto payment = pay(quote, cents(5'000));
    const auto receipt = valueOf(book->issueReceipt(payment, plainBill));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(valueOf(book->account(quote.id)).paid, Money{});
    EXPECT_EQ(bills(quote), std::vector{receipt});
    EXPECT_EQ(invoice(quote).result.sheet.balance.value, cents(12'888)) << "the next paper says it";
    expectSound();
}

TEST_F(BillTest, aCreditNoteTakesBackInProportionAndASecondInvoiceIsOfThat) {
    stock();
    const auto quote = agreed();
    const auto first = invoice(quote);
    const auto credit = valueOf(book->issueCredit(first.id, cents(6'444), plainBill));
    EXPECT_EQ(credit.total, -cents(6'444));
    EXPECT_EQ(pricing::taxOf(credit.result.parts), cents(444)) << "half of 8.88";
    EXPECT_EQ(credit.result.invoice, first.id);
    EXPECT_EQ(valueOf(book->account(quote.id)).total, cents(6'444));
    EXPECT_EQ(valueOf(book->quotes({}, 1)).at(0).total, cents(6'444)) << "the list says the same";
    const auto billing = valueOf(book->billing(quote.id));
    EXPECT_EQ(billing.toInvoice, cents(6'444));
    ASSERT_EQ(billing.openInvoices.size(), 1U);
    EXPECT_EQ(billing.openInvoices[0].left, cents(6'444));
    const auto second = invoice(quote);
    EXPECT_TRUE(second.number.ends_with("-0002"));
    EXPECT_EQ(second.total, cents(6'444));
    EXPECT_EQ(second.result.parts, credit.result.parts);
    EXPECT_EQ(valueOf(book->account(quote.id)).total, cents(12'888));
    expectSound();
}

TEST_F(BillTest, whatTodayAsksGoesByTheInvoice) {
    stock();
    const auto quote = agreed();
    const auto made = invoice(quote);
    for (const auto stage : {Stage::InProduction, Stage::Ready, Stage::Collected})
        ASSERT_TRUE(book->setStage(quote.id, stage));
    const auto owed = [&] {
        for (const auto& asked : valueOf(book->askedToday()).jobs)
            if (asked.reminder == catalogue::Reminder::Owed) return asked.amount;
        return Money{};
    };
    EXPECT_EQ(owed(), cents(12'888));
    ASSERT_TRUE(book->issueCredit(made.id, cents(2'888), plainBill));
    EXPECT_EQ(owed(), cents(10'000));
    pay(quote, cents(10'000));
    EXPECT_EQ(owed(), Money{});
}

TEST_F(BillTest, stayAsTheyWereWhateverChanges) {
    stock();
    const auto quote = agreed();
    pay(quote, cents(100));
    const auto made = invoice(quote);
    auto shop = valueOf(book->shop());
    shop.letterhead.name = "Another name";
    shop.rules.tax.rate = Rate::fromPercent(50);
    shop.rules.daysToPay = 99;
    shop.paper = shop.paper == catalogue::Paper::A4 ? catalogue::Paper::Letter : catalogue::Paper::A4;
    ASSERT_TRUE(book->save(shop));
    for (auto each : valueOf(book->packs())) {
        for (auto& step : each.prices) step.each += step.each;
        ASSERT_TRUE(book->save(each));
    }
    auto person = *valueOf(book->customer(customer));
    person.name = "Somebody else";
    ASSERT_TRUE(book->save(person));
    clock.now += std::chrono::years(1);
    reopen();
    EXPECT_EQ(bills(quote), std::vector{made});
    expectSound();
}

TEST_F(BillTest, numbersBeginAnewEachYear) {
    stock();
    const auto one = agreed();
    const auto two = agreed();
    const auto year = clock.environment().today().iso().substr(0, 4);
    EXPECT_EQ(invoice(one).number, "I-" + year + "-0001");
    clock.now += std::chrono::years(1);
    EXPECT_EQ(invoice(two).number, "I-" + std::to_string(std::stoi(year) + 1) + "-0001");
    expectSound();
}

TEST_F(BillTest, whatFailsInBetweenLeavesNoGap) {
    stock();
    const auto quote = agreed();
    std::string number;
    const auto done = book->batch(base::say(db::Note::Adding, "a bill"), [&]() -> base::Done {
        number = invoice(quote).number;
        return base::fail(db::Fault::Stopped, "here");
    });
    ASSERT_FALSE(done);
    EXPECT_TRUE(bills(quote).empty());
    EXPECT_EQ(invoice(quote).number, number);
    expectSound();
}

TEST_F(BillTest, aCheckTellsWhatIsMissingOrChanged) {
    stock();
    const auto quote = agreed();
    const auto made = invoice(quote);
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE series SET last_number = 2 WHERE name = 'invoice'"));
    auto missing = made.number;
    missing.back() = '2';
    EXPECT_EQ(damage(), std::vector<std::string>{"BillNumberMissing(" + missing + ")"});
    ASSERT_NO_FATAL_FAILURE(runSql("DELETE FROM series WHERE name = 'invoice'"));
    EXPECT_EQ(damage(), std::vector<std::string>{"BillNumberLost(" + made.number + ")"});
    ASSERT_NO_FATAL_FAILURE(runSql("INSERT INTO series SELECT 'invoice', year, 1 FROM series WHERE name = 'quote';"
                                   "UPDATE paper SET total_micros = total_micros + 10000 WHERE kind = 'invoice'"));
    EXPECT_FALSE(damage().empty()) << "the column is not what is sealed";
    ASSERT_NO_FATAL_FAILURE(runSql("UPDATE paper SET total_micros = total_micros - 10000 WHERE kind = 'invoice';"
                                   "UPDATE paper SET until_on = '2031-01-01' WHERE kind = 'invoice'"));
    EXPECT_FALSE(damage().empty());
}

// Over random jobs: no invoice number missing or twice; by rate, invoices less credits are never more than was agreed,
// and once all is invoiced again they are exactly that, so the tax is; the account is invoices less credits and the sum
// of the ledger; what was issued stays as it was.
TEST_F(BillTest, whatAnExemptCustomerBoughtStandsApartInTheReportOfTax) {
    stock();
    invoice(agreed());
    asksExemption = true;
    const auto made = invoice(agreed({}, cents(7'500)));
    asksExemption = false;
    invoice(agreed({}, cents(100)));
    const auto today = clock.environment().today();
    const auto report = [&] { return valueOf(book->taxReport(today, today)); };
    EXPECT_EQ(report().exempt, cents(7'500));
    EXPECT_EQ(report().untaxed, cents(2'000) + cents(100));
    EXPECT_EQ(report().taxable(), cents(10'000));
    EXPECT_EQ(report().tax(), cents(888));
    ASSERT_TRUE(book->issueCredit(made.id, cents(2'500), plainBill));
    EXPECT_EQ(report().exempt, cents(5'000));
    EXPECT_EQ(report().total(), cents(12'888 + 5'000 + 100));
}

TEST_F(BillTest, lawsOverRandomJobs) {
    stock();
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    std::vector<IssuedBill> all;
    std::vector<db::Quote> jobs;
    const auto keep = [&](base::Result<IssuedBill> made) {
        if (made) all.push_back(std::move(*made));
    };
    for (int step = 0; step < 150; ++step) {
        if (jobs.empty() || upTo(5) == 0) {
            std::vector<pricing::TaxAmount> taxes;
            for (std::int64_t i = 0, rates = upTo(2); i < rates; ++i)
                taxes.push_back({"Tax " + std::to_string(i), Rate::fromPpm(50'000 + 10'000 * i),
                                 cents(1 + upTo(40'000)), cents(upTo(3'000))});
            jobs.push_back(agreed(taxes, cents(1 + upTo(5'000))));
        }
        const auto& quote = jobs[static_cast<std::size_t>(upTo(static_cast<std::int64_t>(jobs.size()) - 1))];
        const auto billing = valueOf(book->billing(quote.id));
        switch (upTo(3)) {
        case 0: keep(book->issueInvoice(quote.id, plainBill)); break;
        case 1: pay(quote, cents(1 + upTo(9'000))); break;
        case 2:
            if (!billing.withoutReceipt.empty())
                keep(book->issueReceipt(billing.withoutReceipt[0].payment.id, plainBill));
            break;
        default:
            if (billing.openInvoices.empty()) break;
            keep(book->issueCredit(billing.openInvoices[0].id,
                                   upTo(2) == 0
                                       ? std::nullopt
                                       : std::optional(cents(1 + upTo(billing.openInvoices[0].left.micros() / 10'000))),
                                   plainBill));
        }
    }
    for (const auto& quote : jobs) {
        keep(book->issueInvoice(quote.id, plainBill)); // what is left, if anything
        std::vector<BillPart> sum;
        for (const auto& bill : bills(quote))
            if (bill.kind != PaperKind::Receipt)
                pricing::addParts(sum, bill.result.parts, bill.kind == PaperKind::Credit ? -1 : 1);
        const auto& figures = quote.result->figures;
        pricing::addParts(sum, pricing::partsOf(figures.taxes, figures.taxIncluded, figures.total), -1);
        EXPECT_TRUE(sum.empty()) << quote.number << ": by rate, invoices less credits are what was agreed";
        const auto account = valueOf(book->account(quote.id));
        EXPECT_EQ(account.total, figures.total);
        Money ledger;
        for (const auto& payment : valueOf(book->payments(quote.id))) ledger += payment.amount;
        EXPECT_EQ(account.paid, ledger);
    }
    // What the report of tax says is the sum of what the papers say.
    pricing::TaxReport told;
    for (const auto& bill : all)
        if (bill.kind == PaperKind::Invoice)
            told.addInvoice(bill.result.parts, false);
        else if (bill.kind == PaperKind::Credit)
            told.addCreditNote(bill.result.parts, false);
    const auto today = clock.environment().today();
    const auto report = valueOf(book->taxReport(today, today));
    EXPECT_EQ(report.tax(), told.tax());
    EXPECT_EQ(report.total(), told.total());
    EXPECT_EQ(report.untaxed, told.untaxed);
    EXPECT_EQ(report.invoices + report.creditNotes,
              std::ranges::count_if(all, [](const IssuedBill& bill) { return bill.kind != PaperKind::Receipt; }));
    EXPECT_EQ(valueOf(book->taxReport(today.plusDays(1), today.plusDays(9))), pricing::TaxReport{});
    EXPECT_EQ(valueOf(book->taxReport(today.plusDays(-9), today.plusDays(-1))), pricing::TaxReport{});
    reopen();
    std::map<std::string, int> numbers;
    for (const auto& bill : all) {
        EXPECT_EQ(valueOf(book->billNumbered(bill.number)), bill);
        EXPECT_EQ(++numbers[bill.number], 1) << bill.number;
    }
    for (const std::string prefix : {"I-", "R-", "C-"}) {
        int count = 0;
        for (const auto& [number, times] : numbers) count += number.starts_with(prefix) ? times : 0;
        char last[16];
        std::snprintf(last, sizeof last, "-%04d", count);
        EXPECT_TRUE(count == 0 || numbers.contains(prefix + clock.environment().today().iso().substr(0, 4) + last))
            << prefix << ": the last number is their count, so none is missing";
    }
    expectSound();
}

} // namespace
