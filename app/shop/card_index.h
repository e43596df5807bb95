// SPDX-License-Identifier: MIT
#pragma once

#include <QListWidget>
#include <QScrollArea>

namespace sp::shop {

/// The cards of a long page by their titles, beside it: one chosen is scrolled to. One stop of Tab; the arrow keys go
/// from title to title. Marks the card that is in sight.
class CardIndex : public QListWidget {
    Q_OBJECT

  public:
    /// The page is borrowed and outlives the index.
    explicit CardIndex(QScrollArea& page, QWidget* parent = nullptr);

    void add(const QString& title, QWidget& card);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  private:
    void follow();

    QScrollArea& m_page;
    std::vector<QWidget*> m_cards;
    bool m_isLeading = false; ///< the page scrolls because a title was chosen
};

} // namespace sp::shop
