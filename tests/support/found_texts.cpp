// SPDX-License-Identifier: MIT
#include "tests/support/found_texts.h"

#include <QFile>
#include <QXmlStreamReader>

namespace sp::test {

namespace {

/// A message of a .ts file, from its start element to its end.
FoundText messageOf(QXmlStreamReader& xml, const std::string& context) {
    FoundText text{context, {}, {}, xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes")};
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source"))
            text.source = xml.readElementText().toStdString();
        else if (xml.name() == QLatin1String("comment"))
            text.comment = xml.readElementText().toStdString();
        else
            xml.skipCurrentElement();
    }
    return text;
}

/// Qt asks for words of its own.
bool isOfQt(const std::string& context) { return context.starts_with('Q') && context != "QObject"; }

} // namespace

std::vector<FoundText> foundTexts() {
    std::vector<FoundText> texts;
    QFile file(QStringLiteral(FOUND_TEXTS));
    if (!file.open(QIODevice::ReadOnly)) return texts;
    QXmlStreamReader xml(&file);
    std::string context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QLatin1String("name")) context = xml.readElementText().toStdString();
        if (xml.name() == QLatin1String("message")) texts.push_back(messageOf(xml, context));
    }
    return texts;
}

std::vector<std::string> saidByLupdate() {
    std::vector<std::string> lines;
    QFile file(QStringLiteral(FOUND_TEXTS ".txt"));
    if (!file.open(QIODevice::ReadOnly)) return lines;
    for (const auto& line : file.readAll().split('\n')) lines.push_back(line.toStdString());
    return lines;
}

std::vector<std::string> notFound(const std::set<std::tuple<std::string, std::string, std::string>>& asked) {
    std::set<std::tuple<std::string, std::string, std::string>> known;
    for (const auto& text : foundTexts()) known.insert({text.context, text.source, text.comment});
    std::vector<std::string> missing;
    for (const auto& one : asked)
        if (const auto& [context, source, comment] = one; !isOfQt(context) && !known.contains(one))
            missing.push_back(context + ": \"" + source + (comment.empty() ? "\"" : "\" (" + comment + ")"));
    return missing;
}

} // namespace sp::test
