// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/supply/messages.h"

namespace sp::words {

Source sourceOf(supply::Fault fault) {
    using enum supply::Fault;
    switch (fault) {
    case ShareLostOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "The share lost of %1 must be 0 or more and below 1: change it.")};
    case PackGivesNothing: return {QT_TRANSLATE_NOOP("Supply", "Pack %1 gives nothing: say what is in it.")};
    case PackGivesOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "Pack %1 must give 1 or more of %2: change its count.")};
    case PackWithoutPrice: return {QT_TRANSLATE_NOOP("Supply", "Pack %1 has no price: give it one.")};
    case PackWithTooManyPrices:
        return {QT_TRANSLATE_NOOP("Supply", "Pack %1 has more than 100 prices: leave some out.")};
    case PriceFromOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "A price of pack %1 must hold from 1 or more packs: change it.")};
    case PackPriceNegative:
        return {QT_TRANSLATE_NOOP("Supply", "Pack %1 cannot cost less than nothing: change its price.")};
    case PackLimitNegative:
        return {QT_TRANSLATE_NOOP("Supply", "Pack %1 cannot be limited to less than none: change the limit.")};
    case SupplierTermsNegative:
        return {
            QT_TRANSLATE_NOOP("Supply", "Shipping, minimum and free shipping of %1 must be 0 or more: change them.")};
    case PackPricedTwice:
        return {QT_TRANSLATE_N_NOOP("Supply", "Pack %1 has two prices from %n packs: keep one."),
                "Pack %1 has two prices from %n pack: keep one."};
    case NothingNeeded: return {QT_TRANSLATE_NOOP("Supply", "Nothing is needed: say what is to be bought.")};
    case NeedBelowNothing:
        return {QT_TRANSLATE_NOOP("Supply", "The need of %1 must be 0 or more: change it or leave it out.")};
    case NeedTooLarge: return {QT_TRANSLATE_NOOP("Supply", "More %1 is needed than the program plans for: need less.")};
    case TooManyNeeds:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "More than 1,000 materials are needed at once: plan for some of them at a time.")};
    case ShelfOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "The shelf cannot hold less than no %1: count it again.")};
    case SupplierTwice: return {QT_TRANSLATE_NOOP("Supply", "There are two suppliers %1: keep one.")};
    case SupplierSumsTooLarge:
        return {QT_TRANSLATE_NOOP("Supply", "The sums of %1 are larger than the program plans with.")};
    case TooManyPacks: return {QT_TRANSLATE_NOOP("Supply", "There are more than 100,000 packs: leave some out.")};
    case PackTwice: return {QT_TRANSLATE_NOOP("Supply", "There are two packs %1: rename one.")};
    case PackOfUnknownSupplier:
        return {QT_TRANSLATE_NOOP("Supply", "Pack %1 is sold by %2, which is not among the suppliers: add it.")};
    case PurchaseTooLarge:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "The purchase is larger than the program plans for: need less or round the prices.")};
    case NoPlanFound:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "No plan was found that keeps every minimum and every limit: leave out packs "
                                  "or suppliers, or change their minimum.")};
    case NoSuchColumn:
        return {QT_TRANSLATE_NOOP("Supply", "The price list has no column “%1”; choose its columns anew.")};
    case NoMaterialColumn: return {QT_TRANSLATE_NOOP("Supply", "Choose the column that says what is sold.")};
    case NoPriceColumn: return {QT_TRANSLATE_NOOP("Supply", "Choose the column that says the price.")};
    case TextAfterQuote:
        return {
            QT_TRANSLATE_NOOP("Supply", "Line %1 of “%2” goes on after a closing quote; save the list as CSV again.")};
    case QuoteNotClosed:
        return {QT_TRANSLATE_NOOP(
            "Supply", "The quote that opens in line %1 of “%2” is never closed; save the list as CSV again.")};
    case PriceListTooLarge:
        return {QT_TRANSLATE_NOOP("Supply", "“%1” is larger than a price list; choose another file.")};
    case ListIsNoText:
        return {QT_TRANSLATE_NOOP("Supply", "“%1” is not a list in text; save it as CSV where it was made.")};
    case CellTooLarge:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "In line %1 of “%2” a cell is larger than a price list has; choose another file.")};
    case TooManyColumns:
        return {QT_TRANSLATE_NOOP(
            "Supply",
            "In line %1 of “%2” the number of columns is larger than a price list has; choose another file.")};
    case CountedOrCut: return {QT_TRANSLATE_NOOP("Supply", "%1 must be either counted or cut from sheets: say which.")};
    case KitCountOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "The count of %1 must lie between 0 and 1,000,000,000: change it.")};
    case CutsNegative: return {QT_TRANSLATE_NOOP("Supply", "A piece cannot take less than no cut of %1: change it.")};
    case KitSheetsOutOfRange:
        return {
            QT_TRANSLATE_NOOP("Supply", "The sheets of %1 must be 0 or more and serve at least once: change them.")};
    case KitPriceNegative:
        return {QT_TRANSLATE_NOOP("Supply", "A kit cannot cost less than nothing: change its price.")};
    case KitTooLarge:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "A kit and a design of more than 200 materials are not compared: leave some out.")};
    case NothingLimits:
        return {
            QT_TRANSLATE_NOOP("Supply", "The design takes nothing that limits a kit: give it its stones or sheets.")};
    case KitHoldsTooMuch:
        return {QT_TRANSLATE_NOOP("Supply", "The kit holds more than the program works with: make it smaller.")};
    case DesignWithoutStones:
        return {QT_TRANSLATE_NOOP("Supply", "The design “%1” has no stones yet; count them first.")};
    case KitMaterialGone:
        return {QT_TRANSLATE_NOOP(
            "Supply", "A material of the kit “%1” or its design is no longer in the book; choose it anew.")};
    case KitsOutOfRange: return {QT_TRANSLATE_NOOP("Supply", "The number of kits must be from 1 to 1000.")};
    case StoneGone:
        return {QT_TRANSLATE_NOOP("Supply", "A stone of %1 is no longer among the supplies; choose another.")};
    case BaseGone:
        return {QT_TRANSLATE_NOOP("Supply", "What %1 goes on is no longer among the supplies; choose another.")};
    case EmptyOrder: return {QT_TRANSLATE_NOOP("Supply", "The order is empty; put a design on it.")};
    case TooManyRows:
        return {QT_TRANSLATE_NOOP(
            "Supply", "In line %1 of “%2” the number of rows is larger than a price list has; choose another file.")};
    case SampleOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "The sample must be 1 to 1,000,000 things and weigh something: count some and "
                                  "weigh them without the tray.")};
    case WeightOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "A weight must be a number of grams from 0 to 1,000,000: change %1.")};
    case WeightBelowTare:
        return {QT_TRANSLATE_NOOP("Supply", "%1 g on the scale is less than the %2 g of the empty tray: weigh again.")};
    case ScaleTooCoarse:
        return {QT_TRANSLATE_NOOP("Supply", "A scale in steps of %1 g cannot weigh a sample of %2 g: count a larger "
                                            "sample.")};
    case WeighedTooMany: return {QT_TRANSLATE_NOOP("Supply", "That would be more than %1 things: check the weights.")};
    case NothingUsed:
        return {QT_TRANSLATE_NOOP("Supply", "Nothing of it was used in these days: look at more of them.")};
    case LeadDaysOutOfRange:
        return {QT_TRANSLATE_NOOP("Supply", "The lead time must be 0 to %1 days: change it with the supplier.")};
    case OrderCostsNothing:
        return {QT_TRANSLATE_NOOP("Supply", "How much to order is known once an order and keeping a pack cost "
                                            "something: give both.")};
    case OrderedPackUnpriced:
        return {QT_TRANSLATE_NOOP("Supply", "How much to order is not known, for its usual pack has no price: say what "
                                            "the pack costs.")};
    case OrderTooLarge:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "An order would be of more than %1 packs: check what an order and keeping a "
                                  "pack cost.")};
    case ReorderTooLarge:
        return {QT_TRANSLATE_NOOP("Supply", "So much was used that no order can be worked out: look at fewer days.")};
    }
    return {};
}

