// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/count.h"
#include "core/units/money.h"

#include <optional>

namespace sp::catalogue {

/// What a set of templates costs whole.
struct SetCost {
    units::Money templates; ///< the sheets it is cut from, with their freight
    units::Money
        work; ///< art, cutting, weeding and setting up, with overhead and wear; 0 where that is paid by the job

    units::Money total() const { return templates + work; }

    friend bool operator==(const SetCost&, const SetCost&) = default;
};

/// How far the set of a design is paid off over its planned pieces.
struct DesignSet {
    base::Id design;
    units::Count sold;           ///< pieces of jobs agreed, and of those after
    std::optional<SetCost> cost; ///< as it was when it was first cut; none: it was not yet, it costs what it does today

    friend bool operator==(const DesignSet&, const DesignSet&) = default;
};

} // namespace sp::catalogue
