// SPDX-License-Identifier: MIT
#include "app/paper/preview_dialog.h"

#include "app/session/settings.h"
#include "pdf_reader.h"
#include "printed_sale.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPrintPreviewWidget>
#include <QPushButton>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace sp::paper {

namespace {

using catalogue::Paper;

template<class T>
T* child(const QWidget& parent, const char* name) {
    auto* found = parent.findChild<T*>(QString::fromUtf8(name));
    EXPECT_NE(found, nullptr) << name;
    return found;
}

/// Keys reach the active window only.
void bring(PreviewDialog& dialog) {
    dialog.show();
    dialog.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
}

} // namespace

TEST(PreviewDialog, showsThePagesAndTurnsThem) {
    PreviewDialog dialog(documentOf(test::sheetOf(test::longSale(60)), Paper::Letter), Paper::Letter,
                         QStringLiteral("sheet.pdf"));
    bring(dialog);
    auto* preview = child<QPrintPreviewWidget>(dialog, "sheetPreview");
    auto* page = child<QLabel>(dialog, "pageNumber");
    EXPECT_GT(preview->pageCount(), 2);
    EXPECT_TRUE(page->text() == QStringLiteral("Page 1 of %1").arg(preview->pageCount()));
    QTest::keyClick(&dialog, Qt::Key_PageDown);
    EXPECT_EQ(preview->currentPage(), 2);
    EXPECT_TRUE(page->text() == QStringLiteral("Page 2 of %1").arg(preview->pageCount()));
    QTest::keyClick(&dialog, Qt::Key_PageUp);
    EXPECT_EQ(preview->currentPage(), 1);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST(PreviewDialog, savesThePdfAndSaysSo) {
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("sheet.pdf"));
    PreviewDialog dialog(documentOf(test::sheetOf(test::studioSale()), Paper::A4), Paper::A4, path);
    dialog.show();
    dialog.savePdf(path);
    EXPECT_EQ(child<QLabel>(dialog, "previewMessage")->text(), QStringLiteral("Saved as %1.").arg(path));
    EXPECT_TRUE(test::wordsOf(path).contains(QStringLiteral("407.33")));
    EXPECT_EQ(session::folderOf(session::kPapersIn), QFileInfo(path).absolutePath()) << "where the next is offered";
}

TEST(PreviewDialog, saysWhyItCouldNotSave) {
    const QTemporaryDir folder;
    PreviewDialog dialog(documentOf(test::sheetOf(test::shortSale()), Paper::A4), Paper::A4, {});
    dialog.savePdf(folder.filePath(QStringLiteral("gone/sheet.pdf")));
    EXPECT_TRUE(child<QLabel>(dialog, "previewMessage")->text().startsWith(QStringLiteral("There is no folder ")));
}

TEST(PreviewDialog, offersThePdfByKey) {
    PreviewDialog dialog(documentOf(test::sheetOf(test::shortSale()), Paper::A4), Paper::A4,
                         QStringLiteral("offered.pdf"));
    bring(dialog);
    QTest::keyClick(&dialog, Qt::Key_S, Qt::ControlModifier);
    auto* files = child<QFileDialog>(dialog, "pdfPath");
    ASSERT_NE(files, nullptr);
    EXPECT_TRUE(files->isVisible());
    files->reject();
}

TEST(PreviewDialog, hasAKeyForEveryButton) {
    const PreviewDialog dialog(documentOf(test::sheetOf(test::longSale(60)), Paper::Letter), Paper::Letter, {});
    QSet<QChar> letters;
    const auto buttons = dialog.findChildren<QPushButton*>();
    EXPECT_EQ(buttons.size(), 5);
    for (const auto* button : buttons) {
        const auto at = button->text().indexOf(QLatin1Char('&'));
        ASSERT_GE(at, 0) << button->text().toStdString();
        const auto letter = button->text().at(at + 1).toLower();
        EXPECT_FALSE(letters.contains(letter)) << button->text().toStdString();
        letters.insert(letter);
    }
}

} // namespace sp::paper
