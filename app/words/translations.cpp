// SPDX-License-Identifier: MIT
#include "app/words/translations.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <memory>

namespace sp::words {

namespace {

bool install(const QString& name, const QString& folder) {
    auto translator = std::make_unique<QTranslator>(QCoreApplication::instance());
    if (!translator->load(name, folder)) return false;
    return QCoreApplication::installTranslator(translator.release());
}

} // namespace

QStringList languagesBeforeEnglish(const QStringList& wanted) {
    QStringList languages;
    for (auto language : wanted) {
        language.replace(QLatin1Char('-'), QLatin1Char('_'));
        const auto alone = language.section(QLatin1Char('_'), 0, 0);
        if (alone == QLatin1String("en") || alone == QLatin1String("C")) break;
        languages << language;
    }
    return languages;
}

QStringList translationFolders(const QString& programFolder) {
    return {programFolder + QStringLiteral("/translations"),
            programFolder + QStringLiteral("/../share/stonepenny/translations")};
}

bool speakFirstOf(const QStringList& languages, const QStringList& folders) {
    for (const auto& language : languages)
        for (const auto& folder : folders) {
            if (!install(QStringLiteral("stonepenny_") + language, folder)) continue;
            install(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
            return true;
        }
    return false;
}

} // namespace sp::words
