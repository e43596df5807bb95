// SPDX-License-Identifier: MIT
// The shelf by its movements: what they were and for whom, what agreed jobs still take, and what is used when.
#include "core/needs/still_taken.h"
#include "db/book/shelf_reorder.h"
#include "db/book/shelf_state.h"
#include "tests/db/bench_book.h"
#include "tests/support/amounts.h"
#include "tests/support/described.h"
#include "tests/support/plain_bill.h"

#include <algorithm>
#include <numeric>

namespace {

using namespace sp;
using db::Stage;
using db::records::MoveKind;
using db::records::StockMove;
using test::valueOf;
using units::Count;

class ShelfTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
        usedWhen(catalogue::UsedWhen::Ready);
        ASSERT_TRUE(book->moveStock(stone, 10'000, units::Money::fromMicros(48'000'000), "delivery"));
        ASSERT_TRUE(book->moveStock(tape, 50, units::Money::fromMicros(50'000'000), "delivery"));
        ASSERT_TRUE(book->moveStock(blank, 500, std::nullopt, "found"));
    }
    void usedWhen(catalogue::UsedWhen when) {
        auto shop = valueOf(book->shop());
        shop.usualTemplate = {}; // the sample's is no template sheet
        shop.usedWhen = when;
        ASSERT_TRUE(book->save(shop));
    }
    db::Quote given(std::int64_t pieces) {
        auto quote = valueOf(book->startQuote());
        quote.order = test::sampleOrder(customer, design);
        quote.order.lines.resize(1);
        auto& line = quote.order.lines.front();
        line.quantity = Count::of(pieces);
        line.sizes.clear();
        for (auto& place : line.places) place.plannedPieces.reset();
        quote.version = valueOf(book->saveDraft(quote));
        return valueOf(book->issue(quote, valueOf(book->priceBook(customer)),
                                   test::resultOf(units::Money::fromMicros(412'500'000)),
                                   quote.order.quotedOn.plusDays(21)));
    }
    std::int64_t takenOf(const db::Quote& quote, const base::Id& material) {
        const auto work = db::benchWorkOf(quote.order, *quote.frozen, fits);
        EXPECT_FALSE(work.whyNone);
        const auto found = std::ranges::find(work.takes, material, &needs::MaterialTake::material);
        return found == work.takes.end() ? 0 : found->count;
    }
    db::OnShelf there(const base::Id& material) { return valueOf(db::readShelf(*book, reader)).of(material); }
    std::int64_t sumOf(const base::Id& material) {
        const auto moves = valueOf(book->movesOf(material));
        return std::accumulate(moves.begin(), moves.end(), std::int64_t{0},
                               [](std::int64_t sum, const StockMove& move) { return sum + move.amount; });
    }

    db::BenchReader reader;
    layout::FitMemo fits;
};

TEST_F(ShelfTest, agreeingPromisesAndLettingGoFrees) {
    const auto quote = given(20);
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, 0}));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    const auto takes = takenOf(quote, stone);
    ASSERT_GT(takes, 0);
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, takes}));
    EXPECT_EQ(there(stone).free(), 10'000 - takes);
    const auto other = given(7);
    ASSERT_TRUE(book->setStage(other.id, Stage::InProduction));
    EXPECT_EQ(there(stone).promised, takes + takenOf(other, stone));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    EXPECT_EQ(there(stone).promised, takenOf(other, stone));
    EXPECT_EQ(there(stone).onHand, 10'000);
}

TEST_F(ShelfTest, whatAJobTookIsUsedInTheStepOfItsStage) {
    const auto quote = given(20);
    ASSERT_TRUE(book->setStage(quote.id, Stage::InProduction));
    EXPECT_EQ(there(stone).onHand, 10'000) << "the shop takes it off when all is made";
    const auto takes = takenOf(quote, stone);
    const auto use = valueOf(book->useAt(quote.id, Stage::Ready));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000 - takes, 0}));
    const auto move = valueOf(book->movesOf(stone)).back();
    EXPECT_EQ(move.kind, MoveKind::Used);
    EXPECT_EQ(move.job, quote.id);
    EXPECT_EQ(move.amount, -takes);
    const auto said = std::ranges::find(use.used, stone, &needs::MaterialTake::material);
    ASSERT_NE(said, use.used.end());
    EXPECT_EQ(said->count, takes);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(valueOf(book->quote(quote.id)).stage, Stage::InProduction);
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, takes}));
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(there(stone), (db::OnShelf{10'000 - takes, 0}));
    // Back for a slip and ready again: nothing is taken twice.
    ASSERT_TRUE(book->setStage(quote.id, Stage::InProduction));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, takes}));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Collected));
    EXPECT_EQ(there(stone).onHand, 10'000 - takes);
    EXPECT_EQ(sumOf(stone), there(stone).onHand);
    EXPECT_EQ(test::described(db::Book::check(file)->damage), std::vector<std::string>{});
}

