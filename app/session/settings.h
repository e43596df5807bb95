// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

/// What the program remembers at this seat from one start to the next; everything else is in the job book.
namespace sp::session {

template<class T>
struct Setting {
    const char* key;
    T usual; ///< where nothing is kept, or what is kept cannot be read as a T
};

// A row for each. A key, once released, keeps its meaning.
inline const Setting<QString> kBackupTrouble{"backup/trouble", {}};           ///< why the last backup was not made
inline const Setting<QString> kSecondPlace{"backup/secondPlace", {}};         ///< folder; each backup is put there too
inline const Setting<QString> kSecondPlaceSeen{"backup/secondPlaceSeen", {}}; ///< day when it was there last, ISO 8601
inline const Setting<QString> kTyped{"book/typed", {}};   ///< book, field and what is being typed into it, a line each
inline const Setting<QString> kLastBook{"book/last", {}}; ///< path of the book that was open last
inline const Setting<QString> kLastBooks{"book/lastOnes", {}};             ///< paths, a line each, newest first
inline const Setting<bool> kCutsTemplates{"buying/cutsTemplates", true};   ///< the shop cuts its own templates
inline const Setting<QString> kHiddenJobColumns{"jobs/hiddenColumns", {}}; ///< of the list: "day,left"
inline const Setting<QString> kJobOrder{"jobs/order", {}};                 ///< of the list: "total", "total,ascending"
/// Seconds without a key after which the owner's side of the slip turns back; 0: never.
inline const Setting<int> kTurnsBackAfter{"counter/turnsBackAfter", 120};
// Where files were last, folders.
inline const Setting<QString> kCutFilesIn{"files/cutFiles", {}};
inline const Setting<QString> kPapersIn{"files/papers", {}};
inline const Setting<QString> kPriceListsIn{"files/priceLists", {}};
inline const Setting<int> kScheme{"look/scheme", 0};                     ///< a desk::Scheme as a number
inline const Setting<QString> kLanguage{"look/language", {}};            ///< of the window, "es"; empty: the system's
inline const Setting<int> kZoom{"look/zoom", 100};                       ///< of texts, in percent
inline const Setting<QByteArray> kWindowGeometry{"window/geometry", {}}; ///< as QWidget::saveGeometry gives it

int kept(const Setting<int>& setting);
bool kept(const Setting<bool>& setting);
QString kept(const Setting<QString>& setting);
QByteArray kept(const Setting<QByteArray>& setting);

/// The books that were open last, the newest first, and one more that is open now; the oldest is forgotten.
QStringList lastBooks();
void noteLastBook(const QString& file);

/// Writes only what is not kept already: writing waits for the disk.
void save(const Setting<int>& setting, int value);
void save(const Setting<bool>& setting, bool value);
void save(const Setting<QString>& setting, const QString& value);
void save(const Setting<QByteArray>& setting, const QByteArray& value);

/// Where such files were last, while it is there; else the documents. `setting` is one of the k…In.
QString folderOf(const Setting<QString>& setting);
/// The next are looked for where this one is.
void noteFolderOf(const Setting<QString>& setting, const QString& file);

} // namespace sp::session
