// SPDX-License-Identifier: MIT
// What happens to an open book behind the program's back, and a disk that fails at the last moment.
#include "tests/db/bench_book.h"

#include <sqlite3.h>

#include <array>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {

using namespace sp;
using test::BookTest;
namespace fs = std::filesystem;

class Displaced : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
    }
    /// What a change is refused with, once and again.
    std::string refusal() {
        const auto first = test::described(book->save(test::sampleStone("Other")).error());
        EXPECT_EQ(test::described(book->save(test::sampleStone("Another")).error()), first);
        EXPECT_EQ(test::described(book->readOnlyBecause()), first);
        return first;
    }
    /// All that is open is still to be had, in a copy.
    void expectCopied(std::size_t quotes) {
        const auto copy = folder / "Saved.jobbook";
        const auto done = book->copyTo(copy);
        ASSERT_TRUE(done) << describe(done.error());
        auto opened = db::Book::open(copy, clock.environment());
        ASSERT_TRUE(opened) << describe(opened.error());
        EXPECT_EQ((*opened)->quotes({}, 100)->size(), quotes);
        EXPECT_EQ((*opened)->materials()->size(), 3U);
    }
};

TEST_F(Displaced, isNothingThatOnesOwnChangesDo) {
    for (int i = 0; i < 20; ++i) {
        issued();
        EXPECT_FALSE(book->notice());
    }
    ASSERT_FALSE(book->batch(base::say(db::Note::Adding, "a test"), [&]() -> base::Done {
        for (int i = 0; i < 300; ++i) EXPECT_TRUE(book->save(test::sampleStone(std::to_string(i))));
        return base::fail(db::Fault::NotFinished, {});
    }));
    EXPECT_FALSE(book->notice());
    ASSERT_TRUE(book->copyTo(folder / "copy.jobbook"));
    expectSound();
    ::chmod(file.c_str(), 0640);
    EXPECT_TRUE(book->save(test::sampleStone("Other")));
}

TEST_F(Displaced, isABookThatWasDeletedOrMoved) {
    issued();
    fs::rename(file, folder / "Elsewhere.jobbook");
    EXPECT_EQ(test::described(book->notice()), "BookGone(Stone Bench.jobbook)");
    EXPECT_EQ(refusal(), "BookGone(Stone Bench.jobbook)");
    expectCopied(1);
    book.reset();
    EXPECT_FALSE(fs::exists(file));
    fs::rename(folder / "Elsewhere.jobbook", file);
    reopen();
    EXPECT_TRUE(book->save(test::sampleStone("Other")));
    expectSound();
}

TEST_F(Displaced, isNoticedBeforeTheNextChange) {
    issued();
    fs::remove(file);
    EXPECT_EQ(refusal(), "BookGone(Stone Bench.jobbook)");
    expectCopied(1);
}

TEST_F(Displaced, isABookThatAnotherFileTookThePlaceOf) {
    const auto older = folder / "older.jobbook";
    ASSERT_TRUE(book->copyTo(older));
    issued();
    fs::rename(older, file);
    const auto before = test::bytesOf(file);
    EXPECT_EQ(refusal(), "BookReplaced(Stone Bench.jobbook)");
    expectCopied(1);
    book.reset();
    EXPECT_EQ(test::bytesOf(file), before);
    expectSound();
}

// As `cp older.jobbook Book.jobbook` does: the file stays, what it holds does not.
TEST_F(Displaced, isABookThatWasOverwritten) {
    issued();
    const auto older = (folder / "older.jobbook").string();
    ASSERT_TRUE(book->copyTo(older));
    for (int i = 0; i < 5; ++i) issued();
    test::writeBytes(file, test::bytesOf(older));
    const auto before = test::bytesOf(file);
    EXPECT_EQ(test::described(book->notice()), "BookOverwritten(Stone Bench.jobbook)");
    EXPECT_EQ(refusal(), "BookOverwritten(Stone Bench.jobbook)");
    book.reset();
    EXPECT_EQ(test::bytesOf(file), before) << "nothing was mixed into it";
    expectSound();
    // Its numbers are not given again behind the owner's back: that was told, and is the owner's to decide.
    reopen();
    EXPECT_EQ(book->quotes({}, 100)->size(), 1U);
}

// -------------------------------------------------------------------------------- failed, and done all the same

/// Between deleting the journal and making that durable, SQLite opens the folder. Here it is given something that
/// cannot be synced, for as long as this lives.
class UnsyncedFolder {
  public:
    UnsyncedFolder() { set(&open); }
    ~UnsyncedFolder() { set(nullptr); }
    UnsyncedFolder(const UnsyncedFolder&) = delete;
    UnsyncedFolder& operator=(const UnsyncedFolder&) = delete;

  private:
    static void set(int (*call)(const char*, int*)) {
        auto* vfs = sqlite3_vfs_find(nullptr);
        vfs->xSetSystemCall(vfs, "openDirectory", reinterpret_cast<sqlite3_syscall_ptr>(call));
    }
    static int open(const char*, int* handle) {
        std::array<int, 2> ends{};
        if (::pipe2(ends.data(), O_CLOEXEC) != 0) return SQLITE_CANTOPEN;
        ::close(ends[1]);
        *handle = ends[0]; // fsync(2): EINVAL, "bound to a special file which does not support synchronization"
        return SQLITE_OK;
    }
};

TEST_F(Displaced, aQuoteIsGivenThoughTheFolderWasSyncedLate) {
    const auto first = draft();
    const auto result = test::resultOf(units::Money::fromMicros(412'500'000));
    const auto prices = book->priceBook(customer).value();
    {
        const UnsyncedFolder folderOf;
        const auto given = book->issue(first, prices, result, first.order.quotedOn.plusDays(21));
        ASSERT_TRUE(given) << describe(given.error());
        EXPECT_EQ(given->number, "2026-0001");
    }
    EXPECT_EQ(book->quotes({}, 100)->size(), 1U);
    expectSound();
}

} // namespace
