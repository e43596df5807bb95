// SPDX-License-Identifier: MIT
// Backups made without asking, a second place for them, and the dialog that shows and restores them.
#include "app/backups/backup_keeper.h"

#include "app/backups/backups_dialog.h"
#include "app/backups/restoring.h"
#include "app/session/settings.h"
#include "tests/app/demo_window.h"
#include "tests/support/described.h"

#include <QAbstractButton>

#include <sys/stat.h>

namespace {

using namespace sp;
namespace fs = std::filesystem;
using backups::BackupKeeper;
using session::BookSession;

class BackupKeeperTest : public testing::Test {
  protected:
    BackupKeeperTest() {
        QStandardPaths::setTestModeEnabled(true);
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                           QString::fromStdString(folder.path().string()));
        QSettings().clear();
    }
    void SetUp() override { open(db::Book::create(file, clock.environment())); }

    void open(base::Result<std::unique_ptr<db::Book>> book) {
        ASSERT_TRUE(book) << describe(book.error());
        borrowed = std::make_unique<BookSession>(std::move(*book));
        keeper = std::make_unique<BackupKeeper>(*borrowed, root);
        QObject::connect(keeper.get(), &BackupKeeper::failed, [this](const QString& sentence) { said = sentence; });
    }
    void close() {
        keeper->finish();
        keeper.reset();
        borrowed.reset();
    }
    void change() {
        const auto name = "Stone " + std::to_string(++changes);
        catalogue::Material material;
        material.name = name;
        material.kind = catalogue::MaterialKind::Blank;
        const auto saved = borrowed->change([&](db::Book& book) { return book.save(material); });
        ASSERT_TRUE(saved) << describe(saved.error());
    }
    /// Waits for the one that is being made.
    void makeNow(bool isAsked = false) {
        bool isMade = false;
        const auto made = QObject::connect(keeper.get(), &BackupKeeper::made, [&] { isMade = true; });
        keeper->makeNow(isAsked);
        ASSERT_TRUE(test::waitFor([&] { return isMade || !said.isEmpty(); })) << "neither made nor refused";
        QObject::disconnect(made);
    }
    std::vector<db::Backup> all() { return db::allBackupsIn(root); }

    test::TempFolder folder;
    fs::path file = folder / "Willow Bench.jobbook";
    fs::path root = folder / "backups";
    test::HeldClock clock;
    std::unique_ptr<BookSession> borrowed;
    std::unique_ptr<BackupKeeper> keeper;
    QString said;
    int changes = 0;
};

TEST_F(BackupKeeperTest, makesOneWhenTheBookIsClosedAndSomethingWasChanged) {
    change();
    close();
    ASSERT_EQ(all().size(), 1U);
    const auto backup = all()[0];
    EXPECT_EQ(backup.book, "Willow Bench");
    EXPECT_EQ(test::described(db::Book::check(backup.file)->damage), std::vector<std::string>{});
    struct stat facts {};
    ASSERT_EQ(::stat(backup.file.c_str(), &facts), 0);
    EXPECT_EQ(facts.st_mode & 0777, 0600U);
    ASSERT_EQ(::stat(root.c_str(), &facts), 0);
    // Nothing changed: nothing is made, however often it is opened.
    for (int i = 0; i < 3; ++i) {
        clock.now += std::chrono::hours(1);
        open(db::Book::open(file, clock.environment()));
        close();
    }
    EXPECT_EQ(all().size(), 1U);
    EXPECT_EQ(said, QString());
}

TEST_F(BackupKeeperTest, makesOneBesideTheWork) {
    change();
    makeNow();
    change(); // not in it
    ASSERT_EQ(all().size(), 1U);
    const auto first = borrowed->lostIn(all()[0].file);
    ASSERT_TRUE(first);
    EXPECT_GE(first->changes, 1);
    keeper->makeNow();
    change(); // while it is made: in it, since the copy follows the book, or not; both are whole
    ASSERT_TRUE(test::waitFor([&] { return all().size() == 2 || !said.isEmpty(); }) || all().size() == 1);
    EXPECT_EQ(said, QString());
}

TEST_F(BackupKeeperTest, keepsThemByTheSchedule) {
    for (int i = 0; i < 15; ++i) {
        clock.now += std::chrono::minutes(30);
        change();
        makeNow();
    }
    // 7 1/2 hours: the last ten, and where a day ended among the others, its last.
    EXPECT_GE(all().size(), 10U);
    EXPECT_LE(all().size(), 11U);
    EXPECT_EQ(all()[0].change, borrowed->mark()->change);
}

TEST_F(BackupKeeperTest, makesNoneOfTheDemo) {
    close();
    const auto demo = folder / "demo.jobbook";
    open(demo::createDemoBook(demo.string(), clock.environment()));
    change();
    close();
    for (const auto& backup : all()) EXPECT_NE(backup.book, "demo");
}

TEST_F(BackupKeeperTest, saysAtTheNextStartWhyNoneWasMade) {
    change();
    test::writeBytes(root, "a file where the folder should be");
    close();
    EXPECT_NE(said, QString());
    EXPECT_EQ(session::kept(session::kBackupTrouble), said);
    fs::remove(root);
    open(db::Book::open(file, clock.environment()));
    close();
    EXPECT_EQ(all().size(), 1U);
    EXPECT_EQ(session::kept(session::kBackupTrouble), QString());
}

