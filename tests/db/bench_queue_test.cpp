// SPDX-License-Identifier: MIT
// What is promised is what the plan says once it is agreed to: over orders made up from a seed, with supplies that are
// short, jobs that are being made, and days that nobody works.
#include "db/book/bench_queue.h"

#include "core/scheduling/messages.h"
#include "tests/db/bench_book.h"
#include "tests/support/seed.h"

#include <random>

namespace {

using namespace sp;
using db::Stage;
using test::BookTest;
using test::valueOf;
using units::Count;
using units::Duration;

class BenchQueueTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        auto shop = valueOf(book->shop());
        shop.benchWeek.monday = shop.benchWeek.tuesday = shop.benchWeek.wednesday = shop.benchWeek.friday =
            Duration::fromMinutes(90);
        shop.usualTemplate = {}; // the sample's is no template sheet
        shop.benchWeek.saturday = Duration::fromMinutes(40);
        shop.closedDays = {{today().plusDays(9), today().plusDays(10), "stocktaking"}};
        ASSERT_TRUE(book->save(shop));
        ASSERT_TRUE(book->moveStock(stone, 60'000, std::nullopt, "delivery"));
        ASSERT_TRUE(book->moveStock(tape, 5'000, units::Money::fromMicros(50'000'000), "delivery"));
        ASSERT_TRUE(book->moveStock(blank, 5'000, std::nullopt, "delivery"));
    }
    units::Date today() { return clock.environment().today(); }

    db::Quote draftOf(std::int64_t pieces, std::optional<units::Date> wantedBy) {
        auto quote = valueOf(book->startQuote());
        quote.order = test::sampleOrder(customer, design);
        quote.order.wantedBy = wantedBy;
        quote.order.lines.resize(1);
        auto& line = quote.order.lines.front();
        line.quantity = Count::of(pieces);
        line.sizes.clear();
        for (auto& place : line.places) place.plannedPieces.reset();
        quote.version = valueOf(book->saveDraft(quote));
        return quote;
    }
    db::BenchQueue queue() { return valueOf(reader.read(*book)); }
    db::BenchWork workOf(const db::Quote& quote) {
        return db::benchWorkOf(quote.order, valueOf(book->priceBook(customer)), fits, queue().sets);
    }
    db::Quote agree(const db::Quote& quote) {
        const auto given = valueOf(book->issue(quote, valueOf(book->priceBook(customer)),
                                               test::resultOf(units::Money::fromMicros(412'500'000)),
                                               quote.order.quotedOn.plusDays(21)));
        EXPECT_TRUE(book->setStage(given.id, Stage::Agreed));
        return given;
    }
    /// When each is ready, by number; none: not within the horizon.
    std::map<std::string, std::optional<units::Date>> readyDays() {
        const auto all = queue();
        const auto plan = valueOf(all.plan());
        std::map<std::string, std::optional<units::Date>> days;
        for (std::size_t i = 0; i < all.entries.size(); ++i) days[all.entries[i].job.number] = plan.ready[i];
        return days;
    }

    db::BenchReader reader;
    layout::FitMemo fits;
};

TEST_F(BenchQueueTest, keepsWhatWasPromised) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    int held = 0;
    for (int round = 0; round < 15; ++round) {
        auto quote = draftOf(1 + upTo(60), upTo(3) == 0 ? std::nullopt : std::optional(today().plusDays(1 + upTo(20))));
        const auto before = queue();
        auto answer = before.promise(workOf(quote), quote.order.wantedBy);
        ASSERT_TRUE(answer) << describe(answer.error());
        if (!answer->promise.isHeld) { // put in for the day that holds
            quote.order.wantedBy = answer->promise.first;
            quote.version = valueOf(book->saveDraft(quote));
            answer = before.promise(workOf(quote), quote.order.wantedBy);
            ASSERT_TRUE(answer && answer->promise.isHeld) << "round " << round;
        }
        const auto alone = readyDays();
        const auto given = agree(quote);
        ++held;
        const auto after = readyDays();
        EXPECT_LE(after.at(given.number), quote.order.wantedBy) << "round " << round;
        for (const auto& entry : queue().entries) {
            const auto& due = entry.job.wantedBy;
            if (entry.job.number == given.number || !due) continue;
            const auto& then = after.at(entry.job.number);
            EXPECT_TRUE(then && (*then <= *due || *then <= *alone.at(entry.job.number)))
                << "round " << round << ": " << entry.job.number << " pays for " << given.number;
        }
        if (upTo(4) == 0) { EXPECT_TRUE(book->setStage(given.id, Stage::InProduction)); }
        if (HasFailure()) FAIL();
    }
    EXPECT_EQ(held, 15);
}

// By hand: what is being made takes its stones first, whoever is to be made before it.
TEST_F(BenchQueueTest, takesWhatIsBeingMadeOffTheShelf) {
    const auto first = draftOf(10, today().plusDays(20));
    const auto stones = workOf(first).takes;
    const auto needed = std::ranges::find(stones, stone, &needs::MaterialTake::material)->count;
    ASSERT_TRUE(book->moveStock(stone, needed - 60'000, std::nullopt, "counted"));
    EXPECT_EQ(queue().supplies.wait(workOf(first).takes), std::nullopt);
    const auto given = agree(first);
    ASSERT_TRUE(book->setStage(given.id, Stage::InProduction));
    const auto second = draftOf(10, today().plusDays(12));
    const auto answer = valueOf(queue().promise(workOf(second), second.order.wantedBy));
    EXPECT_EQ(answer.suppliesBy, today().plusDays(7)) << "lead days of the sample's supplier";
    EXPECT_FALSE(answer.isShort);
    EXPECT_EQ(queue().jobs.front().earliest, std::nullopt);
    auto deliverer = valueOf(book->suppliers()).front();
    deliverer.leadDays = 0;
    ASSERT_TRUE(book->save(deliverer));
    const auto unknown = valueOf(queue().promise(workOf(second), second.order.wantedBy));
    EXPECT_EQ(unknown.suppliesBy, std::nullopt);
    EXPECT_TRUE(unknown.isShort) << "no lead days: nobody knows";
    const auto agreed = agree(second);
    const auto all = queue();
    for (const auto& entry : all.entries) EXPECT_EQ(entry.isShort, entry.job.number == agreed.number);
}

TEST_F(BenchQueueTest, promisesNothingForToday) {
    const auto quote = draftOf(1, today());
    const auto answer = valueOf(queue().promise(workOf(quote), quote.order.wantedBy));
    EXPECT_FALSE(answer.promise.isHeld) << "what is left of today nobody knows";
    EXPECT_GT(answer.promise.first, today());
}

// A set that was sold is not cut before its first pieces are ready.
TEST_F(BenchQueueTest, countsASetUntilItIsThere) {
    auto quote = draftOf(5, today().plusDays(9));
    quote.order.lines.front().first().plannedPieces = Count::of(100);
    quote.order.lines.front().first().templatesOnWall = false;
    quote.version = valueOf(book->saveDraft(quote));
    const auto cut = workOf(quote).time;
    const auto given = agree(quote);
    EXPECT_EQ(workOf(quote).time, cut) << "agreed is not cut";
    for (const auto stage : {Stage::InProduction, Stage::Ready}) ASSERT_TRUE(book->setStage(given.id, stage));
    EXPECT_LT(workOf(quote).time, cut);
    EXPECT_EQ(queue().sets, needs::SetsThere{design.id});
}

TEST_F(BenchQueueTest, saysWhichJobHoldsUpThePlan) {
    const auto given = agree(draftOf(5, today().plusDays(9)));
    auto all = queue();
    all.entries.front().work.whyNone = base::makeError(db::Fault::QuoteGiven, "x", std::string("x"));
    EXPECT_EQ(all.firstUnknown(), 0U);
    EXPECT_EQ(valueOf(all.plan()).ready, std::vector<std::optional<units::Date>>{std::nullopt});
    const auto refused = all.promise({}, std::nullopt);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().fault, scheduling::idOf(scheduling::Fault::WorkNotKnown));
}

} // namespace
