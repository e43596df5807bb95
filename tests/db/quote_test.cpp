// SPDX-License-Identifier: MIT
#include "tests/db/bench_book.h"

#include <sqlite3.h>

namespace {

using namespace sp;
using base::Code;
using db::Stage;
using test::BookTest;
using test::valueOf;
using units::Count;
using units::Money;

using QuoteTest = BookTest;

TEST_F(QuoteTest, keepsADraftAsItWasTyped) {
    stock();
    const auto typed = draft();
    reopen();
    const auto kept = book->lastDraft().value();
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->order, typed.order);
    EXPECT_EQ(kept->version, typed.version);
    EXPECT_EQ(kept->number, "");
    EXPECT_EQ(kept->stage, Stage::Enquiry);
    EXPECT_FALSE(kept->frozen.has_value());
    expectSound();
}

TEST_F(QuoteTest, givesANewOneInOneStepOrLeavesNothing) {
    stock();
    const auto order = draft().order;
    const auto inputs = book->priceBook(customer).value();
    const auto before = book->quotes("", 100)->size();
    const auto total = Money::fromMicros(412'500'000);
    EXPECT_FALSE(book->issueNew(order, inputs, test::resultOf(total), order.quotedOn.plusDays(-1)));
    EXPECT_EQ(book->quotes("", 100)->size(), before) << "a refused quote left its draft";
    const auto issued = book->issueNew(order, inputs, test::resultOf(total), order.quotedOn.plusDays(21));
    ASSERT_TRUE(issued) << describe(issued.error());
    EXPECT_EQ(issued->number, "2026-0001");
    EXPECT_EQ(issued->order, order);
    EXPECT_EQ(book->quotes("", 100)->size(), before + 1);
    expectSound();
}

TEST_F(QuoteTest, opensWithTheDraftThatWasWorkedOnLast) {
    auto first = book->startQuote().value();
    const auto second = book->startQuote().value();
    EXPECT_EQ(book->lastDraft()->value().id, second.id);
    first.order.asksExemption = true;
    ASSERT_TRUE(book->saveDraft(first));
    EXPECT_EQ(book->lastDraft()->value().id, first.id);
}

TEST_F(QuoteTest, refusesADraftOfAnOlderVersion) {
    stock();
    auto mine = draft();
    auto theirs = mine;
    theirs.order.asksExemption = false;
    ASSERT_TRUE(book->saveDraft(theirs));
    mine.order.lines.clear();
    EXPECT_EQ(book->saveDraft(mine).error().code, Code::Conflict);
    EXPECT_EQ(book->quote(mine.id)->order, theirs.order);
}

TEST_F(QuoteTest, sealsAQuoteWithAllItsInputs) {
    stock();
    const auto typed = draft();
    const auto inputs = book->priceBook(customer).value();
    const auto total = Money::fromMicros(412'500'000);
    const auto until = typed.order.quotedOn.plusDays(21);
    const auto sealed = book->issue(typed, inputs, test::resultOf(total), until).value();
    EXPECT_EQ(sealed.number, "2026-0001");
    EXPECT_EQ(sealed.stage, Stage::Quoted);
    EXPECT_EQ(sealed.order, typed.order);
    EXPECT_EQ(sealed.frozen, inputs);
    EXPECT_EQ(sealed.sealedTotal, total);
    EXPECT_EQ(sealed.validUntil, until);
    reopen();
    const auto read = book->quoteNumbered("2026-0001").value();
    EXPECT_EQ(read.order, typed.order);
    EXPECT_EQ(read.frozen, inputs);
    EXPECT_EQ(read.sealedTotal, total);
    EXPECT_EQ(read.validUntil, until);
    EXPECT_FALSE(book->lastDraft()->has_value());
    expectSound();
}

