// SPDX-License-Identifier: MIT
#include "db/book/opening.h"

#include "db/book/files.h"
#include "db/migrations/migrations.h"
#include "tests/db/bench_book.h"
#include "tests/support/child.h"

#include <fmt/format.h>
#include <linux/magic.h>
#include <sqlite3.h>

#include <array>
#include <ostream>
#include <unistd.h>
#include <vector>

namespace {

using namespace sp;
using base::Code;
using test::BookTest;
using test::Child;

/// As another program would write it.
void alter(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, &error), SQLITE_OK) << (error == nullptr ? "" : error);
    sqlite3_free(error);
    sqlite3_close(db);
}

class OpeningTest : public BookTest {
  protected:
    base::Error errorOfOpening(const std::filesystem::path& path) {
        auto opened = db::Book::open(path, clock.environment());
        return opened ? base::Error{} : opened.error();
    }
};

// ------------------------------------------------------------------------------- files that are not to be opened

struct Unfit {
    std::string name;
    std::function<void(const std::filesystem::path&)> spoil;
    Code code;
    std::string detail;
};

void PrintTo(const Unfit& row, std::ostream* out) { *out << row.name; }

auto bytes(std::string content) {
    return [content](const auto& file) { test::writeBytes(file, content); };
}

auto sql(std::string text) {
    return [text](const auto& file) { alter(file, text); };
}

std::vector<Unfit> unfitFiles() {
    const auto newest = db::migrations::all().size();
    const std::string altered = "AlteredElsewhere(Stone Bench.jobbook)";
    return {
        {"empty", bytes(""), Code::Foreign, "EmptyFile(Stone Bench.jobbook)"},
        {"text", bytes("Dear Sir or Madam,\n" + std::string(200, 'x')), Code::Foreign,
         "NoJobBook(Stone Bench.jobbook)"},
        {"noise", bytes(std::string(8192, '\xA7')), Code::Foreign, "NoJobBook(Stone Bench.jobbook)"},
        {"onlyTheMagic", bytes(std::string("SQLite format 3\0", 16)), Code::Damaged,
         "MostIsMissing(Stone Bench.jobbook)"},
        {"otherDatabase", sql("PRAGMA application_id = 42"), Code::Foreign, "OtherDatabase(Stone Bench.jobbook)"},
        {"newer", sql(fmt::format("PRAGMA user_version = {}", newest + 1)), Code::TooNew,
         fmt::format("BookTooNew(Stone Bench.jobbook, {}, {})", newest + 1, newest)},
        {"muchNewer", sql("PRAGMA user_version = 2147483647"), Code::TooNew,
         fmt::format("BookTooNew(Stone Bench.jobbook, 2147483647, {})", newest)},
        {"versionZero", sql("PRAGMA user_version = 0"), Code::Damaged, "BeginningDamaged(Stone Bench.jobbook)"},
        {"negativeVersion", sql("PRAGMA user_version = -3"), Code::Damaged, "BeginningDamaged(Stone Bench.jobbook)"},
        // Hostile schemas: whatever is there besides our own tables never runs.
        {"view",
         sql("CREATE VIEW v AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) "
             "SELECT count(*) FROM n"),
         Code::Foreign, altered},
        {"trigger", sql("CREATE TRIGGER t AFTER INSERT ON material BEGIN DELETE FROM seal; END"), Code::Foreign,
         altered},
        {"loadingTrigger", sql("CREATE TRIGGER t AFTER UPDATE ON shop BEGIN SELECT load_extension('x.so'); END"),
         Code::Foreign, altered},
        {"extraTable", sql("CREATE TABLE notes (text TEXT)"), Code::Foreign, altered},
        {"extraIndex", sql("CREATE INDEX i ON material (colour)"), Code::Foreign, altered},
        {"missingIndex", sql("DROP INDEX job_draft"), Code::Foreign, altered},
        {"missingTable", sql("DROP TABLE series"), Code::Foreign, altered},
        {"extraColumn", sql("ALTER TABLE supplier ADD COLUMN note TEXT"), Code::Foreign, altered},
        {"generatedColumn", sql("ALTER TABLE supplier ADD COLUMN g INTEGER AS (abs(-9223372036854775807 - 1))"),
         Code::Foreign, altered},
        {"looserCheck",
         sql("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'lead_days BETWEEN 0 AND "
             "36500', "
             "'lead_days BETWEEN 0 AND 99999') WHERE name = 'supplier'"),
         Code::Foreign, altered},
        {"virtualTable", sql("CREATE VIRTUAL TABLE f USING fts5(x)"), Code::Foreign, altered},
        {"analysed", sql("ANALYZE"), Code::Foreign, altered},
    };
}

