// SPDX-License-Identifier: MIT
#include "app/words/difference_words.h"

#include "app/words/words.h"

#include <QCoreApplication>

namespace sp::words {

using pricing::LineFate;

QString lineOf(const pricing::LineDifference& line, const QString& pieces) {
    return QCoreApplication::translate("Difference", "%1 × %2").arg(pieces, QString::fromStdString(line.title()));
}

QString partOf(const pricing::ChangedPart& part) {
    const auto what = sentence(part.what);
    const auto was = sentence(part.was);
    const auto is = sentence(part.is);
    if (was.isEmpty() && is.isEmpty()) return QCoreApplication::translate("Difference", "%1 changed").arg(what);
    if (was.isEmpty()) return QCoreApplication::translate("Difference", "%1: %2 (was none)").arg(what, is);
    if (is.isEmpty()) return QCoreApplication::translate("Difference", "%1: none (was %2)").arg(what, was);
    return QCoreApplication::translate("Difference", "%1: %2 (was %3)").arg(what, is, was);
}

QString fateOf(const pricing::LineDifference& line) {
    if (line.fate == LineFate::Added) return QCoreApplication::translate("Difference", "added");
    if (line.fate == LineFate::Removed) return QCoreApplication::translate("Difference", "taken out");
    QStringList parts;
    for (const auto& part : line.parts) parts << partOf(part);
    return parts.join(QStringLiteral("; "));
}

QString replacedMark(const db::ReplacedBy& by, const QString& day) {
    return QCoreApplication::translate("Difference", "Replaced by %1 on %2")
        .arg(QString::fromStdString(by.number), day);
}

QString invoicedNote(const QString& number) {
    return QCoreApplication::translate("Difference",
                                       "%1 is invoiced: once the revision is agreed to, a credit note and another "
                                       "invoice settle the difference.")
        .arg(number);
}

} // namespace sp::words
