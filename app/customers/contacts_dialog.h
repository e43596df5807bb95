// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/customers_presenter.h"

#include <QDialog>

namespace sp::customers {

/// Shows what reading contacts from a file will do, before anything of it is done.
class ContactsDialog : public QDialog {
    Q_OBJECT

  public:
    ContactsDialog(CustomersPresenter& presenter, std::vector<catalogue::Customer> contacts,
                   const db::ContactsPlan& plan, QWidget* parent = nullptr);

  private:
    void take();

    CustomersPresenter& m_presenter;
    std::vector<catalogue::Customer> m_contacts;
};

} // namespace sp::customers
