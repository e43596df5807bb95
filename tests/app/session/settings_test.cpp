// SPDX-License-Identifier: MIT
#include "app/session/settings.h"
#include "tests/support/temp_folder.h"

#include <QSettings>
#include <QStandardPaths>
#include <gtest/gtest.h>

using namespace sp;

namespace {

class Settings : public testing::Test {
  protected:
    Settings() {
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope,
                           QString::fromStdString(m_folder.path().string()));
    }

    test::TempFolder m_folder;
};

TEST_F(Settings, areTheUsualOnesUntilOneIsKept) {
    EXPECT_EQ(session::kept(session::kZoom), 100);
    EXPECT_TRUE(session::kept(session::kCutsTemplates));
    EXPECT_EQ(session::kept(session::kLastBook), QString());
    session::save(session::kZoom, 120);
    session::save(session::kCutsTemplates, false);
    session::save(session::kLastBook, QStringLiteral("/books/shop.jobbook"));
    session::save(session::kWindowGeometry, QByteArray("\x01\x00\xd9", 3));
    EXPECT_EQ(session::kept(session::kZoom), 120);
    EXPECT_FALSE(session::kept(session::kCutsTemplates));
    EXPECT_EQ(session::kept(session::kLastBook), "/books/shop.jobbook");
    EXPECT_EQ(session::kept(session::kWindowGeometry), QByteArray("\x01\x00\xd9", 3));
}

TEST_F(Settings, ofAnEarlierProgramAreReadUnderTheirKeys) {
    QSettings before;
    before.setValue(QStringLiteral("book/last"), QStringLiteral("/books/shop.jobbook"));
    before.setValue(QStringLiteral("buying/cutsTemplates"), false);
    before.setValue(QStringLiteral("look/scheme"), 2);
    before.setValue(QStringLiteral("look/zoom"), 130);
    before.setValue(QStringLiteral("window/geometry"), QByteArray("geometry"));
    EXPECT_EQ(session::kept(session::kLastBook), "/books/shop.jobbook");
    EXPECT_FALSE(session::kept(session::kCutsTemplates));
    EXPECT_EQ(session::kept(session::kScheme), 2);
    EXPECT_EQ(session::kept(session::kZoom), 130);
    EXPECT_EQ(session::kept(session::kWindowGeometry), "geometry");
}

TEST_F(Settings, holdTheLastBooksTheNewestFirstAndNoneTwice) {
    EXPECT_TRUE(session::lastBooks().isEmpty());
    for (int i = 0; i < 9; ++i) session::noteLastBook(QStringLiteral("/books/%1.jobbook").arg(i));
    session::noteLastBook(QStringLiteral("/books/5.jobbook"));
    EXPECT_EQ(session::lastBooks(), QStringList({"/books/5.jobbook", "/books/8.jobbook", "/books/7.jobbook",
                                                 "/books/6.jobbook", "/books/4.jobbook", "/books/3.jobbook"}));
}

TEST_F(Settings, sayWhereFilesWereLastWhileTheFolderIsThere) {
    const auto documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    EXPECT_EQ(session::folderOf(session::kCutFilesIn), documents);
    const auto drawings = m_folder.path() / "drawings";
    std::filesystem::create_directory(drawings);
    session::noteFolderOf(session::kCutFilesIn, QString::fromStdString((drawings / "star.svg").string()));
    EXPECT_EQ(session::folderOf(session::kCutFilesIn), QString::fromStdString(drawings.string()));
    EXPECT_EQ(session::folderOf(session::kPapersIn), documents) << "each sort has its own";
    std::filesystem::remove(drawings);
    EXPECT_EQ(session::folderOf(session::kCutFilesIn), documents) << "a stick that is not plugged in";
}

TEST_F(Settings, thatAreNoNumberCountAsTheUsualOne) {
    QSettings().setValue(QStringLiteral("look/zoom"), QStringLiteral("large"));
    EXPECT_EQ(session::kept(session::kZoom), 100);
}

} // namespace
