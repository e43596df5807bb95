// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

namespace sp::words {

/// Of the languages a reader wants, best first ("de-AT", "de", "en"), those that come before English, as their files
/// are named: "de_AT", "de". The sources are in English, so that whoever wants it first needs no file at all.
QStringList languagesBeforeEnglish(const QStringList& wanted);

/// Where files of translations lie: beside the program as it was built, then where it was installed.
QStringList translationFolders(const QString& programFolder);

/// From here on tr() speaks the first of `languages` for which a folder has stonepenny_LANGUAGE.qm, and Qt's own words
/// the same where Qt is translated; false: English. Called in main, before the first text and the first thread; there
/// must be an application.
bool speakFirstOf(const QStringList& languages, const QStringList& folders);

} // namespace sp::words
