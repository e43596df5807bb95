// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/job_plan.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace sp::supply {

inline JobPlans plansOf(const Job& job) {
    return compared(job, {*planStrategy(job, Strategy::Kits, {}), *planStrategy(job, Strategy::Bulk, {}),
                          *planStrategy(job, Strategy::Mix, {})});
}

/// The curve as the app makes it: one job, its pieces set to 1, 2, ...
inline CostCurve curveOf(Job job, std::int64_t horizon) {
    std::vector<CostCurvePoint> points;
    for (std::int64_t n = 1; n <= horizon; ++n) {
        job.lines.front().pieces = n;
        points.push_back(pointOf(job, plansOf(job)));
    }
    return assembled(strategiesOf(job), std::move(points));
}

} // namespace sp::supply
