// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/figures.h"
#include "app/figures/figures_presenter.h"
#include "app/format/formatter.h"

#include <QComboBox>
#include <QPushButton>
#include <QWidget>

namespace sp::desk {
class EmptyState;
class FiguresTable;
class FlowGrid;
class MessageBar;
} // namespace sp::desk

namespace sp::figures {

class EarnedDelegate;

/// So many jobs of a group are shown; what more there are is said.
inline constexpr std::int64_t kMostJobsShown = 200;

/// The Figures: what was handed over in a month brought in, what it took and what an hour at the bench earned; where
/// it came from, each row with its jobs; how far the month carries what it costs anyway; what became of offers.
class FiguresPage : public QWidget {
    Q_OBJECT

  public:
    FiguresPage(session::BookSession& session, const desk::Formatter& formatter, QWidget* parent = nullptr);

    void focusStart(); ///< where it came from, if there is anything

  Q_SIGNALS:
    void openAsked(const sp::base::Id& quote); ///< show that job
    void jobsAsked();                          ///< there is nothing yet

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    /// A figure of the head with what it is above and a small word below.
    struct Told {
        desk::FigureLabel* figure;
        desk::TextLabel* below;
    };

    void build();
    void buildSpan(QHBoxLayout& row);
    QWidget* buildHead();
    Told addTold(desk::FlowGrid& grid, const QString& word, const char* name);
    QWidget* buildWhere();
    QWidget* buildJobs();
    QWidget* buildBreakEven();
    QWidget* buildAnswers();
    QWidget* buildTax();
    void refresh();
    void tellHead();
    void tellWhere();
    void tellBreakEven();
    void tellAnswers();
    void tellTax();
    void loadChosen();
    QString spanText() const;
    QString nameOf(const Group& group) const;
    QString spanOf(const QuantitySpan& span) const;
    QString hours(units::Duration time) const;
    QString hoursOf(const Earned& earned) const;
    QString hourOf(const Earned& earned) const;

    desk::Formatter m_formatter;
    FiguresPresenter m_presenter;
    desk::TextLabel* m_note = nullptr;
    QPushButton* m_before = nullptr;
    QPushButton* m_after = nullptr;
    desk::TextLabel* m_when = nullptr;
    QComboBox* m_span = nullptr;
    desk::MessageBar* m_unread = nullptr;
    QWidget* m_head = nullptr;
    desk::FigureLabel* m_hour = nullptr;
    desk::TextLabel* m_reckoning = nullptr;
    Told m_income{};
    Told m_cost{};
    Told m_left{};
    Told m_margin{};
    Told m_hours{};
    QWidget* m_where = nullptr;
    QComboBox* m_by = nullptr;
    desk::FiguresTable* m_groups = nullptr;
    EarnedDelegate* m_bars = nullptr;
    desk::TextLabel* m_leftOut = nullptr;
    QWidget* m_jobsCard = nullptr;
    desk::TextLabel* m_jobsTitle = nullptr;
    desk::FiguresTable* m_jobs = nullptr;
    desk::TextLabel* m_moreJobs = nullptr;
    desk::TextLabel* m_sum = nullptr;
    QWidget* m_evenCard = nullptr;
    desk::TextLabel* m_even = nullptr;
    desk::TextLabel* m_evenToGo = nullptr;
    QWidget* m_answersCard = nullptr;
    desk::FiguresTable* m_answers = nullptr;
    QWidget* m_taxCard = nullptr;
    desk::FiguresTable* m_tax = nullptr;
    desk::EmptyState* m_emptySpan = nullptr;
    desk::EmptyState* m_emptyBook = nullptr;
    bool m_isLoading = false;
};

} // namespace sp::figures