TEST_F(ShelfTest, whatAJobTookComesBackWhenItIsSetBackOrLetGo) {
    const auto quote = given(20);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    const auto takes = takenOf(quote, stone);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    ASSERT_EQ(there(stone), (db::OnShelf{10'000 - takes, 0}));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, takes}));
    const auto back = valueOf(book->movesOf(stone)).back();
    EXPECT_EQ(back.kind, MoveKind::Returned);
    EXPECT_EQ(back.job, quote.id);
    EXPECT_EQ(back.amount, takes);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(valueOf(book->quote(quote.id)).stage, Stage::Ready);
    EXPECT_EQ(there(stone), (db::OnShelf{10'000 - takes, 0})) << "one undo takes all of it back";
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, 0}));
    EXPECT_EQ(sumOf(stone), 10'000) << "nothing comes back twice";
}

// A delivery of 10,000 on the first day, the job ready on the second, set back on the third, ready again on the fourth.
TEST_F(ShelfTest, whatIsMadeAnewIsUsedOnceAndOnTheDayOnWhichItStands) {
    const auto quote = given(20);
    const auto takes = takenOf(quote, stone);
    for (const auto stage : {Stage::Ready, Stage::Agreed, Stage::Ready}) {
        clock.now += std::chrono::hours(24);
        ASSERT_TRUE(book->setStage(quote.id, stage));
    }
    const auto usesOf = [&] { return valueOf(book->usedByDay()).at(stone).uses; };
    const std::vector<supply::DayUse> stands{{clock.environment().today(), takes}};
    EXPECT_EQ(usesOf(), stands);
    clock.now += std::chrono::hours(24);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(usesOf(), std::vector<supply::DayUse>{}) << "undone the day after";
    clock.now += std::chrono::hours(24);
    ASSERT_TRUE(book->redo());
    EXPECT_EQ(usesOf(), stands) << "and it stands again on its own day";
}

TEST_F(ShelfTest, whatComesBackFromAJobWasNotUsedByItsLatestMovements) {
    usedWhen(catalogue::UsedWhen::ByHand);
    const auto quote = given(20);
    const auto other = given(7);
    const auto first = clock.environment().today();
    const auto move = [&](const db::Quote& job, std::int64_t count, MoveKind kind) {
        ASSERT_TRUE(book->moveStock({{}, stone, count, {}, "", {}, kind, job.id}));
    };
    move(quote, -30, MoveKind::Used);
    clock.now += std::chrono::hours(24);
    move(quote, -20, MoveKind::Used);
    move(quote, -3, MoveKind::Lost);
    move(other, -9, MoveKind::Used);
    clock.now += std::chrono::hours(24);
    move(quote, 25, MoveKind::Returned);
    EXPECT_EQ(valueOf(book->usedByDay()).at(stone).uses,
              (std::vector<supply::DayUse>{{first, 25}, {first.plusDays(1), 12}}));
}

TEST_F(ShelfTest, ofABegunJobThatIsLetGoItIsSaidWhatStaysBooked) {
    usedWhen(catalogue::UsedWhen::Making);
    const auto quote = given(20);
    const auto takes = takenOf(quote, stone);
    ASSERT_TRUE(book->setStage(quote.id, Stage::InProduction));
    EXPECT_TRUE(valueOf(book->useAt(quote.id, Stage::Ready)).stays.empty());
    const auto stays = valueOf(book->useAt(quote.id, Stage::Declined)).stays;
    const auto said = std::ranges::find(stays, stone, &needs::MaterialTake::material);
    ASSERT_NE(said, stays.end());
    EXPECT_EQ(said->count, takes);
    EXPECT_TRUE(valueOf(book->endedWithTaken(10)).empty());
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000 - takes, 0}));
    EXPECT_EQ(valueOf(book->endedWithTaken(10)), std::vector<base::Id>{quote.id});
    for (const auto& take : stays) // all of it is still there
        ASSERT_TRUE(book->moveStock({{}, take.material, take.count, {}, "", {}, MoveKind::Returned, quote.id}));
    EXPECT_EQ(there(stone).onHand, 10'000);
    EXPECT_TRUE(valueOf(book->endedWithTaken(10)).empty());
}

TEST_F(ShelfTest, ofAMadeJobThatIsLetGoNothingComesBack) {
    const auto quote = given(20);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    const auto left = 10'000 - takenOf(quote, stone);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Declined));
    EXPECT_EQ(there(stone), (db::OnShelf{left, 0})) << "its stones are on the pieces";
    for (const auto stage : {Stage::Quoted, Stage::Agreed}) ASSERT_TRUE(book->setStage(quote.id, stage));
    EXPECT_EQ(there(stone), (db::OnShelf{left, 0})) << "and it takes none again";
}

TEST_F(ShelfTest, anInvoicedJobKeepsWhatItUsedWhateverIsUndone) {
    const auto quote = given(20);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    const auto left = 10'000 - takenOf(quote, stone);
    ASSERT_EQ(there(stone).onHand, left);
    ASSERT_TRUE(book->issueInvoice(quote.id, test::plainBill));
    static_cast<void>(book->undo()); // whatever was done before it
    EXPECT_EQ(valueOf(book->quote(quote.id)).stage, Stage::Ready);
    EXPECT_EQ(there(stone).onHand, left);
}

TEST_F(ShelfTest, whatIsBookedByHandNoStageBooks) {
    usedWhen(catalogue::UsedWhen::ByHand);
    const auto quote = given(20);
    for (const auto stage : {Stage::InProduction, Stage::Ready, Stage::Collected})
        ASSERT_TRUE(book->setStage(quote.id, stage));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000, 0}));
    EXPECT_EQ(catalogue::Shop().usedWhen, catalogue::UsedWhen::ByHand) << "as every older book";
}

