// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/date.h"
#include "core/units/money.h"

#include <optional>
#include <string>

namespace sp::catalogue {

/// What a row of the ledger of payments is.
enum class PaymentRole {
    Money,   ///< handed over, or given back
    Change,  ///< given back at once of the money of another row
    Rounding ///< nobody's money: what cash could not be paid to for want of smaller coins
};

/// One row of the ledger between a customer and the shop, for a job. It is never changed, only taken back by one that
/// reverses it.
struct Payment {
    base::Id id;
    base::Id job;
    units::Money amount; ///< counted as paid; received is positive, given back negative, never 0
    std::string kind;    ///< as the shop calls it: "Cash"
    units::Date paidOn;
    std::string note;
    std::optional<base::Id> reverses; ///< the row that this one takes back, of the same role
    PaymentRole role = PaymentRole::Money;
    std::optional<base::Id> partOf = {}; ///< change and rounding: the row of money that they were made with

    friend bool operator==(const Payment&, const Payment&) = default;
};

} // namespace sp::catalogue
