// SPDX-License-Identifier: MIT
#pragma once

#include "core/quoting/sheet_content.h"

#include <QAbstractButton>
#include <QWidget>

#include <vector>

class QGridLayout;

namespace sp::counter {

/// A choice of the order on the slip: its name, what tells it from the others, what a piece of its first line costs and
/// what is to pay. The one looked at has an outline; a click or the space bar looks at another.
class ChoiceCard : public QAbstractButton {
    Q_OBJECT

  public:
    explicit ChoiceCard(QWidget* parent = nullptr);

    void setContent(const quoting::SheetContent& sheet, const quoting::SheetChoice& choice, bool isLookedAt);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    QString m_name;
    QString m_difference;
    QString m_each;
    QString m_toPay;
};

/// The choices of the order side by side, two in a row; hidden while there is only one.
class SlipChoices : public QWidget {
    Q_OBJECT

  public:
    explicit SlipChoices(QWidget* parent = nullptr);

    void setContent(const quoting::SheetContent& sheet);
    void setNone() { hide(); }

  Q_SIGNALS:
    void chosen(int choice);

  private:
    QGridLayout* m_grid = nullptr;
    std::vector<ChoiceCard*> m_cards;
};

} // namespace sp::counter
