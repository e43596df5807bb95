// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/sheet_painter.h"
#include "core/base/result.h"
#include "core/catalogue/shop.h"
#include "core/quoting/sheet_content.h"
#include "db/book/if_there.h"

#include <QString>

#include <functional>
#include <string>
#include <vector>

class QPagedPaintDevice;
class QPainter;
class QPrinter;

namespace sp::paper {

/// What preview, printer and PDF are made from: each page draws itself, one unit of the painter is a point, the origin
/// is the page's upper left corner.
struct DrawnPages {
    QString title;
    std::vector<std::function<void(QPainter&)>> pages; ///< at least one

    int count() const { return static_cast<int>(pages.size()); }
};

/// The pages of a paper that is laid out.
DrawnPages drawnOf(Document document);

/// Draws the pages `first` to `last` (from 0, both included) on a device that is set to full pages, with a page break
/// between them. False when the device refuses.
bool paintPages(const DrawnPages& drawn, QPagedPaintDevice& device, int first, int last);

/// Writes the sheet as a PDF, by db::writeFile. Errors: its own; Failed when it cannot be drawn.
base::Done writePdf(const quoting::SheetContent& sheet, catalogue::Paper paper, const QString& path,
                    db::IfThere ifThere = db::IfThere::Refuse);
/// The same for any paper that is laid out.
base::Done writePdf(const Document& document, catalogue::Paper paper, const QString& path,
                    db::IfThere ifThere = db::IfThere::Refuse);
base::Done writePdf(const DrawnPages& drawn, catalogue::Paper paper, const QString& path,
                    db::IfThere ifThere = db::IfThere::Refuse);

/// Sets the book's paper on a printer, upright and with full pages. The native print dialog may change the paper, so
/// this is called again after it.
void setPaper(QPrinter& printer, catalogue::Paper paper);

/// The quote sheet laid out for that paper.
Document documentOf(const quoting::SheetContent& sheet, catalogue::Paper paper);

/// Prints the pages that the printer was asked for (all unless a range is set) on the book's paper.
/// Errors: Failed when the printer does not take the job.
base::Done print(const DrawnPages& drawn, catalogue::Paper paper, QPrinter& printer);

/// Writes any text the same way, replacing a file of that name. Errors as writePdf.
base::Done writeText(const std::string& text, const QString& path);

} // namespace sp::paper
