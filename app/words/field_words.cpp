// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/catalogue/fields/messages.h"

#include <algorithm>
#include <array>

namespace sp::words {

Source sourceOf(catalogue::fields::Term term) {
    using enum catalogue::fields::Term;
    switch (term) {
    case Address: return {QT_TRANSLATE_NOOP("Terms", "address")};
    case AddressOfTheShop: return {QT_TRANSLATE_NOOP("Terms", "address of the shop")};
    case AllowanceForGarments: return {QT_TRANSLATE_NOOP("Terms", "allowance for garments")};
    case AllowanceOfTheHoles: return {QT_TRANSLATE_NOOP("Terms", "allowance of the holes")};
    case Amount: return {QT_TRANSLATE_NOOP("Terms", "amount")};
    case AmountInAPack: return {QT_TRANSLATE_NOOP("Terms", "amount in a pack")};
    case ArtAndCuttingPaidOff: return {QT_TRANSLATE_NOOP("Terms", "art and cutting paid off")};
    case ArtTime: return {QT_TRANSLATE_NOOP("Terms", "art time")};
    case AtNoCharge: return {QT_TRANSLATE_NOOP("Terms", "at no charge")};
    case Base: return {QT_TRANSLATE_NOOP("Terms", "base")};
    case Bench: return {QT_TRANSLATE_NOOP("Terms", "bench")};
    case BenchHoursOfAMonth: return {QT_TRANSLATE_NOOP("Terms", "bench hours of a month")};
    case BenchTimeOnFriday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Friday")};
    case BenchTimeOnMonday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Monday")};
    case BenchTimeOnSaturday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Saturday")};
    case BenchTimeOnSunday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Sunday")};
    case BenchTimeOnThursday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Thursday")};
    case BenchTimeOnTuesday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Tuesday")};
    case BenchTimeOnWednesday: return {QT_TRANSLATE_NOOP("Terms", "bench time on Wednesday")};
    case BenchTimes: return {QT_TRANSLATE_NOOP("Terms", "bench times")};
    case BenchWeek: return {QT_TRANSLATE_NOOP("Terms", "bench hours of a week")};
    case Border: return {QT_TRANSLATE_NOOP("Terms", "border")};
    case CardFee: return {QT_TRANSLATE_NOOP("Terms", "card fee")};
    case CardFeeRate: return {QT_TRANSLATE_NOOP("Terms", "card fee rate")};
    case CareNotes: return {QT_TRANSLATE_NOOP("Terms", "care notes")};
    case Certificate: return {QT_TRANSLATE_NOOP("Terms", "certificate")};
    case CertificateNumber: return {QT_TRANSLATE_NOOP("Terms", "certificate number")};
    case ChargeForSettingUp: return {QT_TRANSLATE_NOOP("Terms", "charge for setting up")};
    case ChoiceLookedAt: return {QT_TRANSLATE_NOOP("Terms", "choice looked at")};
    case ChoiceTaken: return {QT_TRANSLATE_NOOP("Terms", "choice taken")};
    case ClosedDays: return {QT_TRANSLATE_NOOP("Terms", "closed days")};
    case ClosedFrom: return {QT_TRANSLATE_NOOP("Terms", "first closed day")};
    case ClosedTo: return {QT_TRANSLATE_NOOP("Terms", "last closed day")};
    case Colour: return {QT_TRANSLATE_NOOP("Terms", "colour")};
    case ColourInTheDrawing: return {QT_TRANSLATE_NOOP("Terms", "colour in the drawing")};
    case ColourOnTheScreen: return {QT_TRANSLATE_NOOP("Terms", "colour on the screen")};
    case ColumnsOfThePriceList: return {QT_TRANSLATE_NOOP("Terms", "columns of the price list")};
    case Contents: return {QT_TRANSLATE_NOOP("Terms", "contents")};
    case Cost: return {QT_TRANSLATE_NOOP("Terms", "cost")};
    case CostOfArtAndCutting: return {QT_TRANSLATE_NOOP("Terms", "cost of art and cutting")};
    case CostOfTheSet: return {QT_TRANSLATE_NOOP("Terms", "cost of the set of templates")};
    case CostOfTheTemplates: return {QT_TRANSLATE_NOOP("Terms", "cost of the templates")};
    case CountsOfTheDrawing: return {QT_TRANSLATE_NOOP("Terms", "counts of the drawing")};
    case Currency: return {QT_TRANSLATE_NOOP("Terms", "currency")};
    case Customer: return {QT_TRANSLATE_NOOP("Terms", "customer")};
    case CustomersGarment: return {QT_TRANSLATE_NOOP("Terms", "customer's garment")};
    case Cutter: return {QT_TRANSLATE_NOOP("Terms", "cutter")};
    case Day: return {QT_TRANSLATE_NOOP("Terms", "day")};
    case DayItIsWanted: return {QT_TRANSLATE_NOOP("Terms", "day it is wanted")};
    case DayOfExpiry: return {QT_TRANSLATE_NOOP("Terms", "day of expiry")};
    case DayOfIssue: return {QT_TRANSLATE_NOOP("Terms", "day of issue")};
    case DayOfThePrice: return {QT_TRANSLATE_NOOP("Terms", "day of the price")};
    case DaysToPay: return {QT_TRANSLATE_NOOP("Terms", "days to pay an invoice")};
    case DaysAQuoteIsValid: return {QT_TRANSLATE_NOOP("Terms", "days a quote is valid")};
    case DaysOfARushSurcharge: return {QT_TRANSLATE_NOOP("Terms", "days of a rush surcharge")};
    case DecimalComma: return {QT_TRANSLATE_NOOP("Terms", "decimal comma")};
    case DemoMark: return {QT_TRANSLATE_NOOP("Terms", "demo mark")};
    case Deposit: return {QT_TRANSLATE_NOOP("Terms", "deposit")};
    case Design: return {QT_TRANSLATE_NOOP("Terms", "design")};
    case Direction: return {QT_TRANSLATE_NOOP("Terms", "direction")};
    case Discount: return {QT_TRANSLATE_NOOP("Terms", "discount")};
    case Drawing: return {QT_TRANSLATE_NOOP("Terms", "drawing")};
    case Dwell: return {QT_TRANSLATE_NOOP("Terms", "dwell")};
    case EndingOfAPrice: return {QT_TRANSLATE_NOOP("Terms", "ending of a price")};
    case Exemption: return {QT_TRANSLATE_NOOP("Terms", "exemption")};
    case ExtraCostOfASize: return {QT_TRANSLATE_NOOP("Terms", "extra cost of a size")};
    case FirstSteps: return {QT_TRANSLATE_NOOP("Terms", "whether the first steps are shown")};
    case FixedCardFee: return {QT_TRANSLATE_NOOP("Terms", "fixed card fee")};
    case FixedPrice: return {QT_TRANSLATE_NOOP("Terms", "fixed price")};
    case Form: return {QT_TRANSLATE_NOOP("Terms", "form")};
    case FreightIn: return {QT_TRANSLATE_NOOP("Terms", "freight in")};
    case FreightShare: return {QT_TRANSLATE_NOOP("Terms", "share of freight")};
    case FurtherTaxRates: return {QT_TRANSLATE_NOOP("Terms", "further tax rates")};
    case Gap: return {QT_TRANSLATE_NOOP("Terms", "gap")};
    case HandlingAtThePress: return {QT_TRANSLATE_NOOP("Terms", "handling at the press")};
    case HeadingOfAColumn: return {QT_TRANSLATE_NOOP("Terms", "heading of a column")};
    case Height: return {QT_TRANSLATE_NOOP("Terms", "height")};
    case HeightOfThePlaten: return {QT_TRANSLATE_NOOP("Terms", "height of the platen")};
    case Key: return {QT_TRANSLATE_NOOP("Terms", "key")};
    case Kind: return {QT_TRANSLATE_NOOP("Terms", "kind")};
    case KindOfFile: return {QT_TRANSLATE_NOOP("Terms", "kind of file")};
    case KindOfPayment: return {QT_TRANSLATE_NOOP("Terms", "kind of payment")};
    case KindOfPrice: return {QT_TRANSLATE_NOOP("Terms", "kind of price")};
    case LabourRate: return {QT_TRANSLATE_NOOP("Terms", "labour rate")};
    case LadderOnTheSheet: return {QT_TRANSLATE_NOOP("Terms", "ladder on the sheet")};
    case Language: return {QT_TRANSLATE_NOOP("Terms", "language")};
    case PaperLanguage: return {QT_TRANSLATE_NOOP("Terms", "language of papers")};
    case LastDay: return {QT_TRANSLATE_NOOP("Terms", "last day")};
    case LeadTimeInDays: return {QT_TRANSLATE_NOOP("Terms", "lead time in days")};
    case LearningRate: return {QT_TRANSLATE_NOOP("Terms", "learning rate")};
    case Letterhead: return {QT_TRANSLATE_NOOP("Terms", "letterhead")};
    case LifeOfTheCutter: return {QT_TRANSLATE_NOOP("Terms", "life of the cutter")};
    case LifeOfThePress: return {QT_TRANSLATE_NOOP("Terms", "life of the press")};
    case Lines: return {QT_TRANSLATE_NOOP("Terms", "lines")};
    case Mail: return {QT_TRANSLATE_NOOP("Terms", "mail address")};
    case Loss: return {QT_TRANSLATE_NOOP("Terms", "loss")};
    case Margin: return {QT_TRANSLATE_NOOP("Terms", "margin")};
    case MarkUp: return {QT_TRANSLATE_NOOP("Terms", "mark-up")};
    case Material: return {QT_TRANSLATE_NOOP("Terms", "material")};
    case Materials: return {QT_TRANSLATE_NOOP("Terms", "materials")};
    case MeaningOfAColumn: return {QT_TRANSLATE_NOOP("Terms", "meaning of a column")};
    case MeantAsNothing: return {QT_TRANSLATE_NOOP("Terms", "what is meant to cost nothing")};
    case Moment: return {QT_TRANSLATE_NOOP("Terms", "moment")};
    case MoreForLessOnTheSheet: return {QT_TRANSLATE_NOOP("Terms", "more for less on the sheet")};
    case KindOfMovement: return {QT_TRANSLATE_NOOP("Terms", "what the movement was")};
    case JobItIsFor: return {QT_TRANSLATE_NOOP("Terms", "job it was for")};
    case WhenSuppliesAreUsed: return {QT_TRANSLATE_NOOP("Terms", "when supplies count as used")};
    case MovementItTakesBack: return {QT_TRANSLATE_NOOP("Terms", "movement it takes back")};
    case Name: return {QT_TRANSLATE_NOOP("Terms", "name")};
    case NameOfASize: return {QT_TRANSLATE_NOOP("Terms", "name of a size")};
    case NameOfTheFile: return {QT_TRANSLATE_NOOP("Terms", "name of the file")};
    case NameOfTheShop: return {QT_TRANSLATE_NOOP("Terms", "name of the shop")};
    case NameOfTheTax: return {QT_TRANSLATE_NOOP("Terms", "name of the tax")};
    case Note: return {QT_TRANSLATE_NOOP("Terms", "note")};
    case Number: return {QT_TRANSLATE_NOOP("Terms", "number")};
    case NumberInTheKit: return {QT_TRANSLATE_NOOP("Terms", "number in the kit")};
    case NumberItIsFor: return {QT_TRANSLATE_NOOP("Terms", "number it is for")};
    case NumberOfASize: return {QT_TRANSLATE_NOOP("Terms", "number of a size")};
    case NumberOfLifts: return {QT_TRANSLATE_NOOP("Terms", "number of lifts")};
    case NumberOfPacks: return {QT_TRANSLATE_NOOP("Terms", "number of packs")};
    case NumberOfPacking: return {QT_TRANSLATE_NOOP("Terms", "number of packing")};
    case NumberOfStones: return {QT_TRANSLATE_NOOP("Terms", "number of stones")};
    case NumberOfTestPresses: return {QT_TRANSLATE_NOOP("Terms", "number of test presses")};
    case Order: return {QT_TRANSLATE_NOOP("Terms", "order")};
    case OriginOfThePrice: return {QT_TRANSLATE_NOOP("Terms", "origin of the price")};
    case OriginOfTheScale: return {QT_TRANSLATE_NOOP("Terms", "origin of the scale")};
    case OtherCertificates: return {QT_TRANSLATE_NOOP("Terms", "further certificates")};
    case OtherChoices: return {QT_TRANSLATE_NOOP("Terms", "other choices")};
    case Overhead: return {QT_TRANSLATE_NOOP("Terms", "overhead")};
    case Packing: return {QT_TRANSLATE_NOOP("Terms", "packing")};
    case Paper: return {QT_TRANSLATE_NOOP("Terms", "paper")};
    case PaymentItIsPartOf: return {QT_TRANSLATE_NOOP("Terms", "payment it is part of")};
    case PaymentItTakesBack: return {QT_TRANSLATE_NOOP("Terms", "payment it takes back")};
    case PiecesOfADesignTogether: return {QT_TRANSLATE_NOOP("Terms", "pieces of a design counted together")};
    case PiecesSold: return {QT_TRANSLATE_NOOP("Terms", "pieces sold")};
    case PlaceOnThePiece: return {QT_TRANSLATE_NOOP("Terms", "place on the piece")};
    case PlacesOnThePiece: return {QT_TRANSLATE_NOOP("Terms", "places on the piece")};
    case PlaceOfASurcharge: return {QT_TRANSLATE_NOOP("Terms", "place of a surcharge")};
    case PlaceOfTheCertificate: return {QT_TRANSLATE_NOOP("Terms", "place of the certificate")};
    case PlannedPieces: return {QT_TRANSLATE_NOOP("Terms", "planned pieces")};
    case Press: return {QT_TRANSLATE_NOOP("Terms", "press")};
    case Price: return {QT_TRANSLATE_NOOP("Terms", "price")};
    case PriceOfTheCutter: return {QT_TRANSLATE_NOOP("Terms", "price of the cutter")};
    case PriceOfThePress: return {QT_TRANSLATE_NOOP("Terms", "price of the press")};
    case PriceRules: return {QT_TRANSLATE_NOOP("Terms", "price rules")};
    case PriceWithTemplatesCut: return {QT_TRANSLATE_NOOP("Terms", "price with templates cut")};
    case Prices: return {QT_TRANSLATE_NOOP("Terms", "prices")};
    case PricesOfMorePacks: return {QT_TRANSLATE_NOOP("Terms", "prices of more packs")};
    case QuantitiesOfTheLadder: return {QT_TRANSLATE_NOOP("Terms", "quantities of the ladder")};
    case Quantity: return {QT_TRANSLATE_NOOP("Terms", "quantity")};
    case QuantityOfAMarkUp: return {QT_TRANSLATE_NOOP("Terms", "quantity of a mark-up")};
    case QuoteBefore: return {QT_TRANSLATE_NOOP("Terms", "quote before")};
    case QuoteItRevises: return {QT_TRANSLATE_NOOP("Terms", "quote it revises")};
    case Rates: return {QT_TRANSLATE_NOOP("Terms", "rates")};
    case RoleOfAPayment: return {QT_TRANSLATE_NOOP("Terms", "what the row of the ledger is")};
    case Rounding: return {QT_TRANSLATE_NOOP("Terms", "rounding")};
    case RoundingOfTheTax: return {QT_TRANSLATE_NOOP("Terms", "rounding of the tax")};
    case RunningCostOfThePress: return {QT_TRANSLATE_NOOP("Terms", "running cost of the press")};
    case RushSurcharge: return {QT_TRANSLATE_NOOP("Terms", "rush surcharge")};
    case SalvageOfTheCutter: return {QT_TRANSLATE_NOOP("Terms", "salvage of the cutter")};
    case SalvageOfThePress: return {QT_TRANSLATE_NOOP("Terms", "salvage of the press")};
    case SamePerson: return {QT_TRANSLATE_NOOP("Terms", "entry of the same person")};
    case Scale: return {QT_TRANSLATE_NOOP("Terms", "scale")};
    case SecondDwell: return {QT_TRANSLATE_NOOP("Terms", "second dwell")};
    case ShareOfSecondPresses: return {QT_TRANSLATE_NOOP("Terms", "share of second presses")};
    case Sheet: return {QT_TRANSLATE_NOOP("Terms", "sheet")};
    case Shipping: return {QT_TRANSLATE_NOOP("Terms", "shipping")};
    case Shop: return {QT_TRANSLATE_NOOP("Terms", "shop")};
    case ShortCount: return {QT_TRANSLATE_NOOP("Terms", "short count")};
    case Size: return {QT_TRANSLATE_NOOP("Terms", "size")};
    case Sizes: return {QT_TRANSLATE_NOOP("Terms", "sizes")};
    case SmallPicture: return {QT_TRANSLATE_NOOP("Terms", "small picture")};
    case NameOfTheWayToPay: return {QT_TRANSLATE_NOOP("Terms", "name of the way to pay")};
    case PaidInCash: return {QT_TRANSLATE_NOOP("Terms", "paid in cash")};
    case WaysToPay: return {QT_TRANSLATE_NOOP("Terms", "ways to pay")};
    case SmallestCoin: return {QT_TRANSLATE_NOOP("Terms", "smallest coin")};
    case SmallestOrder: return {QT_TRANSLATE_NOOP("Terms", "smallest order")};
    case Spares: return {QT_TRANSLATE_NOOP("Terms", "spares")};
    case Spoilage: return {QT_TRANSLATE_NOOP("Terms", "spoilage")};
    case Stage: return {QT_TRANSLATE_NOOP("Terms", "stage")};
    case StepOfTheDeposit: return {QT_TRANSLATE_NOOP("Terms", "step of the deposit")};
    case StepOfTheRounding: return {QT_TRANSLATE_NOOP("Terms", "step of the rounding")};
    case Stone: return {QT_TRANSLATE_NOOP("Terms", "stone")};
    case StoneSize: return {QT_TRANSLATE_NOOP("Terms", "stone size")};
    case ItemNumber: return {QT_TRANSLATE_NOOP("Terms", "item number")};
    case Stones: return {QT_TRANSLATE_NOOP("Terms", "stones")};
    case SumForFreeShipping: return {QT_TRANSLATE_NOOP("Terms", "sum for free shipping")};
    case Supplier: return {QT_TRANSLATE_NOOP("Terms", "supplier")};
    case SurchargeOfAPlace: return {QT_TRANSLATE_NOOP("Terms", "surcharge of a place")};
    case SurchargeOfASize: return {QT_TRANSLATE_NOOP("Terms", "surcharge of a size")};
    case SurchargesByPlace: return {QT_TRANSLATE_NOOP("Terms", "surcharges by place")};
    case Tax: return {QT_TRANSLATE_NOOP("Terms", "tax")};
    case TaxInThePrice: return {QT_TRANSLATE_NOOP("Terms", "tax in the price")};
    case TaxMark: return {QT_TRANSLATE_NOOP("Terms", "tax mark")};
    case TaxRate: return {QT_TRANSLATE_NOOP("Terms", "tax rate")};
    case TaxOnGifts: return {QT_TRANSLATE_NOOP("Terms", "tax on what is given away")};
    case TaxRateOfALine: return {QT_TRANSLATE_NOOP("Terms", "tax rate of a line")};
    case Telephone: return {QT_TRANSLATE_NOOP("Terms", "telephone")};
    case Temperature: return {QT_TRANSLATE_NOOP("Terms", "temperature")};
    case TemplatesOnTheWall: return {QT_TRANSLATE_NOOP("Terms", "templates on the wall")};
    case Terms: return {QT_TRANSLATE_NOOP("Terms", "terms")};
    case TimeForHundredStones: return {QT_TRANSLATE_NOOP("Terms", "time for 100 stones")};
    case TimeForACycle: return {QT_TRANSLATE_NOOP("Terms", "time for a press cycle")};
    case TimeForAColour: return {QT_TRANSLATE_NOOP("Terms", "time for a colour")};
    case TimeForAJob: return {QT_TRANSLATE_NOOP("Terms", "time for a job")};
    case TimeForAPiece: return {QT_TRANSLATE_NOOP("Terms", "time for a piece")};
    case Title: return {QT_TRANSLATE_NOOP("Terms", "title")};
    case TitleOfAChoice: return {QT_TRANSLATE_NOOP("Terms", "title of a choice")};
    case Tools: return {QT_TRANSLATE_NOOP("Terms", "tools")};
    case Total: return {QT_TRANSLATE_NOOP("Terms", "total")};
    case TypedPrice: return {QT_TRANSLATE_NOOP("Terms", "typed price")};
    case UnitOfLength: return {QT_TRANSLATE_NOOP("Terms", "unit of length")};
    case UnitOfTemperature: return {QT_TRANSLATE_NOOP("Terms", "unit of temperature")};
    case UnitOfTheDrawing: return {QT_TRANSLATE_NOOP("Terms", "unit of the drawing")};
    case UsualBase: return {QT_TRANSLATE_NOOP("Terms", "usual base")};
    case UsualOrder: return {QT_TRANSLATE_NOOP("Terms", "usual order")};
    case UsualPack: return {QT_TRANSLATE_NOOP("Terms", "usual pack")};
    case UsualTape: return {QT_TRANSLATE_NOOP("Terms", "usual tape")};
    case UsualTemplate: return {QT_TRANSLATE_NOOP("Terms", "usual template")};
    case WarmUp: return {QT_TRANSLATE_NOOP("Terms", "warm-up")};
    case WayOfCharging: return {QT_TRANSLATE_NOOP("Terms", "way of charging")};
    case WhatPackingIsFor: return {QT_TRANSLATE_NOOP("Terms", "what packing goes with")};
    case WhatTellsAChoice: return {QT_TRANSLATE_NOOP("Terms", "what tells a choice from the others")};
    case WhyClosed: return {QT_TRANSLATE_NOOP("Terms", "why the bench is closed")};
    case Width: return {QT_TRANSLATE_NOOP("Terms", "width")};
    case WidthOfThePlaten: return {QT_TRANSLATE_NOOP("Terms", "width of the platen")};
    }
    return {};
}

namespace {

struct CauseWords {
    catalogue::fields::Term term;
    const char* text;
};

/// Terms that are called otherwise where they are why a price changed. Of the fields of a material its name stands
/// before, so that these go on in lower case.
constexpr std::array kCauses{
    CauseWords{catalogue::fields::Term::AllowanceForGarments,
               QT_TRANSLATE_NOOP("Terms", "Allowance for a customer's garment")},
    CauseWords{catalogue::fields::Term::ArtAndCuttingPaidOff, QT_TRANSLATE_NOOP("Terms", "Art and cutting paid off")},
    CauseWords{catalogue::fields::Term::BenchHoursOfAMonth, QT_TRANSLATE_NOOP("Terms", "Bench hours a month")},
    CauseWords{catalogue::fields::Term::BenchTimes, QT_TRANSLATE_NOOP("Terms", "Bench times")},
    CauseWords{catalogue::fields::Term::CardFee, QT_TRANSLATE_NOOP("Terms", "Card fee")},
    CauseWords{catalogue::fields::Term::ChargeForSettingUp, QT_TRANSLATE_NOOP("Terms", "Charge for set-up")},
    CauseWords{catalogue::fields::Term::Currency, QT_TRANSLATE_NOOP("Terms", "Currency")},
    CauseWords{catalogue::fields::Term::Cutter, QT_TRANSLATE_NOOP("Terms", "Cutter")},
    CauseWords{catalogue::fields::Term::Deposit, QT_TRANSLATE_NOOP("Terms", "Deposit")},
    CauseWords{catalogue::fields::Term::LabourRate, QT_TRANSLATE_NOOP("Terms", "Labour an hour")},
    CauseWords{catalogue::fields::Term::Loss, QT_TRANSLATE_NOOP("Terms", "what is lost")},
    CauseWords{catalogue::fields::Term::MarkUp, QT_TRANSLATE_NOOP("Terms", "Mark-up ladder")},
    CauseWords{catalogue::fields::Term::Overhead, QT_TRANSLATE_NOOP("Terms", "Overhead a month")},
    CauseWords{catalogue::fields::Term::Packing, QT_TRANSLATE_NOOP("Terms", "Packing")},
    CauseWords{catalogue::fields::Term::PiecesOfADesignTogether,
               QT_TRANSLATE_NOOP("Terms", "Pieces of a design counted over lines")},
    CauseWords{catalogue::fields::Term::Press, QT_TRANSLATE_NOOP("Terms", "Heat press")},
    CauseWords{catalogue::fields::Term::Rounding, QT_TRANSLATE_NOOP("Terms", "Rounding of prices")},
    CauseWords{catalogue::fields::Term::RushSurcharge, QT_TRANSLATE_NOOP("Terms", "Rush surcharges")},
    CauseWords{catalogue::fields::Term::Sheet, QT_TRANSLATE_NOOP("Terms", "its sheet")},
    CauseWords{catalogue::fields::Term::Sizes, QT_TRANSLATE_NOOP("Terms", "its sizes")},
    CauseWords{catalogue::fields::Term::SmallestOrder, QT_TRANSLATE_NOOP("Terms", "Smallest order")},
    CauseWords{catalogue::fields::Term::Spoilage, QT_TRANSLATE_NOOP("Terms", "Spoilage")},
    CauseWords{catalogue::fields::Term::SurchargesByPlace, QT_TRANSLATE_NOOP("Terms", "Surcharges by place")},
    CauseWords{catalogue::fields::Term::Tax, QT_TRANSLATE_NOOP("Terms", "Tax")},
    CauseWords{catalogue::fields::Term::UsualTape, QT_TRANSLATE_NOOP("Terms", "Usual tape")},
    CauseWords{catalogue::fields::Term::UsualTemplate, QT_TRANSLATE_NOOP("Terms", "Usual template sheet")},
};

} // namespace

Source sourceOf(catalogue::fields::Cause cause) {
    const auto found =
        std::find_if(kCauses.begin(), kCauses.end(), [&](const auto& row) { return row.term == cause.term; });
    return found == kCauses.end() ? sourceOf(cause.term) : Source{found->text};
}

Source sourceOf(catalogue::fields::Fault fault) {
    using enum catalogue::fields::Fault;
    switch (fault) {
    case FieldOutOfRange: return {QT_TRANSLATE_NOOP("Fields", "%1 must be from %2 to %3.")};
    case NoneOfTheList: return {QT_TRANSLATE_NOOP("Fields", "%1 is none of those there are; choose one of the list.")};
    case NotChosen: return {QT_TRANSLATE_NOOP("Fields", "%1 is missing; choose one.")};
    case ListTooLong: return {QT_TRANSLATE_NOOP("Fields", "%1 are more than %2; take some out.")};
    case NotText: return {QT_TRANSLATE_NOOP("Fields", "%1 holds characters that are not text; type it again.")};
    case NotTyped: return {QT_TRANSLATE_NOOP("Fields", "%1 is missing; type one.")};
    case FieldTooLong: return {QT_TRANSLATE_NOOP("Fields", "%1 is longer than %2 bytes; shorten it.")};
    case HoldsControls: return {QT_TRANSLATE_NOOP("Fields", "%1 holds control characters; type it again.")};
    case DayOutOfRange: return {QT_TRANSLATE_NOOP("Fields", "%1 must be a day of the years 1 to 9999.")};
    case TemperatureOutOfRange: return {QT_TRANSLATE_NOOP("Fields", "%1 must be from -50 to 500 °C.")};
    case NotFromOne: return {QT_TRANSLATE_NOOP("Fields", "%1 must begin with a row from 1.")};
    case NotAscending: return {QT_TRANSLATE_NOOP("Fields", "%1 must have its rows in ascending order.")};
    case DaysNotAscending: return {QT_TRANSLATE_NOOP("Fields", "%1 must have its days in ascending order.")};
    case UnknownStoneSize:
        return {QT_TRANSLATE_NOOP("Fields", "%1 is not in the table of sizes; choose one from SS6 to SS40.")};
    case SizeTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 name a size twice; rename one.")};
    case EndsBeforeItBegins: return {QT_TRANSLATE_NOOP("Fields", "%1 lies before the first one; correct one of them.")};
    case ExpiresBeforeIssue:
        return {QT_TRANSLATE_NOOP("Fields", "%1 lies before the day of issue; correct one of them.")};
    case StoneNotChosen: return {QT_TRANSLATE_NOOP("Fields", "%1 is missing in a row; choose one.")};
    case MaterialTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 name a material twice; put the two rows into one.")};
    case PlaceTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 name a place twice; rename one.")};
    case NotWholeMinor:
        return {QT_TRANSLATE_NOOP("Fields", "%1 cannot be a part of the currency’s smallest unit; type a whole one.")};
    case WayToPayTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 have a name twice; rename one.")};
    case RateTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 name a rate twice; rename one.")};
    case ColumnTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 say the same twice; choose one column for each.")};
    case DiscountTwice: return {QT_TRANSLATE_NOOP("Fields", "%1 is given twice; keep the share or the amount.")};
    }
    return {};
}

Source sourceOf(catalogue::fields::Note note) {
    using enum catalogue::fields::Note;
    switch (note) {
    case TheField: return {QT_TRANSLATE_NOOP("Fields", "The %1")};
    case TheFieldOf: return {QT_TRANSLATE_NOOP("Fields", "The %1 of “%2”")};
    }
    return {};
}

} // namespace sp::words
