// SPDX-License-Identifier: MIT
// What was done stays done: what was acknowledged is there, whatever happened to the program or the disk; and a full
// or failing disk costs the one action that met it.
#include "tests/db/bench_book.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"

#include <random>
#include <sys/stat.h>
#include <unistd.h>

namespace {

using namespace sp;
using test::BookTest;
using test::Child;

constexpr const char* kNobody = "65534";

class KillTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        ASSERT_TRUE(book->save(test::sampleStone()));
        book.reset();
        random.seed(test::printedSeed());
    }
    std::chrono::microseconds someTime(int longestMs) {
        return std::chrono::microseconds(std::uniform_int_distribution<int>(200, longestMs * 1'000)(random));
    }
    bool hasJournal() const { return std::filesystem::exists(file.string() + "-journal"); }
    /// All quotes that were acknowledged so far are there, whole; no other thing is there by half.
    void expectKept(const std::vector<std::string>& numbers) {
        const auto report = db::Book::check(file);
        ASSERT_TRUE(report) << describe(report.error());
        ASSERT_EQ(test::described(report->damage), std::vector<std::string>{});
        ASSERT_GE(report->sealedQuotes, static_cast<std::int64_t>(numbers.size()));
        ASSERT_EQ(report->sealedQuotes, report->quotes) << "a quote is there by half";
        reopen();
        for (const auto& number : numbers) {
            const auto quote = book->quoteNumbered(number);
            ASSERT_TRUE(quote) << number;
            ASSERT_EQ(quote->order.lines.size(), 8U);
        }
        const auto shelf = book->shelf().value();
        ASSERT_EQ(shelf.empty() ? 0 : shelf.begin()->second, report->sealedQuotes) << "quotes and shelf disagree";
        book.reset();
    }

    std::mt19937_64 random;
};

TEST_F(KillTest, losesNothingThatWasAcknowledged) {
    const int cycles = test::roundsOr("STONEPENNY_KILLS", 60);
    int journals = 0;
    std::size_t acknowledged = 0;
    for (int cycle = 0; cycle < cycles; ++cycle) {
        std::vector<std::string> numbers;
        {
            Child child({BOOK_CHILD, "write", file.string()});
            const auto first = child.line();
            ASSERT_TRUE(first.starts_with("20")) << first;
            numbers = child.killAfter(someTime(30));
            numbers.insert(numbers.begin(), first);
        }
        journals += hasJournal() ? 1 : 0;
        acknowledged += numbers.size();
        ASSERT_NO_FATAL_FAILURE(expectKept(numbers)) << "cycle " << cycle;
    }
    std::cout << cycles << " kills, " << acknowledged << " quotes acknowledged, " << journals
              << " journals left behind, 0 lost, 0 by half\n";
}

// The control: the same harness must see what a book without a journal on disk loses. The writer is in the middle of
// one change from its first line on, whenever it is killed.
TEST_F(KillTest, wouldSeeTheDamageOfAnUnsafeWriter) {
    const auto good = test::bytesOf(file);
    constexpr int kCycles = 20;
    int seen = 0;
    for (int cycle = 0; cycle < kCycles; ++cycle) {
        test::writeBytes(file, good);
        {
            Child child({BOOK_CHILD, "write-unsafely", file.string()});
            ASSERT_EQ(child.line(), "1");
            child.killAfter(someTime(15));
        }
        const auto report = db::Book::check(file);
        const bool isBroken =
            !report || (!report->damage.empty() && (report->damage[0].id == idOf(db::Note::StructureNotWhole) ||
                                                    report->damage[0].id == idOf(db::Note::IndexNotWhole)));
        seen += isBroken ? 1 : 0;
    }
    std::cout << seen << " of " << kCycles << " kills left damage that was seen\n";
    EXPECT_GT(seen, 0) << "a writer without a journal left no damage that was seen: the harness is blind";
}

TEST_F(KillTest, makesAWholeBookOrNone) {
    for (int cycle = 0; cycle < 20; ++cycle) {
        const auto made = folder / ("made " + std::to_string(cycle) + ".jobbook");
        {
            Child child({BOOK_CHILD, "create", made.string()});
            child.killAfter(someTime(40));
        }
        if (!std::filesystem::exists(made)) continue;
        const auto report = db::Book::check(made);
        ASSERT_TRUE(report) << describe(report.error());
        EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
    }
}

TEST_F(KillTest, keepsAllThatFitsOnAFullDisk) {
    for (const unsigned room : {3'000U, 20'000U, 70'000U, 200'000U}) {
        const auto limit = std::filesystem::file_size(file) + room;
        const auto said = Child({BOOK_CHILD, "fill", file.string(), std::to_string(limit)}).finish();
        ASSERT_GE(said.size(), 2U);
        EXPECT_EQ(said.back(), "full: DiskFullOrFailing(Stone Bench.jobbook)");
        EXPECT_EQ(said[said.size() - 2], "reads on: yes");
        ASSERT_NO_FATAL_FAILURE(expectKept({said.begin(), said.end() - 2}));
    }
}

/// Root may do everything: without it there is nobody else to be.
class OtherUser : public KillTest {
  protected:
    void SetUp() override {
        if (::geteuid() != 0) GTEST_SKIP() << "needs root, to become somebody else";
        KillTest::SetUp();
        ::chmod(folder.path().c_str(), 0755);
        ::chmod(file.c_str(), 0644);
    }
};

TEST_F(OtherUser, readsInAFolderThatCannotBeWritten) {
    const auto before = test::bytesOf(file);
    const auto said = Child({BOOK_CHILD, "open", file.string(), kNobody}).finish();
    ASSERT_EQ(said.size(), 3U);
    EXPECT_EQ(said[0], "open: BookNotWritable(Stone Bench.jobbook)");
    EXPECT_EQ(said[1], "materials: 1");
    EXPECT_EQ(said[2], "read-only: BookNotWritable(Stone Bench.jobbook)");
    EXPECT_EQ(test::bytesOf(file), before);
}

TEST_F(OtherUser, readsAFileThatCannotBeWritten) {
    ::chmod(folder.path().c_str(), 0777);
    ::chmod(file.c_str(), 0444);
    const auto said = Child({BOOK_CHILD, "open", file.string(), kNobody}).finish();
    ASSERT_EQ(said.size(), 3U);
    EXPECT_EQ(said[0], "open: BookNotWritable(Stone Bench.jobbook)");
    EXPECT_EQ(said[1], "materials: 1");
}

TEST_F(OtherUser, isToldWhenItMayNotEvenRead) {
    ::chmod(file.c_str(), 0600);
    const auto said = Child({BOOK_CHILD, "open", file.string(), kNobody}).finish();
    EXPECT_EQ(said, std::vector<std::string>{"read-only: NotReadable(Stone Bench.jobbook)"});
}

TEST_F(OtherUser, cannotMakeABookWhereNothingCanBeWritten) {
    const auto said = Child({BOOK_CHILD, "create", (folder / "new.jobbook").string(), kNobody}).finish();
    ASSERT_EQ(said.size(), 1U);
    EXPECT_TRUE(said[0].starts_with("read-only: ")) << said[0];
    EXPECT_FALSE(std::filesystem::exists(folder / "new.jobbook"));
}

} // namespace