TEST_F(ShelfTest, nothingIsUsedWhereTheStageStays) {
    using catalogue::UsedWhen;
    EXPECT_FALSE(db::isUsedBetween(Stage::InProduction, Stage::InProduction, UsedWhen::Making));
    EXPECT_TRUE(db::isUsedBetween(Stage::InProduction, Stage::Ready, UsedWhen::Making));
}

TEST_F(ShelfTest, whatIsLostOverAJobIsStillTakenByIt) {
    const auto quote = given(20);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    const auto takes = takenOf(quote, stone);
    ASSERT_TRUE(book->moveStock({{}, stone, -10, {}, "spilt", {}, MoveKind::Lost, quote.id}));
    EXPECT_EQ(there(stone), (db::OnShelf{9'990, takes}));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    EXPECT_EQ(there(stone), (db::OnShelf{9'990 - takes, 0}));
}

// 10,000 for 48.00: what is found once all of them were used is worth 0.0048 each, not what a pack costs today.
TEST_F(ShelfTest, theLastAverageOutlivesAnEmptyShelf) {
    auto materials = valueOf(book->materials());
    const auto found = std::ranges::find(materials, stone, &catalogue::Material::id);
    ASSERT_NE(found, materials.end());
    found->basis = catalogue::PriceBasis::ShelfAverage;
    ASSERT_TRUE(book->save(*found));
    ASSERT_TRUE(book->moveStock({{}, stone, -10'000, {}, "", {}, MoveKind::Used, {}}));
    ASSERT_TRUE(book->countShelf(stone, 15, "found"));
    const auto each = [&] { return valueOf(book->priceBook(customer)).materials.at(stone).price; };
    EXPECT_EQ(each(), (units::UnitPrice{units::Money::fromMicros(48'000'000), Count::of(10'000)}));
    ASSERT_TRUE(book->countShelf(stone, 0, "spilt"));
    ASSERT_TRUE(book->moveStock(stone, 10, units::Money::fromMicros(1'000'000), "delivery"));
    EXPECT_EQ(each(), (units::UnitPrice{units::Money::fromMicros(1'000'000), Count::of(10)}));
}

TEST_F(ShelfTest, takesOnlyWhatIsThereAndTheRestOnceItIs) {
    usedWhen(catalogue::UsedWhen::Making);
    const auto quote = given(20);
    const auto takes = takenOf(quote, stone);
    ASSERT_EQ(valueOf(book->countShelf(stone, takes - 5, "counted")), takes - 5 - 10'000);
    const auto use = valueOf(book->useAt(quote.id, Stage::InProduction));
    const auto lack = std::ranges::find(use.lacks, stone, &needs::MaterialTake::material);
    ASSERT_NE(lack, use.lacks.end());
    EXPECT_EQ(lack->count, 5);
    EXPECT_TRUE(use.lacksLater);
    ASSERT_TRUE(book->setStage(quote.id, Stage::InProduction));
    EXPECT_EQ(there(stone), (db::OnShelf{0, 5})) << "it still waits for five";
    ASSERT_TRUE(book->moveStock(stone, 100, std::nullopt, "delivery"));
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    EXPECT_EQ(there(stone), (db::OnShelf{95, 0}));
}

TEST_F(ShelfTest, whatWasTakenBeyondWhatAJobTakesIsSaidAndStaysBooked) {
    const auto quote = given(20);
    const auto takes = takenOf(quote, stone);
    ASSERT_TRUE(book->moveStock({{}, stone, -(takes + 12), {}, "", {}, MoveKind::Used, quote.id}));
    const auto use = valueOf(book->useAt(quote.id, Stage::Ready));
    EXPECT_EQ(use.beyond, (std::vector<needs::MaterialTake>{{stone, 12}}));
    EXPECT_FALSE(use.lacksLater);
    ASSERT_TRUE(book->setStage(quote.id, Stage::Ready));
    EXPECT_EQ(there(stone), (db::OnShelf{10'000 - takes - 12, 0}));
}

TEST_F(ShelfTest, aMovementHasAKindThatGoesItsWayAndAJobThatIsThere) {
    const auto refused = [&](const StockMove& move) { return test::described(book->moveStock(move).error()); };
    const auto quote = given(3);
    EXPECT_TRUE(book->moveStock({{}, stone, -40, {}, "spilt behind the press", {}, MoveKind::Lost, quote.id}));
    const auto move = valueOf(book->movesOf(stone)).back();
    EXPECT_EQ(move.note, "spilt behind the press");
    EXPECT_EQ(move.kind, MoveKind::Lost);
    EXPECT_EQ(move.job, quote.id);
    for (const auto kind : {MoveKind::Used, MoveKind::Lost, MoveKind::Spoiled})
        EXPECT_EQ(refused({{}, stone, 4, {}, "", {}, kind, {}}).substr(0, 14), "KindOfOtherWay");
    EXPECT_EQ(refused({{}, stone, -4, {}, "", {}, MoveKind::Bought, {}}).substr(0, 14), "KindOfOtherWay");
    EXPECT_EQ(refused({{}, stone, -4, {}, "", {}, MoveKind::Returned, quote.id}), "ReturnedForJob(Aquamarine SS10)");
    EXPECT_EQ(refused({{}, stone, -9'961, {}, "", {}, MoveKind::Lost, {}}), "NotOnShelf(9960, Aquamarine SS10)");
    EXPECT_EQ(book->moveStock({{}, stone, -1, {}, "", {}, MoveKind::Lost, stone}).error().code, base::Code::NotFound);
    const auto draft = valueOf(book->startQuote());
    EXPECT_EQ(book->moveStock({{}, stone, -1, {}, "", {}, MoveKind::Lost, draft.id}).error().code, base::Code::Invalid);
    EXPECT_EQ(sumOf(stone), 9'960);
}

// 30 used and 10 lost in 16 days: 2.5 a day, squares 900 + 100 − 100 by 15 are 60. Five days of lead: 12.5, and 1.6449
// × √300 = 28.49 for more (worked here).
TEST_F(ShelfTest, isLowByWhatWasUsedAndHowLongADeliveryTakes) {
    auto suppliers = valueOf(book->suppliers());
    for (auto& seller : suppliers) {
        seller.leadDays = 5;
        ASSERT_TRUE(book->save(seller));
    }
    const auto state = [&](std::int64_t days) {
        const auto states = valueOf(db::readReorder(*book, reader, days, supply::Service::Percent95));
        const auto found = std::ranges::find(states, stone, &db::ReorderState::material);
        return found == states.end() ? db::ReorderState() : *found;
    };
    EXPECT_EQ(state(90).demand.days, 0) << "nothing was used";
    const auto day = std::chrono::hours(24);
    clock.now += day;
    ASSERT_TRUE(book->moveStock({{}, stone, -30, {}, "", {}, MoveKind::Used, {}}));
    clock.now += day;
    ASSERT_TRUE(book->moveStock({{}, stone, -10, {}, "spilt", {}, MoveKind::Lost, {}}));
    ASSERT_TRUE(book->moveStock({{}, stone, -500, {}, "", {}, MoveKind::Used, {}}));
    clock.now += day;
    ASSERT_TRUE(book->undo());
    clock.now += 9 * day;
    EXPECT_EQ(state(90).demand.days, 13) << "not before it ever lay there";
    EXPECT_FALSE(state(90).point.has_value()) << "too few days are known";
    EXPECT_FALSE(state(90).isLow().has_value());
    clock.now += 3 * day;
    ASSERT_TRUE(valueOf(book->countShelf(stone, 42, "stocktaking")) < 0) << "a count is no use";
    const auto there = state(90);
    EXPECT_EQ(there.demand.days, 16);
    EXPECT_EQ(there.demand.used, 40);
    EXPECT_EQ(there.demand.variance, units::Fraction::of(60));
    EXPECT_EQ(there.leadDays, 5);
    EXPECT_EQ(there.point, (supply::ReorderPoint{units::Fraction::ratio(25, 2), 29, 41}));
    EXPECT_EQ(there.isLow(), std::optional(false));
    ASSERT_TRUE(book->countShelf(stone, 41, "stocktaking"));
    EXPECT_EQ(state(90).isLow(), std::optional(true));
    EXPECT_EQ(state(14).demand.used, 10) << "of the last fourteen days";
    const auto lead = [&](std::int64_t days) {
        for (auto& seller : suppliers) {
            seller.leadDays = days;
            ASSERT_TRUE(book->save(seller));
        }
    };
    lead(17);
    EXPECT_FALSE(state(90).point.has_value()) << "no delivery came in the days that are known";
    lead(0);
    EXPECT_FALSE(state(90).point.has_value()) << "nobody knows how long it takes";
    EXPECT_FALSE(state(90).isLow().has_value());
}

TEST_F(ShelfTest, whatAgreedJobsLackIsLowWhetherItWasUsedOrNot) {
    const auto quote = given(20);
    const auto takes = takenOf(quote, stone);
    ASSERT_TRUE(book->countShelf(stone, takes - 5, "stocktaking"));
    const auto listed = [&] {
        const auto states = valueOf(db::readReorder(*book, reader, 90, supply::Service::Percent95));
        const auto found = std::ranges::find(states, stone, &db::ReorderState::material);
        return found == states.end() ? std::optional<db::ReorderState>() : std::optional(*found);
    };
    EXPECT_FALSE(listed().has_value());
    ASSERT_TRUE(book->setStage(quote.id, Stage::Agreed));
    const auto lacking = listed();
    ASSERT_TRUE(lacking.has_value());
    EXPECT_EQ(lacking->there.free(), -5);
    EXPECT_FALSE(lacking->point.has_value());
    EXPECT_EQ(lacking->isLow(), std::optional(true));
}

TEST_F(ShelfTest, aCountBooksTheDifference) {
    EXPECT_EQ(valueOf(book->countShelf(stone, 9'882, "stocktaking")), -118);
    EXPECT_EQ(there(stone).onHand, 9'882);
    EXPECT_EQ(valueOf(book->movesOf(stone)).back().kind, MoveKind::Counted);
    const auto moves = valueOf(book->movesOf(stone)).size();
    EXPECT_EQ(valueOf(book->countShelf(stone, 9'882, "again")), 0);
    EXPECT_EQ(valueOf(book->movesOf(stone)).size(), moves) << "no movement of nothing";
    EXPECT_EQ(book->countShelf(stone, -1, "").error().code, base::Code::Invalid);
    EXPECT_EQ(book->countShelf(stone, 1'000'000'001, "").error().code, base::Code::Invalid);
    EXPECT_EQ(book->countShelf(customer, 1, "").error().code, base::Code::NotFound);
    ASSERT_TRUE(book->undo());
    EXPECT_EQ(there(stone).onHand, 10'000);
}

TEST(StillTaken, isWhatWasNotTakenYet) {
    const auto a = support::idOf(1), b = support::idOf(2), c = support::idOf(3);
    // What came back beyond what went out does not make a job take more.
    EXPECT_EQ(needs::stillTaken({{a, 10}, {b, 5}, {c, 7}}, {{a, 4}, {b, 9}, {c, -2}}),
              (std::vector<needs::MaterialTake>{{a, 6}, {c, 7}}));
    const auto split = needs::splitBy({{a, 10}, {b, 5}, {c, 7}}, {{a, 4}, {b, 9}});
    EXPECT_EQ(split.there, (std::vector<needs::MaterialTake>{{a, 4}, {b, 5}}));
    EXPECT_EQ(split.lacks, (std::vector<needs::MaterialTake>{{a, 6}, {c, 7}}));
}

} // namespace
