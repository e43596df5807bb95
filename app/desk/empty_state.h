// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/icons.h"

#include <QPushButton>
#include <QWidget>

namespace sp::desk {

/// What an empty place shows: a drawing, one sentence and one action, in the middle.
class EmptyState : public QWidget {
    Q_OBJECT

  public:
    EmptyState(Icon drawing, const QString& sentence, const QString& action, QWidget* parent = nullptr);
    QPushButton* button() const { return m_button; }

  Q_SIGNALS:
    void acted();

  private:
    QPushButton* m_button;
};

} // namespace sp::desk
