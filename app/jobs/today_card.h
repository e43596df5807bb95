// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/card.h"
#include "app/format/formatter.h"
#include "app/jobs/today_watch.h"

#include <QListView>
#include <QStandardItemModel>

namespace sp::jobs {

/// What today asks, one list by urgency: what is to be ready, deposits that are missing, quotes about to lapse, what is
/// not collected, what is owed, certificates that end; each group with its number and its sum.
class TodayCard : public desk::Card {
    Q_OBJECT

  public:
    TodayCard(TodayWatch& watch, const desk::Formatter& formatter, QWidget* parent = nullptr);

  Q_SIGNALS:
    void jobChosen(const sp::base::Id& job); ///< with the keys or a click
    void openAsked(const sp::base::Id& job); ///< Enter or a double click
    void certificateAsked();                 ///< likewise

  private:
    void load();
    void addGroup(catalogue::Reminder reminder);
    void addCertificates();
    void addHead(const QString& words, qint64 number, const QString& sum);
    void addRow(const QVariant& job, const QString& title, const QString& detail, const QString& figure);
    QString detailOf(const db::Asked& asked) const;

    TodayWatch& m_watch;
    const desk::Formatter& m_formatter;
    desk::TextLabel* m_count;
    desk::TextLabel* m_nothing;
    QListView* m_list;
    QStandardItemModel m_model;
    bool m_isLoading = false;
};

} // namespace sp::jobs
