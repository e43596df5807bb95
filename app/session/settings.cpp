// SPDX-License-Identifier: MIT
#include "app/session/settings.h"

#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace sp::session {

namespace {

template<class T>
QVariant valueOf(const Setting<T>& setting) {
    return QSettings().value(QLatin1String(setting.key), setting.usual);
}

template<class T>
void write(const Setting<T>& setting, const T& value) {
    QSettings settings;
    const QLatin1String key(setting.key);
    if (!settings.contains(key) || settings.value(key).template value<T>() != value) settings.setValue(key, value);
}

} // namespace

int kept(const Setting<int>& setting) {
    bool isNumber = false;
    const int number = valueOf(setting).toInt(&isNumber);
    return isNumber ? number : setting.usual;
}

bool kept(const Setting<bool>& setting) { return valueOf(setting).toBool(); }
QString kept(const Setting<QString>& setting) { return valueOf(setting).toString(); }
QByteArray kept(const Setting<QByteArray>& setting) { return valueOf(setting).toByteArray(); }

void save(const Setting<int>& setting, int value) { write(setting, value); }
void save(const Setting<bool>& setting, bool value) { write(setting, value); }
void save(const Setting<QString>& setting, const QString& value) { write(setting, value); }
void save(const Setting<QByteArray>& setting, const QByteArray& value) { write(setting, value); }

namespace {

constexpr int kBooksKept = 6;

} // namespace

QStringList lastBooks() { return kept(kLastBooks).split(QLatin1Char('\n'), Qt::SkipEmptyParts); }

void noteLastBook(const QString& file) {
    auto books = lastBooks();
    books.removeAll(file);
    books.prepend(file);
    save(kLastBooks, books.mid(0, kBooksKept).join(QLatin1Char('\n')));
}

QString folderOf(const Setting<QString>& setting) {
    const auto last = kept(setting);
    return !last.isEmpty() && QFileInfo(last).isDir()
               ? last
               : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void noteFolderOf(const Setting<QString>& setting, const QString& file) {
    save(setting, QFileInfo(file).absolutePath());
}

} // namespace sp::session
