// SPDX-License-Identifier: MIT
//
// What jobs earned, held over a shop at work (made up from a seed) against what its sealed papers say, read one by one.
#include "db/book/earned_jobs.h"

#include "app/demo/demo_book.h"
#include "core/figures/split.h"
#include "core/pricing/bill.h"
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"
#include "tests/support/shop_year.h"

#include <array>
#include <functional>
#include <map>

namespace {

using namespace sp;
using catalogue::PaperKind;
using figures::By;
using figures::Earned;
using test::valueOf;
using units::Count;
using units::Date;
using units::Money;

const Date kFirst = Date::fromDays(std::chrono::year(2000) / 1 / 1);
const Date kLast = Date::fromDays(std::chrono::year(2100) / 1 / 1);

class EarnedJobs : public test::BookTest {
  protected:
    void SetUp() override {
        auto made = demo::createDemoBook(file, clock.environment());
        ASSERT_TRUE(made) << describe(made.error());
        book = std::move(*made);
    }

    /// What a job was sold for without tax and what it cost, from its papers.
    Earned onPaper(const db::Quote& quote) {
        Money billed;
        Money billedNet;
        bool isBilled = false;
        for (const auto& bill : valueOf(book->billing(quote.id)).bills) {
            if (bill.kind == PaperKind::Receipt) continue;
            isBilled = true;
            billed += bill.total; // a credit note's is below nothing
            for (const auto& part : bill.result.parts)
                billedNet += bill.kind == PaperKind::Credit ? -part.net : part.net;
        }
        const auto& sealed = quote.result->figures;
        const bool isAsBilled = isBilled && valueOf(book->account(quote.id)).total == billed;
        Earned earned{.income = isAsBilled ? billedNet : sealed.total - sealed.tax, .cost = sealed.cost};
        earned.cardFee = sealed.cardFee;
        for (const auto& line : quote.order.lines)
            if (!line.isCharge()) earned.pieces += line.quantity;
        return earned;
    }

    /// That all that was handed over is in the figures, as its papers say.
    void expectAsOnPaper(const std::vector<figures::EarnedLine>& lines) {
        std::map<base::Id, Earned> byJob;
        for (const auto& line : lines) byJob[line.job] += line.earned;
        std::size_t handedOver = 0;
        for (const auto& job : valueOf(book->quotes({}, 1'000'000))) {
            if (job.stage != db::Stage::Collected) continue;
            ++handedOver;
            ASSERT_TRUE(byJob.contains(job.id)) << job.number;
            const auto& earned = byJob.at(job.id);
            const auto paper = onPaper(valueOf(book->quote(job.id)));
            EXPECT_EQ(earned.income, paper.income) << job.number;
            EXPECT_EQ(earned.cost, paper.cost) << job.number;
            EXPECT_EQ(earned.cardFee, paper.cardFee) << job.number;
            EXPECT_EQ(earned.pieces, paper.pieces) << job.number;
            EXPECT_TRUE(earned.isBenchKnown) << job.number;
        }
        EXPECT_EQ(byJob.size(), handedOver);
    }

    /// Gives `order` as a quote, priced, and hands it over. `amend` makes what is sealed another than what this program
    /// reaches.
    db::Quote handedOver(const catalogue::Order& order, const std::function<void(pricing::PricedOrder&)>& amend = {}) {
        const auto prices = valueOf(book->priceBook(order.customer));
        auto priced = valueOf(pricing::priceOrder(order, prices, fits));
        if (amend) amend(priced);
        auto result = test::resultOf(priced.total);
        result.priced = std::move(priced);
        const auto quote = valueOf(book->issueNew(order, prices, result, order.quotedOn.plusDays(21)));
        EXPECT_TRUE(book->setStage(quote.id, db::Stage::Agreed));
        EXPECT_TRUE(book->setStage(quote.id, db::Stage::Collected));
        return quote;
    }
    catalogue::Order orderOf(std::vector<std::pair<std::size_t, std::int64_t>> wanted) {
        const auto designs = valueOf(book->designs());
        auto order = valueOf(book->startQuote()).order;
        order.lines.clear();
        for (const auto& [place, quantity] : wanted) {
            auto line = catalogue::lineOf(designs.at(place));
            line.quantity = Count::of(quantity);
            order.lines.push_back(std::move(line));
        }
        return order;
    }
    std::vector<figures::EarnedLine> linesOf(const db::Quote& quote) {
        std::vector<figures::EarnedLine> lines;
        for (const auto& line : valueOf(reader.earned(*book, kFirst, kLast)).lines)
            if (line.job == quote.id) lines.push_back(line);
        return lines;
    }

