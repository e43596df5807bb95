// SPDX-License-Identifier: MIT
// The lock file, what programs that died leave behind, and who may read what is made.
#include "db/book/file_lock.h"

#include "db/db_error.h"
#include "tests/db/bench_book.h"
#include "tests/support/child.h"
#include "tests/support/seed.h"

#include <random>
#include <set>
#include <sys/stat.h>
#include <unistd.h>

namespace {

using namespace sp;
using test::BookTest;
using test::Child;

class LockTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        book.reset();
    }
    /// Why a book with this lock beside it cannot be written; empty when it can.
    std::string obstacleWith(const std::string& lock) {
        test::writeBytes(lockFile, lock);
        reopen();
        auto why = test::described(book->readOnlyBecause());
        const auto done = book->save(test::sampleStone(std::to_string(++saved)));
        EXPECT_EQ(done.has_value(), why.empty()) << lock;
        book.reset();
        return why;
    }
    std::set<std::string> beside() const {
        std::set<std::string> names;
        for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
            names.insert(entry.path().filename().string());
        return names;
    }
    static unsigned modeOf(const std::filesystem::path& path) {
        struct stat facts {};
        EXPECT_EQ(::stat(path.c_str(), &facts), 0) << path;
        return facts.st_mode & 07777;
    }

    std::filesystem::path lockFile = file.string() + ".lock";
    int saved = 0;
};

// A program killed between making its lock and telling who it is, or whose disk tore what it told.
TEST_F(LockTest, ofNobodyIsTakenOver) {
    for (const auto* left : {"", "\n", "garbage", "12", "-7\nstonepenny\n", "99999999999999999999\nx\ny\n", "\n\n\n\n"})
        EXPECT_EQ(obstacleWith(left), "") << left;
    EXPECT_EQ(obstacleWith(std::string(100'000, '\xA7')), "");
    EXPECT_EQ(beside(), std::set<std::string>{"Stone Bench.jobbook"});
}

TEST_F(LockTest, ofAProgramOfThisComputerThatEndedIsTakenOver) {
    std::string here(256, '\0');
    ASSERT_EQ(::gethostname(here.data(), here.size()), 0);
    here.resize(here.find('\0'));
    EXPECT_EQ(obstacleWith("4194303\nstonepenny\n" + here + "\n"), "");
    // A number that another program was given meanwhile: it does not hold the file.
    EXPECT_EQ(obstacleWith(std::to_string(::getppid()) + "\nstonepenny\n" + here + "\n"), "");
}

TEST_F(LockTest, ofAnotherComputerIsHeeded) {
    EXPECT_EQ(obstacleWith("812\nstonepenny\nworkbench-two\nno-such-machine\n"),
              "HeldBy(Stone Bench.jobbook, stonepenny, workbench-two, 812)");
    EXPECT_TRUE(std::filesystem::exists(lockFile));
}

TEST_F(LockTest, thatIsNoFileIsNeitherFollowedNorRemoved) {
    const auto other = folder / "list.txt";
    test::writeBytes(other, "mine");
    std::filesystem::create_symlink(other, lockFile);
    reopen();
    EXPECT_EQ(test::described(book->readOnlyBecause()), "NoLockInFolder(Stone Bench.jobbook)");
    book.reset();
    EXPECT_EQ(test::bytesOf(other), "mine");
    EXPECT_TRUE(std::filesystem::is_symlink(lockFile));
}

// It may be deleted by hand while it is held; then that of the next program is not removed by the first.
TEST_F(LockTest, ofAnotherIsNotRemovedAtTheEnd) {
    reopen();
    std::filesystem::remove(lockFile);
    test::writeBytes(lockFile, "812\nstonepenny\nworkbench-two\n");
    book.reset();
    EXPECT_EQ(test::bytesOf(lockFile), "812\nstonepenny\nworkbench-two\n");
}

TEST_F(LockTest, isHeldByASingleOne) {
    for (int round = 0; round < 20; ++round) {
        test::writeBytes(lockFile, "");
        std::vector<std::unique_ptr<Child>> programs;
        for (int i = 0; i < 4; ++i)
            programs.push_back(std::make_unique<Child>(std::vector<std::string>{BOOK_CHILD, "hold", file.string()}));
        int writers = 0;
        for (auto& program : programs) writers += program->line() == "held" ? 1 : 0;
        EXPECT_EQ(writers, 1) << "round " << round;
        for (auto& program : programs) program->finish();
    }
    EXPECT_EQ(beside(), std::set<std::string>{"Stone Bench.jobbook"});
}

/// F3: killed at any moment of opening or closing, the book opens for writing after it, and nothing stays beside it.
TEST_F(LockTest, survivesKillsWhileABookIsOpened) {
    std::mt19937_64 random(test::printedSeed());
    const int kills = test::roundsOr("STONEPENNY_OPENING_KILLS", 60);
    for (int kill = 0; kill < kills; ++kill) {
        {
            Child child({BOOK_CHILD, "open-on-and-on", file.string()});
            child.line();
            child.killAfter(std::chrono::microseconds(std::uniform_int_distribution<int>(0, 8'000)(random)));
        }
        reopen();
        ASSERT_EQ(test::described(book->readOnlyBecause()), "") << "kill " << kill;
        book.reset();
        ASSERT_EQ(beside(), std::set<std::string>{"Stone Bench.jobbook"}) << "kill " << kill;
    }
    expectSound();
    std::cout << kills << " kills while opening, 0 refused\n";
}

TEST_F(LockTest, leftoversOfDeadProgramsGo) {
    const auto name = [&](const char* text) { return folder / text; };
    const auto ours = std::to_string(::getppid());
    test::writeBytes(name(".Copy.jobbook.unfinished-4194303"), "half");
    test::writeBytes(name(".Copy.jobbook.unfinished-4194303-journal"), "half");
    test::writeBytes(name("Stone Bench.jobbook.lock.rmlock"), "");
    test::writeBytes(folder / (".Copy.jobbook.unfinished-" + ours), "under way");
    test::writeBytes(name("notes.unfinished-4194303"), "mine");
    test::writeBytes(name(".letter.unfinished-x"), "mine");
    reopen();
    book.reset();
    EXPECT_EQ(beside(), (std::set<std::string>{"Stone Bench.jobbook", ".Copy.jobbook.unfinished-" + ours,
                                               "notes.unfinished-4194303", ".letter.unfinished-x"}));
}

TEST_F(LockTest, booksAndCopiesAreTheOwnersAlone) {
    const auto before = ::umask(0);
    const auto made = folder / "New.jobbook";
    ASSERT_TRUE(db::Book::create(made, clock.environment()));
    reopen();
    const auto copied = book->copyTo(folder / "Copy.jobbook");
    book.reset();
    ::umask(before);
    ASSERT_TRUE(copied);
    EXPECT_EQ(modeOf(made), 0600U);
    EXPECT_EQ(modeOf(folder / "Copy.jobbook"), 0600U);
}

} // namespace
