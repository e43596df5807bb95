// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::costing {

#define SP_COSTING_FAULTS(X)                                                                                           \
    X(MaterialGone, NotFound)                                                                                          \
    X(NothingToCut, OutOfRange)                                                                                        \
    X(LineTooCostly, TooLarge)                                                                                         \
    X(NoProductiveHours, OutOfRange)                                                                                   \
    X(SpoilageOutOfRange, OutOfRange)                                                                                  \
    X(CardFeeOutOfRange, OutOfRange)                                                                                   \
    X(MachineLifeBelowOne, OutOfRange)

// A line without a title.
#define SP_COSTING_NOTES(X) X(ALine)

SP_FAULTS(Costing, SP_COSTING_FAULTS)
SP_NOTES(Costing, SP_COSTING_NOTES)

} // namespace sp::costing
