// SPDX-License-Identifier: MIT
#include "app/paper/output.h"

#include "app/paper/sheet_painter.h"

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

tl::unexpected<base::Error> refuse(Code code, const QString& path, const QString& sentence) {
    return base::fail(code, QDir::toNativeSeparators(path).toStdString(),
                      sentence.arg(QDir::toNativeSeparators(path)).toStdString());
}

base::Done checkPlace(const QString& path, IfThere ifThere) {
    const QFileInfo file(path);
    const QFileInfo folder(file.absolutePath());
    if (!folder.isDir())
        return refuse(Code::Missing, folder.filePath(),
                      QStringLiteral("There is no folder %1; make it first or choose another."));
    if (file.isDir()) return refuse(Code::Invalid, path, QStringLiteral("%1 is a folder; add a name for the PDF."));
    // A database is never replaced by paper, whatever was agreed: it may be the shop's whole book.
    QFile there(path);
    if (there.open(QIODevice::ReadOnly) && there.read(15) == QByteArrayLiteral("SQLite format 3"))
        return refuse(Code::Conflict, path,
                      QStringLiteral("%1 is a job book and stays as it is; choose another name."));
    if (file.exists() && ifThere == IfThere::Refuse)
        return refuse(Code::Conflict, path,
                      QStringLiteral("There is already a file %1; choose another name, or say that it may be "
                                     "replaced."));
    return {};
}

tl::unexpected<base::Error> notSaved(const QSaveFile& file, const QString& path) {
    const auto error = file.error();
    if (error == QFileDevice::ResourceError)
        return refuse(Code::Full, path,
                      QStringLiteral("The disk is full, so %1 was not saved; make room or choose another disk."));
    if (error == QFileDevice::OpenError || error == QFileDevice::PermissionsError)
        return refuse(Code::ReadOnly, path, QStringLiteral("%1 may not be written there; choose another folder."));
    return refuse(Code::Failed, path,
                  QStringLiteral("%1 could not be saved (%2); choose another place and try again.")
                      .arg(QStringLiteral("%1"), file.errorString()));
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

/// The PDF of what `paint` draws on the writer; empty when it cannot.
QByteArray pdfOf(const QString& title, catalogue::Paper paper, const std::function<bool(QPagedPaintDevice&)>& paint) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool isPainted = false;
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(kPdfResolution);
        writer.setPageLayout(layoutFor(paper));
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Stonepenny"));
        isPainted = paint(writer);
    }
    return isPainted ? bytes : QByteArray();
}

bool paintDrawn(const DrawnPages& drawn, QPagedPaintDevice& device, std::size_t first, std::size_t last) {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
    for (std::size_t page = first; page <= last; ++page) {
        if (page > first && !device.newPage()) return false;
        drawn.pages[page](painter);
    }
    return painter.end();
}

base::Done save(const QByteArray& bytes, const QString& path) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return notSaved(file, path);
    if (!writeAll(file, bytes) || !file.commit()) return notSaved(file, path);
    return {};
}

base::Done savePdf(const QByteArray& bytes, const QString& path) {
    if (bytes.isEmpty())
        return refuse(Code::Failed, path, QStringLiteral("%1 could not be drawn; start the program again."));
    return save(bytes, path);
}

} // namespace

base::Done writePdf(const Document& document, catalogue::Paper paper, const QString& path, IfThere ifThere) {
    if (auto ok = checkPlace(path, ifThere); !ok) return ok;
    const SheetPainter painter(document.pages);
    return savePdf(
        pdfOf(QString::fromStdString(document.title), paper,
              [&](QPagedPaintDevice& device) { return painter.paintOn(device, 0, painter.pageCount() - 1); }),
        path);
}

base::Done writePdf(const DrawnPages& drawn, catalogue::Paper paper, const QString& path, IfThere ifThere) {
    if (auto ok = checkPlace(path, ifThere); !ok) return ok;
    return savePdf(
        pdfOf(drawn.title, paper,
              [&](QPagedPaintDevice& device) { return paintDrawn(drawn, device, 0, drawn.pages.size() - 1); }),
        path);
}

Document documentOf(const SheetContent& sheet, catalogue::Paper paper) {
    const Lettering lettering;
    return {sheet.title, layOut(sheet, paper, lettering)};
}

base::Done writePdf(const SheetContent& sheet, catalogue::Paper paper, const QString& path, IfThere ifThere) {
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

base::Done print(const Document& document, catalogue::Paper paper, QPrinter& printer) {
    setPaper(printer, paper);
    printer.setDocName(QString::fromStdString(document.title));
    const SheetPainter painter(document.pages);
    const int pages = painter.pageCount();
    const int first = std::clamp(printer.fromPage(), 1, pages);
    const int last = printer.toPage() == 0 ? pages : std::clamp(printer.toPage(), first, pages);
    if (painter.paintOn(printer, first - 1, last - 1)) return {};
    const auto name = printer.printerName().toStdString();
    return base::fail(Code::Failed, name,
                      "The printer " + (name.empty() ? std::string() : name + " ") +
                          "did not take the sheet; check that it is on, or save the sheet as a PDF.");
}

} // namespace sp::paper
