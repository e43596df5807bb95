// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::pricing {

#define SP_PRICING_FAULTS(X)                                                                                           \
    X(TaxOutOfRange, OutOfRange)                                                                                       \
    X(DepositOutOfRange, OutOfRange)                                                                                   \
    X(MarkUpOutOfRange, OutOfRange)                                                                                    \
    X(PriceEndingOutOfRange, OutOfRange)                                                                               \
    X(DiscountShareOutOfRange, OutOfRange)                                                                             \
    X(DiscountOutOfRange, OutOfRange)                                                                                  \
    X(LineTooLarge, TooLarge)                                                                                          \
    X(NothingOrdered, Missing)                                                                                         \
    X(WantedBeforeQuoted, OutOfRange)                                                                                  \
    X(OrderTooLarge, TooLarge)

SP_FAULTS(Pricing, SP_PRICING_FAULTS)

} // namespace sp::pricing
