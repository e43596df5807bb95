// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/value_fields.h"
#include "app/shop/shop_presenter.h"

#include <QWidget>

namespace sp::shop {

/// The bench standards as a table of fields: steps down, kinds of time across, and the learning rate.
class BenchGrid : public QWidget {
    Q_OBJECT

  public:
    BenchGrid(ShopPresenter& presenter, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void load();

  private:
    struct Cell {
        catalogue::Step step;
        units::Duration catalogue::StepStandard::*part;
        desk::DurationField* field;
    };
    struct Learning {
        catalogue::Step step;
        desk::RateField* field;
    };

    ShopPresenter& m_presenter;
    std::vector<Cell> m_cells;
    std::vector<Learning> m_learning;
};

} // namespace sp::shop
