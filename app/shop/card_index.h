// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
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
    /// The same titles to choose from, for where there is no room beside the page.
    QComboBox* makeChoice(QWidget* parent);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  private:
    void follow();
    void mark(int row);
    void lead(int row);

    QScrollArea& m_page;
    std::vector<QWidget*> m_cards;
    bool m_isLeading = false; ///< the page and the titles follow each other no further
};

} // namespace sp::shop
