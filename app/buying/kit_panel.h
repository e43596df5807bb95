// SPDX-License-Identifier: MIT
#pragma once

#include "app/buying/buying_presenter.h"
#include "app/desk/card.h"
#include "app/format/formatter.h"

class QVBoxLayout;

namespace sp::buying {

/// The pieces a kit makes: those for sure solid, those only likely dashed, each with the stones of the design.
class KitPieces : public QWidget {
    Q_OBJECT

  public:
    KitPieces(std::int64_t sure, std::int64_t likely, std::vector<QColor> stones, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::int64_t m_sure;
    std::int64_t m_likely;
    std::vector<QColor> m_stones;
};

/// Every kit that serves the design: what one makes, what a piece costs from it and from bulk, and for how many pieces
/// which of the two is cheaper. Not there where no kit does.
class KitPanel : public desk::Card {
    Q_OBJECT

  public:
    KitPanel(BuyingPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

  private:
    void refresh();
    void add(const supply::KitChoice& kit);
    void addFigures(const supply::KitChoice& kit);

    BuyingPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    QWidget* m_body = nullptr; ///< made anew for each answer
    QVBoxLayout* m_column = nullptr;
};

} // namespace sp::buying
