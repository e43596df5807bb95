// SPDX-License-Identifier: MIT
#pragma once

#include "app/paper/sheet_painter.h"
#include "core/base/result.h"
#include "core/catalogue/shop.h"

#include <QString>

class QPrinter;

namespace sp::paper {

enum class IfThere { Refuse, Replace };

/// Writes the sheet as a PDF. The file appears whole or not at all: a file of that name stays as it was when anything
/// fails. Errors, each with the sentence to show: Missing (no such folder), Conflict (a file of that name is there and
/// `ifThere` refuses), Invalid (the path names a folder), ReadOnly, Full, Failed.
base::Done writePdf(const SheetContent& sheet, catalogue::Paper paper, const QString& path,
                    IfThere ifThere = IfThere::Refuse);
/// The same for any paper that is laid out.
base::Done writePdf(const Document& document, catalogue::Paper paper, const QString& path,
                    IfThere ifThere = IfThere::Refuse);

/// Sets the book's paper on a printer, upright and with full pages. The native print dialog may change the paper, so
/// this is called again after it.
void setPaper(QPrinter& printer, catalogue::Paper paper);

/// The quote sheet laid out for that paper.
Document documentOf(const SheetContent& sheet, catalogue::Paper paper);

/// Prints the pages that the printer was asked for (all unless a range is set) on the book's paper.
/// Errors: Failed when the printer does not take the job.
base::Done print(const Document& document, catalogue::Paper paper, QPrinter& printer);

} // namespace sp::paper
