// SPDX-License-Identifier: MIT
#include "tests/app/desk/desk_fixture.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

namespace sp::desk::test {

namespace {

/// Lines of the app's sources (comments left out) that match, each with its file; files named in `except` are skipped.
QStringList linesWith(const QRegularExpression& pattern, const QStringList& except) {
    QStringList found;
    QDirIterator files(qs(APP_SOURCES), {qs("*.h"), qs("*.cpp")}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        if (except.contains(files.fileName()) || !file.open(QIODevice::ReadOnly | QIODevice::Text)) continue;
        for (QString line : QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'))) {
            line.remove(QRegularExpression(qs("//.*$")));
            if (pattern.match(line).hasMatch()) found << files.fileName() + qs(": ") + line.trimmed();
        }
    }
    return found;
}

const QRegularExpression& colourPattern() {
    static const QRegularExpression pattern(
        qs("\"#[0-9A-Fa-f]{3,8}\"|QColor\\(\\s*(0x|\\d|\"|Qt::)|qRgba?\\(|fromRgb\\(\\s*(0x|\\d)|"
           "Qt::(black|white|red|green|blue|cyan|magenta|yellow|gray|dark\\w+|lightGray)\\b"));
    return pattern;
}

} // namespace

TEST(House, hasItsColoursInThePaletteFileOnly) {
    EXPECT_FALSE(linesWith(colourPattern(), {}).isEmpty()) << "the palette file has some, so the search sees them";
    EXPECT_EQ(linesWith(colourPattern(), {qs("palette.cpp")}).join(qs("\n")).toStdString(), "");
}

TEST(House, asksQuestionsOnlyThroughThePrompter) {
    const QRegularExpression nested(qs("[.>]exec\\(\\)|QEventLoop\\b"));
    EXPECT_FALSE(linesWith(nested, {}).isEmpty());
    EXPECT_EQ(linesWith(nested, {qs("prompter.cpp"), qs("main.cpp")}).join(qs("\n")).toStdString(), "");
}

TEST(House, usesNoStyleSheets) {
    EXPECT_EQ(linesWith(QRegularExpression(qs("setStyleSheet")), {}).join(qs("\n")).toStdString(), "");
}

} // namespace sp::desk::test
