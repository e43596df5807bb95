// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/message_bar.h"

#include <QHBoxLayout>
#include <QWidget>

namespace sp::desk {

/// A place of two sides under its messages: at the left what there is, at the right what is done with it.
class SplitPage : public QWidget {
    Q_OBJECT

  public:
    explicit SplitPage(QWidget* parent = nullptr);

    MessageBar& messages() { return *m_messages; }

  protected:
    /// The two sides, put in from left to right.
    QHBoxLayout* sides() { return m_sides; }

  private:
    MessageBar* m_messages;
    QHBoxLayout* m_sides;
};

} // namespace sp::desk
