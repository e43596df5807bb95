// SPDX-License-Identifier: MIT
#include "app/desk/language_box.h"

#include "app/words/translations.h"

namespace sp::desk {

LanguageBox::LanguageBox(const QString& none, QWidget* parent)
    : QComboBox(parent) {
    addItem(none, QString());
    for (const auto& tag : words::languagesThere()) addItem(words::ownNameOf(tag), tag);
}

void LanguageBox::setLanguage(const QString& tag) {
    if (findData(tag) < 0) addItem(words::ownNameOf(tag), tag);
    setCurrentIndex(findData(tag));
}

} // namespace sp::desk

#include "moc_language_box.cpp"
