// SPDX-License-Identifier: MIT
// The demo's jobs show what a job can be: every stage, money in parts, choices, several places, charges, nothing asked.
#include "app/demo/demo_orders.h"
#include "core/catalogue/stage.h"
#include "tests/support/held_clock.h"
#include "tests/support/temp_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace {

using namespace sp;
using catalogue::Stage;
using units::Money;

class DemoOrders : public testing::Test {
  protected:
    DemoOrders() {
        auto made = demo::createBusyDemo(m_folder / "demo.jobbook", m_clock.environment());
        EXPECT_TRUE(made.has_value()) << (made ? "" : describe(made.error()));
        m_book = std::move(*made);
        const auto rows = m_book->quotes({}, 1'000);
        EXPECT_TRUE(rows);
        for (const auto& row : *rows) m_quotes.push_back(m_book->quote(row.id).value());
    }

    template<class Is>
    std::ptrdiff_t count(Is is) const {
        return std::ranges::count_if(m_quotes, is);
    }

    test::HeldClock m_clock;
    test::TempFolder m_folder;
    std::unique_ptr<db::Book> m_book;
    std::vector<db::Quote> m_quotes;
};

TEST_F(DemoOrders, areInEveryStageAndOfEveryKind) {
    std::set<Stage> stages;
    for (const auto& quote : m_quotes) stages.insert(quote.stage);
    EXPECT_EQ(stages.size(), 7U);
    const auto today = m_clock.environment().today();
    EXPECT_EQ(count([&](const auto& q) { return catalogue::isLapsed(q.stage, q.validUntil, today); }), 1);
    EXPECT_GE(count([](const auto& q) { return q.order.atNoCharge; }), 1);
    EXPECT_GE(count([](const auto& q) { return !q.order.others.empty() && !q.number.empty(); }), 1);
    EXPECT_GE(count([](const auto& q) { return q.order.lines[0].places.size() > 1; }), 2);
    EXPECT_GE(count([](const auto& q) { return q.order.lines.back().isCharge(); }), 1);
    EXPECT_GE(count([](const auto& q) { return q.order.asksExemption; }), 1);
    EXPECT_GE(count([](const auto& q) { return q.order.lines[0].customersGarment; }), 1);
}

// What was paid never is more than the total; a job collected is paid but for one; what is being made has its deposit.
TEST_F(DemoOrders, arePaidAsFarAsTheyHaveCome) {
    int owed = 0;
    int deposits = 0;
    for (const auto& quote : m_quotes) {
        if (quote.number.empty() || (!quote.order.others.empty() && !quote.choiceTaken)) continue;
        const auto account = m_book->account(quote.id).value();
        EXPECT_EQ(account.paid + account.left - account.credit, account.total) << quote.number;
        if (quote.stage == Stage::Collected && !account.left.isZero()) ++owed;
        if (quote.stage == Stage::Agreed && !account.depositLeft().isZero()) ++deposits;
        const auto payments = m_book->payments(quote.id).value();
        for (const auto& payment : payments) EXPECT_LE(payment.paidOn, m_clock.environment().today());
    }
    EXPECT_EQ(owed, 1);
    EXPECT_EQ(deposits, 1);
}

// What today asks is what every job, looked at by itself, asks for, on each of forty days: the list that the book
// looks through leaves none out.
TEST_F(DemoOrders, askForWhatEachOfThemAsksFor) {
    using catalogue::Reminder;
    using Row = std::tuple<Reminder, std::string, std::int64_t>;
    std::size_t asked = 0;
    for (int day = 0; day < 40; ++day) {
        const auto today = m_clock.environment().today();
        std::vector<Row> each;
        const auto jobs = m_book->quotes({}, 1'000).value();
        for (const auto& job : jobs) {
            if (job.number.empty()) continue;
            const bool isOpenChoice = job.choices > 1 && !job.choiceTaken;
            const auto reckoned = m_book->account(job.id);
            ASSERT_EQ(reckoned.has_value(), !isOpenChoice) << job.number;
            const auto account = reckoned.value_or(pricing::Account{});
            const catalogue::JobState state{job.stage,
                                            job.wantedBy,
                                            job.lastDay,
                                            job.stageSince,
                                            !account.depositLeft().isZero(),
                                            !account.left.isZero()};
            for (const auto reminder : catalogue::remindersOf(state, today)) {
                const bool isDeposit = reminder == Reminder::DepositMissing;
                const bool isLeft = reminder == Reminder::NotCollected || reminder == Reminder::Owed;
                each.emplace_back(reminder, job.number,
                                  isDeposit ? account.depositLeft().micros()
                                  : isLeft  ? account.left.micros()
                                            : 0);
            }
        }
        const auto all = m_book->askedToday();
        ASSERT_TRUE(all) << describe(all.error());
        std::vector<Row> told;
        for (const auto& one : all->jobs) told.emplace_back(one.reminder, one.job.number, one.amount.micros());
        EXPECT_TRUE(std::ranges::is_sorted(told, {}, [](const Row& row) { return std::get<0>(row); }));
        EXPECT_THAT(told, testing::UnorderedElementsAreArray(each)) << "day " << day;
        asked += told.size();
        m_clock.now += std::chrono::hours(24);
    }
    EXPECT_GT(asked, 100U);
}

// The Counter opens with two choices for the club, one with a sleeve.
TEST_F(DemoOrders, endWithOneUnderWay) {
    const auto draft = m_book->lastDraft().value();
    ASSERT_TRUE(draft);
    EXPECT_EQ(draft->order.others.size(), 1U);
    const auto prices = m_book->priceBook(draft->order.customer).value();
    layout::FitMemo fits;
    const auto priced = pricing::priceOrder(draft->order, prices, fits);
    ASSERT_TRUE(priced) << describe(priced.error());
    ASSERT_EQ(priced->lines.at(0).places.size(), 1U);
    EXPECT_EQ(priced->lines[0].places[0].amount, Money::fromMicros(36'000'000)); // 24 sleeves at 1.50
    EXPECT_EQ(priced->lines[0].sizes.at(0).name, "2XL");
}

TEST_F(DemoOrders, standInABookThatIsWhole) {
    const auto file = m_folder / "demo.jobbook";
    m_book.reset();
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->damage.empty());
}

} // namespace
