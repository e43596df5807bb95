// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

namespace sp::paper::test {

/// What an independent reader (poppler-utils) finds in a PDF. Each adds a failure to the running test when the reader
/// is not there or refuses the file.

/// pdftotext -layout, one entry a page.
QStringList pagesOf(const QString& pdf);
/// All of it without line ends: one space between words, as a search or a selection finds it.
QString wordsOf(const QString& pdf);
/// pdfinfo's answer for a field ("Page size", "Pages", "Title").
QString infoOf(const QString& pdf, const QString& field);

} // namespace sp::paper::test
