// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/customers_presenter.h"
#include "app/desk/problem_note.h"
#include "app/format/formatter.h"

#include <QDialog>

class QPushButton;
class QVBoxLayout;

namespace sp::customers {

/// Asks whether the open customer is to be erased, and says first what stays and which copies hold the person still.
class EraseDialog : public QDialog {
    Q_OBJECT

  public:
    EraseDialog(CustomersPresenter& presenter, const db::BackupPlaces& places, const desk::Formatter& formatter,
                QWidget* parent = nullptr);

  private:
    void addCopies(QVBoxLayout* column, const std::vector<db::Leaving>& copies, const desk::Formatter& formatter);
    void addButtons(QVBoxLayout* column);
    void say(QVBoxLayout* column, const QString& words, desk::Role role);
    void erase();

    CustomersPresenter& m_presenter;
    base::Id m_customer; ///< whom it asks about, whoever is open behind it
    desk::ProblemNote* m_problem;
    QPushButton* m_erase = nullptr;
    QPushButton* m_keep = nullptr;
};

} // namespace sp::customers
