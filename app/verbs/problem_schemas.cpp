// SPDX-License-Identifier: MIT
#include "app/verbs/problem_verbs.h"
#include "app/words/words.h"

#include <QFile>

namespace sp::verbs {

base::Result<std::string> schemaOf(std::string_view verb) {
    const bool isKnown = verb == "yield" || verb == "buy" || verb == "pack";
    QFile file(QStringLiteral(":/schemas/%1.schema.json").arg(QString::fromStdString(std::string(verb))));
    if (isKnown && file.open(QIODevice::ReadOnly)) return file.readAll().toStdString();
    return words::fail(base::Code::NotFound, std::string(verb),
                       QT_TRANSLATE_NOOP("App", "There is no schema %1; there are yield, buy and pack."), verb);
}

} // namespace sp::verbs