TEST_F(BackupKeeperTest, makesNoneOfADamagedBookAndKeepsTheOthers) {
    change();
    close();
    ASSERT_EQ(all().size(), 1U);
    // A letter of what was written flips on the disk.
    auto bytes = test::bytesOf(file);
    for (auto at = bytes.find("Stone 1"); at != std::string::npos; at = bytes.find("Stone 1", at + 1)) bytes[at] = 'T';
    test::writeBytes(file, bytes);
    open(db::Book::open(file, clock.environment()));
    clock.now += std::chrono::hours(1);
    change();
    close();
    EXPECT_NE(said.indexOf(QStringLiteral("this book is damaged")), -1) << said.toStdString();
    EXPECT_EQ(all().size(), 1U);
}

TEST_F(BackupKeeperTest, putsThemInTheSecondPlaceWhereItIsThere) {
    const auto stick = folder / "stick";
    fs::create_directory(stick);
    BackupKeeper::setSecondPlace(QString::fromStdString(stick.string()));
    change();
    close();
    ASSERT_EQ(db::allBackupsIn(stick).size(), 1U);
    EXPECT_EQ(db::allBackupsIn(stick)[0].file.filename(), all()[0].file.filename());
    EXPECT_EQ(test::described(db::Book::check(db::allBackupsIn(stick)[0].file)->damage), std::vector<std::string>{});
    // Taken out: nothing is put where it was, and after a week it is asked for.
    fs::remove_all(stick);
    clock.now += std::chrono::hours(1);
    open(db::Book::open(file, clock.environment()));
    change();
    close();
    EXPECT_EQ(all().size(), 2U);
    EXPECT_FALSE(fs::exists(stick));
    const auto today = QDate::currentDate();
    EXPECT_FALSE(BackupKeeper::secondPlaceMissingSince(today.addDays(6)));
    EXPECT_EQ(BackupKeeper::secondPlaceMissingSince(today.addDays(8)), today);
    open(db::Book::open(file, clock.environment()));
}

TEST_F(BackupKeeperTest, knowsHowMuchRoomIsMissing) {
    // On a disk with more than 200 MB there is room for a book of some kilobytes.
    EXPECT_EQ(keeper->roomMissing() > 0, fs::space(folder.path()).available < 200'000'000);
}

// ------------------------------------------------------------------------------------------------------- restoring

TEST_F(BackupKeeperTest, restoresIntoAFileOfItsOwn) {
    const QDate day(2026, 11, 30);
    const auto elsewhere = folder / "documents";
    EXPECT_EQ(backups::restoreTarget(file, elsewhere, day), folder / "Willow Bench restored 2026-11-30.jobbook");
    test::writeBytes(folder / "Willow Bench restored 2026-11-30.jobbook", "x");
    EXPECT_EQ(backups::restoreTarget(file, elsewhere, day), folder / "Willow Bench restored 2026-11-30 (2).jobbook");
    EXPECT_EQ(backups::restoreTarget(folder / "gone.jobbook", elsewhere, day), folder / "gone.jobbook");
    EXPECT_EQ(backups::restoreTarget(folder / "stick" / "gone.jobbook", elsewhere, day).parent_path(), elsewhere);
    EXPECT_TRUE(backups::isBackup(root / "Willow Bench 0123" / "x.jobbook", root));
    EXPECT_FALSE(backups::isBackup(file, root));
    EXPECT_FALSE(backups::isBackup(folder / "backups of mine" / "x.jobbook", root));
}

TEST_F(BackupKeeperTest, showsRestoresAndDestroysNothing) {
    change();
    makeNow();
    clock.now += std::chrono::minutes(5);
    change();
    change();
    test::FileAnswer prompter;
    const desk::Formatter formatter(QLocale(QLocale::English, QLocale::UnitedStates), borrowed->shop());
    backups::BackupsDialog dialog({keeper->backups(), keeper->folder(),
                                   [this] { return backups::restoreTarget(file, folder.path(), QDate(2026, 11, 30)); },
                                   [this](const fs::path& backup) { return borrowed->lostIn(backup); }, keeper.get()},
                                  formatter, prompter);
    dialog.show();
    auto* table = dialog.findChild<QTableView*>(QStringLiteral("backupRows"));
    ASSERT_NE(table, nullptr);
    ASSERT_EQ(table->model()->rowCount(), 1);
    const auto cell = [&](int column) { return table->model()->index(0, column).data().toString().toStdString(); };
    EXPECT_EQ(cell(1), "0");
    ASSERT_TRUE(test::waitFor([&] { return cell(3) == "sound"; })) << cell(3);
    auto* lost = dialog.findChild<QLabel*>(QStringLiteral("backupLost"));
    EXPECT_NE(lost->text().indexOf(QStringLiteral("Since then: 2 changes, no quote among them.")), -1)
        << lost->text().toStdString();
    EXPECT_NE(lost->text().indexOf(QStringLiteral("Willow Bench restored 2026-11-30.jobbook")), -1);
    const auto wanted = all()[0].change;
    QString restored;
    QObject::connect(&dialog, &backups::BackupsDialog::restored, [&](const QString& made) { restored = made; });
    dialog.findChild<QAbstractButton*>(QStringLiteral("backupRestore"))->click();
    ASSERT_TRUE(test::waitFor([&] { return !restored.isEmpty(); })) << lost->text().toStdString();
    EXPECT_EQ(db::Book::markOf(restored.toStdString())->change, wanted);
    EXPECT_EQ(all().size(), 2U) << "the open book was backed up first";
    EXPECT_EQ(all()[0].change, wanted + 2);
    EXPECT_EQ(borrowed->mark()->change, wanted + 2);
    change(); // and goes on
}

} // namespace