TEST_F(QuoteTest, staysFrozenWhenEverythingInTheBookChanges) {
    stock();
    const auto inputs = book->priceBook(customer).value();
    const auto sealed = issued();
    ASSERT_TRUE(book->moveStock(tape, 40, Money::fromMicros(77'000'000), "delivery"));
    for (auto material : valueOf(book->materials())) {
        material.name += " new";
        material.fixedPrice = material.fixedPrice + Money::fromMicros(1);
        material.basis = catalogue::PriceBasis::Fixed;
        material.stone.loss = units::Rate::fromPercent(9);
        material.sheet.gap = units::Length::fromMicrometres(9'000);
        material.sizes.clear();
        ASSERT_TRUE(book->save(material));
    }
    for (auto held : valueOf(book->packs())) {
        held.prices = {{Count::of(1), Money::fromMicros(99'000'000)}};
        ASSERT_TRUE(book->save(held));
    }
    auto changed = design;
    changed.stones[0].count = Count::of(1'000);
    changed.width = changed.height;
    ASSERT_TRUE(book->save(changed));
    ASSERT_TRUE(book->removeDesign(design.id));
    auto person = book->customers()->front();
    person.name = "Rowan";
    person.certificate.reset();
    ASSERT_TRUE(book->save(person));
    ASSERT_TRUE(book->removeCustomer(customer));
    auto shop = test::sampleShop({});
    shop.currency = units::Currency::parse("JPY").value();
    shop.smallestCoin = {};
    shop.rules.tax.rate = {};
    shop.rates.labourPerHour = {};
    ASSERT_TRUE(book->save(shop));
    auto bench = test::sampleBench();
    for (auto& step : bench.steps) step = {};
    ASSERT_TRUE(book->save(bench));
    ASSERT_TRUE(book->setStage(sealed.id, Stage::Agreed));
    reopen();
    const auto read = book->quote(sealed.id).value();
    EXPECT_EQ(read.frozen, inputs);
    EXPECT_EQ(read.order, sealed.order);
    EXPECT_EQ(read.sealedTotal, sealed.sealedTotal);
    EXPECT_EQ(read.stage, Stage::Agreed);
    EXPECT_NE(book->priceBook({})->materials, inputs.materials);
    expectSound();
}

TEST_F(QuoteTest, lendsTheSamePricesToAllQuotesGivenAtThem) {
    stock();
    issued();
    book.reset();
    const auto one = std::filesystem::file_size(file);
    reopen();
    for (int i = 0; i < 20; ++i) issued();
    book.reset();
    // Twenty quotes of the same prices: room for their orders, not for twenty price books.
    EXPECT_LT(std::filesystem::file_size(file), one + 20 * 12'000);
    reopen();
    EXPECT_EQ(book->quoteNumbered("2026-0021")->frozen, book->quoteNumbered("2026-0001")->frozen);
    expectSound();
}

TEST_F(QuoteTest, givesAQuoteOnlyOnce) {
    stock();
    auto sealed = issued();
    EXPECT_EQ(book->saveDraft(sealed).error().code, Code::Conflict);
    EXPECT_EQ(test::described(
                  book->issue(sealed, *sealed.frozen, test::resultOf(*sealed.sealedTotal), *sealed.validUntil).error()),
              "QuoteGiven(2026-0001)");
}

TEST_F(QuoteTest, refusesToGiveWhatIsNotFit) {
    stock();
    const auto typed = draft();
    const auto inputs = book->priceBook(customer).value();
    const auto until = typed.order.quotedOn;
    auto empty = typed;
    empty.order.lines.clear();
    EXPECT_EQ(test::described(book->issue(empty, inputs, test::resultOf({}), until).error()), "NothingOnQuote");
    EXPECT_EQ(test::described(book->issue(typed, inputs, test::resultOf({}), until.plusDays(-1)).error()),
              "EndsBeforeItBegins");
    EXPECT_EQ(test::described(book->issue(typed, book->priceBook({}).value(), test::resultOf({}), until).error()),
              "PricesOfAnother");
    EXPECT_EQ(book->issue(typed, inputs, test::resultOf(Money::fromMicros(INT64_MAX)), until).error().code,
              Code::Invalid);
    auto spoilt = inputs;
    spoilt.shop.rules.ladder.clear();
    EXPECT_EQ(book->issue(typed, spoilt, test::resultOf({}), until).error().code, Code::Invalid);
    EXPECT_EQ(book->quote(typed.id)->number, "");
    EXPECT_EQ(issued().number, "2026-0001");
    expectSound();
}

TEST_F(QuoteTest, countsWithinTheYearWhateverTheClockDoes) {
    stock();
    EXPECT_EQ(issued().number, "2026-0001");
    EXPECT_EQ(issued().number, "2026-0002");
    clock.now += std::chrono::days(60);
    EXPECT_EQ(issued().number, "2027-0001");
    clock.now -= std::chrono::days(90);
    EXPECT_EQ(issued().number, "2026-0003");
    clock.now += std::chrono::days(365 * 30);
    EXPECT_EQ(issued().number, "2056-0001");
    clock.now -= std::chrono::days(365 * 30);
    EXPECT_EQ(issued().number, "2026-0004");
    std::vector<std::string> order;
    for (const auto& row : valueOf(book->quotes("", 50))) order.push_back(row.number);
    EXPECT_EQ(order,
              (std::vector<std::string>{"2026-0004", "2056-0001", "2026-0003", "2027-0001", "2026-0002", "2026-0001"}));
    expectSound();
}

TEST_F(QuoteTest, listsTheNewestFirstAndFindsByNumberCustomerOrTitle) {
    stock();
    const auto sealed = issued();
    auto other = book->startQuote().value();
    other.order.lines = {test::sampleLine(design)};
    other.order.lines[0].title = "Étoile filante";
    ASSERT_TRUE(book->saveDraft(other));
    const auto all = book->quotes("", 50).value();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].id, other.id);
    EXPECT_EQ(all[0].firstTitle, "Étoile filante");
    EXPECT_EQ(all[0].lines, 1);
    EXPECT_EQ(all[0].customer, "");
    EXPECT_FALSE(all[0].total.has_value());
    EXPECT_EQ(all[1].number, "2026-0001");
    EXPECT_EQ(all[1].firstTitle, "Lantern");
    EXPECT_EQ(all[1].lines, 2);
    EXPECT_EQ(all[1].customer, "Rowan Bakery");
    EXPECT_EQ(all[1].total, sealed.sealedTotal);
    EXPECT_EQ(all[1].stage, Stage::Quoted);
    EXPECT_EQ(book->quotes("", 1)->size(), 1U);
    for (const auto* text : {"0001", "rowan", "LANTERN, small"})
        EXPECT_EQ(book->quotes(text, 50)->at(0).id, sealed.id) << text;
    EXPECT_EQ(book->quotes("ÉTOILE", 50)->at(0).id, other.id);
    EXPECT_EQ(book->quotes("100%_", 50)->size(), 0U);
}

TEST_F(QuoteTest, movesThroughItsStages) {
    stock();
    const auto typed = draft();
    EXPECT_EQ(book->setStage(typed.id, Stage::Agreed).error().code, Code::Invalid);
    ASSERT_TRUE(book->setStage(typed.id, Stage::Declined));
    ASSERT_TRUE(book->setStage(typed.id, Stage::Enquiry));
    const auto sealed = issued();
    EXPECT_EQ(book->setStage(sealed.id, Stage::Enquiry).error().code, Code::Invalid);
    for (const auto stage : {Stage::Agreed, Stage::InProduction, Stage::Ready, Stage::Collected}) {
        ASSERT_TRUE(book->setStage(sealed.id, stage));
        EXPECT_EQ(book->quote(sealed.id)->stage, stage);
    }
    EXPECT_EQ(test::described(book->setStage(sealed.id, Stage::Declined).error()), "StageCannotFollow(2026-0001)")
        << "it was collected";
    ASSERT_TRUE(book->setStage(sealed.id, Stage::Ready)) << "a slip is corrected";
    EXPECT_EQ(book->setStage({}, Stage::Agreed).error().code, Code::NotFound);
    expectSound();
}

TEST_F(QuoteTest, lapsesWithItsLastDayUntilItIsAnswered) {
    stock();
    const auto sealed = issued();
    const auto lapsed = [&] { return book->quotes({}, 1)->at(0).isLapsed; };
    EXPECT_FALSE(lapsed());
    clock.now = std::chrono::sys_days(sealed.validUntil->days()) + std::chrono::hours(23);
    EXPECT_FALSE(lapsed()) << "on the last day it still holds";
    clock.now += std::chrono::hours(2);
    EXPECT_TRUE(lapsed());
    ASSERT_TRUE(book->setStage(sealed.id, Stage::Agreed));
    EXPECT_FALSE(lapsed());
}

/// 24 and 36 of the same, the second looked at; what each comes to is made up.
class ChoiceTest : public QuoteTest {
  protected:
    static constexpr std::int64_t kFirst = 412'500'000;
    static constexpr std::int64_t kSecond = 590'000'000;

    db::Quote twoChoices() {
        stock();
        auto quote = draft();
        catalogue::addChoice(quote.order);
        quote.order.lines[0].quantity = Count::of(36);
        quote.version = valueOf(book->saveDraft(quote));
        return quote;
    }

    db::Quote given() {
        const auto quote = twoChoices();
        auto result = test::resultOf(Money::fromMicros(kSecond));
        result.others.push_back(test::resultOf(Money::fromMicros(kFirst)).priced);
        result.sheetFor = [sheetFor = result.sheetFor](const std::string& number) {
            auto sheet = sheetFor(number);
            sheet.name = "Choice 2";
            sheet.others.emplace_back();
            sheet.others[0].name = "Choice 1";
            sheet.others[0].toPay = {Money::fromMicros(kFirst), "412.50"};
            sheet.choice = 1;
            return sheet;
        };
        const auto inputs = book->priceBook(customer).value();
        return valueOf(book->issue(quote, inputs, result, quote.order.quotedOn.plusDays(21)));
    }
};

TEST_F(ChoiceTest, keepsAllChoicesOfADraft) {
    const auto typed = twoChoices();
    reopen();
    EXPECT_EQ(book->quote(typed.id)->order, typed.order);
    EXPECT_EQ(book->quotes({}, 1)->at(0).choices, 2);
    ASSERT_TRUE(book->removeDesign(design.id)) << "its stones stay known";
    expectSound();
}

TEST_F(ChoiceTest, sealsWhatEachComesTo) {
    const auto sealed = given();
    reopen();
    auto read = book->quote(sealed.id).value();
    EXPECT_EQ(read.order, sealed.order);
    EXPECT_EQ(read.sealedTotal, Money::fromMicros(kSecond));
    EXPECT_EQ(read.result->sheet.name, "Choice 2");
    db::lookAtChoice(read, 0);
    EXPECT_EQ(read.order.lines[0].quantity, Count::of(24));
    EXPECT_EQ(read.sealedTotal, Money::fromMicros(kFirst));
    EXPECT_EQ(read.result->sheet.name, "Choice 1");
    const auto listed = book->quotes({}, 1)->at(0);
    EXPECT_EQ(listed.total, Money::fromMicros(kFirst)) << "from the lowest";
    EXPECT_EQ(listed.highestTotal, Money::fromMicros(kSecond)) << "to the highest";
    expectSound();
}

TEST_F(ChoiceTest, goesByTheOneThatIsTaken) {
    const auto sealed = given();
    const auto refused = book->setStage(sealed.id, Stage::Agreed);
    EXPECT_EQ(test::described(refused.error()), "NoChoiceTaken(2026-0001, 2)");
    EXPECT_EQ(test::described(book->takeChoice(sealed.id, 2).error()), "NoSuchChoice(2026-0001, 2)");
    ASSERT_TRUE(book->takeChoice(sealed.id, 0));
    ASSERT_TRUE(book->setStage(sealed.id, Stage::Agreed));
    EXPECT_EQ(book->takeChoice(sealed.id, std::nullopt).error().code, Code::Invalid) << "it is agreed to";
    reopen();
    const auto read = book->quote(sealed.id).value();
    EXPECT_EQ(read.choiceTaken, 0);
    EXPECT_EQ(read.order.choice, 0);
    EXPECT_EQ(read.order.lines[0].quantity, Count::of(24));
    EXPECT_EQ(read.order.others.size(), 1U) << "the other is kept";
    EXPECT_EQ(read.sealedTotal, Money::fromMicros(kFirst));
    const auto listed = book->quotes({}, 1)->at(0);
    EXPECT_EQ(listed.total, Money::fromMicros(kFirst));
    EXPECT_EQ(listed.highestTotal, std::nullopt);
    EXPECT_EQ(listed.choiceTaken, 0);
    expectSound();
}

TEST_F(ChoiceTest, takesAChoiceBackByUndo) {
    const auto sealed = given();
    ASSERT_TRUE(book->takeChoice(sealed.id, 1));
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(book->quote(sealed.id)->choiceTaken, std::nullopt);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(book->quote(sealed.id)->choiceTaken, 1);
    EXPECT_EQ(book->takeChoice(draft().id, 0).error().code, Code::Invalid) << "a draft offers nothing yet";
    expectSound();
}

TEST_F(ChoiceTest, isNotGivenWithAnEmptyChoice) {
    auto quote = twoChoices();
    quote.order.others[0].lines.clear();
    quote.version = valueOf(book->saveDraft(quote));
    const auto inputs = book->priceBook(customer).value();
    const auto refused =
        book->issue(quote, inputs, test::resultOf(Money::fromMicros(1)), quote.order.quotedOn.plusDays(21));
    EXPECT_EQ(refused.error().code, Code::Invalid);
}

TEST_F(QuoteTest, knowsNoQuoteThatIsNotThere) {
    EXPECT_EQ(test::described(book->quoteNumbered("2026-0001").error()), "NoQuoteNumbered(2026-0001)");
    EXPECT_EQ(book->quoteNumbered("").error().code, Code::NotFound);
    EXPECT_EQ(book->quote({}).error().code, Code::NotFound);
    EXPECT_EQ(book->saveDraft({}).error().code, Code::NotFound);
}

// What somebody could do to a sealed quote with another program, table by table.
struct Tampering {
    std::string name;
    std::string sql;
};

void PrintTo(const Tampering& row, std::ostream* out) { *out << row.name; }

class TamperedSeal : public BookTest, public testing::WithParamInterface<Tampering> {};

TEST_P(TamperedSeal, isReportedByCheck) {
    stock();
    issued();
    issued();
    issued();
    book.reset();
    expectSound();
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &other), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(other, GetParam().sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
        << sqlite3_errmsg(other);
    EXPECT_GT(sqlite3_total_changes(other), 0);
    sqlite3_close(other);
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report);
    EXPECT_FALSE(report->damage.empty());
}

