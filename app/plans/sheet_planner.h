// SPDX-License-Identifier: MIT
#pragma once

#include "core/costing/cut_plan.h"

#include <QObject>
#include <QString>
#include <QThreadPool>

#include <atomic>
#include <memory>
#include <vector>

namespace sp::plans {

/// So many steps of search are spent on a material (about a fifth of a second).
inline constexpr std::int64_t kPlanSteps = 20'000'000;

/// A material with its plan, or why there is none.
struct PlanAnswer {
    costing::CutList list;
    std::optional<costing::CutPlan> plan;
    QString problem;
};

/// Lays cut lists on their sheets beside the screen's thread. A new question stops the one before; what was asked
/// before never arrives after it.
class SheetPlanner : public QObject {
    Q_OBJECT

  public:
    explicit SheetPlanner(QObject* parent = nullptr);
    ~SheetPlanner() override;

    void ask(std::vector<costing::CutList> lists);
    bool isBusy() const { return m_busy; }
    /// Of the last question that was answered, in its order.
    const std::vector<PlanAnswer>& answers() const { return m_answers; }

  Q_SIGNALS:
    void answered();

  private:
    QThreadPool m_pool;
    std::shared_ptr<std::atomic<bool>> m_stop;
    std::vector<PlanAnswer> m_answers;
    bool m_busy = false;
};

} // namespace sp::plans
