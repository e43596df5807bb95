// SPDX-License-Identifier: MIT
#pragma once

#include "app/bench/bench_presenter.h"
#include "app/desk/figures.h"
#include "app/format/formatter.h"

#include <QPushButton>
#include <QWidget>

namespace sp::desk {
class EmptyState;
class FiguresTable;
class MessageBar;
} // namespace sp::desk

namespace sp::bench {

class LoadPicture;

/// The Bench: what is agreed and being made, in the order in which it is made, when each job is ready and which is
/// late; the coming days above it, and below it what comes next for the chosen job.
class BenchPage : public QWidget {
    Q_OBJECT

  public:
    BenchPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusStart(); ///< the list, if it is shown

  Q_SIGNALS:
    void openAsked(const sp::base::Id& quote); ///< show it at the Counter
    void jobsAsked();                          ///< to agree the first one
    void hoursAsked();                         ///< type how long the bench is worked at

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    QWidget* buildDays();
    QWidget* buildList();
    QWidget* buildChosen();
    void refresh();
    void loadChosen();
    void moveOn();
    void tellUse(const db::ShelfUse& use);
    void showSheet();
    QStringList rowOf(std::size_t at) const;
    QString standingOf(std::size_t at) const;

    desk::Formatter m_formatter;
    BenchPresenter m_presenter;
    desk::TextLabel* m_note = nullptr;
    desk::TextLabel* m_hour = nullptr;
    desk::MessageBar* m_unread = nullptr;
    desk::MessageBar* m_shelfSays = nullptr; ///< what the shelf lacked for the job that went on
    QWidget* m_days = nullptr;
    LoadPicture* m_load = nullptr;
    QWidget* m_list = nullptr;
    desk::FiguresTable* m_table = nullptr;
    QWidget* m_job = nullptr;
    desk::TextLabel* m_title = nullptr;
    desk::TextLabel* m_detail = nullptr;
    desk::TextLabel* m_problem = nullptr;
    QPushButton* m_next = nullptr;
    QPushButton* m_sheet = nullptr;
    QPushButton* m_open = nullptr;
    desk::EmptyState* m_empty = nullptr;
    desk::EmptyState* m_noHours = nullptr;
    bool m_isLoading = false;
};

} // namespace sp::bench
