// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::supply {

#define SP_SUPPLY_FAULTS(X)                                                                                            \
    X(ShareLostOutOfRange, OutOfRange)                                                                                 \
    X(PackGivesNothing, Invalid)                                                                                       \
    X(PackGivesOutOfRange, OutOfRange)                                                                                 \
    X(PackWithoutPrice, Missing)                                                                                       \
    X(PackWithTooManyPrices, TooLarge)                                                                                 \
    X(PriceFromOutOfRange, OutOfRange)                                                                                 \
    X(PackPriceNegative, OutOfRange)                                                                                   \
    X(PackLimitNegative, OutOfRange)                                                                                   \
    X(SupplierTermsNegative, OutOfRange)                                                                               \
    X(PackPricedTwice, Ambiguous)                                                                                      \
    X(NothingNeeded, Missing)                                                                                          \
    X(NeedBelowNothing, OutOfRange)                                                                                    \
    X(NeedTooLarge, TooLarge)                                                                                          \
    X(TooManyNeeds, TooLarge)                                                                                          \
    X(ShelfOutOfRange, OutOfRange)                                                                                     \
    X(SupplierTwice, Conflict)                                                                                         \
    X(SupplierSumsTooLarge, TooLarge)                                                                                  \
    X(TooManyPacks, TooLarge)                                                                                          \
    X(PackTwice, Conflict)                                                                                             \
    X(PackOfUnknownSupplier, NotFound)                                                                                 \
    X(PurchaseTooLarge, TooLarge)                                                                                      \
    X(NoPlanFound, Failed)                                                                                             \
    X(NoSuchColumn, Missing)                                                                                           \
    X(NoMaterialColumn, Missing)                                                                                       \
    X(NoPriceColumn, Missing)                                                                                          \
    X(TextAfterQuote, Invalid)                                                                                         \
    X(QuoteNotClosed, Invalid)                                                                                         \
    X(PriceListTooLarge, TooLarge)                                                                                     \
    X(ListIsNoText, Invalid)                                                                                           \
    X(CellTooLarge, TooLarge)                                                                                          \
    X(TooManyColumns, TooLarge)                                                                                        \
    X(CountedOrCut, Invalid)                                                                                           \
    X(KitCountOutOfRange, OutOfRange)                                                                                  \
    X(CutsNegative, OutOfRange)                                                                                        \
    X(KitSheetsOutOfRange, OutOfRange)                                                                                 \
    X(KitPriceNegative, OutOfRange)                                                                                    \
    X(KitTooLarge, TooLarge)                                                                                           \
    X(NothingLimits, Invalid)                                                                                          \
    X(KitHoldsTooMuch, TooLarge)                                                                                       \
    X(DesignWithoutStones, Missing)                                                                                    \
    X(KitMaterialGone, NotFound)                                                                                       \
    X(KitsOutOfRange, OutOfRange)                                                                                      \
    X(StoneGone, NotFound)                                                                                             \
    X(BaseGone, NotFound)                                                                                              \
    X(EmptyOrder, Missing)                                                                                             \
    X(TooManyRows, TooLarge)                                                                                           \
    X(SampleOutOfRange, OutOfRange)                                                                                    \
    X(WeightOutOfRange, OutOfRange)                                                                                    \
    X(WeightBelowTare, Invalid)                                                                                        \
    X(ScaleTooCoarse, Invalid)                                                                                         \
    X(WeighedTooMany, TooLarge)                                                                                        \
    X(NothingUsed, Missing)                                                                                            \
    X(LeadDaysOutOfRange, OutOfRange)                                                                                  \
    X(OrderCostsNothing, OutOfRange)                                                                                   \
    X(OrderedPackUnpriced, Missing)                                                                                    \
    X(OrderTooLarge, TooLarge)                                                                                         \
    X(ReorderTooLarge, TooLarge)

// Why a row of a price list is not taken, what is odd about packs, and why there is no plan.
#define SP_SUPPLY_NOTES(X)                                                                                             \
    X(NoSuchMaterial)                                                                                                  \
    X(NoSuchStone)                                                                                                     \
    X(SeveralStones)                                                                                                   \
    X(UnknownSizeInList)                                                                                               \
    X(PackNotRead)                                                                                                     \
    X(PriceNotAboveNothing)                                                                                            \
    X(PriceFromLessThanOne)                                                                                            \
    X(SecondPrice)                                                                                                     \
    X(EmptyPack)                                                                                                       \
    X(PackNameTooLong)                                                                                                 \
    X(UnknownPack)                                                                                                     \
    X(TwoContents)                                                                                                     \
    X(OtherRowNotTaken)                                                                                                \
    X(NoPriceOfOnePack)                                                                                                \
    X(PriceRises)                                                                                                      \
    X(MinimumNotReached)                                                                                               \
    X(PacksNotToBeHad)                                                                                                 \
    X(NoPackGives)                                                                                                     \
    X(PacksHoldTooLittle)                                                                                              \
    X(OnlyWithAKit)                                                                                                    \
    X(WithNoKit)                                                                                                       \
    X(PacksWithoutPrice)                                                                                               \
    X(NoSupplierSells)                                                                                                 \
    X(NoKitInTheBook)                                                                                                  \
    X(NoKitHolds)

SP_FAULTS(Supply, SP_SUPPLY_FAULTS)
SP_NOTES(Supply, SP_SUPPLY_NOTES)

} // namespace sp::supply
