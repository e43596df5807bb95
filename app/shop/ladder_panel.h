// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/choice_field.h"
#include "app/desk/figures.h"
#include "app/shop/ladder_picture.h"
#include "app/shop/shop_presenter.h"

namespace sp::shop {

/// What the mark-up ladder makes of one design, as a picture with its sentences. It is worked out while it is seen.
class LadderPanel : public QWidget {
    Q_OBJECT

  public:
    LadderPanel(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void refresh();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void showMarked();

    ShopPresenter& m_presenter;
    const desk::Formatter& m_formatter;
    base::Id m_chosen;
    std::shared_ptr<const pricing::LadderCurve> m_curve;
    desk::ChoiceField* m_design = nullptr;
    LadderPicture* m_picture = nullptr;
    desk::TextLabel* m_point = nullptr;
    desk::TextLabel* m_cliffs = nullptr;
};

} // namespace sp::shop
