// SPDX-License-Identifier: MIT
#include "app/plans/sheet_planner.h"

#include "app/words/words.h"

#include <utility>

namespace sp::plans {

namespace {

std::vector<PlanAnswer> laidOut(const std::vector<planning::CutList>& lists, const std::stop_token& stop) {
    std::vector<PlanAnswer> answers;
    for (const auto& list : lists) {
        if (stop.stop_requested()) break;
        layout::MixedEffort effort;
        effort.steps = kPlanSteps;
        effort.outOfTime = [&stop] { return stop.stop_requested(); };
        auto plan = planning::planCut(list, effort);
        auto& answer = answers.emplace_back();
        answer.list = list;
        if (plan)
            answer.plan = std::move(*plan);
        else
            answer.problem = words::sentence(plan.error());
    }
    return answers;
}

} // namespace

SheetPlanner::SheetPlanner(QObject* parent)
    : QObject(parent) {}

void SheetPlanner::ask(std::vector<planning::CutList> lists) {
    m_task.ask([lists = std::move(lists)](const std::stop_token& stop) { return laidOut(lists, stop); },
               [this](std::vector<PlanAnswer> answers) {
                   m_answers = std::move(answers);
                   Q_EMIT answered();
               });
}

} // namespace sp::plans

#include "moc_sheet_planner.cpp"
