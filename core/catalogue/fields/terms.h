// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

#include <cstdint>
#include <string_view>

namespace sp::catalogue::fields {

#define SP_TERMS(X)                                                                                                    \
    X(Address)                                                                                                         \
    X(AddressOfTheShop)                                                                                                \
    X(AllowanceForGarments)                                                                                            \
    X(AllowanceOfTheHoles)                                                                                             \
    X(Amount)                                                                                                          \
    X(AmountInAPack)                                                                                                   \
    X(ArtAndCuttingPaidOff)                                                                                            \
    X(ArtTime)                                                                                                         \
    X(AtNoCharge)                                                                                                      \
    X(Base)                                                                                                            \
    X(Bench)                                                                                                           \
    X(BenchHoursOfAMonth)                                                                                              \
    X(BenchTimeOnFriday)                                                                                               \
    X(BenchTimeOnMonday)                                                                                               \
    X(BenchTimeOnSaturday)                                                                                             \
    X(BenchTimeOnSunday)                                                                                               \
    X(BenchTimeOnThursday)                                                                                             \
    X(BenchTimeOnTuesday)                                                                                              \
    X(BenchTimeOnWednesday)                                                                                            \
    X(BenchTimes)                                                                                                      \
    X(BenchWeek)                                                                                                       \
    X(Border)                                                                                                          \
    X(CardFee)                                                                                                         \
    X(CardFeeRate)                                                                                                     \
    X(CareNotes)                                                                                                       \
    X(Certificate)                                                                                                     \
    X(CertificateNumber)                                                                                               \
    X(ChargeForSettingUp)                                                                                              \
    X(ChoiceLookedAt)                                                                                                  \
    X(ChoiceTaken)                                                                                                     \
    X(ClosedDays)                                                                                                      \
    X(ClosedFrom)                                                                                                      \
    X(ClosedTo)                                                                                                        \
    X(Colour)                                                                                                          \
    X(ColourInTheDrawing)                                                                                              \
    X(ColourOnTheScreen)                                                                                               \
    X(ColumnsOfThePriceList)                                                                                           \
    X(Contents)                                                                                                        \
    X(Cost)                                                                                                            \
    X(CostOfArtAndCutting)                                                                                             \
    X(CostOfTheSet)                                                                                                    \
    X(CostOfTheTemplates)                                                                                              \
    X(CountsOfTheDrawing)                                                                                              \
    X(Currency)                                                                                                        \
    X(Customer)                                                                                                        \
    X(CustomersGarment)                                                                                                \
    X(Cutter)                                                                                                          \
    X(Day)                                                                                                             \
    X(DayItIsWanted)                                                                                                   \
    X(DayOfExpiry)                                                                                                     \
    X(DayOfIssue)                                                                                                      \
    X(DayOfThePrice)                                                                                                   \
    X(DaysAQuoteIsValid)                                                                                               \
    X(DaysOfARushSurcharge)                                                                                            \
    X(DaysToPay)                                                                                                       \
    X(DecimalComma)                                                                                                    \
    X(DemoMark)                                                                                                        \
    X(Deposit)                                                                                                         \
    X(Design)                                                                                                          \
    X(Direction)                                                                                                       \
    X(Discount)                                                                                                        \
    X(Drawing)                                                                                                         \
    X(Dwell)                                                                                                           \
    X(EndingOfAPrice)                                                                                                  \
    X(Exemption)                                                                                                       \
    X(ExtraCostOfASize)                                                                                                \
    X(FirstSteps)                                                                                                      \
    X(FixedCardFee)                                                                                                    \
    X(FixedPrice)                                                                                                      \
    X(Form)                                                                                                            \
    X(FreightIn)                                                                                                       \
    X(FreightShare)                                                                                                    \
    X(FurtherTaxRates)                                                                                                 \
    X(Gap)                                                                                                             \
    X(HandlingAtThePress)                                                                                              \
    X(HeadingOfAColumn)                                                                                                \
    X(Height)                                                                                                          \
    X(HeightOfThePlaten)                                                                                               \
    X(JobItIsFor)                                                                                                      \
    X(Key)                                                                                                             \
    X(Kind)                                                                                                            \
    X(KindOfFile)                                                                                                      \
    X(KindOfMovement)                                                                                                  \
    X(KindOfPayment)                                                                                                   \
    X(KindOfPrice)                                                                                                     \
    X(LabourRate)                                                                                                      \
    X(LadderOnTheSheet)                                                                                                \
    X(Language)                                                                                                        \
    X(PaperLanguage)                                                                                                   \
    X(LastDay)                                                                                                         \
    X(LeadTimeInDays)                                                                                                  \
    X(LearningRate)                                                                                                    \
    X(Letterhead)                                                                                                      \
    X(LifeOfTheCutter)                                                                                                 \
    X(LifeOfThePress)                                                                                                  \
    X(Lines)                                                                                                           \
    X(Mail)                                                                                                            \
    X(Loss)                                                                                                            \
    X(Margin)                                                                                                          \
    X(MarkUp)                                                                                                          \
    X(Material)                                                                                                        \
    X(Materials)                                                                                                       \
    X(MeaningOfAColumn)                                                                                                \
    X(MeantAsNothing)                                                                                                  \
    X(Moment)                                                                                                          \
    X(MoreForLessOnTheSheet)                                                                                           \
    X(MovementItTakesBack)                                                                                             \
    X(Name)                                                                                                            \
    X(NameOfASize)                                                                                                     \
    X(NameOfTheFile)                                                                                                   \
    X(NameOfTheShop)                                                                                                   \
    X(NameOfTheTax)                                                                                                    \
    X(NameOfTheWayToPay)                                                                                               \
    X(Note)                                                                                                            \
    X(Number)                                                                                                          \
    X(NumberInTheKit)                                                                                                  \
    X(NumberItIsFor)                                                                                                   \
    X(NumberOfASize)                                                                                                   \
    X(NumberOfLifts)                                                                                                   \
    X(NumberOfPacks)                                                                                                   \
    X(NumberOfPacking)                                                                                                 \
    X(NumberOfStones)                                                                                                  \
    X(NumberOfTestPresses)                                                                                             \
    X(Order)                                                                                                           \
    X(OriginOfThePrice)                                                                                                \
    X(OriginOfTheScale)                                                                                                \
    X(OtherCertificates)                                                                                               \
    X(OtherChoices)                                                                                                    \
    X(Overhead)                                                                                                        \
    X(Packing)                                                                                                         \
    X(PaidInCash)                                                                                                      \
    X(Paper)                                                                                                           \
    X(PaymentItIsPartOf)                                                                                               \
    X(PaymentItTakesBack)                                                                                              \
    X(PiecesOfADesignTogether)                                                                                         \
    X(PiecesSold)                                                                                                      \
    X(PlaceOnThePiece)                                                                                                 \
    X(PlacesOnThePiece)                                                                                                \
    X(PlaceOfASurcharge)                                                                                               \
    X(PlaceOfTheCertificate)                                                                                           \
    X(PlannedPieces)                                                                                                   \
    X(Press)                                                                                                           \
    X(Price)                                                                                                           \
    X(PriceOfTheCutter)                                                                                                \
    X(PriceOfThePress)                                                                                                 \
    X(PriceRules)                                                                                                      \
    X(PriceWithTemplatesCut)                                                                                           \
    X(Prices)                                                                                                          \
    X(PricesOfMorePacks)                                                                                               \
    X(QuantitiesOfTheLadder)                                                                                           \
    X(Quantity)                                                                                                        \
    X(QuantityOfAMarkUp)                                                                                               \
    X(QuoteBefore)                                                                                                     \
    X(QuoteItRevises)                                                                                                  \
    X(Rates)                                                                                                           \
    X(RoleOfAPayment)                                                                                                  \
    X(Rounding)                                                                                                        \
    X(RoundingOfTheTax)                                                                                                \
    X(RunningCostOfThePress)                                                                                           \
    X(RushSurcharge)                                                                                                   \
    X(SalvageOfTheCutter)                                                                                              \
    X(SalvageOfThePress)                                                                                               \
    X(SamePerson)                                                                                                      \
    X(Scale)                                                                                                           \
    X(SecondDwell)                                                                                                     \
    X(ShareOfSecondPresses)                                                                                            \
    X(Sheet)                                                                                                           \
    X(Shipping)                                                                                                        \
    X(Shop)                                                                                                            \
    X(ShortCount)                                                                                                      \
    X(Size)                                                                                                            \
    X(Sizes)                                                                                                           \
    X(SmallPicture)                                                                                                    \
    X(SmallestCoin)                                                                                                    \
    X(SmallestOrder)                                                                                                   \
    X(Spares)                                                                                                          \
    X(Spoilage)                                                                                                        \
    X(Stage)                                                                                                           \
    X(StepOfTheDeposit)                                                                                                \
    X(StepOfTheRounding)                                                                                               \
    X(Stone)                                                                                                           \
    X(StoneSize)                                                                                                       \
    X(ItemNumber)                                                                                                      \
    X(Stones)                                                                                                          \
    X(SumForFreeShipping)                                                                                              \
    X(Supplier)                                                                                                        \
    X(SurchargeOfAPlace)                                                                                               \
    X(SurchargeOfASize)                                                                                                \
    X(SurchargesByPlace)                                                                                               \
    X(Tax)                                                                                                             \
    X(TaxInThePrice)                                                                                                   \
    X(TaxMark)                                                                                                         \
    X(TaxRate)                                                                                                         \
    X(TaxOnGifts)                                                                                                      \
    X(TaxRateOfALine)                                                                                                  \
    X(Telephone)                                                                                                       \
    X(Temperature)                                                                                                     \
    X(TemplatesOnTheWall)                                                                                              \
    X(Terms)                                                                                                           \
    X(TimeForHundredStones)                                                                                            \
    X(TimeForACycle)                                                                                                   \
    X(TimeForAColour)                                                                                                  \
    X(TimeForAJob)                                                                                                     \
    X(TimeForAPiece)                                                                                                   \
    X(Title)                                                                                                           \
    X(TitleOfAChoice)                                                                                                  \
    X(Tools)                                                                                                           \
    X(Total)                                                                                                           \
    X(TypedPrice)                                                                                                      \
    X(UnitOfLength)                                                                                                    \
    X(UnitOfTemperature)                                                                                               \
    X(UnitOfTheDrawing)                                                                                                \
    X(UsualBase)                                                                                                       \
    X(UsualOrder)                                                                                                      \
    X(UsualPack)                                                                                                       \
    X(UsualTape)                                                                                                       \
    X(UsualTemplate)                                                                                                   \
    X(WarmUp)                                                                                                          \
    X(WayOfCharging)                                                                                                   \
    X(WaysToPay)                                                                                                       \
    X(WhatPackingIsFor)                                                                                                \
    X(WhatTellsAChoice)                                                                                                \
    X(WhenSuppliesAreUsed)                                                                                             \
    X(WhyClosed)                                                                                                       \
    X(Width)                                                                                                           \
    X(WidthOfThePlaten)

/// What a field is called, for a person. Fields that mean the same share a term. A term is a value of messages; its
/// words are in app/words, "labour rate": as in the middle of a sentence.
enum class Term : std::uint16_t { SP_TERMS(SP_LISTED_NAME) };
inline constexpr std::string_view kTerms[] = {SP_TERMS(SP_NOTE_ROW)};
constexpr std::string_view nameOf(Term term) { return kTerms[static_cast<std::size_t>(term)]; }
constexpr base::MessageId idOf(Term term) {
    return {base::Room::Terms, true, static_cast<std::uint16_t>(term), nameOf(term)};
}

/// The same where it is why a price changed, "Labour an hour".
struct Cause {
    Term term;
};
constexpr base::MessageId idOf(Cause cause) {
    return {base::Room::Causes, true, static_cast<std::uint16_t>(cause.term), nameOf(cause.term)};
}

} // namespace sp::catalogue::fields
