// SPDX-License-Identifier: MIT
#include "pdf_reader.h"

#include <QProcess>

#include <gtest/gtest.h>

namespace sp::paper::test {

namespace {

QString answerOf(const QString& program, const QStringList& words) {
    QProcess process;
    process.start(program, words);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0) {
        ADD_FAILURE() << program.toStdString() << " failed: " << process.errorString().toStdString() << " "
                      << process.readAllStandardError().toStdString();
        return {};
    }
    return QString::fromUtf8(process.readAllStandardOutput());
}

} // namespace

QStringList pagesOf(const QString& pdf) {
    auto pages = answerOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")})
                     .split(QLatin1Char('\f'));
    if (!pages.isEmpty() && pages.back().trimmed().isEmpty()) pages.removeLast();
    return pages;
}

QString wordsOf(const QString& pdf) {
    return answerOf(QStringLiteral("pdftotext"), {pdf, QStringLiteral("-")}).simplified();
}

QString infoOf(const QString& pdf, const QString& field) {
    const auto lines = answerOf(QStringLiteral("pdfinfo"), {pdf}).split(QLatin1Char('\n'));
    for (const auto& line : lines)
        if (line.startsWith(field + QLatin1Char(':'))) return line.mid(field.size() + 1).trimmed();
    return {};
}

} // namespace sp::paper::test