    db::EarnedReader reader;
    layout::FitMemo fits;
};

TEST_F(EarnedJobs, saysWhatTheCounterSaidWhenThePriceWasMade) {
    const auto order = orderOf({{0, 12}, {1, 24}});
    const auto priced = valueOf(pricing::priceOrder(order, valueOf(book->priceBook({})), fits));
    const auto lines = linesOf(handedOver(order));
    ASSERT_EQ(lines.size(), 2U);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& told = priced.lines[i].earnings;
        EXPECT_EQ(lines[i].earned.income, told.net);
        EXPECT_EQ(lines[i].earned.cost, told.cost);
        EXPECT_EQ(lines[i].earned.paidOut, told.paidOut);
        EXPECT_EQ(lines[i].earned.cardFee, told.cardFee);
        EXPECT_EQ(lines[i].earned.left(), told.profit);
        EXPECT_EQ(lines[i].earned.margin(), told.margin);
        EXPECT_EQ(lines[i].earned.perBenchHour(), told.perBenchHour);
        EXPECT_EQ(lines[i].designName, order.lines[i].title);
        EXPECT_EQ(lines[i].blank, order.lines[i].baseMaterial);
    }
    EXPECT_EQ(figures::together(lines).earned.perBenchHour(), priced.earnings.perBenchHour);
}

TEST_F(EarnedJobs, areForWhoeverTheCustomerIsNow) {
    catalogue::Customer person;
    person.name = "Odile Fennimore";
    person.id = valueOf(book->save(person));
    catalogue::Customer twin;
    twin.name = "Fennimore and Sons";
    twin.id = valueOf(book->save(twin));
    auto order = orderOf({{0, 12}});
    order.customer = person.id;
    const auto quote = handedOver(order);
    const auto expectFor = [&](const base::Id& id, const std::string& name) {
        const auto lines = linesOf(quote); // all by one reader
        ASSERT_EQ(lines.size(), 1U);
        EXPECT_EQ(lines.front().customer, id);
        EXPECT_EQ(lines.front().customerName, name);
    };
    expectFor(person.id, "Odile Fennimore");
    person.name = "Odile Fennimore-Tarn";
    ASSERT_TRUE(book->save(person));
    expectFor(person.id, "Odile Fennimore-Tarn");
    ASSERT_TRUE(book->mergeCustomers(person.id, twin.id));
    expectFor(twin.id, "Fennimore and Sons");
    ASSERT_TRUE(book->undo());
    expectFor(person.id, "Odile Fennimore-Tarn");
    catalogue::Payment payment;
    payment.job = quote.id;
    payment.amount = valueOf(book->account(quote.id)).total;
    payment.kind = "Cash";
    payment.paidOn = clock.environment().today();
    ASSERT_TRUE(book->pay(payment, pricing::Beyond::Kept)); // who owes something is not erased
    const auto erased = book->eraseCustomer(person.id);
    ASSERT_TRUE(erased) << describe(erased.error());
    expectFor(person.id, "\u2014");
}

TEST_F(EarnedJobs, areKnownToBeThereBesideTheirDays) {
    EXPECT_FALSE(valueOf(book->hasHandedOver()));
    const auto quote = handedOver(orderOf({{0, 12}}));
    EXPECT_TRUE(valueOf(book->hasHandedOver()));
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Ready));
    EXPECT_FALSE(valueOf(book->hasHandedOver())) << "it is back on the shelf";
}

TEST_F(EarnedJobs, takesOffWhatWasCredited) {
    const auto quote = handedOver(orderOf({{0, 12}, {1, 24}}));
    const auto before = figures::together(linesOf(quote)).earned;
    const db::BillSheetMaker words = [](const quoting::Bill&, const db::Quote&, const catalogue::Shop&) {
        return quoting::SheetContent{};
    };
    const auto invoice = valueOf(book->issueInvoice(quote.id, words));
    EXPECT_EQ(figures::together(linesOf(quote)).earned, before);
    const auto half = Money::fromMicros(invoice.total.micros() / 20'000 * 10'000);
    const auto credit = valueOf(book->issueCredit(invoice.id, half, words));
    Money net;
    for (const auto& part : credit.result.parts) net += part.net;
    const auto after = figures::together(linesOf(quote)).earned;
    EXPECT_EQ(after.income, before.income - net);
    EXPECT_EQ(after.cost, before.cost);
    EXPECT_EQ(after.bench, before.bench);
    ASSERT_TRUE(book->issueCredit(invoice.id, std::nullopt, words));
    EXPECT_TRUE(figures::together(linesOf(quote)).earned.income.isZero());
}

