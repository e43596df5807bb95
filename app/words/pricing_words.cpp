// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/pricing/messages.h"

namespace sp::words {

Source sourceOf(pricing::Fault fault) {
    using enum pricing::Fault;
    switch (fault) {
    case TaxRateGone:
        return {
            QT_TRANSLATE_NOOP("Pricing", "There is no tax rate “%1” in the shop any more; choose another for “%2”.")};
    case TaxOutOfRange:
        return {QT_TRANSLATE_NOOP("Pricing", "The tax rate must be from 0 to 100 %; correct it in Shop.")};
    case DepositOutOfRange:
        return {QT_TRANSLATE_NOOP("Pricing", "The deposit must be from 0 to 100 %; correct it in Shop.")};
    case CardTakesAll:
        return {
            QT_TRANSLATE_NOOP("Pricing", "The card fee takes the whole of a price with its tax; correct it in Shop.")};
    case MarkUpOutOfRange:
        return {QT_TRANSLATE_N_NOOP("Pricing",
                                    "The mark-up from %n pieces must be from -100 to 10,000 %; correct it in Shop."),
                "The mark-up from %n piece must be from -100 to 10,000 %; correct it in Shop."};
    case PriceEndingOutOfRange:
        return {QT_TRANSLATE_NOOP("Pricing", "A price ending is a number from 0 to 99; correct it in Shop.")};
    case DiscountShareOutOfRange: return {QT_TRANSLATE_NOOP("Pricing", "A discount is from 0 to 100 %; type another.")};
    case DiscountOutOfRange:
        return {QT_TRANSLATE_NOOP("Pricing",
                                  "The discount is more than the order comes to, or below nothing; type another.")};
    case LineTooLarge:
        return {QT_TRANSLATE_NOOP("Pricing", "%1 comes to more than 1,000,000,000; check its pieces and prices.")};
    case NothingPaid: return {QT_TRANSLATE_NOOP("Pricing", "A payment of nothing is none; type how much it is.")};
    case PaidLater:
        return {QT_TRANSLATE_NOOP("Pricing",
                                  "The day of the payment, %1, is still to come; type today’s or an earlier one.")};
    case PaidBelowCoin:
        return {QT_TRANSLATE_NOOP("Pricing",
                                  "%1 cannot be counted out, the smallest there is being %2; type a multiple of it.")};
    case ChangeNotInCash:
        return {QT_TRANSLATE_NOOP("Pricing", "%1 is more than the %2 that is left to pay, and change is given in cash "
                                             "alone; take what is left, or keep the rest as credit.")};
    case PaidBeyond:
        return {QT_TRANSLATE_NOOP(
            "Pricing", "%1 is more than the %2 that is left to pay; take what is left and give change, or keep "
                       "it as the customer’s credit.")};
    case NothingLeftToPay:
        return {QT_TRANSLATE_NOOP("Pricing",
                                  "Nothing is left to pay; keep the %1 as the customer’s credit, or give them back.")};
    case GivenBackBeyond:
        return {QT_TRANSLATE_NOOP("Pricing", "%1 is more than the %2 that was paid; give back less.")};
    case NothingCredited:
        return {
            QT_TRANSLATE_NOOP("Pricing", "A credit note of nothing is no credit note; say how much it takes back.")};
    case CreditBelowMinor:
        return {QT_TRANSLATE_NOOP("Pricing", "%1 is not a whole number of the smallest coin; take back a whole one.")};
    case CreditBeyond:
        return {QT_TRANSLATE_NOOP("Pricing", "%1 is more than the %2 that is left of the invoice; take back less.")};
    case NothingOrdered:
        return {QT_TRANSLATE_NOOP("Pricing", "Nothing is ordered yet; type a design or add a one-off.")};
    case WantedBeforeQuoted:
        return {QT_TRANSLATE_NOOP("Pricing",
                                  "The day it is wanted, %1, lies before the day of the quote, %2; type a later one.")};
    case OrderTooLarge:
        return {
            QT_TRANSLATE_NOOP("Pricing", "The order comes to more than 1,000,000,000; check its pieces and prices.")};
    }
    return {};
}

Source sourceOf(pricing::Note note) {
    using enum pricing::Note;
    switch (note) {
    case PriceOf: return {QT_TRANSLATE_NOOP("Pricing", "%1")};
    case PartOf: return {QT_TRANSLATE_NOOP("Pricing", "%1, %2")};
    case CertificateChanged: return {QT_TRANSLATE_NOOP("Pricing", "Exemption certificate")};
    case ReckonedOtherwise: return {QT_TRANSLATE_NOOP("Pricing", "What the program reckons otherwise")};
    case NoCardFee: return {QT_TRANSLATE_NOOP("Pricing", "none")};
    case DayWanted: return {QT_TRANSLATE_NOOP("Pricing", "Wanted by a day")};
    case DayQuoted: return {QT_TRANSLATE_NOOP("Pricing", "Day of the quote")};
    case WasAtNoCharge: return {QT_TRANSLATE_NOOP("Pricing", "It was at no charge")};
    case LineWasAtNoCharge: return {QT_TRANSLATE_NOOP("Pricing", "%1 was at no charge")};
    case TypedPrice: return {QT_TRANSLATE_NOOP("Pricing", "Typed price of %1")};
    case TemplatesOnWall: return {QT_TRANSLATE_NOOP("Pricing", "Templates of %1 are on the wall")};
    case BroughtByCustomer: return {QT_TRANSLATE_NOOP("Pricing", "brought by the customer")};
    case RushOfOrder: return {QT_TRANSLATE_NOOP("Pricing", "Rush surcharge")};
    case DiscountOfOrder: return {QT_TRANSLATE_NOOP("Pricing", "Discount")};
    case SmallestOrder: return {QT_TRANSLATE_NOOP("Pricing", "Up to the smallest order")};
    case TaxOfOrder: return {QT_TRANSLATE_NOOP("Pricing", "Tax")};
    case NoTape: return {QT_TRANSLATE_NOOP("Pricing", "No tape is chosen")};
    case NoTemplate: return {QT_TRANSLATE_NOOP("Pricing", "No template sheet is chosen")};
    case NoLabour: return {QT_TRANSLATE_NOOP("Pricing", "Labour is %1 an hour")};
    case NoOverhead: return {QT_TRANSLATE_NOOP("Pricing", "Overhead is %1 a month")};
    case NoBenchTime: return {QT_TRANSLATE_NOOP("Pricing", "No step at the bench takes any time")};
    case NoPressRunning: return {QT_TRANSLATE_NOOP("Pricing", "Running the press is %1 an hour")};
    case NoPressWear: return {QT_TRANSLATE_NOOP("Pricing", "The press loses %1 of its worth")};
    case NoCutterWear: return {QT_TRANSLATE_NOOP("Pricing", "The cutter loses %1 of its worth")};
    case CostsNothing: return {QT_TRANSLATE_NOOP("Pricing", "%1 is %2")};
    }
    return {};
}

} // namespace sp::words
