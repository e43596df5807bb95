// SPDX-License-Identifier: MIT
#include "app/plans/sheet_planner.h"

#include <QMetaObject>

#include <utility>

namespace sp::plans {

namespace {

std::vector<PlanAnswer> laidOut(const std::vector<costing::CutList>& lists, const std::atomic<bool>& stop) {
    std::vector<PlanAnswer> answers;
    for (const auto& list : lists) {
        if (stop) break;
        layout::MixedEffort effort;
        effort.steps = kPlanSteps;
        effort.outOfTime = [&stop] { return stop.load(); };
        auto plan = costing::planCut(list, effort);
        auto& answer = answers.emplace_back();
        answer.list = list;
        if (plan)
            answer.plan = std::move(*plan);
        else
            answer.problem = QString::fromStdString(plan.error().detail);
    }
    return answers;
}

} // namespace

SheetPlanner::SheetPlanner(QObject* parent)
    : QObject(parent) {
    m_pool.setMaxThreadCount(1);
}

SheetPlanner::~SheetPlanner() {
    if (m_stop) *m_stop = true;
    m_pool.waitForDone();
}

void SheetPlanner::ask(std::vector<costing::CutList> lists) {
    if (m_stop) *m_stop = true;
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_busy = true;
    m_pool.start([this, stop = m_stop, lists = std::move(lists)] {
        auto answers = laidOut(lists, *stop);
        QMetaObject::invokeMethod(
            this,
            [this, stop, answers = std::move(answers)]() mutable {
                if (*stop) return; // something else was asked meanwhile
                m_answers = std::move(answers);
                m_busy = false;
                Q_EMIT answered();
            },
            Qt::QueuedConnection);
    });
}

} // namespace sp::plans
