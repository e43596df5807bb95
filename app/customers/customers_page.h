// SPDX-License-Identifier: MIT
#pragma once

#include "app/customers/customers_presenter.h"
#include "app/desk/figures.h"
#include "app/desk/figures_table.h"
#include "app/desk/list_page.h"
#include "app/desk/prompter.h"

#include <QVBoxLayout>

#include <functional>

namespace sp::customers {

class CustomerFields;
class CustomerPictures;

/// The Customers place: the list at the left, the customer that is open at the right, with what they ordered and owe.
class CustomersPage : public desk::ListPage {
    Q_OBJECT

  public:
    /// `backups` says where the backups of all books lie now; `writers` write the papers of a customer who is exported.
    CustomersPage(session::BookSession& session, const desk::Formatter& formatter, desk::Prompter& prompter,
                  std::function<db::BackupPlaces()> backups, PaperWriters writers, QWidget* parent = nullptr);

    const base::Id& currentCustomer() const { return m_presenter.currentId(); }
    void open(const base::Id& customer) { m_presenter.open(customer); }

  Q_SIGNALS:
    void openAsked(const sp::base::Id& job); ///< Enter or a double click on a job

  private:
    void buildActions(desk::FlowGrid& below);
    void buildCard(QWidget* card);
    std::vector<desk::StoneListRow> rows(const QString& wanted, const base::Id& kept) override;
    base::Id openOne() const override { return m_presenter.currentId(); }
    void openAnother(const base::Id& customer) override { m_presenter.open(customer); }
    void load() override;
    void loadJobs();
    void sayCertificate();
    void askToErase();
    void writeAll();
    void readFile();
    void writeFile();

    CustomersPresenter m_presenter;
    desk::Formatter m_formatter;
    desk::Prompter& m_prompter;
    std::function<db::BackupPlaces()> m_backups;
    PaperWriters m_writers;
    QWidget* m_content = nullptr;
    QWidget* m_empty = nullptr;
    desk::TextLabel* m_heading = nullptr;
    CustomerFields* m_fields = nullptr;
    desk::TextLabel* m_certificate = nullptr;
    desk::TextLabel* m_sums = nullptr;
    desk::FiguresTable* m_table = nullptr;
    CustomerPictures* m_pictures = nullptr;
    std::vector<base::Id> m_jobs; ///< of the rows of the table
};

} // namespace sp::customers