Source sourceOf(supply::Note note) {
    using enum supply::Note;
    switch (note) {
    case NoSuchMaterial:
        return {QT_TRANSLATE_NOOP(
            "Supply", "There is no material of this name in the book; say what the row is, or add the material.")};
    case NoSuchStone:
        return {
            QT_TRANSLATE_NOOP("Supply", "There is no stone %1 %2 in the book; have it made, or say what the row is.")};
    case SeveralStones:
        return {QT_TRANSLATE_NOOP("Supply", "Several stones in the book have this colour and size; say which it is.")};
    case UnknownSizeInList:
        return {QT_TRANSLATE_NOOP("Supply", "“%1” is no size of stones that the program knows; say what the row is.")};
    case PackNotRead:
        return {QT_TRANSLATE_NOOP("Supply", "How many are in a pack “%1” cannot be told; write a number in the list.")};
    case PriceNotAboveNothing:
        return {QT_TRANSLATE_NOOP("Supply", "Its price is not above nothing; ask the supplier.")};
    case PriceFromLessThanOne:
        return {QT_TRANSLATE_NOOP("Supply", "Its price holds from less than one pack on; ask the supplier.")};
    case SecondPrice:
        return {QT_TRANSLATE_NOOP("Supply", "The list gives a second price for this pack; take one out.")};
    case EmptyPack: return {QT_TRANSLATE_NOOP("Supply", "There is nothing in this pack; ask the supplier.")};
    case PackNameTooLong: return {QT_TRANSLATE_NOOP("Supply", "The name of its pack is too long; shorten it.")};
    case UnknownPack:
        return {QT_TRANSLATE_NOOP(
            "Supply",
            "This pack is not in the book and the list does not say how many are in it; add the pack first.")};
    case TwoContents:
        return {QT_TRANSLATE_NOOP("Supply", "The list gives this pack two different contents; ask the supplier.")};
    case OtherRowNotTaken:
        return {
            QT_TRANSLATE_NOOP("Supply", "Another row of this pack cannot be taken, so its prices stay as they are.")};
    case NoPriceOfOnePack:
        return {QT_TRANSLATE_NOOP("Supply", "The list does not give the price of one pack; ask the supplier.")};
    case PriceRises: return {QT_TRANSLATE_NOOP("Supply", "The price of pack %1 rises from %2 packs on: check it.")};
    case MinimumNotReached:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "the minimum order of %1 cannot be reached, and %2 is not to be had otherwise")};
    case PacksNotToBeHad: return {QT_TRANSLATE_NOOP("Supply", "the packs that give %1 cannot be had")};
    case NoPackGives: return {QT_TRANSLATE_NOOP("Supply", "no pack gives %1")};
    case PacksHoldTooLittle:
        return {QT_TRANSLATE_NOOP("Supply", "the packs that give %1 hold %2 at most, and %3 must be bought")};
    case OnlyWithAKit: return {QT_TRANSLATE_NOOP("Supply", "%1 come only with a kit: the shop cuts none itself.")};
    case WithNoKit:
        return {QT_TRANSLATE_NOOP("Supply",
                                  "%1 come with no kit, and the shop cuts none itself: add a kit that has them.")};
    case PacksWithoutPrice:
        return {QT_TRANSLATE_NOOP("Supply", "%1 is sold without a price: give its packs one in Supplies, or say there "
                                            "that 0.00 is meant.")};
    case NoSupplierSells: return {QT_TRANSLATE_NOOP("Supply", "No supplier sells %1: add a pack of it in Supplies.")};
    case NoKitInTheBook: return {QT_TRANSLATE_NOOP("Supply", "There is no kit in the book: add one in Supplies.")};
    case NoKitHolds: return {QT_TRANSLATE_NOOP("Supply", "No kit holds %1.")};
    }
    return {};
}

} // namespace sp::words
