// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::costing {

#define SP_COSTING_FAULTS(X)                                                                                           \
    X(LineTooCostly, TooLarge)                                                                                         \
    X(NoProductiveHours, OutOfRange)                                                                                   \
    X(SpoilageOutOfRange, OutOfRange)                                                                                  \
    X(CardFeeOutOfRange, OutOfRange)                                                                                   \
    X(MachineLifeBelowOne, OutOfRange)

SP_FAULTS(Costing, SP_COSTING_FAULTS)

} // namespace sp::costing
