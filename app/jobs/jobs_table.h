// SPDX-License-Identifier: MIT
#pragma once

#include <QTableView>

namespace sp::jobs {

/// The table of quotes: one row is chosen as a whole and has the jewel outline while the table has the focus.
class JobsTable : public QTableView {
    Q_OBJECT

  public:
    explicit JobsTable(QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
};

} // namespace sp::jobs
