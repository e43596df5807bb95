// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

class QTranslator;

namespace sp::words {

/// Of the languages a reader wants, best first ("de-AT", "de", "en"), those that come before English, as their files
/// are named: "de_AT", "de". The sources are in English, so that whoever wants it first needs no file at all.
QStringList languagesBeforeEnglish(const QStringList& wanted);

/// Where files of translations lie: beside the program as it was built, then where it was installed.
QStringList translationFolders(const QString& programFolder);

/// From here on tr() speaks the first of `languages` for which a folder has stonepenny_LANGUAGE.qm, and Qt's own words
/// the same where Qt is translated; false: English. The folders serve every LanguageScope too. Called in main, before
/// the first text and the first thread; there must be an application.
bool speakFirstOf(const QStringList& languages, const QStringList& folders);

/// The languages that papers and window can be in, by their BCP 47 tags: English, then those that `folders` have files
/// of, in the order of their tags.
QStringList languagesIn(const QStringList& folders);
/// The same, in the folders given to speakFirstOf.
QStringList languagesThere();

/// What one of those calls itself: "Español". Any other is called by its tag.
QString ownNameOf(const QString& language);

/// While it lives, tr() on this thread speaks the first of `wanted` that there is ("es-MX" is served by "es"); where
/// there is none, what it spoke before. For papers in another language than the window's; no widget is made within.
/// Scopes may lie in each other.
class LanguageScope {
  public:
    explicit LanguageScope(const QStringList& wanted);
    ~LanguageScope();
    Q_DISABLE_COPY_MOVE(LanguageScope)

    /// Whether tr() on this thread speaks another language than the window.
    static bool isOther();

  private:
    bool m_wasOther;
    const QTranslator* m_before;
};

} // namespace sp::words
