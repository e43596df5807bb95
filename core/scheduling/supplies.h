// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/needs/order_work.h"
#include "core/units/date.h"

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace sp::scheduling {

/// What is here, and how long what is not takes to come.
struct Supplies {
    std::unordered_map<base::Id, std::int64_t> shelf;    ///< by material, in what it is counted in
    std::unordered_map<base::Id, std::int64_t> leadDays; ///< of the supplier it comes from; none: not known
};

/// Gives out what is on the shelf, to one job after another.
class SupplyWait {
  public:
    SupplyWait() = default;
    SupplyWait(Supplies supplies, units::Date today)
        : m_supplies(std::move(supplies))
        , m_today(today) {}

    /// Takes what a job needs off the shelf. Where that is not enough the rest is bought today: the first day on which
    /// all of it is here, after the lead time of the material that comes last; nothing where all of it is here now, or
    /// nothing is known of when what is missing comes. Common practice, no source.
    std::optional<units::Date> take(const std::vector<needs::MaterialTake>& takes);
    /// Whether something is short of which nobody knows when it can be here; that is not waited for.
    bool isShort(const std::vector<needs::MaterialTake>& takes) const;
    /// As `take`, without taking it.
    std::optional<units::Date> wait(const std::vector<needs::MaterialTake>& takes) const;

  private:
    bool isHere(const needs::MaterialTake& take) const;

    Supplies m_supplies;
    units::Date m_today;
};

} // namespace sp::scheduling
