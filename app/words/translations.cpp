// SPDX-License-Identifier: MIT
#include "app/words/translations.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QPointer>
#include <QTranslator>

#include <map>
#include <memory>
#include <mutex>

namespace sp::words {

namespace {

constexpr QLatin1String kFileName("stonepenny_");

/// What this thread speaks instead of the window's language; no translator: English.
struct Spoken {
    bool isOther = false;
    const QTranslator* language = nullptr;
};
thread_local Spoken tSpoken;

/// Stands for the window's language among the application's translators, and steps aside for another one: putting one
/// in or out would make every widget think of its texts anew.
class Speaker : public QTranslator {
  public:
    Speaker(const QStringList& folders, QObject* parent)
        : QTranslator(parent)
        , m_folders(folders) {}

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment, int count) const override {
        const auto* language = tSpoken.isOther ? tSpoken.language : m_own;
        return language == nullptr ? QString() : language->translate(context, source, comment, count);
    }

    bool speak(const QString& language) {
        const auto* found = of(language);
        if (found) m_own = found;
        return found != nullptr;
    }

    /// Nothing where there is no file of it.
    const QTranslator* of(const QString& language) {
        const std::lock_guard guard(m_lock);
        if (const auto known = m_loaded.find(language); known != m_loaded.end()) return known->second.get();
        for (const auto& folder : m_folders) {
            auto translator = std::make_unique<QTranslator>();
            // By its whole name: load() would look for shorter ones by itself.
            if (!translator->load(folder + QLatin1Char('/') + kFileName + language + QStringLiteral(".qm"))) continue;
            return m_loaded.emplace(language, std::move(translator)).first->second.get();
        }
        return nullptr;
    }

    const QTranslator* own() const { return m_own; }
    const QStringList& folders() const { return m_folders; }

  private:
    QStringList m_folders;
    std::mutex m_lock;
    std::map<QString, std::unique_ptr<QTranslator>> m_loaded;
    const QTranslator* m_own = nullptr;
};

/// There is one once the program has asked for its language, as long as its application lives.
QPointer<Speaker>& speaker() {
    static QPointer<Speaker> one;
    return one;
}

QString languageAlone(const QString& name) { return name.section(QLatin1Char('_'), 0, 0); }

QString fileTag(QString language) { return language.replace(QLatin1Char('-'), QLatin1Char('_')); }

bool isEnglish(const QString& name) {
    const auto alone = languageAlone(name);
    return alone == QLatin1String("en") || alone == QLatin1String("C");
}

} // namespace

QStringList languagesBeforeEnglish(const QStringList& wanted) {
    QStringList languages;
    for (const auto& one : wanted) {
        const auto language = fileTag(one);
        if (isEnglish(language)) break;
        languages << language;
    }
    return languages;
}

QStringList translationFolders(const QString& programFolder) {
    return {programFolder + QStringLiteral("/translations"),
            programFolder + QStringLiteral("/../share/stonepenny/translations")};
}

bool speakFirstOf(const QStringList& languages, const QStringList& folders) {
    delete speaker();
    speaker() = new Speaker(folders, QCoreApplication::instance());
    QCoreApplication::installTranslator(speaker());
    for (const auto& language : languages) {
        if (!speaker()->speak(language)) continue;
        auto ofQt = std::make_unique<QTranslator>(QCoreApplication::instance());
        if (ofQt->load(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
            QCoreApplication::installTranslator(ofQt.release());
        return true;
    }
    return false;
}

QStringList languagesIn(const QStringList& folders) {
    QStringList languages;
    for (const auto& folder : folders)
        for (const auto& file : QDir(folder).entryList({kFileName + QStringLiteral("*.qm")}, QDir::Files))
            languages << file.mid(kFileName.size()).chopped(3).replace(QLatin1Char('_'), QLatin1Char('-'));
    languages.sort();
    languages.removeDuplicates();
    languages.prepend(QStringLiteral("en"));
    return languages;
}

QStringList languagesThere() { return languagesIn(speaker() ? speaker()->folders() : QStringList()); }

QString ownNameOf(const QString& language) {
    if (!languagesThere().contains(language)) return language;
    const LanguageScope scope({language});
    //: What the language that this file translates into calls itself.
    return QCoreApplication::translate("Language", "English");
}

LanguageScope::LanguageScope(const QStringList& wanted)
    : m_wasOther(tSpoken.isOther)
    , m_before(tSpoken.language) {
    if (!speaker()) return;
    for (const auto& one : wanted) {
        const auto language = fileTag(one);
        if (isEnglish(language)) {
            tSpoken = {true, nullptr};
            return;
        }
        for (const auto& name : {language, languageAlone(language)})
            if (const auto* found = name.isEmpty() ? nullptr : speaker()->of(name)) {
                tSpoken = {true, found};
                return;
            }
    }
}

LanguageScope::~LanguageScope() { tSpoken = {m_wasOther, m_before}; }

bool LanguageScope::isOther() { return tSpoken.isOther && speaker() && tSpoken.language != speaker()->own(); }

} // namespace sp::words
