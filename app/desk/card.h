// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/palette.h"

#include <QFrame>

namespace sp::desk {

/// A flat ground with round corners and a hairline, on which one works. A chosen one has the 2 px jewel outline.
/// Brings no layout; children get 20 px of margin when the caller lays them out with cardMargins().
class Card : public QFrame {
    Q_OBJECT

  public:
    explicit Card(QWidget* parent = nullptr, Role ground = Role::Card);

    void setChosen(bool chosen);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Role m_ground;
    bool m_chosen = false;
};

inline QMargins cardMargins() { return {20, 20, 20, 20}; }
/// Of what fills a window, or the window beside the rail.
inline QMargins pageMargins() { return {20, 20, 20, 16}; }

/// A 1 px line between things.
class Hairline : public QWidget {
    Q_OBJECT

  public:
    explicit Hairline(QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
};

/// The head of a part of a card: 14 px strong; of a page or card: 22 px strong.
TextLabel* sectionTitle(const QString& text, QWidget* parent = nullptr);
TextLabel* pageTitle(const QString& text, QWidget* parent = nullptr);

} // namespace sp::desk
