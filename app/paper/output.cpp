// SPDX-License-Identifier: MIT
#include "app/paper/output.h"

#include "app/paper/sheet_painter.h"
#include "app/words/words.h"
#include "db/book/written_file.h"

#include <QBuffer>
#include <QDir>
#include <QPageLayout>
#include <QPageSize>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>

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

base::Done save(const QByteArray& bytes, const QString& path, db::IfThere ifThere) {
    return db::writeFile(path.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())}, ifThere);
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

base::Done writePdf(const DrawnPages& drawn, catalogue::Paper paper, const QString& path, db::IfThere ifThere) {
    const auto bytes = pdfOf(drawn, paper);
    if (!bytes.isEmpty()) return save(bytes, path, ifThere);
    const auto shown = QDir::toNativeSeparators(path).toStdString();
    return words::fail(Code::Failed, shown, QT_TRANSLATE_NOOP("App", "%1 could not be drawn; start the program again."),
                       shown);
}

base::Done writePdf(const Document& document, catalogue::Paper paper, const QString& path, db::IfThere ifThere) {
    return writePdf(drawnOf(document), paper, path, ifThere);
}

Document documentOf(const quoting::SheetContent& sheet, catalogue::Paper paper) {
    const Lettering lettering;
    return {sheet.title, layOut(sheet, paper, lettering)};
}

base::Done writePdf(const quoting::SheetContent& sheet, catalogue::Paper paper, const QString& path,
                    db::IfThere ifThere) {
    return writePdf(documentOf(sheet, paper), paper, path, ifThere);
}

base::Done writeText(const std::string& text, const QString& path) {
    return save(QByteArray::fromStdString(text), path, db::IfThere::Replace);
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