class UnfitFile : public OpeningTest, public testing::WithParamInterface<Unfit> {};

TEST_P(UnfitFile, isRefusedInOneSentenceAndLeftAlone) {
    stock();
    issued();
    book.reset();
    GetParam().spoil(file);
    const auto before = test::bytesOf(file);
    const auto error = errorOfOpening(file);
    EXPECT_EQ(error.code, GetParam().code);
    EXPECT_EQ(test::described(error), GetParam().detail);
    const auto checked = db::Book::check(file);
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error(), error);
    EXPECT_EQ(test::bytesOf(file), before);
    EXPECT_FALSE(std::filesystem::exists(file.string() + ".lock"));
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-journal"));
}

INSTANTIATE_TEST_SUITE_P(Opening, UnfitFile, testing::ValuesIn(unfitFiles()),
                         [](const auto& row) { return row.param.name; });

TEST_F(OpeningTest, saysThatAFileIsMissingOrAFolder) {
    EXPECT_EQ(errorOfOpening(folder / "none.jobbook").code, Code::Missing);
    EXPECT_EQ(errorOfOpening(folder.path()).code, Code::Foreign);
    EXPECT_EQ(errorOfOpening("/dev/null").code, Code::Foreign);
    EXPECT_EQ(errorOfOpening("").code, Code::Missing);
}

TEST_F(OpeningTest, takesNoTableRowThatBreaksItsRanges) {
    stock();
    book.reset();
    // A hostile file need not obey its own CHECKs.
    alter(file, "PRAGMA ignore_check_constraints = ON; UPDATE material SET loss_ppm = 5000000 WHERE kind = 'stone'");
    auto opened = db::Book::open(file, clock.environment());
    if (opened) {
        EXPECT_EQ((*opened)->materials().error().code, Code::Damaged);
        opened->reset();
    } else {
        EXPECT_EQ(opened.error().code, Code::Damaged);
    }
    const auto report = db::Book::check(file);
    ASSERT_TRUE(report);
    EXPECT_FALSE(report->damage.empty());
}

TEST_F(OpeningTest, takesNoTextThatIsNoText) {
    stock();
    book.reset();
    for (const auto* spoil : {"CAST(x'C328' AS TEXT)", "'a' || char(0) || 'b'", "hex(zeroblob(2000000))"}) {
        const auto good = test::bytesOf(file);
        alter(file, std::string("UPDATE design SET note = ") + spoil);
        const auto report = db::Book::check(file);
        ASSERT_TRUE(report) << spoil;
        EXPECT_FALSE(report->damage.empty()) << spoil;
        auto opened = db::Book::open(file, clock.environment());
        ASSERT_TRUE(opened) << spoil;
        EXPECT_EQ((*opened)->designs().error().code, Code::Damaged) << spoil;
        opened->reset();
        test::writeBytes(file, good);
    }
}

// ------------------------------------------------------------------------------------------- what a crash left behind

