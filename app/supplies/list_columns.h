// SPDX-License-Identifier: MIT
#pragma once

#include "app/supplies/price_list_presenter.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QScrollArea>

#include <vector>

namespace sp::supplies {

/// The columns of a price list side by side: what each is called in the file, what it is taken for, and what stands in
/// it in the first rows.
class ListColumns : public QScrollArea {
    Q_OBJECT

  public:
    explicit ListColumns(PriceListPresenter& presenter, QWidget* parent = nullptr);

    /// Shows the columns of the list that the presenter has now.
    void fill();

  private:
    QWidget* columnOf(std::size_t number, const QString& heading);

    PriceListPresenter& m_presenter;
    std::vector<QComboBox*> m_choices;
    const base::CsvTable* m_shown = nullptr;
};

} // namespace sp::supplies
