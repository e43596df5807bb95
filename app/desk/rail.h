// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/icons.h"

#include <QButtonGroup>
#include <QVBoxLayout>
#include <QWidget>

namespace sp::desk {

/// The places of the app down the left side, icon over word, the one we are in on the jewel's soft ground. Ctrl+1 to
/// Ctrl+9 go to a place from anywhere in the window, Up and Down while the rail has the focus.
class Rail : public QWidget {
    Q_OBJECT

  public:
    explicit Rail(QWidget* parent = nullptr);

    /// At the end; returns its index. The first one added is the current one.
    int addPlace(Icon icon, const QString& word, const QString& objectName);
    int count() const;
    int current() const;
    /// Takes a place off, or back; one that is off has no keys.
    void setShown(int index, bool shown);
    bool isShown(int index) const;
    /// A small number beside its drawing, and what it counts; 0 shows none.
    void setNumber(int index, int number, const QString& meaning);
    /// Emits chosen when it changed.
    void setCurrent(int index);

    QSize sizeHint() const override;

  Q_SIGNALS:
    void chosen(int index);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QVBoxLayout* m_layout;
    QButtonGroup* m_group;
    int m_current = -1;
};

} // namespace sp::desk
