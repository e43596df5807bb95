// SPDX-License-Identifier: MIT
#include "core/scheduling/supplies.h"

#include <algorithm>

namespace sp::scheduling {

bool SupplyWait::isHere(const needs::MaterialTake& take) const {
    const auto held = m_supplies.shelf.find(take.material);
    return take.count <= (held == m_supplies.shelf.end() ? 0 : held->second);
}

bool SupplyWait::isShort(const std::vector<needs::MaterialTake>& takes) const {
    return std::ranges::any_of(
        takes, [this](const auto& take) { return !isHere(take) && !m_supplies.leadDays.contains(take.material); });
}

std::optional<units::Date> SupplyWait::wait(const std::vector<needs::MaterialTake>& takes) const {
    std::optional<units::Date> last;
    for (const auto& take : takes) {
        if (isHere(take)) continue;
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