TEST_F(EarnedJobs, areThoseOfTheDayTheyWereHandedOver) {
    const auto quote = handedOver(orderOf({{0, 12}}));
    const auto today = clock.environment().today();
    EXPECT_EQ(valueOf(reader.earned(*book, today, today)).lines.size(), 1U);
    EXPECT_TRUE(valueOf(reader.earned(*book, today.plusDays(1), kLast)).lines.empty());
    EXPECT_TRUE(valueOf(reader.earned(*book, kFirst, today.plusDays(-1))).lines.empty());
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Ready)); // a slip
    EXPECT_TRUE(valueOf(reader.earned(*book, kFirst, kLast)).lines.empty());
}

TEST_F(EarnedJobs, countOnTheShopsOwnDay) {
    clock.zone = std::chrono::hours(9);
    clock.now = std::chrono::sys_days(std::chrono::year(2026) / 11 / 30) + std::chrono::hours(20); // 1 December there
    const auto quote = handedOver(orderOf({{0, 12}}));
    const auto day = *Date::parse("2026-12-01");
    ASSERT_FALSE(linesOf(quote).empty());
    EXPECT_EQ(linesOf(quote).front().day, day);
    clock.zone = std::chrono::hours(-9);
    EXPECT_EQ(linesOf(quote).front().day, *Date::parse("2026-11-30"));
}

TEST_F(EarnedJobs, keepTheirDayWhenAMoveAwayIsUndone) {
    const auto quote = handedOver(orderOf({{0, 12}}));
    const auto day = clock.environment().today();
    const auto dayNow = [&] { return linesOf(quote).front().day; };
    clock.now += std::chrono::days(40);
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Ready));
    EXPECT_TRUE(linesOf(quote).empty());
    clock.now += std::chrono::days(1);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(dayNow(), day) << "the slip is undone";
    ASSERT_TRUE(book->redo());
    clock.now += std::chrono::days(1);
    const auto later = clock.environment().today();
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Collected));
    EXPECT_EQ(dayNow(), later) << "it was moved there once more";
    clock.now += std::chrono::days(1);
    ASSERT_TRUE(book->undo());
    clock.now += std::chrono::days(1);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(dayNow(), later) << "redo brings back what was";
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(dayNow(), day) << "both later moves are undone";
}

TEST_F(EarnedJobs, goByTheInvoiceAfterARevisionToTheSameSum) {
    // Worked by hand: 121.00 with 10 % tax is 110.00 net and 11.00 tax; with 21 % it is 100.00 and 21.00.
    const auto money = [](std::int64_t whole) { return Money::fromMicros(whole * 1'000'000); };
    const auto order = orderOf({{0, 12}});
    const auto prices = valueOf(book->priceBook(order.customer));
    const auto resultWith = [&](std::int64_t percent, Money net, Money tax) {
        auto priced = valueOf(pricing::priceOrder(order, prices, fits));
        priced.lines.front().charged = priced.goods = priced.subtotal = net;
        priced.rush = priced.discount = priced.minimumOrderCharge = {};
        priced.tax = tax;
        priced.taxes = {{"Sales tax", units::Rate::fromPercent(percent), net, tax}};
        priced.total = priced.balance = net + tax;
        auto result = test::resultOf(priced.total);
        result.priced = std::move(priced);
        return result;
    };
    const db::BillSheetMaker words = [](const quoting::Bill&, const db::Quote&, const catalogue::Shop&) {
        return quoting::SheetContent{};
    };
    const auto last = order.quotedOn.plusDays(21);
    const auto quote = valueOf(book->issueNew(order, prices, resultWith(10, money(110), money(11)), last));
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Agreed));
    ASSERT_TRUE(book->issueInvoice(quote.id, words));
    ASSERT_TRUE(book->issueRevision(quote.id, order, prices, resultWith(21, money(100), money(21)), last));
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Agreed));
    ASSERT_TRUE(book->setStage(quote.id, db::Stage::Collected));
    EXPECT_EQ(figures::together(linesOf(quote)).earned.income, money(110));
}