INSTANTIATE_TEST_SUITE_P(
    Quotes, TamperedSeal,
    testing::Values(
        Tampering{"total", "UPDATE paper SET total_micros = total_micros + 1 WHERE number = '2026-0002'"},
        Tampering{"frozen", "UPDATE record SET json = replace(json, '412500000', '412500001') WHERE digest = (SELECT "
                            "digest FROM seal WHERE place = 2)"},
        Tampering{"number", "UPDATE paper SET number = '2026-0009' WHERE number = '2026-0002'"},
        Tampering{"digest", "PRAGMA foreign_keys = OFF; UPDATE seal SET digest = zeroblob(32) WHERE place = 2"},
        Tampering{"takenOut", "DELETE FROM seal WHERE place = 2"},
        Tampering{"lastTakenOut", "DELETE FROM seal WHERE place = 3"},
        Tampering{"prices",
                  "UPDATE record SET json = replace(json, '6940000', '1940000') WHERE json LIKE '%priced-material%'"},
        Tampering{"pricesTakenOut",
                  "PRAGMA foreign_keys = OFF; DELETE FROM record WHERE json LIKE '%\"kind\":\"shop\"%'"},
        Tampering{"line", "UPDATE job_line SET quantity = 25 WHERE line = 0"},
        Tampering{"lineTakenOut", "UPDATE record SET json = replace(json, '\"count\":217', '\"count\":218') WHERE json "
                                  "LIKE '%\"kind\":\"order\"%'"},
        Tampering{"stage", "UPDATE job SET stage = 'collected'"},
        Tampering{"choice", "UPDATE revision SET choice_taken = 0"},
        Tampering{"quoteNumber", "UPDATE job SET number = '2026-0077' WHERE number = '2026-0003'"},
        Tampering{"quoteRemoved", "UPDATE job SET deleted_at = '2026-11-25T09:00:00.000Z' WHERE number = '2026-0003'"},
        Tampering{"count", "UPDATE series SET last_number = 2"}),
    [](const auto& row) { return row.param.name; });

