// SPDX-License-Identifier: MIT
#pragma once

#include <QTableView>

namespace sp::jobs {

/// The table of quotes: rows are chosen as a whole, and the one looked at has the jewel outline while the table has the
/// focus. Shift with Up and Down chooses several, Ctrl+Space adds or takes out one.
class JobsTable : public QTableView {
    Q_OBJECT

  public:
    explicit JobsTable(QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
};

} // namespace sp::jobs
