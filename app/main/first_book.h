// SPDX-License-Identifier: MIT
#pragma once

#include "db/book/book.h"

#include <QLocale>
#include <QString>

namespace sp::program {

/// A new job book for somebody's own shop: currency, units and paper as the locale has them, and starting values for
/// bench, ladder and machines that are common practice without a source, to be timed and priced by the owner.
/// Errors: as db::Book::create.
base::Result<std::unique_ptr<db::Book>> createFirstBook(const QString& file, const QLocale& locale,
                                                        db::Environment environment);

} // namespace sp::program
