// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/customers_presenter.h"
#include "app/desk/problem_note.h"
#include "app/format/formatter.h"

#include <QDialog>

namespace sp::customers {

/// Asks whether the open customer is to be erased, and says first what stays and which copies hold the person still.
class EraseDialog : public QDialog {
    Q_OBJECT

  public:
    EraseDialog(CustomersPresenter& presenter, const std::vector<db::Leaving>& copies, const desk::Formatter& formatter,
                QWidget* parent = nullptr);

  private:
    void erase();

    CustomersPresenter& m_presenter;
    desk::ProblemNote* m_problem;
};

} // namespace sp::customers
