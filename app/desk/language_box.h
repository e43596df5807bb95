// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>

namespace sp::desk {

/// One of the languages that the program has words in, or none. A language of which there are no words stays what it
/// is, by its tag.
class LanguageBox : public QComboBox {
    Q_OBJECT

  public:
    /// `none` says what holds where nothing is chosen: "as the shop".
    explicit LanguageBox(const QString& none, QWidget* parent = nullptr);

    /// BCP 47: "es"; empty: none.
    void setLanguage(const QString& tag);
    QString language() const { return currentData().toString(); }
};

} // namespace sp::desk
