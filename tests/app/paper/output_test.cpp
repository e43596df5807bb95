// SPDX-License-Identifier: MIT
#include "app/paper/output.h"
#include "app/words/words.h"

#include "pdf_reader.h"
#include "printed_sale.h"

#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>
#include <unistd.h>

namespace sp::paper {

namespace {

using catalogue::Paper;

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

void put(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

class Pdf : public testing::Test {
  protected:
    QString at(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }

    QTemporaryDir m_folder;
    quoting::SheetContent m_sheet = test::sheetOf(test::studioSale());
};

/// While it lives this process can write no file beyond `bytes`: a disk that runs full.
class ShortDisk {
  public:
    explicit ShortDisk(rlim_t bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~ShortDisk() { setrlimit(RLIMIT_FSIZE, &m_before); }
    ShortDisk(const ShortDisk&) = delete;
    ShortDisk& operator=(const ShortDisk&) = delete;

  private:
    rlimit m_before{};
};

} // namespace

TEST_F(Pdf, isOfTheBooksPaper) {
    // Letter is 8 1/2 × 11 in; A4 is 210 × 297 mm (ISO 216), 595.28 × 841.89 points.
    ASSERT_TRUE(writePdf(m_sheet, Paper::Letter, at("letter.pdf")));
    ASSERT_TRUE(writePdf(m_sheet, Paper::A4, at("a4.pdf")));
    EXPECT_TRUE(
        test::infoOf(at("letter.pdf"), QStringLiteral("Page size")).startsWith(QStringLiteral("612 x 792 pts")));
    EXPECT_TRUE(test::infoOf(at("a4.pdf"), QStringLiteral("Page size")).startsWith(QStringLiteral("595 x 842 pts")));
    EXPECT_EQ(test::infoOf(at("a4.pdf"), QStringLiteral("Title")), QStringLiteral("Quote 2026-0042"));
}

TEST_F(Pdf, textCanBeSelected) {
    auto sale = test::shortSale();
    sale.order.lines[0].title = "Étoile für Zoë, 3½ à l’œil";
    ASSERT_TRUE(writePdf(test::sheetOf(sale), Paper::Letter, at("sheet.pdf")));
    const auto words = test::wordsOf(at("sheet.pdf"));
    EXPECT_TRUE(words.contains(QString::fromUtf8("Étoile für Zoë, 3½ à l’œil"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("166.80"))) << words.toStdString();
}

TEST_F(Pdf, takesNamesInAnyScript) {
    auto sale = test::shortSale();
    sale.order.lines[0].title = "שלום 🌟 مصباح 灯籠";
    sale.book.shop.letterhead.name = "ของขวัญ";
    ASSERT_TRUE(writePdf(test::sheetOf(sale), Paper::A4, at("scripts.pdf")));
    EXPECT_EQ(test::infoOf(at("scripts.pdf"), QStringLiteral("Pages")), QStringLiteral("1"));
}

TEST_F(Pdf, carriesForwardOnEveryPage) {
    ASSERT_TRUE(writePdf(test::sheetOf(test::longSale(1'000)), Paper::Letter, at("long.pdf")));
    const auto pages = test::pagesOf(at("long.pdf"));
    ASSERT_GT(pages.size(), 20);
    const auto amountAfter = [](const QString& page, const char* label) {
        const auto at = page.indexOf(QLatin1String(label));
        return at < 0
                   ? QString()
                   : page.mid(at + static_cast<qsizetype>(qstrlen(label))).section(QLatin1Char('\n'), 0, 0).trimmed();
    };
    for (qsizetype i = 1; i < pages.size(); ++i) {
        const auto brought = amountAfter(pages[i], "Brought forward");
        if (brought.isEmpty()) break; // past the totals
        EXPECT_EQ(brought, amountAfter(pages[i - 1], "Carried forward")) << "page " << i + 1;
    }
    EXPECT_FALSE(amountAfter(pages[1], "Brought forward").isEmpty());
}

TEST_F(Pdf, refusesAFolderThatIsNotThere) {
    const auto done = writePdf(m_sheet, Paper::Letter, at("nowhere/sheet.pdf"));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, base::Code::Missing);
    EXPECT_EQ(words::text(done.error()),
              "There is no folder “" + at("nowhere").toStdString() + "”; make it first or choose another.");
}

TEST_F(Pdf, refusesTheNameOfAFolder) {
    const auto done = writePdf(m_sheet, Paper::Letter, m_folder.path());
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, base::Code::Invalid);
}

TEST_F(Pdf, replacesAFileOnlyWhenTold) {
    put(at("sheet.pdf"), "mine");
    const auto done = writePdf(m_sheet, Paper::Letter, at("sheet.pdf"));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, base::Code::Conflict);
    EXPECT_EQ(bytesOf(at("sheet.pdf")), "mine");
    ASSERT_TRUE(writePdf(m_sheet, Paper::Letter, at("sheet.pdf"), db::IfThere::Replace));
    EXPECT_TRUE(bytesOf(at("sheet.pdf")).startsWith("%PDF-"));
}

TEST_F(Pdf, neverReplacesAJobBook) {
    const auto book = QByteArrayLiteral("SQLite format 3") + '\0' + "pages";
    put(at("shop.jobbook"), book);
    const auto done = writePdf(m_sheet, Paper::Letter, at("shop.jobbook"), db::IfThere::Replace);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, base::Code::Conflict);
    EXPECT_FALSE(writeText("list", at("shop.jobbook")));
    EXPECT_EQ(bytesOf(at("shop.jobbook")), book);
}

TEST_F(Pdf, refusesAFolderThatMayNotBeWritten) {
    if (geteuid() == 0) {
        // The superuser may write anywhere but into the kernel's own tables.
        const auto done = writePdf(m_sheet, Paper::Letter, QStringLiteral("/proc/sheet.pdf"));
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().code, base::Code::ReadOnly);
        return;
    }
    QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::ExeOwner);
    const auto done = writePdf(m_sheet, Paper::Letter, at("sheet.pdf"));
    QFile::setPermissions(m_folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, base::Code::ReadOnly);
}

TEST_F(Pdf, leavesTheOldFileWhenTheDiskRunsFull) {
    put(at("sheet.pdf"), "mine");
    {
        const ShortDisk disk(2'000);
        const auto done = writePdf(m_sheet, Paper::Letter, at("sheet.pdf"), db::IfThere::Replace);
        ASSERT_FALSE(done);
        EXPECT_EQ(done.error().code, base::Code::Full) << describe(done.error());
    }
    EXPECT_EQ(bytesOf(at("sheet.pdf")), "mine");
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files).size(), 1);
}

TEST_F(Pdf, comesOutOfAPrinterTheSame) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at("printed.pdf"));
    printer.setPageSize(QPageSize(QPageSize::A5)); // as a native dialog may leave it
    ASSERT_TRUE(print(drawnOf(documentOf(m_sheet, Paper::Letter)), Paper::Letter, printer));
    ASSERT_TRUE(writePdf(m_sheet, Paper::Letter, at("sheet.pdf")));
    EXPECT_EQ(test::wordsOf(at("printed.pdf")), test::wordsOf(at("sheet.pdf")));
    EXPECT_TRUE(
        test::infoOf(at("printed.pdf"), QStringLiteral("Page size")).startsWith(QStringLiteral("612 x 792 pts")));
}

TEST_F(Pdf, printsThePagesAskedFor) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at("printed.pdf"));
    printer.setFromTo(2, 3);
    ASSERT_TRUE(print(drawnOf(documentOf(test::sheetOf(test::longSale(100)), Paper::A4)), Paper::A4, printer));
    EXPECT_EQ(test::infoOf(at("printed.pdf"), QStringLiteral("Pages")), QStringLiteral("2"));
    EXPECT_TRUE(test::pagesOf(at("printed.pdf")).front().contains(QStringLiteral("Page 2 of")));
}

} // namespace sp::paper
