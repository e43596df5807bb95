// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/word_field.h"

class QAbstractItemView;

namespace sp::desk {

/// The search above a list. May stay empty, says nothing is wrong with any text; Down goes into the list.
class FindField : public WordField {
    Q_OBJECT

  public:
    explicit FindField(const Formatter& formatter, QWidget* parent = nullptr);

    /// Borrowed; lives as long as the field.
    void setList(QAbstractItemView* list) { m_list = list; }

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QAbstractItemView* m_list = nullptr;
};

} // namespace sp::desk
