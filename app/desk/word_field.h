// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/typed_field.h"

namespace sp::desk {

/// A line of words: a name, a place. White space at both ends does not count.
class WordField : public TypedField {
    Q_OBJECT

  public:
    /// `missing` is the sentence when it is blank and must not be ("Give the design a name.").
    WordField(const Formatter& formatter, const QString& missing, QWidget* parent = nullptr);

    std::string words() const;

  protected:
    Parsed read(const QString& text) const override;
    QString blankProblem() const override;

  private:
    QString m_missing;
};

} // namespace sp::desk