/// A journal that holds the first page as it is, as a power cut in the middle of a commit leaves it beside the book.
std::string journalOfTheFirstPage(const std::filesystem::path& file) {
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    // Not synchronous, the journal is whole as soon as it is written.
    EXPECT_EQ(sqlite3_exec(db, "PRAGMA synchronous = OFF; BEGIN; PRAGMA user_version = 77", nullptr, nullptr, nullptr),
              SQLITE_OK);
    auto journal = test::bytesOf(file.string() + "-journal");
    EXPECT_EQ(sqlite3_exec(db, "ROLLBACK", nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    EXPECT_GT(journal.size(), 4096U);
    return journal;
}

class CutOffTest : public OpeningTest {
  protected:
    /// The power went while the first sector was written.
    void cut() {
        stock();
        issued();
        book.reset();
        good = test::bytesOf(file);
        const auto left = journalOfTheFirstPage(file);
        ASSERT_TRUE(test::bytesOf(file) == good);
        test::writeBytes(file, std::string(512, '\xA7') + good.substr(512));
        test::writeBytes(journal, left);
    }

    std::string good;
    std::filesystem::path journal = file.string() + "-journal";
};

TEST_F(CutOffTest, isRolledBackBeforeItsHeaderIsRead) {
    cut();
    reopen();
    EXPECT_EQ(test::described(book->readOnlyBecause()), "");
    EXPECT_EQ(book->quoteNumbered("2026-0001")->stage, db::Stage::Quoted);
    book.reset();
    EXPECT_TRUE(test::bytesOf(file) == good);
    EXPECT_FALSE(std::filesystem::exists(journal));
}

TEST_F(CutOffTest, isRolledBackByACheck) {
    cut();
    expectSound();
    EXPECT_TRUE(test::bytesOf(file) == good);
}

TEST_F(CutOffTest, isRefusedInASentenceWhereItCannotBeRolledBack) {
    if (::geteuid() != 0) GTEST_SKIP() << "only root can be somebody else";
    cut();
    for (const auto& path : {file, journal}) std::filesystem::permissions(path, std::filesystem::perms(0444));
    std::filesystem::permissions(folder.path(), std::filesystem::perms(0555));
    const auto said = Child({BOOK_CHILD, "open", file.string(), "65534"}).finish();
    std::filesystem::permissions(folder.path(), std::filesystem::perms(0755));
    ASSERT_EQ(said.size(), 1U);
    EXPECT_EQ(said[0], "read-only: NotClosedProperly(Stone Bench.jobbook)");
}

// The control: without its journal the same file is none.
TEST_F(CutOffTest, isNoBookWithoutItsJournal) {
    cut();
    std::filesystem::remove(journal);
    EXPECT_EQ(test::described(errorOfOpening(file)), "NoJobBook(Stone Bench.jobbook)");
}

TEST_F(OpeningTest, leavesAnotherFileAloneThatHasAJournalBesideIt) {
    book.reset();
    test::writeBytes(file, std::string(8192, 'x'));
    for (const auto* beside : {"", "notes of my own"}) {
        test::writeBytes(file.string() + "-journal", beside);
        EXPECT_EQ(test::described(errorOfOpening(file)), "NoJobBook(Stone Bench.jobbook)");
        EXPECT_EQ(test::bytesOf(file), std::string(8192, 'x'));
    }
}

// -------------------------------------------------------------------------------------------------- names and places

TEST_F(OpeningTest, makesNoBookOverAFile) {
    const auto before = (book.reset(), test::bytesOf(file));
    const auto made = db::Book::create(file, clock.environment());
    EXPECT_EQ(made.error().code, Code::Conflict);
    EXPECT_EQ(test::described(made.error()), "FileExists(Stone Bench.jobbook)");
    EXPECT_EQ(test::bytesOf(file), before);
    EXPECT_EQ(db::Book::create(folder / "no" / "new.jobbook", clock.environment()).error().code, Code::Missing);
}

TEST_F(OpeningTest, leavesNothingBesideTheBook) {
    stock();
    book.reset();
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(folder.path())) ++files;
    EXPECT_EQ(files, 1U);
}

TEST_F(OpeningTest, followsALinkToTheBookItself) {
    book.reset();
    const auto link = folder / "link.jobbook";
    std::filesystem::create_symlink(file, link);
    auto opened = db::Book::open(link, clock.environment());
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ((*opened)->file(), file);
    EXPECT_TRUE(std::filesystem::exists(file.string() + ".lock"));
    EXPECT_EQ(errorOfOpening(file).code, Code::Busy);
}

TEST_F(OpeningTest, refusesABookWithASecondName) {
    book.reset();
    std::filesystem::create_hard_link(file, folder / "second.jobbook");
    const auto error = errorOfOpening(file);
    EXPECT_EQ(error.code, Code::Conflict);
    EXPECT_EQ(test::described(error), "SecondName(Stone Bench.jobbook)");
}

TEST_F(OpeningTest, opensABookOnlyOnceInAProgram) {
    const auto error = errorOfOpening(file);
    EXPECT_EQ(error.code, Code::Busy);
    EXPECT_EQ(test::described(error), "OpenHere(Stone Bench.jobbook)");
    ASSERT_TRUE(book->save(test::sampleStone()));
    reopen();
    EXPECT_EQ(book->materials()->size(), 1U);
}

// File system numbers of linux/magic.h.
TEST(Opening, knowsNetworkFoldersFromDisks) {
    EXPECT_EQ(db::shareNamed(NFS_SUPER_MAGIC), "NFS");
    EXPECT_EQ(db::shareNamed(SMB_SUPER_MAGIC), "SMB");
    EXPECT_EQ(db::shareNamed(0xFF534D42), "SMB");
    for (const unsigned disk : {unsigned{EXT4_SUPER_MAGIC}, unsigned{TMPFS_MAGIC}, unsigned{MSDOS_SUPER_MAGIC}})
        EXPECT_EQ(db::shareNamed(disk), "");
}

// Lines as proc(5) has them.
TEST(Opening, knowsFoldersThatAProgramServes) {
    const std::string mounts = "22 1 8:1 / / rw,relatime shared:1 - ext4 /dev/sda1 rw\n"
                               "40 22 0:41 / /mnt/far\\040away rw - fuse.sshfs bench@away:/ rw\n"
                               "41 22 8:17 / /media/stick rw - fuseblk /dev/sdb1 rw\n"
                               "42 22 0:42 / /mnt/plain rw - fuse thing rw\n"
                               "43 40 8:33 / /mnt/far\\040away/disk rw - ext4 /dev/sdc1 rw\n";
    EXPECT_EQ(db::servedBy(mounts, "/home/bench/Bench.jobbook"), "");
    EXPECT_EQ(db::servedBy(mounts, "/mnt/far away/Bench.jobbook"), "sshfs");
    EXPECT_EQ(db::servedBy(mounts, "/mnt/far away/disk/Bench.jobbook"), "");
    EXPECT_EQ(db::servedBy(mounts, "/mnt/far awayer/Bench.jobbook"), "");
    EXPECT_EQ(db::servedBy(mounts, "/media/stick/Bench.jobbook"), "");
    EXPECT_EQ(db::servedBy(mounts, "/mnt/plain/Bench.jobbook"), "FUSE");
    EXPECT_EQ(db::servedBy("22 1 0:9 / / rw - fuse.fuse-overlayfs x rw", "/Bench.jobbook"), "");
    EXPECT_EQ(db::servedBy("nonsense\n\n", "/Bench.jobbook"), "");
}

TEST_F(OpeningTest, onlyReadsInAFolderThatIsKeptAlikeOnSeveralComputers) {
    book.reset();
    const auto shared = folder / "pictures";
    std::filesystem::create_directories(shared / "shop");
    const auto moved = shared / "shop" / file.filename();
    std::filesystem::copy_file(file, moved);
    EXPECT_TRUE(db::Book::open(moved, clock.environment()).value()->save(test::sampleStone()));
    std::filesystem::create_directory(shared / ".stfolder");
    auto opened = db::Book::open(moved, clock.environment());
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ(test::described((*opened)->readOnlyBecause()),
              "InSyncedFolder(Stone Bench.jobbook, " + shared.string() + ")");
    EXPECT_EQ((*opened)->materials()->size(), 1U);
    EXPECT_EQ(db::syncedFolderAbove("/home/bench/Dropbox (Shop)/a/b.jobbook"), "/home/bench/Dropbox (Shop)");
    EXPECT_EQ(db::syncedFolderAbove("/home/bench/Dropboxes/b.jobbook"), "");
}

// ------------------------------------------------------------------------------------------------- two at one book

TEST_F(OpeningTest, readsBesideAnotherProgramThatHoldsTheBook) {
    stock();
    book.reset();
    Child holder({BOOK_CHILD, "hold", file.string()});
    ASSERT_EQ(holder.line(), "held");
    reopen();
    const auto why = test::described(book->readOnlyBecause());
    EXPECT_TRUE(why.starts_with("HeldBy(Stone Bench.jobbook, book_child, ")) << why;
    EXPECT_TRUE(why.ends_with(", " + std::to_string(holder.process()) + ")")) << why;
    EXPECT_EQ(book->materials()->size(), 3U);
    const auto saved = book->save(test::sampleStone("Other"));
    EXPECT_EQ(saved.error().code, Code::ReadOnly);
    EXPECT_EQ(test::described(saved.error()), test::described(book->readOnlyBecause()));
    expectSound();
    holder.finish();
    reopen();
    EXPECT_EQ(test::described(book->readOnlyBecause()), "");
    EXPECT_TRUE(book->save(test::sampleStone("Other")));
}

TEST_F(OpeningTest, takesOverFromAProgramThatDied) {
    book.reset();
    {
        Child holder({BOOK_CHILD, "hold", file.string()});
        ASSERT_EQ(holder.line(), "held");
        holder.killAfter(std::chrono::microseconds(0));
    }
    EXPECT_TRUE(std::filesystem::exists(file.string() + ".lock"));
    reopen();
    EXPECT_EQ(test::described(book->readOnlyBecause()), "");
    EXPECT_TRUE(book->save(test::sampleStone()));
}

TEST_F(OpeningTest, keepsASecondWriterOutWhileTheBookIsOpen) {
    ASSERT_TRUE(book->save(test::sampleStone()));
    expectSound(); // goes through the file in this process, and must not drop the lock
    ASSERT_TRUE(book->copyTo(folder / "copy.jobbook"));
    const auto said = Child({BOOK_CHILD, "open", file.string()}).finish();
    ASSERT_EQ(said.size(), 3U);
    EXPECT_TRUE(said[2].starts_with("read-only: ")) << said[2];
}

TEST_F(OpeningTest, saysWhenAnotherProgramIsWriting) {
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    const auto saved = book->save(test::sampleStone());
    EXPECT_EQ(saved.error().code, Code::Busy);
    EXPECT_EQ(test::described(saved.error()), "UsedElsewhere(Stone Bench.jobbook)");
    EXPECT_EQ(book->materials()->size(), 0U);
    sqlite3_close(other);
    EXPECT_TRUE(book->save(test::sampleStone()));
}

// -------------------------------------------------------------------------------------------------- settings in force

TEST_F(OpeningTest, hasEverySettingInForce) {
    book.reset();
    const auto opened = db::openBook(file, db::migrations::all());
    struct Setting {
        const char* pragma;
        std::string value;
    };
    for (const auto& [pragma, value] :
         std::array{Setting{"journal_mode", "delete"}, Setting{"synchronous", "3"}, Setting{"foreign_keys", "1"},
                    Setting{"cell_size_check", "1"}, Setting{"mmap_size", "0"}, Setting{"busy_timeout", "5000"},
                    Setting{"trusted_schema", "0"}, Setting{"application_id", "1397770818"},
                    Setting{"user_version", std::to_string(db::migrations::all().size())}, Setting{"encoding", "UTF-8"},
                    Setting{"locking_mode", "normal"}}) {
        auto row = opened.connection->query(std::string("PRAGMA ") + pragma);
        ASSERT_TRUE(row.step()) << pragma;
        EXPECT_EQ(row.takeAsText(), value) << pragma;
    }
    for (const auto* refused : {"SELECT load_extension('x')", "SELECT \"no such column\"",
                                "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = '' WHERE name = 'shop'",
                                "ATTACH ':memory:' AS a; ATTACH ':memory:' AS b"})
        EXPECT_THROW(opened.connection->script(refused), std::exception) << refused;
}

TEST_F(OpeningTest, stopsAQueryThatDoesNotEnd) {
    book.reset();
    const auto opened = db::openBook(file, db::migrations::all());
    opened.connection->allow(std::chrono::milliseconds(50));
    EXPECT_THROW(opened.connection->run("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) "
                                        "SELECT count(*) FROM n"),
                 std::exception);
}

// A file whose header another program switched to a write-ahead log is ours all the same, and is switched back.
TEST_F(OpeningTest, switchesBackFromAWriteAheadLog) {
    stock();
    const auto sealed = issued();
    book.reset();
    alter(file, "PRAGMA journal_mode = WAL; UPDATE series SET last_number = last_number");
    ASSERT_EQ(test::bytesOf(file)[18], 2);
    reopen();
    EXPECT_EQ(book->quoteNumbered(sealed.number)->order, sealed.order);
    book.reset();
    EXPECT_EQ(test::bytesOf(file)[18], 1);
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-wal"));
}

// -------------------------------------------------------------------------------------------- copies and migrations

TEST_F(OpeningTest, copiesTheWholeBook) {
    stock();
    const auto sealed = issued();
    const auto copy = folder / "copy.jobbook";
    ASSERT_TRUE(book->copyTo(copy));
    EXPECT_EQ(book->copyTo(copy).error().code, Code::Conflict);
    EXPECT_EQ(book->copyTo(folder / "no" / "copy.jobbook").error().code, Code::Missing);
    EXPECT_EQ(test::described(db::Book::check(copy)->damage), std::vector<std::string>{});
    auto opened = db::Book::open(copy, clock.environment());
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ((*opened)->quote(sealed.id)->frozen, sealed.frozen);
    EXPECT_EQ((*opened)->materials().value(), book->materials().value());
}

TEST_F(OpeningTest, bringsAnOlderBookUpToDateAfterACopy) {
    stock();
    const auto sealed = issued();
    book.reset();
    const auto before = test::bytesOf(file);
    std::vector<std::string_view> later(db::migrations::all().begin(), db::migrations::all().end());
    later.emplace_back("CREATE TABLE later (id INTEGER PRIMARY KEY) STRICT;");
    {
        const auto opened = db::openBook(file, later);
        auto row = opened.connection->query("PRAGMA user_version");
        ASSERT_TRUE(row.step());
        EXPECT_EQ(row.takeInteger(), static_cast<std::int64_t>(later.size()));
    }
    EXPECT_EQ(errorOfOpening(file).code, Code::TooNew);
    const auto backup = folder / fmt::format("Stone Bench before version {}.jobbook", later.size());
    EXPECT_EQ(test::described(db::Book::check(backup)->damage), std::vector<std::string>{});
    auto opened = db::Book::open(backup, clock.environment());
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ((*opened)->quote(sealed.id)->order, sealed.order);
    EXPECT_NE(test::bytesOf(file), before);
}

TEST_F(OpeningTest, leavesABookAsItWasWhenAMigrationFails) {
    stock();
    book.reset();
    for (const std::string_view wrong :
         {"CREATE TABLE later (id INTEGER PRIMARY KEY) STRICT; INSERT INTO nowhere VALUES (1);",
          "CREATE TABLE later (of_change INTEGER REFERENCES change (seq)) STRICT; INSERT INTO later VALUES (-1);"}) {
        std::vector<std::string_view> broken(db::migrations::all().begin(), db::migrations::all().end());
        broken.push_back(wrong);
        EXPECT_THROW(db::openBook(file, broken), std::exception) << wrong;
    }
    reopen();
    EXPECT_EQ(book->materials()->size(), 3U);
    expectSound();
}

} // namespace
