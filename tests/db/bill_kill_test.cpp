// SPDX-License-Identifier: MIT
// A bill that was acknowledged is there under its number, and no number is missing, whenever the program was killed.
#include "tests/db/bench_book.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"

#include <random>

namespace {

using namespace sp;
using test::Child;

class BillKillTest : public test::BookTest {};

TEST_F(BillKillTest, losesNoNumberAndLeavesNoGap) {
    ASSERT_TRUE(book->save(test::sampleStone()));
    book.reset();
    std::mt19937_64 random(test::printedSeed());
    const int cycles = test::roundsOr("STONEPENNY_KILLS", 25);
    std::size_t acknowledged = 0;
    for (int cycle = 0; cycle < cycles; ++cycle) {
        std::vector<std::string> numbers;
        {
            Child child({BOOK_CHILD, "bill", file.string()});
            const auto first = child.line();
            ASSERT_TRUE(first.starts_with("I-")) << first;
            numbers =
                child.killAfter(std::chrono::microseconds(std::uniform_int_distribution<int>(200, 300'000)(random)));
            numbers.insert(numbers.begin(), first);
        }
        acknowledged += numbers.size();
        ASSERT_NO_FATAL_FAILURE(expectSound()) << "cycle " << cycle; // tells a gap, too
        reopen();
        for (const auto& number : numbers) ASSERT_TRUE(book->billNumbered(number)) << number;
        book.reset();
    }
    std::cout << cycles << " kills, " << acknowledged << " bills acknowledged, 0 lost\n";
}

} // namespace
