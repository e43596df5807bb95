// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::pricing {

#define SP_PRICING_FAULTS(X)                                                                                           \
    X(TaxRateGone, NotFound)                                                                                           \
    X(TaxOutOfRange, OutOfRange)                                                                                       \
    X(DepositOutOfRange, OutOfRange)                                                                                   \
    X(CardTakesAll, OutOfRange)                                                                                        \
    X(MarkUpOutOfRange, OutOfRange)                                                                                    \
    X(PriceEndingOutOfRange, OutOfRange)                                                                               \
    X(DiscountShareOutOfRange, OutOfRange)                                                                             \
    X(DiscountOutOfRange, OutOfRange)                                                                                  \
    X(LineTooLarge, TooLarge)                                                                                          \
    X(NothingPaid, Invalid)                                                                                            \
    X(PaidLater, Invalid)                                                                                              \
    X(PaidBelowCoin, Invalid)                                                                                          \
    X(PaidBeyond, Invalid)                                                                                             \
    X(NothingLeftToPay, Invalid)                                                                                       \
    X(ChangeNotInCash, Invalid)                                                                                        \
    X(GivenBackBeyond, Invalid)                                                                                        \
    X(NothingCredited, Invalid)                                                                                        \
    X(CreditBelowMinor, Invalid)                                                                                       \
    X(CreditBeyond, Invalid)                                                                                           \
    X(NothingOrdered, Missing)                                                                                         \
    X(WantedBeforeQuoted, OutOfRange)                                                                                  \
    X(OrderTooLarge, TooLarge)

// Why a price changed: a material's price, something else of it, the customer's certificate, the program itself; and a
// card fee that is not charged. What of an order does not come along when it is made once more (repeat.h). What tells
// a revised order from the one it was (order_difference.h). Then what is not in a price (left_out.h).
#define SP_PRICING_NOTES(X)                                                                                            \
    X(PriceOf)                                                                                                         \
    X(PartOf)                                                                                                          \
    X(CertificateChanged)                                                                                              \
    X(ReckonedOtherwise)                                                                                               \
    X(NoCardFee)                                                                                                       \
    X(DayWanted)                                                                                                       \
    X(DayQuoted)                                                                                                       \
    X(WasAtNoCharge)                                                                                                   \
    X(LineWasAtNoCharge)                                                                                               \
    X(TypedPrice)                                                                                                      \
    X(TemplatesOnWall)                                                                                                 \
    X(BroughtByCustomer)                                                                                               \
    X(RushOfOrder)                                                                                                     \
    X(DiscountOfOrder)                                                                                                 \
    X(SmallestOrder)                                                                                                   \
    X(TaxOfOrder)                                                                                                      \
    X(NoTape)                                                                                                          \
    X(NoTemplate)                                                                                                      \
    X(NoLabour)                                                                                                        \
    X(NoOverhead)                                                                                                      \
    X(NoBenchTime)                                                                                                     \
    X(NoPressRunning)                                                                                                  \
    X(NoPressWear)                                                                                                     \
    X(NoCutterWear)                                                                                                    \
    X(CostsNothing)

SP_FAULTS(Pricing, SP_PRICING_FAULTS)
SP_NOTES(Pricing, SP_PRICING_NOTES)

} // namespace sp::pricing
