// SPDX-License-Identifier: MIT
#include "core/figures/split.h"
#include "tests/support/amounts.h"

#include "tests/support/seed.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <chrono>
#include <ctime>
#include <random>

namespace {

using namespace sp;
using figures::By;
using figures::Earned;
using figures::EarnedLine;
using figures::Group;
using testing::ElementsAre;
using units::Count;
using units::Date;
using units::Duration;
using units::Money;
using units::Rate;

constexpr std::array kEvery{By::Month, By::Week, By::Design, By::Customer, By::Quantity, By::Blank};

using sp::support::money;

Date day(const char* iso) { return Date::parse(iso).value(); }

base::Id idOf(std::int64_t number) {
    base::Id::Bytes bytes{};
    bytes.front() = static_cast<std::uint8_t>(number);
    return base::Id::fromBytes(bytes);
}

EarnedLine lineOf(const std::string& number, const char* iso, const std::string& design, std::int64_t quantity,
                  double income, double cost, std::int64_t minutes) {
    EarnedLine line;
    line.number = number;
    line.day = day(iso);
    line.designName = design;
    line.quantity = Count::of(quantity);
    line.earned = {.pieces = Count::of(quantity),
                   .income = money(income),
                   .cost = money(cost),
                   .bench = Duration::fromMinutes(minutes)};
    return line;
}

std::vector<std::string> namesOf(const std::vector<Group>& groups) {
    std::vector<std::string> names;
    for (const auto& group : groups) names.push_back(group.name);
    return names;
}

// Invented. By hand: left 3,274.90 − 2,159.80 = 1,115.10; 1,115.10 ÷ 3,274.90 = 0.340499…; with own work for 743.40
// in 41.3 hours (1,115.10 + 743.40) ÷ 41.3 = 45.00.
TEST(Earned, saysWhatIsLeftAndWhatAnHourBrought) {
    const Earned month{.pieces = Count::of(226),
                       .income = Money::fromMicros(3'274'900'000),
                       .cost = Money::fromMicros(2'100'000'000),
                       .paidOut = Money::fromMicros(900'000'000),
                       .cardFee = Money::fromMicros(59'800'000),
                       .labour = Money::fromMicros(743'400'000),
                       .bench = Duration::fromMinutes(41 * 60 + 18)};
    EXPECT_EQ(month.allCost(), Money::fromMicros(2'159'800'000));
    EXPECT_EQ(month.left(), Money::fromMicros(1'115'100'000));
    EXPECT_EQ(month.margin(), Rate::fromPpm(340'499));
    EXPECT_EQ(month.perBenchHour(), money(45));
    EXPECT_EQ(month.contribution(), Money::fromMicros(2'315'100'000));
}

TEST(Earned, saysNothingOfHoursThatAreNotKnown) {
    Earned sum{.income = money(100), .cost = money(40), .bench = Duration::fromMinutes(60)};
    EXPECT_EQ(sum.perBenchHour(), money(60));
    sum += Earned{.income = money(50), .isBenchKnown = false};
    EXPECT_FALSE(sum.isBenchKnown);
    EXPECT_EQ(sum.perBenchHour(), std::nullopt);
    EXPECT_EQ(Earned{}.perBenchHour(), std::nullopt);
    EXPECT_EQ(Earned{}.margin(), std::nullopt);
}

TEST(Split, putsWhatEarnsLeastAnHourLast) {
    const std::vector<EarnedLine> lines{
        lineOf("1", "2026-11-02", "Clover row", 10, 30, 20, 60),
        lineOf("2", "2026-11-03", "Lantern", 24, 120, 60, 60),
        lineOf("3", "2026-11-03", "Paper boat", 6, 50, 20, 60),
        lineOf("3", "2026-11-03", "Lantern", 12, 60, 30, 30),
        lineOf("4", "2026-11-04", "", 0, 8, 8, 0), // postage: no time at the bench
    };
    const auto groups = figures::split(lines, By::Design, {});
    EXPECT_THAT(namesOf(groups), ElementsAre("Lantern", "Paper boat", "Clover row", ""));
    EXPECT_THAT(groups[0].jobs, ElementsAre("2", "3"));
    EXPECT_EQ(groups[0].earned.pieces, Count::of(36));
    EXPECT_EQ(groups[0].earned.perBenchHour(), money(60));
    EXPECT_THAT(figures::together(lines).jobs, ElementsAre("1", "2", "3", "4"));
}

TEST(Split, knowsAThingByItsKeyUnderItsNewestName) {
    auto before = lineOf("1", "2026-11-02", "Clover", 10, 30, 20, 60);
    auto after = lineOf("2", "2026-11-05", "Clover row", 10, 30, 20, 60);
    auto other = lineOf("3", "2026-11-06", "Clover row", 10, 30, 20, 60);
    before.design = after.design = idOf(1);
    other.design = idOf(2);
    const auto groups = figures::split(std::vector{before, after, other}, By::Design, {});
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_THAT(namesOf(groups), ElementsAre("Clover row", "Clover row"));
    EXPECT_THAT(groups[0].jobs, ElementsAre("1", "2"));
}

TEST(Split, knowsAGroupAgainInAnotherSplit) {
    auto before = lineOf("1", "2026-11-02", "Clover", 10, 30, 20, 60);
    auto after = lineOf("2", "2026-11-30", "Clover row", 24, 30, 20, 60);
    auto other = lineOf("3", "2026-11-30", "Clover row", 10, 30, 20, 60);
    before.design = after.design = idOf(1);
    other.design = idOf(2);
    const auto only = [](const EarnedLine& line, By by) {
        return figures::split(std::vector{line}, by, std::array{Count::of(12)}).front();
    };
    EXPECT_TRUE(figures::isSame(only(before, By::Design), only(after, By::Design))) << "it is called otherwise";
    EXPECT_FALSE(figures::isSame(only(other, By::Design), only(after, By::Design))) << "it is only called alike";
    EXPECT_TRUE(figures::isSame(only(before, By::Month), only(after, By::Month)));
    EXPECT_FALSE(figures::isSame(only(before, By::Week), only(after, By::Week)));
    EXPECT_TRUE(figures::isSame(only(before, By::Quantity), only(other, By::Quantity)));
    EXPECT_FALSE(figures::isSame(only(before, By::Quantity), only(after, By::Quantity)));
    before.design = after.design = {}; // by its name then
    EXPECT_FALSE(figures::isSame(only(before, By::Design), only(after, By::Design)));
}

TEST(Split, goesByTheQuantityOfALine) {
    const std::array begins{Count::of(24), Count::of(12), Count::of(24)};
    const std::vector<EarnedLine> lines{
        lineOf("1", "2026-11-02", "", 11, 1, 0, 0), lineOf("2", "2026-11-02", "", 12, 2, 0, 0),
        lineOf("3", "2026-11-02", "", 23, 4, 0, 0), lineOf("4", "2026-11-02", "", 24, 8, 0, 0),
        lineOf("5", "2026-11-02", "", 0, 16, 0, 0), lineOf("6", "2026-11-02", "", 1, 32, 0, 0)};
    const auto groups = figures::split(lines, By::Quantity, begins);
    ASSERT_EQ(groups.size(), 4U);
    EXPECT_EQ(groups[0].quantities, (figures::QuantitySpan{Count::of(0), Count::of(0)}));
    EXPECT_EQ(groups[0].earned.income, money(16));
    EXPECT_EQ(groups[1].quantities, (figures::QuantitySpan{Count::of(1), Count::of(11)}));
    EXPECT_EQ(groups[1].earned.income, money(33));
    EXPECT_EQ(groups[2].quantities, (figures::QuantitySpan{Count::of(12), Count::of(23)}));
    EXPECT_EQ(groups[2].earned.income, money(6));
    EXPECT_EQ(groups[3].quantities, (figures::QuantitySpan{Count::of(24), std::nullopt}));
    EXPECT_EQ(groups[3].earned.income, money(8));
}

/// What the C library says of a day; strftime's %G and %V are the year and week of ISO 8601.
std::string told(Date day, const char* how) {
    const std::time_t seconds = std::chrono::system_clock::to_time_t(day.days()) + 12 * 3600;
    std::tm parts{};
    gmtime_r(&seconds, &parts);
    std::array<char, 32> text{};
    return {text.data(), std::strftime(text.data(), text.size(), how, &parts)};
}

TEST(Split, beginsMonthsAndWeeksWhereTheCalendarDoes) {
    // ISO 8601, from memory: its week 2009-W01 begins on 2008-12-29, and 2010-01-03 is the last day of 2009-W53.
    EXPECT_EQ(figures::weekOf(day("2009-01-01")), day("2008-12-29"));
    EXPECT_EQ(figures::weekOf(day("2010-01-03")), day("2009-12-28"));
    for (auto at = day("2019-12-01"); at < day("2032-02-01"); at = at.plusDays(1)) {
        const auto week = figures::weekOf(at);
        EXPECT_EQ(told(week, "%u"), "1") << at.iso();
        EXPECT_EQ(told(week, "%G-%V"), told(at, "%G-%V")) << at.iso();
        EXPECT_EQ(figures::monthOf(at).iso(), told(at, "%Y-%m-01"));
    }
}

TEST(Split, comesToTheWholeBesideTheOrderItIsIn) {
    std::mt19937_64 random(test::printedSeed());
    const auto upTo = [&](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    const std::array begins{Count::of(6), Count::of(12), Count::of(24)};
    for (int round = 0; round < 200; ++round) {
        std::vector<EarnedLine> lines;
        for (std::int64_t job = 0; job < 20; ++job)
            for (std::int64_t i = upTo(3); i >= 0; --i) {
                EarnedLine line;
                line.number = std::to_string(job);
                line.day = day("2026-08-20").plusDays(job * 5);
                line.design = upTo(4) == 0 ? base::Id{} : idOf(1 + upTo(5));
                line.customer = upTo(4) == 0 ? base::Id{} : idOf(1 + upTo(3));
                line.blank = idOf(1 + upTo(2));
                line.quantity = Count::of(upTo(40));
                line.earned = {.pieces = line.quantity,
                               .income = Money::fromMicros(upTo(900'000'000)),
                               .cost = Money::fromMicros(upTo(900'000'000)),
                               .paidOut = Money::fromMicros(upTo(400'000'000)),
                               .cardFee = Money::fromMicros(upTo(20'000'000)),
                               .labour = Money::fromMicros(upTo(90'000'000)),
                               .bench = Duration::fromMilliseconds(upTo(9'000'000)),
                               .isBenchKnown = upTo(9) != 0};
                lines.push_back(line);
            }
        const auto all = figures::together(lines);
        for (const auto by : kEvery) {
            Earned sum;
            std::optional<Money> before;
            bool wasNone = false;
            for (const auto& group : figures::split(lines, by, begins)) {
                sum += group.earned;
                const auto hour = group.earned.perBenchHour();
                if (by == By::Design || by == By::Customer || by == By::Blank) {
                    EXPECT_FALSE(wasNone && hour) << "one without a figure stands before one with";
                    EXPECT_FALSE(before && hour && *before < *hour) << "one that earns more stands behind";
                    before = hour;
                    wasNone = !hour;
                }
            }
            EXPECT_EQ(sum, all.earned);
        }
    }
}

TEST(Split, opensToJobsThatAddUpToEachGroup) {
    const std::vector<EarnedLine> lines = {lineOf("2026-0001", "2026-11-02", "Lantern", 10, 100, 60, 50),
                                           lineOf("2026-0001", "2026-11-02", "Crest", 4, 40, 30, 20),
                                           lineOf("2026-0001", "2026-11-02", "Lantern", 2, 20, 10, 10),
                                           lineOf("2026-0002", "2026-11-03", "Lantern", 6, 60, 40, 30)};
    for (const auto by : kEvery)
        for (const auto& group : figures::split(lines, by, {})) {
            Earned sum;
            std::vector<std::string> numbers;
            for (const auto& job : figures::jobsIn(group, lines)) {
                sum += job.earned;
                numbers.push_back(job.number);
            }
            EXPECT_EQ(sum, group.earned);
            EXPECT_EQ(numbers, group.jobs);
        }
    const auto lantern = figures::split(lines, By::Design, {});
    for (const auto& group : lantern)
        if (group.name == "Lantern") { EXPECT_EQ(figures::jobsIn(group, lines).front().earned.income, money(120)); }
}

} // namespace
