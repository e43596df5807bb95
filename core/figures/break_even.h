// SPDX-License-Identifier: MIT
#pragma once

#include "core/figures/earned.h"

#include <optional>

namespace sp::figures {

/// How far a month is from carrying what it costs whether anything is made or not.
struct BreakEven {
    units::Money fixed;                      ///< of the month
    units::Money contribution;               ///< of what was handed over, see Earned
    units::Money toGo = {};                  ///< fixed − contribution; nothing once it is carried
    std::optional<units::Count> pieces = {}; ///< more of such pieces as were handed over, a piece begun counted
    /// More of such hours at the bench. Both are none where nothing is to go, or where such work carries nothing.
    std::optional<units::Duration> bench = {};

    friend bool operator==(const BreakEven&, const BreakEven&) = default;
};

/// Pieces to go = fixed costs to go ÷ contribution of a piece, as in cost-volume-profit analysis (OpenStax, Principles
/// of Accounting 2, chapter 3). Throws base::Overflow.
BreakEven breakEven(units::Money fixed, const Earned& soFar);

} // namespace sp::figures