// What is sealed is a micro-unit off what is reckoned, as after a change of the rules.
TEST_F(EarnedJobs, takeWhatIsSealedWhereItIsNotReachedAnyMore) {
    auto shop = valueOf(book->shop());
    shop.rules.tax.onGifts = catalogue::TaxOnGifts::OnCost;
    ASSERT_TRUE(book->save(shop));
    auto order = orderOf({{0, 12}, {1, 24}, {0, 3}});
    order.lines[2].atNoCharge = true;
    order.discount.share = units::Rate::fromPercent(10);
    std::vector<pricing::Earnings> told;
    const auto quote = handedOver(order, [&](pricing::PricedOrder& priced) {
        const auto one = Money::fromMicros(1);
        priced.lines[0].cost.total += one;
        priced.lines[0].earnings.cost += one;
        priced.earnings.cost += one;
        for (const auto& line : priced.lines) told.push_back(line.earnings);
    });
    const auto lines = linesOf(quote);
    ASSERT_EQ(lines.size(), 3U);
    ASSERT_FALSE(told[2].ownTax.isZero());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_EQ(lines[i].earned.income, told[i].net) << i;
        EXPECT_EQ(lines[i].earned.cost, told[i].cost) << i;
        EXPECT_EQ(lines[i].earned.paidOut, told[i].paidOut) << i;
        EXPECT_FALSE(lines[i].earned.isBenchKnown);
    }
}

TEST_F(EarnedJobs, leaveOutWhatTheSealedFiguresDoNotTell) {
    auto shop = valueOf(book->shop());
    shop.rules.tax.onGifts = catalogue::TaxOnGifts::OnCost;
    ASSERT_TRUE(book->save(shop));
    auto order = orderOf({{0, 12}, {1, 24}, {0, 3}});
    order.lines[1].atNoCharge = order.lines[2].atNoCharge = true; // whose tax is whose is not sealed
    const auto quote = handedOver(order, [](pricing::PricedOrder& priced) {
        priced.lines[0].cost.total += Money::fromMicros(1);
        priced.earnings.cost += Money::fromMicros(1);
    });
    EXPECT_TRUE(linesOf(quote).empty());
    const auto told = valueOf(reader.earned(*book, kFirst, kLast));
    EXPECT_EQ(told.leftOut, std::vector<std::string>{quote.number});
}

TEST_F(EarnedJobs, countsWhatWasOfferedByItsAnswer) {
    handedOver(orderOf({{0, 12}}));
    const auto open = orderOf({{0, 30}});
    const auto prices = valueOf(book->priceBook({}));
    for (const bool isLetGo : {false, true}) {
        auto priced = valueOf(pricing::priceOrder(open, prices, fits));
        auto result = test::resultOf(priced.total);
        result.priced = priced;
        const auto quote = valueOf(book->issueNew(open, prices, result, open.quotedOn.plusDays(21)));
        if (isLetGo) { ASSERT_TRUE(book->setStage(quote.id, db::Stage::Declined)); }
    }
    const auto day = open.quotedOn;
    const auto answers =
        figures::answersTo(valueOf(reader.offered(*book, day, day)), std::array{Count::of(12), Count::of(24)});
    ASSERT_EQ(answers.size(), 2U);
    EXPECT_EQ(answers[0].won, 1);
    EXPECT_EQ(answers[0].lost + answers[0].open, 0);
    EXPECT_EQ(answers[1].won, 0);
    EXPECT_EQ(answers[1].lost, 1);
    EXPECT_EQ(answers[1].open, 1);
    EXPECT_EQ(answers[1].lostAt, valueOf(pricing::priceOrder(open, prices, fits)).lines[0].each);
    EXPECT_TRUE(valueOf(reader.offered(*book, day.plusDays(1), kLast)).empty());
}

TEST_F(EarnedJobs, agreeWithThePapersOfAShopAtWork) {
    test::ShopYear year(*book, clock, test::printedSeed());
    year.open(8);
    const auto begins = valueOf(book->shop()).ladderQuantities;
    std::size_t most = 0;
    for (int round = 0; round < 6 || (most <= 3 && round < 60); ++round) { // a shop may hand nothing over for long
        for (int i = 0; i < 60; ++i) year.act();
        const auto told = valueOf(reader.earned(*book, kFirst, kLast));
        ASSERT_NO_FATAL_FAILURE(expectAsOnPaper(told.lines));
        EXPECT_TRUE(told.leftOut.empty());
        // What was read before is what is read afresh.
        const auto all = figures::together(told.lines).earned;
        EXPECT_EQ(figures::together(valueOf(db::EarnedReader().earned(*book, kFirst, kLast)).lines).earned, all);
        for (const auto by : {By::Month, By::Week, By::Design, By::Customer, By::Quantity, By::Blank}) {
            Earned sum;
            for (const auto& group : figures::split(told.lines, by, begins)) sum += group.earned;
            EXPECT_EQ(sum, all);
        }
        most = std::max(most, told.lines.size());
    }
    EXPECT_GT(most, 3U);
}

} // namespace
