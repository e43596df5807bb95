// SPDX-License-Identifier: MIT
// Copies made piece by piece, how backups are named and kept, and what restoring one brings.
#include "db/book/backups.h"

#include "db/book/book_copy.h"
#include "tests/db/bench_book.h"

#include <algorithm>
#include <set>
#include <sqlite3.h>

namespace {

using namespace sp;
using db::Backup;
using test::BookTest;
using namespace std::chrono;
namespace fs = std::filesystem;

const sys_seconds kNow = sys_days(2026y / November / 30) + 14h + 2min;

std::vector<Backup> every(seconds step, int count, sys_seconds from = kNow) {
    std::vector<Backup> backups;
    for (int i = 0; i < count; ++i)
        backups.push_back({"b" + std::to_string(i), "Bench", from - i * step, 10, 1'000 - i});
    return backups;
}

/// What is still there when a backup was made each `step`, each time put in order.
std::vector<Backup> keptOf(seconds step, int count) {
    std::vector<Backup> kept;
    for (int i = count - 1; i >= 0; --i) {
        const auto now = kNow - i * step;
        kept.insert(kept.begin(), {"b" + std::to_string(i), "Bench", now, 10, 1'000 - i});
        std::set<fs::path> gone;
        for (const auto& old : outdatedAmong(kept, now)) gone.insert(old.file);
        std::erase_if(kept, [&](const Backup& one) { return gone.contains(one.file); });
    }
    return kept;
}

TEST(BackupNames, SayWhatABackupHolds) {
    const db::BookMark mark{"0123456789ab", 47, 1234};
    const auto name = db::backupName("Stone Bench 2 jobs", mark, kNow);
    EXPECT_EQ(name, "Stone Bench 2 jobs 2026-11-30T140200Z 47 jobs 1234.jobbook");
    const test::TempFolder folder;
    test::writeBytes(folder / name, "x");
    for (const auto* other : {"Stone Bench.jobbook", "Stone Bench 2026-11-30T140200Z 47 jobs 1234.jobbook-journal",
                              "x 2026-13-30T140200Z 47 jobs 1234.jobbook", "x 2026-11-30T140200Z -4 jobs 1.jobbook",
                              " 2026-11-30T140200Z 47 jobs 1.jobbook", "2026-11-30T140200Z 47 jobs 1234.jobbook"})
        test::writeBytes(folder / other, "x");
    const auto found = db::backupsIn(folder.path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].book, "Stone Bench 2 jobs");
    EXPECT_EQ(found[0].madeAt, kNow);
    EXPECT_EQ(found[0].jobs, 47);
    EXPECT_EQ(found[0].change, 1234);
    EXPECT_EQ(db::backupsIn(folder / "nowhere").size(), 0U);
}

TEST(BackupNames, StayInOneFolderWhenTheBookIsRenamed) {
    const test::TempFolder folder;
    const db::BookMark mark{"0123456789ab", 47, 1234};
    const auto first = db::backupFolder(folder.path(), "Bench", mark);
    EXPECT_EQ(first, folder / "Bench 0123456789ab");
    fs::create_directory(first);
    EXPECT_EQ(db::backupFolder(folder.path(), "Willow", mark), first);
    EXPECT_NE(db::backupFolder(folder.path(), "Bench", {"ba9876543210", 1, 1}), first);
}

TEST(BackupSchedule, KeepsTheLastTen) {
    EXPECT_EQ(outdatedAmong(every(minutes(30), 10), kNow).size(), 0U);
    const auto outdated = outdatedAmong(every(minutes(30), 12), kNow);
    ASSERT_EQ(outdated.size(), 2U);
    EXPECT_EQ(outdated[0].file, "b10");
}

// Half a year of a backup each half hour, day and night: ten, and what of 14 days and 8 or 9 weeks is not among them.
TEST(BackupSchedule, KeepsADayForTwoWeeksAndAWeekForTwoMonths) {
    const auto kept = keptOf(minutes(30), 48 * 183);
    std::set<sys_days> days;
    for (const auto& backup : kept) days.insert(floor<std::chrono::days>(backup.madeAt));
    for (int day = 0; day < 14; ++day)
        EXPECT_TRUE(days.contains(floor<std::chrono::days>(kNow) - std::chrono::days(day))) << day;
    for (int week = 1; week < 8; ++week) {
        const auto monday = floor<std::chrono::days>(kNow) - std::chrono::days(7 * week); // 30 November 2026 is one
        const bool isKept = std::any_of(days.begin(), days.end(), [&](sys_days day) {
            return day >= monday && day < monday + std::chrono::days(7);
        });
        EXPECT_TRUE(isKept) << week;
    }
    EXPECT_LE(kept.size(), 10U + 14U + 9U);
    EXPECT_GE(kept.back().madeAt, kNow - std::chrono::days(62));
}

TEST(BackupSchedule, KeepsWhatOneHasWhereNothingNewIsMade) {
    // The last ten are the last ten, however old.
    EXPECT_EQ(outdatedAmong(every(std::chrono::days(40), 10), kNow).size(), 0U);
}

TEST(BackupSchedule, LosesNothingToAWrongClock) {
    auto backups = every(minutes(30), 30, kNow + std::chrono::years(30));
    for (const auto& real : every(minutes(30), 10)) backups.push_back(real);
    EXPECT_EQ(outdatedAmong(backups, kNow).size(), 0U);
    // Ten years back, everything seems to be made later.
    EXPECT_EQ(outdatedAmong(backups, kNow - std::chrono::years(10)).size(), 0U);
}

class BackupTest : public BookTest {
  protected:
    void SetUp() override {
        BookTest::SetUp();
        stock();
    }
    fs::path target = folder / "Copy.jobbook";
};

TEST_F(BackupTest, copiesPieceByPieceWhileTheBookIsWorkedWith) {
    for (int i = 0; i < 30; ++i) issued();
    auto copy = book->startCopy(target).value();
    int steps = 0;
    double before = 0;
    while (!copy->step(4).value()) {
        EXPECT_GE(copy->share() + 0.2, before);
        before = copy->share();
        if (++steps % 10 == 0) issued();
        ASSERT_LT(steps, 10'000);
    }
    EXPECT_GT(steps, 10);
    EXPECT_EQ(copy->share(), 1);
    const auto last = book->mark().value();
    book.reset(); // no longer needed
    double told = 0;
    const auto report = copy->verify({{}, [&](double share) { told = share; }});
    ASSERT_TRUE(report) << describe(report.error());
    EXPECT_EQ(test::described(report->damage), std::vector<std::string>{});
    EXPECT_GT(told, 0);
    EXPECT_LE(told, 1);
    EXPECT_FALSE(fs::exists(target));
    ASSERT_TRUE(copy->commit());
    EXPECT_EQ(db::Book::markOf(target).value(), last);
}

TEST_F(BackupTest, leavesNothingOfACopyThatWasGivenUp) {
    issued();
    {
        auto copy = book->startCopy(target).value();
        EXPECT_FALSE(copy->step(1).value());
    }
    EXPECT_EQ(book->startCopy(file).error().code, base::Code::Conflict);
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : fs::directory_iterator(folder.path())) ++files;
    EXPECT_EQ(files, 2U) << "the book and its lock";
    EXPECT_TRUE(book->save(test::sampleStone("Other")));
}

TEST_F(BackupTest, canBeStopped) {
    for (int i = 0; i < 5; ++i) issued();
    auto copy = book->startCopy(target).value();
    ASSERT_TRUE(copy->step(-1).value());
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(test::described(copy->verify({stop.get_token(), {}}).error()), "Stopped");
    EXPECT_EQ(test::described(db::Book::check(file, {stop.get_token(), {}}).error()), "Stopped");
    expectSound();
}

TEST_F(BackupTest, seesASealThatWasBroken) {
    const auto sealed = issued();
    sqlite3* db = nullptr;
    book.reset();
    ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(db, "UPDATE paper SET total_micros = total_micros + 1", nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(db);
    reopen();
    EXPECT_TRUE(book->copyTo(folder / "Rescued.jobbook"));
    auto copy = book->startCopy(target).value();
    ASSERT_TRUE(copy->step(-1).value());
    EXPECT_FALSE(copy->verify()->damage.empty());
}

TEST_F(BackupTest, tellsWhatWouldBeLost) {
    issued();
    const auto open = draft();
    ASSERT_TRUE(book->copyTo(target));
    EXPECT_EQ(book->lostIn(target)->quotes.size(), 0U);
    EXPECT_EQ(book->lostIn(target)->changes, 0);
    const auto second = issued();
    const auto given = book->issue(open, book->priceBook(customer).value(),
                                   test::resultOf(units::Money::fromMicros(1'000'000)), open.order.quotedOn);
    ASSERT_TRUE(given);
    const auto lost = book->lostIn(target).value();
    ASSERT_EQ(lost.quotes.size(), 2U);
    EXPECT_EQ(lost.quotes[0].number, second.number);
    EXPECT_EQ(lost.quotes[1].number, given->number) << "a draft then, given since";
    EXPECT_GT(lost.changes, 2);
}

TEST_F(BackupTest, isRestoredIntoANewFileAndStaysAsItWas) {
    const auto sealed = issued();
    ASSERT_TRUE(book->copyTo(target));
    const auto before = test::bytesOf(target);
    const auto restored = folder / "Restored.jobbook";
    ASSERT_TRUE(db::Book::restore(target, restored));
    EXPECT_EQ(db::Book::restore(target, restored).error().code, base::Code::Conflict);
    EXPECT_EQ(db::Book::restore(target, file).error().code, base::Code::Conflict);
    EXPECT_EQ(test::bytesOf(target), before);
    auto opened = db::Book::open(restored, clock.environment());
    ASSERT_TRUE(opened) << describe(opened.error());
    EXPECT_EQ((*opened)->quote(sealed.id)->order, sealed.order);
    fs::resize_file(target, before.size() / 2);
    EXPECT_EQ(db::Book::restore(target, folder / "again.jobbook").error().code, base::Code::Damaged);
    EXPECT_FALSE(fs::exists(folder / "again.jobbook"));
}

} // namespace
