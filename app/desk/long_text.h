// SPDX-License-Identifier: MIT
#pragma once

#include <QPlainTextEdit>

namespace sp::desk {

/// Several lines of words; Tab leaves it. Says committed() when it is left with another text.
class LongText : public QPlainTextEdit {
    Q_OBJECT

  public:
    explicit LongText(QWidget* parent = nullptr);

    void setText(const QString& text);

  Q_SIGNALS:
    void committed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    QString m_kept;
};

} // namespace sp::desk