TEST_F(QuoteTest, keepsWhatTheCustomerWasGiven) {
    stock();
    const auto sealed = issued();
    ASSERT_TRUE(sealed.result);
    EXPECT_EQ(sealed.result->rules, catalogue::kRulesVersion);
    EXPECT_EQ(sealed.result->figures.total, Money::fromMicros(412'500'000));
    EXPECT_EQ(sealed.result->sheet.title, "Quote 2026-0001");
    EXPECT_EQ(sealed.result->sheet.customer.name, "Rowan Bakery");
    reopen();
    EXPECT_EQ(book->quote(sealed.id)->result, sealed.result);
    EXPECT_EQ(book->quotesWithoutResult(10)->size(), 0U);
}

// Taken out behind the program's back: all else stays, the seals still hold, and a check tells.
TEST_F(QuoteTest, keepsItsSealsWhenTheCustomerIsTakenOut) {
    stock();
    const auto first = issued();
    const auto second = issued();
    book.reset();
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &other), SQLITE_OK);
    sqlite3_exec(other,
                 "UPDATE record SET json = '', salt = x'', erased_at = '2026-11-25T09:00:00.000Z' "
                 "WHERE json LIKE '%\"kind\":\"sealed-person\"%'",
                 nullptr, nullptr, nullptr);
    EXPECT_EQ(sqlite3_changes(other), 2);
    sqlite3_close(other);
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report);
    EXPECT_EQ(report->damage, (std::vector{base::say(db::Note::PersonTakenOut, first.number),
                                           base::say(db::Note::PersonTakenOut, second.number)}));
    reopen();
    const auto read = book->quote(second.id).value();
    EXPECT_EQ(read.sealedTotal, second.sealedTotal);
    EXPECT_EQ(read.order, second.order);
    EXPECT_FALSE(read.frozen->customer);
    EXPECT_EQ(read.result->sheet.customer, test::erasedCustomer());
    EXPECT_EQ(read.result->figures, second.result->figures);
}

TEST_F(QuoteTest, doesNotOpenAQuoteWhoseSealDoesNotMatch) {
    stock();
    const auto sealed = issued();
    book.reset();
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &other), SQLITE_OK);
    sqlite3_exec(other, "UPDATE paper SET total_micros = 1", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    reopen();
    const auto read = book->quote(sealed.id);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, Code::Damaged);
    EXPECT_EQ(test::described(read.error()), "SealBroken(2026-0001, Stone Bench.jobbook)");
}

} // namespace
