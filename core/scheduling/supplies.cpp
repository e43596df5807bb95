// SPDX-License-Identifier: MIT
#include "core/scheduling/supplies.h"

#include <algorithm>

namespace sp::scheduling {

std::optional<units::Date> SupplyWait::wait(const std::vector<needs::MaterialTake>& takes) const {
    std::optional<units::Date> last;
    for (const auto& take : takes) {
        const auto held = m_supplies.shelf.find(take.material);
        if (take.count <= (held == m_supplies.shelf.end() ? 0 : held->second)) continue;
        const auto days = m_supplies.leadDays.find(take.material);
        if (days != m_supplies.leadDays.end()) last = std::max(last, std::optional(m_today.plusDays(days->second)));
    }
    return last;
}

std::optional<units::Date> SupplyWait::take(const std::vector<needs::MaterialTake>& takes) {
    const auto day = wait(takes);
    for (const auto& take : takes)
        if (const auto held = m_supplies.shelf.find(take.material); held != m_supplies.shelf.end())
            held->second = std::max<std::int64_t>(0, held->second - take.count);
    return day;
}

} // namespace sp::scheduling
