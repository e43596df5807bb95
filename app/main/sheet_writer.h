// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"
#include "db/book/if_there.h"

#include <string>

namespace sp::program {

/// Writes the sheet of a quote as PDF. A given quote is printed as it was given; one that was
/// replaced since says so above it. Needs a
/// QGuiApplication. Errors: as pricing::priceOrder and paper::writePdf.
base::Done writeSheet(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere);

/// Writes a page of care cards of that book's shop as PDF. Needs a QGuiApplication. Errors: the book's, and those of
/// paper::writePdf.
base::Done writeCareCards(db::Book& book, const std::string& path, db::IfThere ifThere);

/// Writes the bench sheet of a quote as PDF. Needs a QGuiApplication. Errors: as paper::benchPaper and paper::writePdf.
base::Done writeBenchSheet(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere);

/// Writes an invoice, a receipt or a credit note as PDF, as it was issued. Errors: as paper::writePdf.
base::Done writeBill(const db::IssuedBill& bill, const std::string& path, db::IfThere ifThere);

} // namespace sp::program
