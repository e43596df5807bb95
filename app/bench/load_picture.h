// SPDX-License-Identifier: MIT
#pragma once

#include "app/format/formatter.h"
#include "core/scheduling/bench_plan.h"

#include <QWidget>

#include <vector>

namespace sp::bench {

/// The coming days side by side: how much time each has, and which job takes how much of it, by the job's number in the
/// list. Read in black and white; a screen reader hears it day by day.
class LoadPicture : public QWidget {
    Q_OBJECT

  public:
    explicit LoadPicture(const desk::Formatter& formatter, QWidget* parent = nullptr);

    /// The days from the plan's first on; those after it have their time free.
    void setPlan(const scheduling::BenchPlan& plan, const scheduling::BenchHours& hours, units::Date today);
    /// The number in the list of the job that is chosen, from 0; its parts are set off.
    void setChosen(int job);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void describeDays();
    int shownDays() const;
    QString nameOf(units::Date day) const;
    QString standingOf(const scheduling::PlannedDay& day) const;
    void paintDay(QPainter& painter, const QRectF& column, const scheduling::PlannedDay& day, double most) const;

    const desk::Formatter& m_formatter;
    std::vector<scheduling::PlannedDay> m_days;
    int m_chosen = -1;
};

} // namespace sp::bench
