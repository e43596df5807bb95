// SPDX-License-Identifier: MIT
// Which book the program starts with: the shop's own, or none, never another one in its place.
#include "app/main/launcher.h"

#include "app/main/book_trouble.h"
#include "app/main/first_book.h"
#include "app/session/settings.h"
#include "tests/app/demo_window.h"

#include <QAbstractButton>
#include <QDialog>
#include <QMenu>

#include <filesystem>

namespace {

using namespace sp;
using program::Launcher;
using program::openFirstBook;
namespace fs = std::filesystem;

class LauncherTest : public testing::Test {
  protected:
    LauncherTest() {
        QStandardPaths::setTestModeEnabled(false);
        qputenv("XDG_CACHE_HOME", QByteArray::fromStdString((folder / "cache").string()));
        qputenv("XDG_DATA_HOME", QByteArray::fromStdString((folder / "data").string()));
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                           QString::fromStdString(folder.path().string()));
        QSettings().clear();
        fs::create_directory(stick);
    }
    ~LauncherTest() override {
        launcher.reset();
        test::handleQueued();
    }

    /// The program is started with this file, or with none.
    void start(const fs::path& file = {}) {
        launcher = std::make_unique<Launcher>(theme, prompter);
        launcher->start(openFirstBook(QString::fromStdString(file.string())));
        test::handleQueued();
    }
    void end() {
        launcher.reset();
        test::handleQueued();
    }
    void makeOwn() {
        ASSERT_TRUE(program::createFirstBook(QString::fromStdString(own.string()), QLocale(), clock.environment()));
        start(own);
        ASSERT_EQ(openFile(), own);
        end();
    }
    /// Of the book whose window is shown; empty when there is none.
    fs::path openFile() { return launcher->window() ? launcher->window()->session().book().file() : fs::path(); }
    void click(const char* name) {
        ASSERT_NE(launcher->trouble(), nullptr);
        auto* button = launcher->trouble()->findChild<QAbstractButton*>(QLatin1String(name));
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isVisible()) << name;
        button->click();
        test::handleQueued();
    }
    std::string said(const char* name) {
        return launcher->trouble()->findChild<QLabel*>(QLatin1String(name))->text().toStdString();
    }
    static fs::path demo() { return Launcher::demoFile().toStdString(); }
    static std::string last() { return session::kept(session::kLastBook).toStdString(); }

    test::TempFolder folder;
    fs::path stick = folder / "stick";
    fs::path away = folder / "away";
    fs::path own = stick / "Willow Bench.jobbook";
    test::HeldClock clock;
    desk::Theme theme{*qApp, desk::Scheme::Light};
    test::FileAnswer prompter;
    std::unique_ptr<Launcher> launcher;
};

TEST_F(LauncherTest, beginsWithTheDemoAndForgetsItAtOnce) {
    start();
    EXPECT_EQ(openFile(), demo());
    EXPECT_EQ(last(), "");
}

TEST_F(LauncherTest, leadsToTheLastBooksAndToTheDemoAgain) {
    makeOwn();
    start();
    ASSERT_EQ(openFile(), own);
    const auto entry = [this](int at) {
        auto* menu = launcher->window()->findChild<QMenu*>(QStringLiteral("lastBooksMenu"));
        Q_EMIT menu->aboutToShow();
        QList<QAction*> entries;
        for (auto* action : menu->actions())
            if (!action->isSeparator()) entries << action;
        return entries.value(at);
    };
    launcher->window()->messages(); // filled
    ASSERT_NE(entry(0), nullptr);
    EXPECT_EQ(entry(0)->text(), "The &demo book") << "the book that is open is not offered";
    entry(0)->trigger();
    test::handleQueued();
    EXPECT_EQ(openFile(), demo());
    EXPECT_EQ(last(), own.string()) << "and is not the shop's";
    launcher->window()->messages();
    EXPECT_EQ(entry(0)->text(), "Willow Bench");
    EXPECT_FALSE(entry(1)->isEnabled()) << "the demo is here";
    entry(0)->trigger();
    test::handleQueued();
    EXPECT_EQ(openFile(), own);
}

TEST_F(LauncherTest, neverTakesADemoForTheShopsBook) {
    makeOwn();
    const auto other = folder / "other.jobbook";
    ASSERT_TRUE(demo::createDemoBook(other.string(), clock.environment()));
    start(other);
    EXPECT_EQ(openFile(), other);
    EXPECT_EQ(last(), own.string());
}

