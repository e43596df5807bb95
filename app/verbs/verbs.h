// SPDX-License-Identifier: MIT
#pragma once

#include "app/artwork/letter_outlines.h"
#include "db/book/backups.h"
#include "db/book/book.h"
#include "db/book/if_there.h"

#include <functional>
#include <span>
#include <string>

namespace sp::verbs {

/// What a verb leaves behind: the exit code (0 done; 1 could not be done; 2 wrong use) and what goes to the two
/// streams. On 1 and 2 `err` is one sentence.
struct Outcome {
    int exit = 0;
    std::string out;
    std::string err;
};

/// What the verbs need from outside: the clock, and what needs fonts.
struct Helpers {
    db::Environment environment;
    /// Writes the quote sheet of a quote as PDF to a path.
    std::function<base::Done(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere)>
        writeSheet;
    /// The outlines of lettering.
    std::function<base::Result<std::vector<artwork::Shape>>(const artwork::LetteringOrder& order)> outlines;
    /// Writes an invoice, receipt or credit note as PDF to a path.
    std::function<base::Done(const db::IssuedBill& bill, const std::string& path, db::IfThere ifThere)> writeBill = {};
    /// Writes a page of the shop's care cards as PDF to a path.
    std::function<base::Done(db::Book& book, const std::string& path, db::IfThere ifThere)> writeCareCards = {};
    db::BackupPlaces backups = {}; ///< of all books
    /// Writes the bench sheet of a quote as PDF to a path.
    std::function<base::Done(db::Book& book, const db::Quote& quote, const std::string& path, db::IfThere ifThere)>
        writeBenchSheet = {};
};

/// Whether the first word of a command line is one of the headless verbs.
bool isVerb(std::string_view word);

/// Whether these words, the verb first, need fonts: a QGuiApplication must be there then.
bool needsFonts(std::span<const std::string> words);

/// Runs `words` (the verb first). Never throws.
Outcome run(std::span<const std::string> words, const Helpers& helpers);

/// The text of --help: every verb with its options, one a line.
std::string help();

} // namespace sp::verbs
