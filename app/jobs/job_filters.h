// SPDX-License-Identifier: MIT
#pragma once

#include "app/jobs/jobs_presenter.h"
#include "app/jobs/jobs_table_model.h"

#include <QToolButton>
#include <QWidget>

#include <set>
#include <utility>
#include <vector>

class QAction;
class QActionGroup;
class QMenu;

namespace sp::jobs {

/// Which jobs are listed besides what is typed, by stage, day and what is not paid, in which order, and with which
/// columns. The order and the columns are kept for the next start.
class JobFilters : public QWidget {
    Q_OBJECT

  public:
    JobFilters(JobsPresenter& presenter, const JobsTableModel& model, QWidget* parent = nullptr);

    /// Lists all jobs again.
    void clear();
    /// Reads the list again; where it is another day since, the chosen days go by that.
    void readAgain();
    /// Sorts by that column of the table; once more: the other way round.
    void sortBy(int column);
    /// By which the list is in order; -1: the newest first.
    int sortedColumn() const;
    bool isHidden(int column) const { return m_hidden.contains(column); }

  Q_SIGNALS:
    void columnsChanged();

  private:
    void buildOnly();
    void buildOrder(const JobsTableModel& model);
    void ask();
    db::Wanted chosen();
    void putInOrder(db::Wanted wanted);
    void showSort(int column);
    void readOrder();
    void keepOrder() const;
    void nameOnly();
    void readHidden();
    void keepHidden();
    void hide(int column, bool hides);

    JobsPresenter& m_presenter;
    QToolButton* m_only;
    QToolButton* m_order;
    QActionGroup* m_stages = nullptr;
    QActionGroup* m_days = nullptr;
    QAction* m_unpaid = nullptr;
    QAction* m_otherWay = nullptr;
    std::vector<std::pair<int, QAction*>> m_sorts; ///< by column
    std::set<int> m_hidden;
    units::Date m_chosenOn; ///< the day that the chosen days go by
};

} // namespace sp::jobs
