// SPDX-License-Identifier: MIT
// A revision that was acknowledged is there under its number and the one before it is kept, whenever the program was
// killed or the disk was full.
#include "tests/db/bench_book.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"

#include <random>

namespace {

using namespace sp;
using test::Child;

class RevisionKillTest : public test::BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        ASSERT_TRUE(book->save(test::sampleStone()));
        book.reset();
    }
    void expectKept(const std::vector<std::string>& numbers) {
        ASSERT_NO_FATAL_FAILURE(expectSound());
        reopen();
        for (const auto& number : numbers) {
            const auto quote = book->quoteAsGiven(number);
            ASSERT_TRUE(quote) << number;
            // Each revision has one line less than the one before.
            ASSERT_EQ(quote->order.lines.size(), static_cast<std::size_t>(9 - quote->revision)) << number;
        }
        book.reset();
    }
};

TEST_F(RevisionKillTest, losesNothingThatWasAcknowledged) {
    std::mt19937_64 random(test::printedSeed());
    const int cycles = test::roundsOr("STONEPENNY_KILLS", 25);
    std::size_t acknowledged = 0;
    for (int cycle = 0; cycle < cycles; ++cycle) {
        std::vector<std::string> numbers;
        {
            Child child({BOOK_CHILD, "revise", file.string()});
            const auto first = child.line();
            numbers =
                child.killAfter(std::chrono::microseconds(std::uniform_int_distribution<int>(200, 200'000)(random)));
            numbers.insert(numbers.begin(), first);
        }
        acknowledged += numbers.size();
        ASSERT_NO_FATAL_FAILURE(expectKept(numbers)) << "cycle " << cycle;
    }
    std::cout << cycles << " kills, " << acknowledged << " quotes acknowledged, 0 lost\n";
}

TEST_F(RevisionKillTest, keepsAllThatFitsOnAFullDisk) {
    for (const unsigned room : {20'000U, 45'000U, 70'000U, 100'000U, 200'000U}) {
        const auto limit = std::filesystem::file_size(file) + room;
        auto said = Child({BOOK_CHILD, "fill-revising", file.string(), std::to_string(limit)}).finish();
        ASSERT_FALSE(said.empty());
        EXPECT_EQ(said.back(), "full: DiskFullOrFailing(Stone Bench.jobbook)");
        said.pop_back();
        ASSERT_NO_FATAL_FAILURE(expectKept(said)) << room;
    }
}

} // namespace
