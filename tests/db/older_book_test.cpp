// SPDX-License-Identifier: MIT
// An older book is backed up before anything is changed in it, whatever lies beside it, and can be read where it cannot
// be brought up to date.
#include "tests/db/kept_book.h"
#include "tests/support/child.h"

#include <filesystem>
#include <unistd.h>

namespace {

using namespace sp;
namespace fs = std::filesystem;
using test::Child;

class OlderBookTest : public test::KeptBook {
  protected:
    void SetUp() override {
        KeptBook::SetUp();
        before = test::bytesOf(file);
    }
    std::unique_ptr<db::Book> open() {
        auto opened = db::Book::open(file, clock.environment());
        EXPECT_TRUE(opened) << describe(opened.error());
        return opened ? std::move(*opened) : nullptr;
    }
    fs::path backup(const std::string& more = {}) const {
        return folder / ("Old Bench before version " + std::to_string(test::newestBook()) + more + ".jobbook");
    }
    static std::string version(const fs::path& book) { return ask(book, "PRAGMA user_version").at(0); }
    void expectUntouched() {
        EXPECT_TRUE(test::bytesOf(file) == before);
        EXPECT_FALSE(fs::exists(fs::symlink_status(backup())));
        for (const auto& entry : fs::directory_iterator(folder.path()))
            EXPECT_EQ(entry.path().filename().string().find("unfinished"), std::string::npos) << entry.path();
    }

    void breakTheFirstSeal() const {
        run(file, GetParam() < 3 ? "UPDATE sealed SET frozen = frozen || ' ' WHERE place = 1"
                                 : "UPDATE record SET json = json || ' ' WHERE digest = "
                                   "(SELECT digest FROM seal WHERE place = 1)");
    }

    std::string before;
};

TEST_P(OlderBookTest, isBackedUpAsItWas) {
    open().reset();
    EXPECT_EQ(version(file), std::to_string(test::newestBook()));
    EXPECT_EQ(version(backup()), std::to_string(GetParam()));
    const auto report = db::Book::check(backup());
    ASSERT_TRUE(report) << describe(report.error());
    EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
}

// Neither what another program wrote there, nor a link to nothing, nor an older backup is taken for the backup.
TEST_P(OlderBookTest, isBackedUpUnderAFreeName) {
    test::writeBytes(backup(), "garbage");
    fs::create_symlink(folder / "nowhere", backup(" (2)"));
    fs::create_directory(backup(" (3)"));
    EXPECT_EQ(test::described(open()->readOnlyBecause()), "");
    EXPECT_EQ(test::bytesOf(backup()), "garbage");
    EXPECT_FALSE(fs::exists(folder / "nowhere"));
    EXPECT_EQ(version(backup(" (4)")), std::to_string(GetParam()));
    EXPECT_EQ(test::described(db::Book::check(backup(" (4)"))->damage), std::vector<std::string>{});
    // An older one of the same name: another book of that version beside a real backup.
    fs::remove(file);
    make(file);
    EXPECT_EQ(test::described(open()->readOnlyBecause()), "");
    EXPECT_EQ(version(backup(" (5)")), std::to_string(GetParam()));
}

TEST_P(OlderBookTest, isOnlyReadWhenASealDoesNotMatch) {
    breakTheFirstSeal();
    before = test::bytesOf(file);
    const auto book = open();
    EXPECT_EQ(test::described(book->readOnlyBecause()), "OlderSealBroken(Old Bench.jobbook)");
    EXPECT_EQ(book->quoteNumbered("2026-0001").error().code, base::Code::Damaged);
    EXPECT_TRUE(book->quoteNumbered("2026-0002"));
    EXPECT_EQ(test::described(book->save(test::sampleStone()).error()), test::described(book->readOnlyBecause()));
    expectUntouched();
}

TEST_P(OlderBookTest, isReadOnAFullDisk) {
    // A file that is there already may be as long as it is; nothing longer, and no second one of its length.
    const auto said = Child({BOOK_CHILD, "read-on-full-disk", file.string(), "60000"}).finish();
    ASSERT_EQ(said.size(), 2U) << (said.empty() ? "" : said[0]);
    EXPECT_EQ(said[0], "open: OlderWithoutRoom(Old Bench.jobbook)");
    EXPECT_EQ(said[1], "quotes: " + std::to_string(open()->quotes("", 100)->size()));
}

TEST_P(OlderBookTest, isReadInAFolderThatCannotBeWritten) {
    if (::geteuid() != 0) GTEST_SKIP() << "only root can be somebody else";
    fs::permissions(folder.path(), fs::perms(0555));
    fs::permissions(file, fs::perms(0444));
    const auto said = Child({BOOK_CHILD, "open", file.string(), "65534"}).finish();
    fs::permissions(folder.path(), fs::perms(0755));
    ASSERT_EQ(said.size(), 3U) << (said.empty() ? "" : said[0]);
    EXPECT_EQ(said[0], "open: BookNotWritable(Old Bench.jobbook)");
    EXPECT_EQ(said[2].substr(0, 10), "read-only:");
    expectUntouched();
}

TEST_P(OlderBookTest, isCheckedWithoutBeingBroughtUpToDate) {
    const auto checked = db::Book::check(file);
    ASSERT_TRUE(checked) << describe(checked.error());
    EXPECT_EQ(test::described(checked->damage), std::vector<std::string>{});
    expectUntouched();
    run(file, GetParam() < 3 ? "UPDATE sealed_part SET json = json || ' '"
                             : "UPDATE record SET json = json || ' ' WHERE json LIKE '%\"kind\":\"priced-material\"%'");
    EXPECT_FALSE(db::Book::check(file)->damage.empty());
}

// A copy of what was opened to be read is a book like any other.
TEST_P(OlderBookTest, isCopiedUpToDateWhenItCanOnlyBeRead) {
    breakTheFirstSeal();
    ASSERT_TRUE(open()->copyTo(folder / "copy.jobbook"));
    EXPECT_EQ(version(folder / "copy.jobbook"), std::to_string(test::newestBook()));
    EXPECT_EQ(version(file), std::to_string(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(Kept, OlderBookTest, testing::Range(1, test::newestBook()), test::nameOfVersion);

} // namespace
