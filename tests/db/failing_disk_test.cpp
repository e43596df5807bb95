// SPDX-License-Identifier: MIT
// What SQLite asks of the system and of memory is refused once: that costs the command that met it, and no more.
#include "tests/db/bench_book.h"
#include "tests/db/other_call.h"

#include <sqlite3.h>

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <optional>
#include <string_view>
#include <sys/types.h>
#include <unistd.h>

namespace {

using namespace sp;
using test::BookTest;
using test::OtherCall;

class FailingDisk : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
    }
    bool holds(std::string_view name) {
        const auto materials = test::valueOf(book->materials());
        return std::ranges::any_of(materials, [&](const auto& material) { return material.name == name; });
    }
};

/// SQLite is given no more memory than it has, for as long as this lives.
class NoMoreMemory {
  public:
    NoMoreMemory() { sqlite3_hard_heap_limit64(sqlite3_memory_used()); }
    ~NoMoreMemory() {
        sqlite3_hard_heap_limit64(0);
        sqlite3_soft_heap_limit64(0);
    }
    NoMoreMemory(const NoMoreMemory&) = delete;
    NoMoreMemory& operator=(const NoMoreMemory&) = delete;
};

TEST_F(FailingDisk, keepsWhatIsDoneAfterAChangeThatCouldNotBeTakenBack) {
    reopen(); // nothing was taken back yet by this connection: to do so needs memory
    std::optional<NoMoreMemory> memory;
    const auto refused = book->batch(base::say(db::Note::Adding, "a test"), [&]() -> base::Done {
        EXPECT_TRUE(book->save(test::sampleStone("Taken back")));
        memory.emplace();
        return base::fail(db::Fault::NotFinished, {});
    });
    memory.reset();
    ASSERT_FALSE(refused);
    EXPECT_FALSE(holds("Taken back"));
    const auto kept = book->save(test::sampleStone("Kept"));
    ASSERT_TRUE(kept) << describe(kept.error());
    reopen();
    EXPECT_TRUE(holds("Kept"));
    EXPECT_FALSE(holds("Taken back"));
    expectSound();
}

ssize_t noRead(int, void*, std::size_t, off64_t) {
    errno = EIO;
    return -1;
}

// rescode.html: for these errno SQLite gives SQLITE_IOERR_CORRUPTFS, which a statement calls SQLITE_CORRUPT.
TEST_F(FailingDisk, doesNotBlameTheBookForWhatTheDiskDoesNotGive) {
    {
        const OtherCall narrow("pread", &noRead);
        const OtherCall wide("pread64", &noRead);
        EXPECT_EQ(test::described(book->materials().error()), "NotReadFromDisk(Stone Bench.jobbook)");
    }
    EXPECT_EQ(book->materials()->size(), 3U);
    expectSound();
}

int openToReadAlone(const char* path, int flags, int mode) {
    const std::string_view name(path);
    if (name.ends_with("/Stone Bench.jobbook") && (flags & O_ACCMODE) == O_RDWR) {
        errno = EIO;
        return -1;
    }
    return ::open(path, flags, mode);
}

TEST_F(FailingDisk, refusesToOpenABookThatItCannotOpenForWriting) {
    book.reset();
    {
        const OtherCall open("open", &openToReadAlone);
        const auto opened = db::Book::open(file, clock.environment());
        ASSERT_FALSE(opened) << "its changes would all be refused";
        EXPECT_EQ(test::described(opened.error()), "FileNotWritable(Stone Bench.jobbook)");
    }
    reopen();
    EXPECT_TRUE(book->save(test::sampleStone("Other")));
}

TEST_F(FailingDisk, leavesNoBookThatWasNotMade) {
    book.reset();
    std::filesystem::remove(file);
    {
        const OtherCall open("open", &openToReadAlone);
        ASSERT_FALSE(db::Book::create(file, clock.environment()));
    }
    const auto made = db::Book::create(file, clock.environment());
    EXPECT_TRUE(made) << test::described(made.error());
}

int noUnlink(const char*) {
    errno = EIO;
    return -1;
}

TEST_F(FailingDisk, knowsItsOwnFileAgainAfterTakingAChangeBack) {
    {
        const OtherCall unlink("unlink", &noUnlink);
        ASSERT_FALSE(book->save(test::sampleStone("Taken back")));
    }
    ASSERT_TRUE(std::filesystem::exists(file.string() + "-journal")) << "there is something to take back";
    // As a clock of a coarse file system tells it, but surely.
    EXPECT_FALSE(holds("Taken back"));
    const auto kept = book->save(test::sampleStone("Kept"));
    ASSERT_TRUE(kept) << describe(kept.error());
    EXPECT_FALSE(book->notice());
    reopen();
    EXPECT_TRUE(holds("Kept"));
    expectSound();
}

} // namespace
