// SPDX-License-Identifier: MIT
// A wrong clock never puts jobs into another order, leaves numbers out or gives them twice, or hides any.
#include "tests/db/bench_book.h"

#include <map>
#include <ostream>
#include <vector>

namespace {

using namespace sp;
using test::BookTest;
using namespace std::chrono;

struct Clock {
    std::string name;
    sys_seconds now;
};

void PrintTo(const Clock& clock, std::ostream* out) { *out << clock.name; }

std::vector<Clock> clocks() {
    const sys_days today = 2026y / 11 / 25;
    return {{"aDayBack", today - days(1)},
            {"tenYearsBack", sys_days(2016y / 11 / 25)},
            {"thirtyYearsOn", sys_days(2056y / 11 / 25)},
            {"beforeTheEpoch", sys_days(1969y / 12 / 31) + 23h},
            {"atTheEpoch", sys_days(1970y / 1 / 1)},
            // The last second that fits 31 bits, and the one after it.
            {"theLastOf2038", sys_seconds(2147483647s)},
            {"after2038", sys_seconds(2147483648s)},
            // In the United States clocks go back on that Sunday (Energy Policy Act of 2005, section 110).
            {"theHourThatComesTwice", sys_days(2026y / 11 / 1) + 5h + 59min + 59s},
            {"newYear", sys_days(2027y / 1 / 1) - 1s}};
}

class WrongClock : public BookTest, public testing::WithParamInterface<Clock> {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
    }
    void give() { given.push_back(issued().number); }
    void expectAllInOrder() {
        std::vector<std::string> listed;
        for (const auto& row : test::valueOf(book->quotes({}, 100))) listed.insert(listed.begin(), row.number);
        EXPECT_EQ(listed, given) << "the newest first, whatever the clock said";
        std::map<std::string, int> lastOf;
        for (const auto& number : given)
            EXPECT_EQ(std::stoi(number.substr(5)), ++lastOf[number.substr(0, 4)]) << number;
    }

    std::vector<std::string> given;
};

TEST_P(WrongClock, keepsOrderAndNumbers) {
    give();
    give();
    const auto right = clock.now;
    clock.now = GetParam().now;
    give();
    ASSERT_TRUE(book->moveStock(tape, 12, std::nullopt, "delivery"));
    ASSERT_TRUE(book->undo());
    ASSERT_TRUE(book->redo());
    reopen();
    give();
    expectAllInOrder();
    // In the middle of a session it is set right, and wrong again.
    clock.now = right + 5min;
    give();
    clock.now = GetParam().now + 1s;
    give();
    clock.now = right + 10min;
    reopen();
    give();
    expectAllInOrder();
    for (const auto& number : given) EXPECT_TRUE(book->quoteNumbered(number)) << number;
    expectSound();
}

INSTANTIATE_TEST_SUITE_P(Clocks, WrongClock, testing::ValuesIn(clocks()),
                         [](const auto& row) { return row.param.name; });

} // namespace