TEST_F(LauncherTest, namesTheBookOfAStickThatIsNotThere) {
    makeOwn();
    fs::rename(stick, away);
    start();
    EXPECT_EQ(openFile(), fs::path());
    ASSERT_NE(launcher->trouble(), nullptr);
    EXPECT_TRUE(launcher->trouble()->isVisible());
    EXPECT_EQ(said("troubleTitle"), "Your job book “Willow Bench” is not open");
    EXPECT_NE(said("troubleSentence").find("There is no job book"), std::string::npos) << said("troubleSentence");
    EXPECT_NE(said("troublePlace").find(own.string()), std::string::npos);
    // Still not: nothing changes. Plugged in: it opens.
    click("troubleAgain");
    EXPECT_EQ(openFile(), fs::path());
    fs::rename(away, stick);
    click("troubleAgain");
    EXPECT_EQ(openFile(), own);
    EXPECT_EQ(launcher->trouble(), nullptr);
}

TEST_F(LauncherTest, remembersItsBookWhileTheDemoIsLookedAt) {
    makeOwn();
    fs::rename(stick, away);
    start();
    click("troubleDemo");
    EXPECT_EQ(openFile(), demo());
    EXPECT_EQ(last(), own.string());
    end();
    fs::rename(away, stick);
    start();
    EXPECT_EQ(openFile(), own);
}

TEST_F(LauncherTest, opensTheBookWhereItIsLocated) {
    makeOwn();
    fs::rename(stick, away);
    start();
    prompter.file.reset();
    click("troubleLocate");
    EXPECT_EQ(prompter.asked->folder.toStdString(), folder.path().string()) << "where the stick would be";
    EXPECT_EQ(openFile(), fs::path()) << "they went back";
    const auto wrong = folder / "notes.jobbook";
    test::writeBytes(wrong, "notes");
    prompter.file = QString::fromStdString(wrong.string());
    click("troubleLocate");
    EXPECT_NE(said("troubleSentence").find("notes.jobbook"), std::string::npos);
    EXPECT_EQ(said("troubleTitle"), "Your job book “Willow Bench” is not open");
    EXPECT_EQ(last(), own.string());
    prompter.file = QString::fromStdString((away / own.filename()).string());
    click("troubleLocate");
    EXPECT_EQ(openFile(), away / own.filename());
    EXPECT_EQ(last(), (away / own.filename()).string());
}

TEST_F(LauncherTest, restoresABackupOfADamagedBook) {
    makeOwn(); // closing it made one
    fs::resize_file(own, fs::file_size(own) / 2);
    const auto damaged = test::bytesOf(own);
    start();
    EXPECT_EQ(openFile(), fs::path());
    EXPECT_NE(said("troubleSentence").find("is damaged"), std::string::npos);
    click("troubleBackup");
    auto* dialog = launcher->trouble()->findChild<QDialog*>(QStringLiteral("backups"));
    ASSERT_NE(dialog, nullptr);
    dialog->findChild<QAbstractButton*>(QStringLiteral("backupRestore"))->click();
    ASSERT_TRUE(test::waitFor([&] { return !openFile().empty(); }));
    EXPECT_EQ(openFile().parent_path(), stick);
    EXPECT_TRUE(openFile().filename().string().starts_with("Willow Bench restored ")) << openFile();
    EXPECT_EQ(test::bytesOf(own), damaged) << "nothing was overwritten";
    EXPECT_EQ(last(), openFile().string());
}

TEST_F(LauncherTest, doesNotOpenABackupItself) {
    makeOwn();
    const auto root = demo().parent_path() / "backups";
    const auto all = db::allBackupsIn(root);
    ASSERT_EQ(all.size(), 1U);
    start(all[0].file);
    EXPECT_EQ(openFile(), fs::path());
    EXPECT_NE(said("troubleSentence").find("is a backup"), std::string::npos) << said("troubleSentence");
    EXPECT_EQ(last(), own.string());
}

TEST_F(LauncherTest, takesABackupFromAnywhereWhereThereAreNone) {
    makeOwn();
    fs::remove_all(demo().parent_path() / "backups");
    const auto backup = folder / "Willow Bench backup.jobbook";
    fs::copy_file(own, backup);
    fs::remove(own);
    start();
    prompter.file = QString::fromStdString(backup.string());
    click("troubleBackup");
    EXPECT_EQ(openFile(), backup);
}

TEST_F(LauncherTest, canDoWithoutItsDemo) {
    fs::create_directories(demo().parent_path());
    test::writeBytes(demo(), "no book");
    start();
    EXPECT_EQ(openFile(), fs::path());
    EXPECT_EQ(said("troubleTitle"), "The demo book is not open");
    prompter.target = QString::fromStdString(own.string());
    click("troubleNew");
    EXPECT_EQ(openFile(), own);
    EXPECT_EQ(last(), own.string());
}

// An earlier program wrote the demo down as the last book.
TEST_F(LauncherTest, mindsNoDemoThatWasWrittenDown) {
    session::save(session::kLastBook, Launcher::demoFile());
    start();
    EXPECT_EQ(openFile(), demo());
}

} // namespace
