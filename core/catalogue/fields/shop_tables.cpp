// SPDX-License-Identifier: MIT
#include "core/catalogue/fields/tables.h"

namespace sp::catalogue::fields {

template<>
const Object& objectOf<StepStandard>() {
    using T = StepStandard;
    static const Object object{"StepStandard",
                               {
                                   field<&T::perJob>("per_job_ms", Term::TimeForAJob, kTimes),
                                   field<&T::perColour>("per_colour_ms", Term::TimeForAColour, kTimes),
                                   field<&T::perPiece>("per_piece_ms", Term::TimeForAPiece, kTimes),
                                   field<&T::per100Stones>("per_100_stones_ms", Term::TimeForHundredStones, kTimes),
                                   field<&T::learning>("learning_ppm", Term::LearningRate, Range{500'000, 1'000'000}),
                                   field<&T::perCycle>("per_cycle_ms", Term::TimeForACycle, kTimes)
                                       .cameWith({{"bench", 2}})
                                       .standingFor(units::Duration{}, "0"),
                               }};
    return object;
}

template<>
const Object& objectOf<HeatPress>() {
    using T = HeatPress;
    static const Object object{
        "HeatPress",
        {
            field<&T::price>("price_micros", Term::PriceOfThePress, kAmount),
            field<&T::salvage>("salvage_micros", Term::SalvageOfThePress, kAmount),
            field<&T::lifePresses>("life_presses", Term::LifeOfThePress, kLife),
            field<&T::platenWidth>("platen_width_nm", Term::WidthOfThePlaten, kLengths),
            field<&T::platenHeight>("platen_height_nm", Term::HeightOfThePlaten, kLengths),
            field<&T::dwell>("dwell_ms", Term::Dwell, kTimes),
            field<&T::handling>("handling_ms", Term::HandlingAtThePress, kTimes),
            field<&T::warmUp>("warm_up_ms", Term::WarmUp, kTimes),
            field<&T::testPresses>("test_presses", Term::NumberOfTestPresses, kCounts),
            field<&T::secondPressShare>("second_press_ppm", Term::ShareOfSecondPresses, kShare),
            field<&T::secondDwell>("second_dwell_ms", Term::SecondDwell, kTimes),
            field<&T::runningPerHour>("running_per_hour_micros", Term::RunningCostOfThePress, kAmount),
            field<&T::temperature>("temperature", Term::Temperature).unpriced("is noted for the bench"),
        }};
    return object;
}

template<>
const Object& objectOf<Cutter>() {
    using T = Cutter;
    static const Object object{"Cutter",
                               {
                                   field<&T::price>("price_micros", Term::PriceOfTheCutter, kAmount),
                                   field<&T::salvage>("salvage_micros", Term::SalvageOfTheCutter, kAmount),
                                   field<&T::lifeHoles>("life_holes", Term::LifeOfTheCutter, kLife),
                               }};
    return object;
}

template<>
const Object& objectOf<BenchStandards>() {
    using T = BenchStandards;
    static const Object object{"BenchStandards",
                               {
                                   field<&T::steps>("steps", Term::BenchTimes).asOneCause(),
                                   field<&T::press>("press", Term::Press).asOneCause(),
                                   field<&T::cutter>("cutter", Term::Cutter).asOneCause(),
                               }};
    return object;
}

template<>
const Object& objectOf<MarkUpStep>() {
    using T = MarkUpStep;
    static const Object object{"MarkUpStep",
                               {
                                   field<&T::from>("from", Term::QuantityOfAMarkUp, kFromOne),
                                   field<&T::markUp>("mark_up_ppm", Term::MarkUp, Range{-1'000'000, 100'000'000}),
                               }};
    return object;
}

template<>
const Object& objectOf<RushStep>() {
    using T = RushStep;
    static const Object object{"RushStep",
                               {
                                   field<&T::days>("days", Term::DaysOfARushSurcharge, kDays),
                                   field<&T::surcharge>("surcharge_ppm", Term::RushSurcharge, Range{0, 100'000'000}),
                               }};
    return object;
}

template<>
const Object& objectOf<PlaceSurcharge>() {
    using T = PlaceSurcharge;
    static const Object object{"PlaceSurcharge",
                               {
                                   field<&T::place>("place", Term::PlaceOfASurcharge, kName),
                                   field<&T::surcharge>("surcharge_micros", Term::SurchargeOfAPlace, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<Rounding>() {
    using T = Rounding;
    static const Object object{"Rounding",
                               {
                                   field<&T::kind>("kind", Term::Rounding),
                                   field<&T::step>("step", Term::StepOfTheRounding, kFromOne).asking({1, 1'000'000}),
                                   field<&T::ending>("ending", Term::EndingOfAPrice, Range{0, 99}),
                               }};
    return object;
}

template<>
const Object& objectOf<TaxRate>() {
    using T = TaxRate;
    static const Object object{"TaxRate",
                               {
                                   field<&T::name>("name", Term::NameOfTheTax, kName)
                                       .unpriced("is printed, and says which lines take the rate"),
                                   field<&T::rate>("rate_ppm", Term::TaxRate, kShare),
                               }};
    return object;
}

template<>
const Object& objectOf<TaxRule>() {
    using T = TaxRule;
    static const Object object{"TaxRule",
                               {
                                   field<&T::name>("name", Term::NameOfTheTax, kLine).unpriced("is only printed"),
                                   field<&T::rate>("rate_ppm", Term::TaxRate, kShare),
                                   field<&T::inclusive>("inclusive", Term::TaxInThePrice),
                                   field<&T::rounding>("rounding", Term::RoundingOfTheTax),
                                   field<&T::onGifts>("on_gifts", Term::TaxOnGifts)
                                       .cameWith({{"shop", 5}})
                                       .standingFor(TaxOnGifts::None, "none")
                                       .unpriced("is what the shop owes, not what is asked"),
                                   field<&T::others>("others", Term::FurtherTaxRates, Length{20}),
                               }};
    return object;
}

template<>
const Object& objectOf<CardFee>() {
    using T = CardFee;
    static const Object object{"CardFee",
                               {
                                   field<&T::charged>("charged", Term::CardFee),
                                   field<&T::rate>("rate_ppm", Term::CardFeeRate, kPartShare),
                                   field<&T::fixed>("fixed_micros", Term::FixedCardFee, kAmount),
                               }};
    return object;
}

template<>
const Object& objectOf<PriceRules>() {
    using T = PriceRules;
    static const Object object{"PriceRules",
                               {
                                   field<&T::cardFee>("card_fee", Term::CardFee).asOneCause(),
                                   field<&T::ladder>("ladder", Term::MarkUp, Length{50}),
                                   field<&T::rounding>("rounding", Term::Rounding).asOneCause(),
                                   field<&T::setUp>("set_up", Term::ChargeForSettingUp),
                                   field<&T::rush>("rush", Term::RushSurcharge, Length{50}),
                                   field<&T::places>("places", Term::SurchargesByPlace, Length{50})
                                       .cameWith({{"shop", 6}})
                                       .standingFor(std::vector<PlaceSurcharge>{}, "[]"),
                                   field<&T::minimumOrder>("minimum_order_micros", Term::SmallestOrder, kAmount),
                                   field<&T::tax>("tax", Term::Tax).asOneCause(),
                                   field<&T::depositRate>("deposit_ppm", Term::Deposit, kShare),
                                   field<&T::depositStep>("deposit_step_micros", Term::StepOfTheDeposit, kAmount)
                                       .unpriced("divides the total and leaves it as it is"),
                                   field<&T::validDays>("valid_days", Term::DaysAQuoteIsValid, kDays)
                                       .unpriced("says how long a price holds, not what it is"),
                                   field<&T::daysToPay>("days_to_pay", Term::DaysToPay, kDays)
                                       .unpriced("says when an invoice is due, not what it comes to")
                                       .cameWith({{"shop", 8}})
                                       .standingFor(std::int64_t{14}, "14"),
                               }};
    return object;
}

template<>
const Object& objectOf<ShopRates>() {
    using T = ShopRates;
    static const Object object{
        "ShopRates",
        {
            field<&T::labourPerHour>("labour_per_hour_micros", Term::LabourRate, kAmount),
            field<&T::productivePerMonth>("productive_per_month_ms", Term::BenchHoursOfAMonth,
                                          Range{1, kTimes.highest}),
            field<&T::overheadPerMonth>("overhead_per_month_micros", Term::Overhead, kAmount),
            field<&T::spoilage>("spoilage_ppm", Term::Spoilage, kPartShare),
            field<&T::garmentAllowance>("garment_allowance_micros", Term::AllowanceForGarments, kAmount),
            // No price is made of it, so that an older shop is planned for as a new one is.
            field<&T::spares>("spares", Term::Spares)
                .cameWith({{"shop", 5}})
                .standingFor(Spares::WhereExpected, "where-expected")
                .unpriced("is what is bought besides; what spoilage costs is a share"),
        }};
    return object;
}

template<>
const Object& objectOf<Letterhead>() {
    using T = Letterhead;
    static const Object object{"Letterhead",
                               {
                                   field<&T::name>("name", Term::NameOfTheShop, kLine),
                                   field<&T::lines>("lines", Term::AddressOfTheShop, kLines),
                                   field<&T::terms>("terms", Term::Terms, kLines),
                                   field<&T::care>("care", Term::CareNotes, kLines),
                               }};
    return object;
}

template<>
const Object& objectOf<MeantAsNothing>() {
    using T = MeantAsNothing;
    static const Object object{
        "MeantAsNothing",
        {
            field<&T::tape>("tape", Term::MeantAsNothing),
            field<&T::templates>("templates", Term::MeantAsNothing),
            field<&T::labour>("labour", Term::MeantAsNothing),
            field<&T::overhead>("overhead", Term::MeantAsNothing),
            field<&T::pressRunning>("press_running", Term::MeantAsNothing),
            field<&T::pressWear>("press_wear", Term::MeantAsNothing),
            field<&T::cutterWear>("cutter_wear", Term::MeantAsNothing),
            field<&T::tax>("tax", Term::MeantAsNothing).cameWith({{"shop", 7}}).standingFor(false, "false"),
        }};
    return object;
}

template<>
const Object& objectOf<BenchWeek>() {
    using T = BenchWeek;
    static const Object object{"BenchWeek",
                               {
                                   field<&T::monday>("monday_ms", Term::BenchTimeOnMonday, kDayTimes),
                                   field<&T::tuesday>("tuesday_ms", Term::BenchTimeOnTuesday, kDayTimes),
                                   field<&T::wednesday>("wednesday_ms", Term::BenchTimeOnWednesday, kDayTimes),
                                   field<&T::thursday>("thursday_ms", Term::BenchTimeOnThursday, kDayTimes),
                                   field<&T::friday>("friday_ms", Term::BenchTimeOnFriday, kDayTimes),
                                   field<&T::saturday>("saturday_ms", Term::BenchTimeOnSaturday, kDayTimes),
                                   field<&T::sunday>("sunday_ms", Term::BenchTimeOnSunday, kDayTimes),
                               }};
    return object;
}

template<>
const Object& objectOf<ClosedDays>() {
    using T = ClosedDays;
    static const Object object{"ClosedDays",
                               {
                                   field<&T::from>("from", Term::ClosedFrom),
                                   field<&T::to>("to", Term::ClosedTo),
                                   field<&T::why>("why", Term::WhyClosed, kLine),
                               }};
    return object;
}

template<>
const Object& objectOf<WayToPay>() {
    using T = WayToPay;
    static const Object object{"WayToPay",
                               {
                                   field<&T::name>("name", Term::NameOfTheWayToPay, kName),
                                   field<&T::isCash>("cash", Term::PaidInCash),
                               }};
    return object;
}

template<>
const Object& objectOf<Shop>() {
    using T = Shop;
    static const Object object{
        "Shop",
        {
            field<&T::letterhead>("letterhead", Term::Letterhead).unpriced("is only printed"),
            field<&T::currency>("currency", Term::Currency),
            field<&T::paper>("paper", Term::Paper).unpriced("is only printed on"),
            field<&T::lengthUnit>("length_unit", Term::UnitOfLength).unpriced("lengths are kept without it"),
            field<&T::temperatureUnit>("temperature_unit", Term::UnitOfTemperature)
                .unpriced("temperatures are kept without it"),
            field<&T::usualTape>("usual_tape", Term::UsualTape, Key::MayBeNone),
            field<&T::usualTemplate>("usual_template", Term::UsualTemplate, Key::MayBeNone),
            field<&T::packing>("packing", Term::Packing, Length{50}),
            field<&T::rates>("rates", Term::Rates),
            field<&T::rules>("rules", Term::PriceRules),
            field<&T::ladderQuantities>("ladder_quantities", Term::QuantitiesOfTheLadder, Length{50}, kFromOne)
                .unpriced("asks for more prices and changes none"),
            field<&T::ladderOnSheet>("ladder_on_sheet", Term::LadderOnTheSheet).unpriced("is about what is printed"),
            field<&T::meantAsNothing>("meant_as_nothing", Term::MeantAsNothing)
                .cameWith({{"shop", 3}})
                .standingFor(MeantAsNothing{}, "false")
                .unpriced("says that nothing is meant, not how much"),
            field<&T::offersMoreOnSheet>("offers_more_on_sheet", Term::MoreForLessOnTheSheet)
                .cameWith({{"shop", 3}})
                .standingFor(false, "false")
                .unpriced("is about what is printed"),
            field<&T::countsDesignOverLines>("counts_design_over_lines", Term::PiecesOfADesignTogether)
                .cameWith({{"shop", 4}})
                .standingFor(true, "true"),
            field<&T::paysOffWork>("pays_off_work", Term::ArtAndCuttingPaidOff)
                .cameWith({{"shop", 6}})
                .standingFor(false, "false"),
            field<&T::benchWeek>("bench_week", Term::BenchWeek)
                .cameWith({{"shop", 9}})
                .standingFor(BenchWeek{}, "0")
                .unpriced("says when a job is done, not what it costs"),
            field<&T::closedDays>("closed_days", Term::ClosedDays, Length{200})
                .cameWith({{"shop", 9}})
                .standingFor(std::vector<ClosedDays>{}, "[]")
                .unpriced("says when a job is done, not what it costs"),
            field<&T::isBeingSetUp>("being_set_up", Term::FirstSteps)
                .cameWith({{"shop", 7}})
                .standingFor(false, "false")
                .unpriced("is about what the window shows"),
            field<&T::smallestCoin>("smallest_coin_micros", Term::SmallestCoin, kAmount)
                .cameWith({{"shop", 10}})
                .standingFor(units::Money{}, "0")
                .unpriced("rounds what is paid in cash, not what is asked"),
            field<&T::waysToPay>("ways_to_pay", Term::WaysToPay, Length{50})
                .cameWith({{"shop", 11}})
                .standingFor(std::vector<WayToPay>{}, "[]")
                .unpriced("says how money comes in, not how much"),
            field<&T::usedWhen>("used_when", Term::WhenSuppliesAreUsed)
                .cameWith({{"shop", 11}})
                .standingFor(UsedWhen::ByHand, "\"by-hand\"")
                .unpriced("says when supplies leave the shelf, not what they cost"),
            field<&T::paperLanguage>("paper_language", Term::PaperLanguage, kLine)
                .cameWith({{"shop", 12}})
                .standingFor(std::string(), "\"\"")
                .unpriced("is only what papers are written in"),
            field<&T::isDemo>("demo", Term::DemoMark)
                .unpriced("is about what is printed")
                .notEntered("is set in the demonstration book alone"),
        }};
    return object;
}

} // namespace sp::catalogue::fields
