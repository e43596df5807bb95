// SPDX-License-Identifier: MIT
#pragma once

#include "app/async/latest_task.h"
#include "core/planning/cut_plan.h"

#include <QObject>
#include <QString>

#include <optional>
#include <vector>

namespace sp::plans {

/// So many steps of search are spent on a material (about a fifth of a second).
inline constexpr std::int64_t kPlanSteps = 20'000'000;

/// A material with its plan, or why there is none.
struct PlanAnswer {
    planning::CutList list;
    std::optional<planning::CutPlan> plan;
    QString problem;
};

/// Lays cut lists on their sheets beside the screen's thread. A new question stops the one before; what was asked
/// before never arrives after it.
class SheetPlanner : public QObject {
    Q_OBJECT

  public:
    explicit SheetPlanner(QObject* parent = nullptr);

    void ask(std::vector<planning::CutList> lists);
    bool isBusy() const { return m_task.isBusy(); }
    /// Of the last question that was answered, in its order.
    const std::vector<PlanAnswer>& answers() const { return m_answers; }

  Q_SIGNALS:
    void answered();

  private:
    std::vector<PlanAnswer> m_answers;
    async::LatestTask m_task;
};

} // namespace sp::plans
