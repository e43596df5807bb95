// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/id.h"
#include "core/units/date.h"
#include "core/units/money.h"

#include <optional>
#include <string>

namespace sp::catalogue {

/// One movement of money between a customer and the shop, for a job. A payment is never changed, only taken back by
/// one that reverses it.
struct Payment {
    base::Id id;
    base::Id job;
    units::Money amount; ///< received is positive, given back negative, never 0
    std::string kind;    ///< as the shop calls it: "Cash"
    units::Date paidOn;
    std::string note;
    std::optional<base::Id> reverses; ///< the payment that this one takes back

    friend bool operator==(const Payment&, const Payment&) = default;
};

} // namespace sp::catalogue
