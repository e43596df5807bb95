// SPDX-License-Identifier: MIT
#include "app/paper/output.h"

#include "app/paper/sheet_painter.h"
#include "app/words/words.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QPageLayout>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

#include <algorithm>
#include <memory>

namespace sp::paper {

namespace {

using base::Code;

constexpr int kPdfResolution = 1200;

QPageLayout layoutFor(catalogue::Paper paper) {
    const auto size = paper == catalogue::Paper::Letter ? QPageSize::Letter : QPageSize::A4;
    QPageLayout layout(QPageSize(size), QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

template<class... Values>
tl::unexpected<base::Error> failed(Code code, const QString& path, const char* source, const Values&... values) {
    const auto shown = QDir::toNativeSeparators(path).toStdString();
    return words::fail(code, shown, source, shown, values...);
}

base::Done checkPlace(const QString& path, IfThere ifThere) {
    const QFileInfo file(path);
    const QFileInfo folder(file.absolutePath());
    if (!folder.isDir())
        return failed(Code::Missing, folder.filePath(),
                      QT_TRANSLATE_NOOP("App", "There is no folder %1; make it first or choose another."));
    if (file.isDir())
        return failed(Code::Invalid, path, QT_TRANSLATE_NOOP("App", "%1 is a folder; add a name for the PDF."));
    // A database is never replaced by paper, whatever was agreed: it may be the shop's whole book.
    QFile there(path);
    if (there.open(QIODevice::ReadOnly) && there.read(15) == QByteArrayLiteral("SQLite format 3"))
        return failed(Code::Conflict, path,
                      QT_TRANSLATE_NOOP("App", "%1 is a job book and stays as it is; choose another name."));
    if (file.exists() && ifThere == IfThere::Refuse)
        return failed(Code::Conflict, path,
                      QT_TRANSLATE_NOOP("App", "There is already a file %1; choose another name, or say that it may be "
                                               "replaced."));
    return {};
}

tl::unexpected<base::Error> notSaved(const QSaveFile& file, const QString& path) {
    const auto error = file.error();
    if (error == QFileDevice::ResourceError)
        return failed(
            Code::Full, path,
            QT_TRANSLATE_NOOP("App", "The disk is full, so %1 was not saved; make room or choose another disk."));
    if (error == QFileDevice::OpenError || error == QFileDevice::PermissionsError)
        return failed(Code::ReadOnly, path,
                      QT_TRANSLATE_NOOP("App", "%1 may not be written there; choose another folder."));
    return failed(Code::Failed, path,
                  QT_TRANSLATE_NOOP("App", "%1 could not be saved (%2); choose another place and try again."),
                  file.errorString().toStdString());
}

/// A disk that runs full takes a part first and says why only to the next try.
bool writeAll(QSaveFile& file, const QByteArray& bytes) {
    for (qsizetype at = 0; at < bytes.size();) {
        const auto taken = file.write(bytes.constData() + at, bytes.size() - at);
        if (taken <= 0) return false;
        at += taken;
    }
    return true;
}

/// Empty when it cannot be drawn.
QByteArray pdfOf(const DrawnPages& drawn, catalogue::Paper paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool isPainted = false;
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kPdfResolution);
        writer.setPageLayout(layoutFor(paper));
        writer.setTitle(drawn.title);
        writer.setCreator(QStringLiteral("Stonepenny"));
        isPainted = paintPages(drawn, writer, 0, drawn.count() - 1);
    }
    return isPainted ? bytes : QByteArray();
}

base::Done save(const QByteArray& bytes, const QString& path) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return notSaved(file, path);
    if (!writeAll(file, bytes) || !file.commit()) return notSaved(file, path);
    return {};
}

base::Done savePdf(const QByteArray& bytes, const QString& path) {
    if (bytes.isEmpty())
        return failed(Code::Failed, path, QT_TRANSLATE_NOOP("App", "%1 could not be drawn; start the program again."));
    return save(bytes, path);
}

} // namespace

DrawnPages drawnOf(Document document) {
    DrawnPages drawn{QString::fromStdString(document.title), {}};
    const auto painter = std::make_shared<const SheetPainter>(std::move(document.pages));
    for (int page = 0; page < painter->pageCount(); ++page)
        drawn.pages.push_back([painter, page](QPainter& on) { painter->paintPage(on, page); });
    return drawn;
}

bool paintPages(const DrawnPages& drawn, QPagedPaintDevice& device, int first, int last) {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
    for (int page = first; page <= last; ++page) {
        if (page > first && !device.newPage()) return false;
        drawn.pages[static_cast<std::size_t>(page)](painter);
    }
    return painter.end();
}

base::Done writePdf(const DrawnPages& drawn, catalogue::Paper paper, const QString& path, IfThere ifThere) {
    if (auto ok = checkPlace(path, ifThere); !ok) return ok;
    return savePdf(pdfOf(drawn, paper), path);
}

base::Done writePdf(const Document& document, catalogue::Paper paper, const QString& path, IfThere ifThere) {
    return writePdf(drawnOf(document), paper, path, ifThere);
}

Document documentOf(const quoting::SheetContent& sheet, catalogue::Paper paper) {
    const Lettering lettering;
    return {sheet.title, layOut(sheet, paper, lettering)};
}

base::Done writePdf(const quoting::SheetContent& sheet, catalogue::Paper paper, const QString& path, IfThere ifThere) {
    return writePdf(documentOf(sheet, paper), paper, path, ifThere);
}

base::Done writeText(const std::string& text, const QString& path) {
    if (auto ok = checkPlace(path, IfThere::Replace); !ok) return ok;
    return save(QByteArray::fromStdString(text), path);
}

void setPaper(QPrinter& printer, catalogue::Paper paper) {
    printer.setFullPage(true);
    printer.setPageLayout(layoutFor(paper));
}

base::Done print(const DrawnPages& drawn, catalogue::Paper paper, QPrinter& printer) {
    setPaper(printer, paper);
    printer.setDocName(drawn.title);
    const int pages = drawn.count();
    const int first = std::clamp(printer.fromPage(), 1, pages);
    const int last = printer.toPage() == 0 ? pages : std::clamp(printer.toPage(), first, pages);
    if (paintPages(drawn, printer, first - 1, last - 1)) return {};
    const auto name = printer.printerName().toStdString();
    if (name.empty())
        return words::fail(
            Code::Failed, name,
            QT_TRANSLATE_NOOP("App",
                              "The printer did not take the sheet; check that it is on, or save the sheet as a PDF."));
    return words::fail(
        Code::Failed, name,
        QT_TRANSLATE_NOOP("App",
                          "The printer %1 did not take the sheet; check that it is on, or save the sheet as a PDF."),
        name);
}

} // namespace sp::paper
