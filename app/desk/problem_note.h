// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"

#include <QPointer>

#include <vector>

namespace sp::desk {

class TypedField;

/// One line under rows of fields that have no room for a sentence each: what is wrong with the first of them, with
/// the field's name before it, or why what could be read was refused. Hidden while there is nothing to say.
class ProblemNote : public TextLabel {
    Q_OBJECT

  public:
    explicit ProblemNote(QWidget* parent = nullptr);

    /// The fields it speaks for, in the order in which they are read, in place of those before; clears a refusal.
    void watch(const std::vector<TypedField*>& fields);
    /// Empty takes it back.
    void setRefusal(const QString& sentence);

  private:
    void say();

    std::vector<QPointer<TypedField>> m_fields;
    QString m_refusal;
};

} // namespace sp::desk
