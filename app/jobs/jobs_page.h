// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/desk/find_field.h"
#include "app/jobs/jobs_presenter.h"
#include "app/jobs/jobs_table_model.h"
#include "app/jobs/today_watch.h"

#include <QTableView>
#include <QVBoxLayout>
#include <QWidget>

namespace sp::desk {
class EmptyState;
class FoldingColumns;
class MessageBar;
} // namespace sp::desk

namespace sp::jobs {

class JobFilters;
class JobStrip;
class TodayCard;

/// The Jobs place: what today asks, beside every quote and order, newest first, with its stage. It shows no costs of
/// the shop; those are in the dialog of changes, which is opened separately.
class JobsPage : public QWidget {
    Q_OBJECT

  public:
    JobsPage(session::BookSession& session, TodayWatch& today, const desk::Formatter& formatter,
             QWidget* parent = nullptr);

    /// The table, if it is shown.
    void focusStart();
    void focusFind();

  Q_SIGNALS:
    void openAsked(const sp::base::Id& quote);   ///< show it at the Counter
    void repeatAsked(const sp::base::Id& quote); ///< order again there what this given quote ordered
    void reviseAsked(const sp::base::Id& quote); ///< change there what this given quote ordered
    void counterAsked();                         ///< start the first quote at the Counter
    void certificateAsked();                     ///< show the customers

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    QWidget* buildTable();
    QWidget* buildJobs();
    void choose(const base::Id& job);
    void connectAll();
    int stageWidth() const;
    void tellUse(const db::ShelfUse& use);
    void fitColumns();
    void fitNames();
    void showOrder();
    QString noteText() const;
    void refresh();
    void load();
    void openCurrent();
    void showChanges();
    void showPlan();
    void showBenchSheet();
    void showMoney();
    void showPapers();
    std::vector<int> chosenRows() const;

    session::BookSession& m_session;
    desk::Formatter m_formatter;
    JobsPresenter m_presenter;
    JobsTableModel m_model;
    desk::MessageBar* m_shelfSays = nullptr; ///< what the shelf lacked for the job that was moved on
    desk::FindField* m_find = nullptr;
    QWidget* m_findBox = nullptr;
    desk::TextLabel* m_note = nullptr;
    QWidget* m_list = nullptr;
    QTableView* m_table = nullptr;
    desk::EmptyState* m_empty = nullptr;
    desk::EmptyState* m_noMatch = nullptr;
    JobFilters* m_filters = nullptr;
    JobStrip* m_strip = nullptr;
    desk::FoldingColumns* m_columns = nullptr;
    TodayWatch& m_todayWatch;
    TodayCard* m_today = nullptr;
    bool m_isLoading = false;
};

} // namespace sp::jobs
