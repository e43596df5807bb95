// SPDX-License-Identifier: MIT
// The door for every file that is no book.
#include "db/book/written_file.h"

#include "tests/db/bench_book.h"
#include "tests/support/child.h"

#include <csignal>
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

namespace {

using namespace sp;
using db::IfThere;
using test::BookTest;

class WrittenFile : public BookTest {
  protected:
    std::string refusal(const std::filesystem::path& target, IfThere ifThere = IfThere::Replace) {
        const auto done = db::writeFile(target, "paper", ifThere);
        return done ? std::string("written") : std::string(done.error().fault.name);
    }
    std::size_t files() const {
        std::size_t count = 0;
        for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder.path())) ++count;
        return count;
    }
};

TEST_F(WrittenFile, isNewOrReplacesARegularOne) {
    const auto sheet = folder / "sheet.pdf";
    EXPECT_EQ(refusal(sheet, IfThere::Refuse), "written");
    EXPECT_EQ(test::bytesOf(sheet), "paper");
    test::writeBytes(sheet, "older");
    ::chmod(sheet.c_str(), 0640);
    EXPECT_EQ(refusal(sheet, IfThere::Refuse), "FileExists");
    EXPECT_EQ(test::bytesOf(sheet), "older");
    EXPECT_EQ(refusal(sheet), "written");
    EXPECT_EQ(test::bytesOf(sheet), "paper");
    struct stat facts {};
    ASSERT_EQ(::stat(sheet.c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 07777, 0640U);
}

TEST_F(WrittenFile, isNothingButAPlainFile) {
    const auto other = folder / "letter.txt";
    test::writeBytes(other, "mine");
    const auto link = folder / "link.pdf";
    std::filesystem::create_symlink(other, link);
    EXPECT_EQ(refusal(link), "NoPlainFile");
    EXPECT_EQ(test::bytesOf(other), "mine");
    std::filesystem::create_symlink(folder / "nothing", folder / "dangling.pdf");
    EXPECT_EQ(refusal(folder / "dangling.pdf"), "NoPlainFile");
    EXPECT_FALSE(std::filesystem::exists(folder / "nothing"));
    // Reading a pipe that nobody writes to would wait for ever.
    const auto pipe = folder / "pipe.pdf";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_EQ(refusal(pipe), "NoPlainFile");
    std::filesystem::create_directory(folder / "folder.pdf");
    EXPECT_EQ(refusal(folder / "folder.pdf"), "NoPlainFile");
    EXPECT_EQ(refusal(folder / "no" / "sheet.pdf"), "NoSuchFolder");
    EXPECT_EQ(refusal(folder.path() / ""), "NoPlainFile");
}

TEST_F(WrittenFile, isNeverABookOrPartOfOne) {
    const auto before = test::bytesOf(file);
    const auto lock = file.string() + ".lock";
    const auto held = test::bytesOf(lock);
    EXPECT_EQ(refusal(file), "StaysABook");
    EXPECT_EQ(refusal(lock), "StaysABook");
    EXPECT_EQ(test::bytesOf(file), before);
    EXPECT_EQ(test::bytesOf(lock), held);
    // Not there yet: the book would roll a journal of this name into itself.
    for (const auto* end : {"-journal", "-wal", "-shm"}) {
        EXPECT_EQ(refusal(file.string() + end), "StaysABook") << end;
        EXPECT_FALSE(std::filesystem::exists(file.string() + end));
    }
    EXPECT_EQ(refusal(folder / "New.JOBBOOK"), "StaysABook");
    // Under any other name, too.
    const auto renamed = folder / "books.pdf";
    std::filesystem::copy_file(file, renamed);
    EXPECT_EQ(refusal(renamed), "StaysABook");
    EXPECT_EQ(refusal(renamed.string() + "-journal"), "StaysABook");
    const auto journal = folder / "rest.pdf";
    test::writeBytes(journal, "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7 and pages");
    EXPECT_EQ(refusal(journal), "StaysABook");
    EXPECT_EQ(refusal(folder / "kept.lock"), "written") << "of no book";
}

// Looking into a file that is open would drop SQLite's locks on it.
TEST_F(WrittenFile, keepsTheLocksOfAnOpenBook) {
    const auto link = folder / "sheet.pdf";
    std::filesystem::create_hard_link(file, link);
    const auto done = book->batch(base::say(db::Note::Adding, "a test"), [&]() -> base::Done {
        if (const auto saved = book->save(test::sampleStone()); !saved) return base::fail(saved.error());
        EXPECT_EQ(refusal(link), "StaysABook");
        const auto said = test::Child({BOOK_CHILD, "is-locked", file.string()}).finish();
        EXPECT_EQ(said, std::vector<std::string>{"locked"});
        return {};
    });
    EXPECT_TRUE(done);
}

TEST_F(WrittenFile, leavesTheOldOneWhenTheDiskIsFull) {
    const auto sheet = folder / "sheet.pdf";
    test::writeBytes(sheet, "older");
    const auto before = files();
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit limits{};
    ::getrlimit(RLIMIT_FSIZE, &limits);
    const rlimit few{1'000, limits.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &few);
    const auto done = db::writeFile(sheet, std::string(2'000, 'x'), IfThere::Replace);
    ::setrlimit(RLIMIT_FSIZE, &limits);
    ASSERT_FALSE(done);
    EXPECT_EQ(test::described(done.error()), "DiskFull(sheet.pdf)");
    EXPECT_EQ(test::bytesOf(sheet), "older");
    EXPECT_EQ(files(), before);
}

} // namespace
