// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/count.h"
#include "core/units/date.h"
#include "core/units/duration.h"
#include "core/units/money.h"
#include "core/units/rate.h"

#include <optional>
#include <string>

namespace sp::figures {

/// What something that was handed over brought in and what it took, by the standards it was priced at. Amounts are
/// without tax. They add up over any split.
struct Earned {
    units::Count pieces = {};   ///< handed over; charges are none
    units::Money income = {};   ///< what it was sold for, less what was credited
    units::Money cost = {};     ///< planned
    units::Money paidOut = {};  ///< the part of it that is paid out
    units::Money cardFee = {};  ///< what the card takes
    units::Money labour = {};   ///< own work in the cost, that in spoiled pieces too
    units::Duration bench = {}; ///< likewise
    /// Labour and bench are known of all of it. A quote that an earlier program sealed may not say them any more.
    bool isBenchKnown = true;

    Earned& operator+=(const Earned& other);

    /// cost + card fee: all that it took.
    units::Money allCost() const;
    /// income − card fee − cost; below zero for a loss.
    units::Money left() const;
    /// income − card fee − what is paid out: what there is for own work, wear, overhead and profit.
    units::Money contribution() const;
    /// left ÷ income; none without income.
    std::optional<units::Rate> margin() const;
    /// (left + labour) ÷ hours at the bench; none without such time, or where some of it is not known.
    std::optional<units::Money> perBenchHour() const;

    friend bool operator==(const Earned&, const Earned&) = default;
};

/// A line of a job that was handed over. Keys are none and names empty where there is none of it.
struct EarnedLine {
    base::Id job;
    std::string number; ///< of its newest quote
    units::Date day;    ///< handed over
    base::Id customer;
    std::string customerName;
    base::Id design; ///< the first on the piece
    std::string designName;
    base::Id blank; ///< what the stones are set on
    std::string blankName;
    units::Count quantity; ///< of the line; of a charge none
    Earned earned;
};

} // namespace sp::figures
